/** Every calculation of the book, under the part it answers for, each by the question it answers. */
import { CATALOGUE } from '@crib/catalogue'
import { Link } from 'wouter'
import { ButtonRow, Passage, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { onShelves } from './shelves.ts'

export function BenchList() {
  const { say } = useWords()
  return (
    <Sheet title={say('workbench:title')} drawing="scale" lead={say('workbench:intro')}>
      <Passage>
        <p>{say('heat:canner-lead')}</p>
        <ButtonRow>
          <SideAction href="/heat">{say('heat:title')}</SideAction>
        </ButtonRow>
      </Passage>
      {onShelves(CATALOGUE).map(({ title, calcs }) => (
        <Passage key={title} title={say(title)}>
          <ul className="bench-list">
            {calcs.map((calc) => (
              <li key={calc.id}>
                <Link href={`/${calc.id}`} className="bench-line">
                  <strong>{calc.title}</strong>
                  <span>{calc.question}</span>
                </Link>
              </li>
            ))}
          </ul>
        </Passage>
      ))}
    </Sheet>
  )
}
