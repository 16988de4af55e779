/** What was written down, line by line; each can be given another time or taken out. Both stay readable in the book. */
import type { RunEventFact } from '@crib/journal'
import { dayOfInstant, instantOnDay } from '@crib/planning'
import { formatClock } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, ClockField, clockMinutes, SideAction } from '../../parts-of-the-sheet/index.ts'
import { clockAt } from '../../walk/clock-at.ts'
import { useWords } from '../../words.tsx'
import { eventWords, type RunNow } from './run-of.ts'

export function RunLog({ at }: { readonly at: RunNow }) {
  const { say } = useWords()
  const { events } = at.run
  if (events.length === 0) return <p>{say('canner:run-screen-log-empty')}</p>
  return (
    <div>
      {events.map((line) => (
        <LogLine key={`${line.entryId}${line.instant}`} at={at} line={line} />
      ))}
    </div>
  )
}

function LogLine({ at, line }: { readonly at: RunNow; readonly line: RunEventFact }) {
  const words = useWords()
  const { say } = words
  const { write } = useBook()
  const atMs = Date.parse(line.instant)
  const written = formatClock(clockAt(atMs, at.zone))
  const [clock, setClock] = useState(written)
  const typedMin = clockMinutes(clock)
  const correct = () =>
    typedMin !== null &&
    write('entry-corrected', {
      correctsId: line.entryId,
      body: { runId: at.run.runId, event: { ...line.event } },
      happenedAt: new Date(instantOnDay(dayOfInstant(atMs, at.zone), typedMin, at.zone)).toISOString(),
      reason: say('canner:run-screen-line-reason'),
    })
  return (
    <details className="line">
      <summary>
        <time dateTime={line.instant}>{written}</time>
        <span>{eventWords(line.event, at, words)}</span>
      </summary>
      <div className="line-body">
        <ClockField label={say('canner:run-screen-line-time')} value={clock} onValue={setClock} />
        <ButtonRow>
          <SideAction disabled={typedMin === null || clock === written} onClick={() => void correct()}>
            {say('canner:run-screen-line-put')}
          </SideAction>
          <SideAction
            onClick={() =>
              void write('entry-withdrawn', {
                withdrawsId: line.entryId,
                reason: say('kettle:walk-taken-back-reason'),
              })
            }
          >
            {say('canner:run-screen-line-out')}
          </SideAction>
        </ButtonRow>
      </div>
    </details>
  )
}
