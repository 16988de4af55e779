/** What came of reading the file: how much, what was left out and where, or why it was refused. */
import type { LoggerOutcome } from '@crib/planning'
import { Fold, Passage, Reasons, Refusal } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function FileReport({ outcome }: { readonly outcome: LoggerOutcome }) {
  const { say } = useWords()
  const { rowCount, readingCount, faults, faultCounts, gaps, gapCount } = outcome
  const faultCount = Object.values(faultCounts).reduce((sum, count) => sum + count, 0)
  return (
    <Passage title={say('heat:report-title')} id="report">
      {outcome.ok ? (
        <p role="status">{say('heat:report-read', { rows: rowCount, readings: readingCount })}</p>
      ) : (
        <Refusal title={say('heat:report-refused')} why={[outcome.refused]} />
      )}
      {faultCount > 0 && (
        <Fold title={say('heat:report-faults', { count: faultCount })}>
          <Reasons sentences={faults.map(({ sentence }) => sentence)} />
          {faultCount > faults.length && <p>{say('heat:report-more', { count: faultCount - faults.length })}</p>}
        </Fold>
      )}
      {gapCount > 0 && (
        <Fold title={say('heat:report-gaps', { count: gapCount })}>
          <ul className="reasons">
            {gaps.map(({ fromMin, toMin, beforeRow }) => (
              <li key={fromMin}>
                {say('heat:report-gap', {
                  row: String(beforeRow),
                  minutes: { value: Math.round(toMin - fromMin), unit: 'Min' },
                })}
              </li>
            ))}
          </ul>
        </Fold>
      )}
    </Passage>
  )
}
