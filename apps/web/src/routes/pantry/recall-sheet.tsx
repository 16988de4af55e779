/** Recall: from a canner, a gauge, a load, a batch, an alkali lot or a corn lot to every jar and household. */
import { cautionsFor, suspectJarSteps } from '@crib/guidance'
import { type Recall, type RecallChoice, type RecallOrigin, recall, recallChoices, recallValues } from '@crib/planning'
import type { Reckoned } from '@crib/science'
import { formatReckoned, type MessageKey } from '@crib/wording'
import { useMemo } from 'react'
import { useSearch } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ButtonRow,
  Caution,
  ChoiceTags,
  Empty,
  Fold,
  Ledger,
  MarginNote,
  NextAction,
  NumberRow,
  Passage,
  Reasons,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { whenText } from '../people/when-text.ts'
import { dayText } from './day-text.ts'
import { RecallRecord } from './recall-record.tsx'

const BYS = ['gauge', 'canner', 'load', 'batch', 'alkali-lot', 'corn-lot'] as const
/** More names than these stand in a fold. */
const MOST_NAMES = 40

export function RecallSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const load = new URLSearchParams(useSearch()).get('load')
  const [by, setBy] = useHalfTyped<RecallOrigin['by']>('recall:by', 'gauge')
  const shownBy = load === null ? by : 'load'
  const choices = useMemo(() => recallChoices(facts, shownBy), [facts, shownBy])
  const [chosen, setChosen] = useHalfTyped<string | null>('recall:chosen', null)
  const wanted = load === null ? chosen : keyOf({ origin: { by: 'load', loadCode: load }, name: load })
  const choice = choices.find((each) => keyOf(each) === wanted) ?? null
  const hasFood = Object.keys(facts.foodLots).length + Object.keys(facts.runs).length > 0
  return (
    <Sheet title={say('pantry:recall-title')} drawing="flag" lead={say('pantry:recall-lead')}>
      {!hasFood ? (
        <Passage>
          <Empty drawing="flag" action={<NextAction href="/pantry">{say('pantry:back')}</NextAction>}>
            <p>{say('pantry:recall-no-food')}</p>
          </Empty>
        </Passage>
      ) : (
        <Passage title={say('pantry:recall-doubt')}>
          {load === null ? (
            <ChoiceTags
              legend={say('pantry:recall-by')}
              options={BYS.map((value) => ({ value, label: say(`pantry:recall-by-${value}`) }))}
              value={by}
              onValue={(next) => {
                setBy(next)
                setChosen(null)
              }}
            />
          ) : (
            <ButtonRow>
              <SideAction href="/pantry/recall">{say('pantry:recall-from-other')}</SideAction>
            </ButtonRow>
          )}
          {choices.length === 0 ? (
            <p>{say('pantry:recall-none-such')}</p>
          ) : load === null ? (
            <Names choices={choices} chosen={wanted} onChosen={setChosen} />
          ) : null}
          {load !== null && !choice && <p role="alert">{say('pantry:recall-unknown-code', { code: load })}</p>}
        </Passage>
      )}
      {choice && <Reached key={keyOf(choice)} choice={choice} />}
      <Earlier />
    </Sheet>
  )
}

function Names({
  choices,
  chosen,
  onChosen,
}: {
  readonly choices: readonly RecallChoice[]
  readonly chosen: string | null
  readonly onChosen: (key: string) => void
}) {
  const { say } = useWords()
  const tags = (some: readonly RecallChoice[], legend: string) => (
    <ChoiceTags
      legend={legend}
      options={some.map((each) => ({
        value: keyOf(each),
        label:
          each.origin.by === 'gauge' ? say(`pantry:recall-name-${each.origin.gauge}`, { name: each.name }) : each.name,
      }))}
      value={chosen}
      onValue={onChosen}
    />
  )
  return (
    <>
      {tags(choices.slice(0, MOST_NAMES), say('pantry:recall-which'))}
      {choices.length > MOST_NAMES && (
        <Fold title={say('pantry:recall-more-names', { count: choices.length - MOST_NAMES })}>
          {tags(choices.slice(MOST_NAMES), say('pantry:recall-which-earlier'))}
        </Fold>
      )}
    </>
  )
}

