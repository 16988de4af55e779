/** Keeping: what is kept otherwise than in jars: fridge, freezer, dried, flour, roasted, tonight's pot. */
import { pantryShelf } from '@crib/planning'
import { useBook } from '../book/book.tsx'
import { Empty, NextAction, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'
import { ShelfRow } from './pantry/shelf-row.tsx'
import './pantry/pantry.css'

export default function KeepingScreen() {
  const { facts } = useBook()
  const { say } = useWords()
  const kept = pantryShelf(facts).filter(({ lot }) => lot.form !== 'jar')
  return (
    <Sheet title={say('shell:part-keeping')} drawing="tin" lead={say('shell:keeping-lead')}>
      <Passage>
        {kept.length === 0 ? (
          <Empty drawing="tin" action={<NextAction href="/plan">{say('shell:next-plan')}</NextAction>}>
            <p>{say('shell:keeping-empty')}</p>
          </Empty>
        ) : (
          <ol className="shelf-rows">
            {kept.map((row) => (
              <ShelfRow key={row.lot.lotId} row={row} />
            ))}
          </ol>
        )}
      </Passage>
    </Sheet>
  )
}
