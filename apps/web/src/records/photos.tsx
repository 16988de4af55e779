/**
 * Pictures of a thing in the book: taken here, kept in the book, and taken out again. Props: ofId, potLoad?, ofEntryId? (the one
 * line they show), elsewhere? (lines that show theirs beside themselves), takeWords?.
 */
import { type Facts, history, type PhotoFact } from '@crib/journal'
import { formatClock } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { deviceZone } from '../book/keeper.ts'
import { ButtonRow, FieldError, SideAction } from '../parts-of-the-sheet/index.ts'
import { clockAt } from '../walk/clock-at.ts'
import { useWords } from '../words.tsx'
import './photos.css'
import { smallerPicture } from './smaller-picture.ts'

export function Photos({
  ofId,
  potLoad,
  ofEntryId,
  elsewhere = [],
  takeWords,
}: {
  readonly ofId: string
  readonly potLoad?: number
  readonly ofEntryId?: string
  readonly elsewhere?: readonly string[]
  readonly takeWords?: string
}) {
  const { facts, write, newId } = useBook()
  const { say } = useWords()
  const [state, setState] = useState<'ready' | 'busy' | 'unreadable'>('ready')
  const photos = Object.values(facts.photos)
    .filter((photo) => photo.ofId === ofId && photo.potLoad === potLoad)
    // A picture whose line was taken out goes with the others of its pot.
    .filter((photo) =>
      ofEntryId === undefined
        ? photo.ofEntryId === undefined || !elsewhere.includes(photo.ofEntryId)
        : photo.ofEntryId === ofEntryId,
    )
    .sort((a, b) => Date.parse(a.at.instant) - Date.parse(b.at.instant))

  const take = async (file: File | undefined) => {
    if (!file) return
    setState('busy')
    const picture = await smallerPicture(file)
    if (picture)
      await write('photo-taken', {
        photoId: newId(),
        ofId,
        ...(potLoad !== undefined && { potLoad }),
        ...(ofEntryId !== undefined && { ofEntryId }),
        ...picture,
      })
    setState(picture ? 'ready' : 'unreadable')
  }
  return (
    <div className="photos">
      {photos.map((photo) => (
        <Photo key={photo.photoId} photo={photo} />
      ))}
      <label className="plain-button photo-take">
        <span>{state === 'busy' ? say('shell:photo-busy') : (takeWords ?? say('shell:photo-take'))}</span>
        <input
          type="file"
          accept="image/*"
          capture="environment"
          disabled={state === 'busy'}
          onChange={(event) => {
            void take(event.target.files?.[0])
            event.target.value = ''
          }}
        />
      </label>
      {state === 'unreadable' && <FieldError>{say('shell:photo-unreadable')}</FieldError>}
    </div>
  )
}

function Photo({ photo }: { readonly photo: PhotoFact }) {
  const { facts, write } = useBook()
  const { say } = useWords()
  const clock = formatClock(clockAt(Date.parse(photo.at.instant), deviceZone()))
  const image = imageOf(facts, photo)
  if (image === null) return null
  return (
    <figure className="photo">
      <img
        src={`data:${photo.mediaType};base64,${image}`}
        alt={say('shell:photo-of', { clock })}
        width={photo.widthPx}
        height={photo.heightPx}
      />
      <figcaption>
        <time dateTime={photo.at.instant}>{clock}</time>
        <ButtonRow>
          <SideAction
            onClick={() =>
              void write('entry-withdrawn', {
                withdrawsId: photo.at.entryId,
                reason: say('shell:photo-out-reason'),
              })
            }
          >
            {say('shell:photo-out')}
          </SideAction>
        </ButtonRow>
      </figcaption>
    </figure>
  )
}

function imageOf(facts: Facts, { at }: PhotoFact): string | null {
  const body = history(facts, at.entryId)?.standing?.body as { readonly image?: string } | null | undefined
  return body?.image ?? null
}
