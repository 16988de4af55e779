/** The shelf: what goes first stands at the top; departures travel with the jars of their load. */
import { boilBeforeTastingMin, cautionsFor } from '@crib/guidance'
import { pantryShelf, unsealedJars, useForecasts } from '@crib/planning'
import { convert } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
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
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { PutUpForm } from './put-up-form.tsx'
import { ShelfRow } from './shelf-row.tsx'
import { ShowFiveWays } from './show-five-ways.tsx'

export function PantryShelfSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const shelf = pantryShelf(facts)
  const unsealed = unsealedJars(facts, Date.now())
  const hasJars = shelf.some(({ lot }) => lot.form === 'jar')
  const hasFood = Object.keys(facts.foodLots).length > 0
  return (
    <Sheet title={say('shell:part-pantry')} drawing="jar" lead={say('shell:pantry-lead')}>
      {unsealed.map(({ runId, loadCode, count, outcome }) => (
        <Passage key={runId} title={say('pantry:unsealed-title', { code: loadCode })}>
          <Caution>{say('pantry:unsealed', { count })}</Caution>
          <Reasons sentences={[...outcome.choices.map((choice) => choice.say), ...outcome.why]} />
        </Passage>
      ))}
      {hasFood && (
        <Passage>
          <NextAction href="/pantry/scan">{say('pantry:to-scan')}</NextAction>
          <ButtonRow>
            <SideAction href="/paper/labels">{say('shell:print-labels-choose')}</SideAction>
            <SideAction href="/pantry/recall">{say('pantry:to-recall')}</SideAction>
            <SideAction href="/pantry/went">{say('pantry:to-went')}</SideAction>
            <SideAction href="/pantry/buy">{say('pantry:to-buy')}</SideAction>
          </ButtonRow>
        </Passage>
      )}
      {hasJars && <BeforeTasting />}
      <Passage title={say('pantry:shelf')} margin={<MarginNote>{say('pantry:shelf-margin')}</MarginNote>}>
        {shelf.length === 0 ? (
          <Empty
            drawing="jar"
            {...(!hasFood && { action: <NextAction href="/plan">{say('shell:plan-title')}</NextAction> })}
          >
            <p>{say('shell:pantry-empty')}</p>
            {facts.kitchen?.demo && !hasFood && <ShowFiveWays />}
          </Empty>
        ) : (
          <ol className="shelf-rows">
            {shelf.map((row) => (
              <ShelfRow key={row.lot.lotId} row={row} />
            ))}
          </ol>
        )}
      </Passage>
      {shelf.length > 0 && <Forecast />}
      <Passage title={say('pantry:more')}>
        <Fold title={say('pantry:put-up')}>
          <PutUpForm />
        </Fold>
      </Passage>
    </Sheet>
  )
}

/** When each form runs out at this kitchen's own pace; or what is wanting to tell it. */
function Forecast() {
  const { facts } = useBook()
  const { say } = useWords()
  const forecasts = useForecasts(facts, Date.now())
  return (
    <Passage title={say('pantry:lasts-title')} margin={<MarginNote>{say('pantry:lasts-margin')}</MarginNote>}>
      <ul className="reasons">
        {forecasts.map(({ form, onShelfCount, values }) => (
          <li key={form}>
            {values
              ? say('pantry:lasts', {
                  form: say(`pantry:form-${form}`),
                  count: onShelfCount,
                  pace: formatReckoned(values[0]),
                  lasts: formatReckoned(values[1]),
                })
              : say('pantry:lasts-unknown', { form: say(`pantry:form-${form}`), count: onShelfCount })}
          </li>
        ))}
      </ul>
    </Passage>
  )
}

/** Said where somebody is about to open a jar: how long it boils here first. */
export function BeforeTasting() {
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
