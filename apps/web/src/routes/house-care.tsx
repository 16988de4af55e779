/**
 * How the book is kept: where it lies, how much room it takes, when the last backup was made, and in plain words whose it is.
 * What the house server does not tell to whoever asks is left out; without a server only the words stand here.
 */
import { formatNumber } from '@crib/wording'
import { useEffect, useState } from 'react'
import { useBook } from '../book/book.tsx'
import { Fold } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'
import { whenText } from './people/when-text.ts'

/** As `GET /api/care` answers; null is not told. */
interface Care {
  readonly where: string | null
  readonly bytes: number | null
  readonly backups: { readonly everyHours: number; readonly lastMadeAt: string | null } | null
}

const PATIENCE_MS = 10_000

/** Undefined until it answered, null where it did not or may not. */
function useCare(kitchenId: string | null): Care | null | undefined {
  const [care, setCare] = useState<Care | null>()
  useEffect(() => {
    const leaving = new AbortController()
    const signal = AbortSignal.any([leaving.signal, AbortSignal.timeout(PATIENCE_MS)])
    fetch(`/api/care?kitchen=${encodeURIComponent(kitchenId ?? '')}`, { signal })
      .then(async (response) => (response.ok ? ((await response.json()) as Care) : null))
      .catch(() => null)
      .then((answer) => leaving.signal.aborted || setCare(answer))
    return () => leaving.abort()
  }, [kitchenId])
  return care
}

export function CareOfTheBook() {
  const { kitchenId } = useBook()
  const { say } = useWords()
  const care = useCare(kitchenId)
  return (
    <>
      <div aria-live="polite">
        {care === null && <p>{say('shell:care-not-told')}</p>}
        {care?.where && <p>{say('shell:care-where', { where: care.where })}</p>}
        {care?.bytes != null && <p>{say('shell:care-room', { megabytes: formatNumber(care.bytes / 1e6, 1) })}</p>}
        {care && <p>{backupText(care, say)}</p>}
      </div>
      <Fold title={say('shell:care-whose-title')}>
        {WHOSE.map((key) => (
          <p key={key}>{say(key)}</p>
        ))}
      </Fold>
    </>
  )
}

function backupText({ backups }: Care, say: ReturnType<typeof useWords>['say']): string {
  if (!backups) return say('shell:care-no-backups')
  const { everyHours, lastMadeAt } = backups
  if (lastMadeAt === null) return say('shell:care-backup-none-yet')
  return say('shell:care-backup-last', { when: whenText(lastMadeAt), hours: everyHours })
}

const WHOSE = [
  'shell:care-whose',
  'shell:care-leaves',
  'shell:care-lost',
  'shell:care-copies',
  'shell:care-take',
  'shell:care-erase',
] as const