function Reached({ choice }: { readonly choice: RecallChoice }) {
  const { facts } = useBook()
  const { say } = useWords()
  const tests = choice.origin.by === 'gauge' ? (facts.canners[choice.origin.cannerId]?.gaugeTests ?? []) : []
  const [since, setSince] = useHalfTyped(`recall:since:${keyOf(choice)}`, '')
  const origin = useMemo<RecallOrigin>(
    () => (choice.origin.by === 'gauge' && since !== '' ? { ...choice.origin, sinceInstant: since } : choice.origin),
    [choice, since],
  )
  const found = useMemo(() => recall(facts, origin), [facts, origin])
  const address = paperAddress(choice.origin)
  const values = recallValues(found)
  const nameOf = ({ id }: Reckoned) => say(`pantry:value-${id}` as MessageKey)
  return (
    <>
      <Passage title={say('pantry:recall-reached')} margin={<MarginNote>{say('pantry:recall-margin')}</MarginNote>}>
        {choice.origin.by === 'gauge' && choice.origin.gauge === 'dial' && tests.length > 0 && (
          <ChoiceTags
            legend={say('pantry:recall-since')}
            hint={say('pantry:recall-since-hint')}
            options={[
              { value: '', label: say('pantry:recall-since-ever') },
              ...tests.map(({ testedOn, at }) => ({
                value: at.instant,
                label: say('pantry:recall-since-test', { day: dayText(testedOn) }),
              })),
            ]}
            value={since}
            onValue={setSince}
          />
        )}
        <div aria-live="polite" className="passage-body">
          <NumberRow>
            {values.slice(0, 2).map((value) => (
              <BigNumber key={value.id} label={nameOf(value)} reckoned={value} bare />
            ))}
          </NumberRow>
          <dl className="facts">
            {values.slice(2).map((value) => (
              <div key={value.id} style={{ display: 'contents' }}>
                <dt>{nameOf(value)}</dt>
                <dd>{formatReckoned(value)}</dd>
              </div>
            ))}
          </dl>
          <Reasons sentences={found.notes} />
        </div>
        {found.lots.length > 0 && <WhereTheyAre found={found} />}
        {found.households.length > 0 && (
          <p>{say('pantry:recall-whose', { households: found.households.join(', ') })}</p>
        )}
      </Passage>
      {found.lots.length > 0 && (
        <Passage title={say('pantry:recall-do')}>
          {cautionsFor('tasting').map((caution) => (
            <Caution key={caution.key} sentence={caution} />
          ))}
          <Reasons sentences={suspectJarSteps('sealed')} title={say('pantry:recall-do-sealed')} />
          <Reasons sentences={suspectJarSteps('open').slice(1)} title={say('pantry:recall-do-open')} />
          <ButtonRow>
            <SideAction href={`/paper/recall-notice/${address}`}>{say('pantry:recall-notice')}</SideAction>
            <SideAction href={`/paper/call-list/${address}`}>{say('pantry:recall-call-list')}</SideAction>
          </ButtonRow>
          <RecallRecord found={found} about={choice.name} />
        </Passage>
      )}
    </>
  )
}

/** One row for each lot, with every place a jar of it may be. */
function WhereTheyAre({ found: { lots } }: { readonly found: Pick<Recall, 'lots'> }) {
  const { say } = useWords()
  return (
    <Ledger
      caption={say('pantry:recall-where')}
      head={[say('pantry:recall-code'), say('pantry:recall-what'), say('pantry:recall-where-now')]}
      rows={lots.map((lot) => ({
        key: lot.lotId ?? `${lot.loadCode} untold`,
        cells: [
          lot.loadCode,
          `${lot.putUpCount} ${say(`pantry:held-${lot.form === 'jar' ? (lot.jarSize ?? 'quart') : lot.form}`, { count: lot.putUpCount })}`,
          [
            lot.onShelfCount > 0 &&
              say('pantry:recall-at', {
                count: lot.onShelfCount,
                place: [lot.household, lot.place].filter(Boolean).join(', ') || say('pantry:recall-no-place'),
              }),
            ...lot.given.map(({ toWhom, count }) =>
              say('pantry:recall-with', { count, toWhom: toWhom ?? say('pantry:recall-somebody') }),
            ),
            lot.eatenCount > 0 && say('pantry:recall-eaten', { count: lot.eatenCount }),
            lot.discardedCount > 0 && say('pantry:recall-discarded', { count: lot.discardedCount }),
            lot.usedInBatchCount > 0 && say('pantry:recall-made-into', { count: lot.usedInBatchCount }),
            lot.untoldCount > 0 && say('pantry:recall-told-nowhere', { count: lot.untoldCount }),
          ]
            .filter(Boolean)
            .join(' '),
        ],
      }))}
    />
  )
}

function Earlier() {
  const { facts } = useBook()
  const { say } = useWords()
  const told = Object.values(facts.recalls).sort((a, b) => (a.at.instant > b.at.instant ? -1 : 1))
  return (
    <Passage title={say('pantry:recall-earlier')}>
      {told.length === 0 ? (
        <p>{say('pantry:recall-earlier-none')}</p>
      ) : (
        <ul className="reasons">
          {told.map(({ recallId, drill, about, jarsCount, toldHouseholds = [], tookMin, at }) => (
            <li key={recallId}>
              {[
                say(drill ? 'pantry:recall-told-drill' : 'pantry:recall-told', {
                  when: whenText(at.instant),
                  about,
                  count: jarsCount,
                }),
                tookMin !== undefined && say('pantry:recall-took', { minutes: Math.round(tookMin * 10) / 10 }),
                toldHouseholds.length > 0 && say('pantry:recall-told-to', { households: toldHouseholds.join(', ') }),
              ]
                .filter(Boolean)
                .join(' ')}
            </li>
          ))}
        </ul>
      )}
      <ButtonRow>
        <SideAction href="/pantry/recall/drill">{say('pantry:to-drill')}</SideAction>
        <SideAction href="/pantry">{say('pantry:back')}</SideAction>
      </ButtonRow>
    </Passage>
  )
}

function keyOf({ origin }: RecallChoice): string {
  return Object.values(origin).join(' ')
}

/** As the paper's own address names an origin. */
function paperAddress(origin: RecallOrigin): string {
  switch (origin.by) {
    case 'load':
      return `load/${encodeURIComponent(origin.loadCode)}`
    case 'canner':
      return `canner/${origin.cannerId}`
    case 'gauge':
      return `${origin.gauge}/${origin.cannerId}`
    case 'batch':
      return `batch/${origin.batchId}`
    case 'alkali-lot':
      return `alkali-lot/${origin.alkaliLotId}`
    case 'corn-lot':
      return `corn-lot/${origin.lotId}`
  }
}
