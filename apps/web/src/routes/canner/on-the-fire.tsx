/** Every run that is open, each with the one clock time that matters, as links to its own sheet. Props: title, except? (a run's id). */
import { formatReckoned } from '@crib/wording'
import { Link } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { Passage } from '../../parts-of-the-sheet/index.ts'
import { useNow } from '../../walk/use-now.ts'
import { useWords } from '../../words.tsx'
import '../../walk/walk.css'
import { dueOf, isOpen, runNow } from './run-of.ts'

export function OnTheFire({ title, except }: { readonly title: string; readonly except?: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const nowMs = useNow()
  const runs = Object.values(facts.runs).filter((run) => run.runId !== except && isOpen(run))
  if (runs.length === 0) return null
  return (
    <Passage title={title}>
      <ul className="running">
        {runs.map((run) => {
          const at = runNow(run, nowMs)
          const due = dueOf(at)
          return (
            <li key={run.runId}>
              <Link href={`~/canner/run/${run.runId}`}>
                <span>{run.begun.cannerName}</span>
                <strong>
                  {due
                    ? say(`canner:run-screen-running-${due.key}`, { clock: formatReckoned(due.reckoned, 'alone') })
                    : say(
                        at.state.phase === 'dipped'
                          ? 'canner:run-screen-running-dip'
                          : 'canner:run-screen-running-other',
                      )}
                </strong>
              </Link>
            </li>
          )
        })}
      </ul>
    </Passage>
  )
}
