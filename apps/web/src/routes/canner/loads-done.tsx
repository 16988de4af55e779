/** The last loads that are over, newest first, each opening its own sheet. */
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Passage, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { isOpen } from './run-of.ts'

const SHOWN_COUNT = 6

export function LoadsDone() {
  const { facts } = useBook()
  const { say } = useWords()
  const done = Object.values(facts.runs)
    .filter((run) => !isOpen(run))
    .sort((a, b) => (a.begun.at.instant < b.begun.at.instant ? 1 : -1))
  if (done.length === 0) return null
  return (
    <Passage title={say('canner:run-screen-done-title')}>
      <p>{say('canner:run-screen-done-lead')}</p>
      <ButtonRow>
        {done.slice(0, SHOWN_COUNT).map(({ runId, begun }) => (
          <SideAction key={runId} href={`/canner/run/${runId}`}>
            {begun.loadCode}
          </SideAction>
        ))}
      </ButtonRow>
    </Passage>
  )
}
