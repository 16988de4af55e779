/** Reading a label: by the camera, from a photo, or by typing the code that is printed beside it. Opens the record, offline too. */
import { type FoundRecord, findRecord, recordAddress } from '@crib/journal'
import { type ChangeEvent, useId, useState } from 'react'
import { useLocation } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  ButtonRow,
  FieldError,
  NextAction,
  Passage,
  Reasons,
  Sheet,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { Camera, type CameraTrouble, hasCamera } from './camera.tsx'
import { pixelsOfFile, readCode } from './read-code.ts'

type Outcome =
  | { readonly kind: 'foreign' | 'unknown' | 'typed-unknown'; readonly text: string }
  | { readonly kind: 'damaged' | 'no-picture' }
  | { readonly kind: 'several'; readonly loadCode: string; readonly lotIds: readonly string[] }

/** Longer texts of foreign codes are cut: their beginning tells them apart. [letters] */
const SHOWN_LETTERS = 60

export function ScanSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const [, go] = useLocation()
  const [looking, setLooking] = useState(false)
  const [trouble, setTrouble] = useState<CameraTrouble | null>(null)
  const [outcome, setOutcome] = useState<Outcome | null>(null)
  const photoId = useId()

  const open = (found: FoundRecord, text: string, isTyped: boolean) => {
    setLooking(false)
    if (found.kind === 'found') return go(`~${addressOf(found)}`)
    if (found.kind === 'load') {
      const [lotId] = found.lotIds
      if (found.lotIds.length === 1 && lotId) return go(`~/pantry/lot/${lotId}`)
      if (found.lotIds.length === 0 && found.runIds[0]) return go(`~/canner/run/${found.runIds[0]}`)
      return setOutcome({ kind: 'several', loadCode: found.loadCode, lotIds: found.lotIds })
    }
    setOutcome({ kind: isTyped ? 'typed-unknown' : found.kind, text: text.trim().slice(0, SHOWN_LETTERS) })
  }
  const readText = (text: string) => open(findRecord(facts, text), text, false)
  const readPhoto = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    // The same photo chosen again is looked at again.
    event.target.value = ''
    if (!file) return
    setOutcome(null)
    try {
      const text = await readCode(await pixelsOfFile(file))
      if (text === null) setOutcome({ kind: 'damaged' })
      else readText(text)
    } catch {
      setOutcome({ kind: 'no-picture' })
    }
  }
  return (
    <Sheet title={say('pantry:scan-title')} drawing="tag" lead={say('pantry:scan-lead')}>
      <Passage title={say('pantry:scan-camera')}>
        {!hasCamera() ? (
          <p>{say('pantry:scan-no-secure')}</p>
        ) : looking ? (
          <>
            <Camera
              onRead={readText}
              onTrouble={(why) => {
                setLooking(false)
                setTrouble(why)
              }}
            />
            <p role="status">{say('pantry:scan-looking')}</p>
            <SideAction onClick={() => setLooking(false)}>{say('pantry:scan-stop')}</SideAction>
          </>
        ) : (
          <NextAction
            onClick={() => {
              setOutcome(null)
              setTrouble(null)
              setLooking(true)
            }}
          >
            {say('pantry:scan-begin')}
          </NextAction>
        )}
        {trouble && <p role="alert">{say(`pantry:scan-camera-${trouble}`)}</p>}
        <Found outcome={outcome} />
      </Passage>
      <Passage title={say('pantry:scan-photo')}>
        <div className="field">
          <label htmlFor={photoId}>{say('pantry:scan-photo-choose')}</label>
          <input
            id={photoId}
            className="written"
            type="file"
            accept="image/*"
            capture="environment"
            onChange={readPhoto}
          />
        </div>
      </Passage>
      <Passage title={say('pantry:scan-type')}>
        <TypedCode onCode={(code) => open(findRecord(facts, recordAddress('load', code)), code, true)} />
      </Passage>
    </Sheet>
  )
}

function TypedCode({ onCode }: { readonly onCode: (code: string) => void }) {
  const { facts } = useBook()
  const { say } = useWords()
  const [code, setCode, forget] = useHalfTyped('scan:code', '')
  const look = () => {
    const typed = code.trim()
    if (typed === '') return
    // Written on a lid by hand, small letters are as good.
    const known = [...Object.values(facts.foodLots), ...Object.values(facts.runs).map(({ begun }) => begun)]
    const match = known.find(({ loadCode }) => loadCode.toLowerCase() === typed.toLowerCase())
    if (match) forget()
    onCode(match?.loadCode ?? typed)
  }
  return (
    <form
      className="passage-body"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        look()
      }}
    >
      <TextField label={say('pantry:scan-code')} hint={say('pantry:scan-code-hint')} value={code} onValue={setCode} />
      <SideAction>{say('pantry:scan-open')}</SideAction>
    </form>
  )
}

function Found({ outcome }: { readonly outcome: Outcome | null }) {
  const { facts } = useBook()
  const { say } = useWords()
  return (
    <div aria-live="assertive" className="passage-body">
      {outcome?.kind === 'several' && (
        <>
          <p>{say('pantry:scan-several', { code: outcome.loadCode })}</p>
          <ButtonRow>
            {outcome.lotIds.map((lotId) => {
              const lot = facts.foodLots[lotId]
              if (!lot) return null
              const held = say(`pantry:held-${lot.form === 'jar' ? (lot.jarSize ?? 'quart') : lot.form}`, {
                count: lot.remainingCount,
              })
              return (
                <SideAction key={lotId} href={`/pantry/lot/${lotId}`}>
                  {[lot.householdName, lot.place, `${lot.remainingCount} ${held}`].filter(Boolean).join(', ')}
                </SideAction>
              )
            })}
          </ButtonRow>
        </>
      )}
      {outcome?.kind === 'damaged' && <FieldError>{say('pantry:recall-damaged-code')}</FieldError>}
      {outcome?.kind === 'no-picture' && <FieldError>{say('pantry:scan-no-picture')}</FieldError>}
      {outcome?.kind === 'foreign' && <FieldError>{say('pantry:scan-foreign', { text: outcome.text })}</FieldError>}
      {outcome?.kind === 'unknown' && <FieldError>{say('pantry:scan-unknown')}</FieldError>}
      {outcome?.kind === 'typed-unknown' && (
        <FieldError>{say('pantry:recall-unknown-code', { code: outcome.text })}</FieldError>
      )}
      {outcome?.kind === 'damaged' && <Reasons sentences={[{ key: 'pantry:scan-damaged-try' }]} />}
    </div>
  )
}

/** Where the record stands in this book. */
function addressOf({ record, id }: Extract<FoundRecord, { kind: 'found' }>): string {
  switch (record) {
    case 'food-lot':
      return `/pantry/lot/${id}`
    case 'corn-lot':
      return `/crib/store/${id}`
    case 'seed-lot':
      return '/seed'
    case 'batch':
      return `/kettle/${id}`
    case 'run':
      return `/canner/run/${id}`
    case 'plot':
    case 'planting':
      return '/field'
  }
}
