/** Pantry: what is put up, what goes first, what left the shelf; departures travel with the jars of their load. */
import { boilBeforeTastingMin, cautionsFor } from '@crib/guidance'
import { pantryShelf, unsealedJars } from '@crib/planning'
import { convert } from '@crib/science'
import { useBook } from '../book/book.tsx'
import {
  BigNumber,
  ButtonRow,
  Caution,
  Empty,
  Fold,
  MarginNote,
  NextAction,
  Passage,
  Reasons,
  Sheet,
  SideAction,
} from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'
import { PutUpForm } from './pantry/put-up-form.tsx'
import { ShelfRow } from './pantry/shelf-row.tsx'
import './pantry/pantry.css'

export default function PantryScreen() {
  const { facts } = useBook()
  const { say } = useWords()
  const shelf = pantryShelf(facts)
  const unsealed = unsealedJars(facts, Date.now())
  const hasJars = shelf.some(({ lot }) => lot.form === 'jar')
  return (
    <Sheet title={say('shell:part-pantry')} drawing="jar" lead={say('shell:pantry-lead')}>
      {unsealed.map(({ runId, loadCode, count, outcome }) => (
        <Passage key={runId} title={say('pantry:unsealed-title', { code: loadCode })}>
          <Caution>{say('pantry:unsealed', { count })}</Caution>
          <Reasons sentences={[...outcome.choices.map((choice) => choice.say), ...outcome.why]} />
        </Passage>
      ))}
      {hasJars && <BeforeTasting />}
      <Passage title={say('pantry:shelf')} margin={<MarginNote>{say('pantry:shelf-margin')}</MarginNote>}>
        {shelf.length === 0 ? (
          <Empty drawing="jar" action={<NextAction href="/plan">{say('shell:plan-title')}</NextAction>}>
            <p>{say('shell:pantry-empty')}</p>
          </Empty>
        ) : (
          <ol className="shelf-rows">
            {shelf.map((row) => (
              <ShelfRow key={row.lot.lotId} row={row} />
            ))}
          </ol>
        )}
      </Passage>
      <Passage title={say('pantry:more')}>
        {shelf.length > 0 && (
          <ButtonRow>
            <SideAction href="/paper/labels">{say('shell:print-labels-choose')}</SideAction>
          </ButtonRow>
        )}
        <Fold title={say('pantry:put-up')}>
          <PutUpForm />
        </Fold>
      </Passage>
    </Sheet>
  )
}

/** Said where somebody is about to open a jar: how long it boils here first. */
function BeforeTasting() {
  const { facts } = useBook()
  const { say } = useWords()
  const metres = facts.kitchen?.elevationM
  const suspect = cautionsFor('tasting')[0]
  return (
    <Passage title={say('pantry:before-tasting')} margin={<MarginNote>{say('guidance:boil-why')}</MarginNote>}>
      {metres === undefined ? (
        <>
          <p>{say('pantry:boil-needs-elevation')}</p>
          <ButtonRow>
            <SideAction href="/house">{say('shell:plan-to-house')}</SideAction>
          </ButtonRow>
        </>
      ) : (
        <BigNumber
          label={say('pantry:boil-here')}
          reckoned={boilBeforeTastingMin(Number(convert(metres, 'M', 'Ft').toFixed(6)))}
        />
      )}
      {suspect && <Caution sentence={suspect} />}
    </Passage>
  )
}
