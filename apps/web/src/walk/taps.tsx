/**
 * One tap writes one line of the walk, with the time it happened, and can be taken back.
 * useTaps(zone): { keep, takeBack, last, refusals, clock, setClock, busy }. keep(words, lines) writes every line at the time
 *   told under "I did this earlier", else now.
 * TapGroup: big buttons. TapButton: one of them. Earlier: the field for an earlier time. LastTap: what was written, and taking it back.
 */
import { type BodyOf, BodyRefused, type Kind, type Refusal } from '@crib/journal'
import { lastInstantOfClock } from '@crib/planning'
import { formatClock } from '@crib/wording'
import { type MouseEvent, type ReactNode, useState } from 'react'
import { useBook } from '../book/book.tsx'
import { Drawing } from '../drawings/drawing.tsx'
import { ClockField, clockMinutes, FieldError } from '../parts-of-the-sheet/index.ts'
import { askedSentence } from '../records/asked-sentence.ts'
import { useWords } from '../words.tsx'
import { clockAt } from './clock-at.ts'

export type Line = { [K in Kind]: readonly [kind: K, body: BodyOf<K>] }[Kind]

export interface LastTapped {
  readonly words: string
  readonly atMs: number
  readonly entryIds: readonly string[]
  readonly takenBack: boolean
}

export interface Taps {
  readonly zone: string
  readonly last: LastTapped | null
  readonly refusals: readonly Refusal[]
  readonly busy: boolean
  /** "HH:MM" of an earlier time for the next tap; empty for now. */
  readonly clock: string
  setClock(clock: string): void
  /** Resolves true once every line is on this device. `knownAtMs` where the time is no question. */
  keep(words: string, lines: readonly Line[], knownAtMs?: number): Promise<boolean>
  takeBack(): Promise<void>
}

export function useTaps(zone: string): Taps {
  const { write } = useBook()
  const { say } = useWords()
  const [last, setLast] = useState<LastTapped | null>(null)
  const [refusals, setRefusals] = useState<readonly Refusal[]>([])
  const [clock, setClock] = useState('')
  const [busy, setBusy] = useState(false)

  const keep: Taps['keep'] = async (words, lines, knownAtMs) => {
    const nowMs = Date.now()
    const typedMin = clockMinutes(clock)
    const toldMs = typedMin === null ? nowMs : lastInstantOfClock(typedMin, nowMs, zone)
    const atMs = knownAtMs ?? toldMs
    setBusy(true)
    const entryIds: string[] = []
    try {
      for (const [kind, body] of lines) {
        const entry = await write(kind, body as never, { happenedAt: { instant: atMs, zone } })
        entryIds.push(entry.envelope.id)
      }
    } catch (error) {
      if (!(error instanceof BodyRefused)) throw error
      setRefusals(error.refusals)
      return false
    } finally {
      setBusy(false)
    }
    setRefusals([])
    setClock('')
    setLast({ words, atMs, entryIds, takenBack: false })
    return true
  }
  const takeBack = async () => {
    if (!last) return
    for (const withdrawsId of last.entryIds) {
      await write('entry-withdrawn', { withdrawsId, reason: say('kettle:walk-taken-back-reason') })
    }
    setLast({ ...last, takenBack: true })
  }
  return { zone, last, refusals, busy, clock, setClock, keep, takeBack }
}

/** A second, unmeant tap of a wet finger falls on whatever has moved under it: it is not taken. */
function notTwice(event: MouseEvent): void {
  if (event.detail < 2) return
  event.preventDefault()
  event.stopPropagation()
}

export function TapGroup({ children, label }: { readonly children: ReactNode; readonly label?: string }) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields; these are buttons
    <div className="taps" role="group" aria-label={label} onClickCapture={notTwice}>
      {children}
    </div>
  )
}

export function TapButton({
  children,
  onClick,
  isNext = false,
  disabled = false,
}: {
  readonly children: ReactNode
  readonly onClick: () => void
  /** The one next thing. */
  readonly isNext?: boolean
  readonly disabled?: boolean
}) {
  return (
    <button type="button" className={isNext ? 'handle' : 'tap'} onClick={onClick} disabled={disabled}>
      <span>{children}</span>
    </button>
  )
}

export function Earlier({ taps }: { readonly taps: Taps }) {
  const { say } = useWords()
  return (
    // Anew after each tap: folded again, so that no earlier time lingers unseen.
    <details className="behind earlier" key={taps.last?.entryIds[0]}>
      <summary>{say('kettle:walk-earlier')}</summary>
      <ClockField
        label={say('kettle:walk-earlier-at')}
        hint={say('kettle:walk-earlier-hint')}
        value={taps.clock}
        onValue={taps.setClock}
      />
    </details>
  )
}

export function LastTap({ taps }: { readonly taps: Taps }) {
  const words = useWords()
  const { say, sentence } = words
  const { last, refusals } = taps
  return (
    <div className="last-tap" aria-live="polite">
      {refusals.map((refusal) => (
        <FieldError key={`${refusal.code}${JSON.stringify(refusal.params)}`}>
          {sentence(askedSentence(refusal, words))}
        </FieldError>
      ))}
      {last && refusals.length === 0 && (
        <>
          <p className="kept">
            <Drawing name={last.takenBack ? 'string' : 'tick'} />
            <span>
              <time dateTime={new Date(last.atMs).toISOString()}>{formatClock(clockAt(last.atMs, taps.zone))}</time>{' '}
              {last.takenBack ? say('kettle:walk-taken-back', { words: last.words }) : last.words}
            </span>
          </p>
          {!last.takenBack && (
            <button type="button" className="word-button" onClick={() => void taps.takeBack()}>
              {say('kettle:walk-take-back')}
            </button>
          )}
        </>
      )}
    </div>
  )
}
