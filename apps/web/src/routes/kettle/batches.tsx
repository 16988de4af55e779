/** Batches begun or planned, as links to their walk; the latest first. Props: none. */
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Passage, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function Batches() {
  const { facts } = useBook()
  const { say } = useWords()
  const batches = Object.values(facts.batches).sort((a, b) => (a.plan.at.instant < b.plan.at.instant ? 1 : -1))
  if (batches.length === 0) return null
  return (
    <Passage title={say('kettle:walk-batches')}>
      <ButtonRow>
        {batches.map(({ batchId, plan }) => (
          <SideAction key={batchId} href={`/kettle/${batchId}`}>
            {say('kettle:walk-go-on', { title: plan.title })}
          </SideAction>
        ))}
      </ButtonRow>
    </Passage>
  )
}
