/**
 * A jump of the device's clock during a run is a question, kept until it is answered: the device may have slept, or been
 * set. Nothing is guessed; "go by the steady count" writes it into the run, which moves the finish with it.
 */
import { type RunRecord, runState } from '@crib/planning'
import { formatClock, formatDuration } from '@crib/wording'
import { useEffect, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import type { ClockQuestion } from '../../book/clock-watch.ts'
import { ButtonRow, SideAction, Slip } from '../../parts-of-the-sheet/index.ts'
import { clockAt } from '../../walk/clock-at.ts'
import type { Taps } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import { eventWords, type RunNow } from './run-of.ts'

const keyOf = (runId: string) => `clock-question:${runId}`

export function ClockAsked({ at, taps }: { readonly at: RunNow; readonly taps: Taps }) {
  const words = useWords()
  const { say } = words
  const { clockQuestion, answerClockQuestion } = useBook()
  const { runId } = at.run
  const [asked, setAsked] = useState(() => kept(runId))
  const isTimed = at.state.outcome === 'under-way' && at.run.events.length > 0

  useEffect(() => {
    if (!clockQuestion || !isTimed) return
    setAsked(clockQuestion)
    keep(runId, clockQuestion)
    // From here on the run itself asks.
    answerClockQuestion()
  }, [clockQuestion, isTimed, runId, answerClockQuestion])

  if (!asked) return null
  const answered = () => {
    setAsked(null)
    keep(runId, null)
  }
  const event = { type: 'clock-questioned', jumpMs: asked.jumpMs, keptInstant: asked.keptInstant } as const
  const seenMs = Date.parse(asked.seenInstant)
  const record: RunRecord = { id: 'asked', happenedAtMs: seenMs, event }
  const thenDueMs = runState(at.setup, [...at.records, record], at.state.asOfMs).dueAtMs
  const clock = (atMs: number) => formatClock(clockAt(atMs, at.zone))
  const size = Math.abs(asked.jumpMs)
  return (
    <Slip drawing="clock" role="alert">
      <div className="passage-body">
        <p>
          {say('canner:run-screen-clock-asked', {
            size: size < 90_000 ? `${Math.round(size / 1000)} s` : formatDuration(size / 60_000),
          })}
        </p>
        <ButtonRow>
          <SideAction onClick={answered}>
            {say('canner:run-screen-clock-right', { clock: clock(Date.now()) })}
          </SideAction>
          <SideAction
            onClick={() =>
              void taps.keep(eventWords(event, at, words), [['run-event', { runId, event }]], seenMs).then(answered)
            }
          >
            {say('canner:run-screen-clock-steady')}
          </SideAction>
        </ButtonRow>
        {thenDueMs !== undefined && thenDueMs !== at.state.dueAtMs && (
          <p>{say('canner:run-screen-clock-finish', { finish: clock(thenDueMs) })}</p>
        )}
      </div>
    </Slip>
  )
}

function kept(runId: string): ClockQuestion | null {
  try {
    const text = localStorage.getItem(keyOf(runId))
    return text === null ? null : JSON.parse(text)
  } catch {
    return null
  }
}

function keep(runId: string, question: ClockQuestion | null): void {
  try {
    if (question === null) localStorage.removeItem(keyOf(runId))
    else localStorage.setItem(keyOf(runId), JSON.stringify(question))
  } catch {
    // it is asked until the page is closed
  }
}
