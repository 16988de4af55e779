/** Beginning a run: which canner, what is in it, and the number its keeper settles on, never below the table's. */
import { minimumLoad } from '@crib/guidance'
import type { CannerFact } from '@crib/journal'
import {
  type BatchPlan,
  type CannerCard,
  type CardOutcome,
  cardOfCanner,
  confirmHold,
  dayOfInstant,
  type GaugeCard,
  type HullingAlkali,
  isStandingRead,
  type JarSize,
  planOfBatch,
  publishedRunRules,
  runBegunBody,
  seasonYearOf,
} from '@crib/planning'
import { formatQuantity, formatReckoned } from '@crib/wording'
import { useState } from 'react'
import { useLocation, useSearch } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { deviceZone } from '../../book/keeper.ts'
import {
  BigNumber,
  Caution,
  ChoiceTags,
  CountField,
  Empty,
  FieldError,
  Fold,
  MarginNote,
  NextAction,
  NumberRow,
  Passage,
  Reasons,
  Refusal,
  Sheet,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { Say, useWords } from '../../words.tsx'
import '../../walk/walk.css'
import { StandingRead } from './standing-read.tsx'
import { type TypedLine, TypedLog } from './typed-log.tsx'

const SIZES = ['half-pint', 'pint', 'quart'] as const satisfies readonly JarSize[]
const ALKALIS = [
  'ash',
  'calcium-hydroxide',
  'sodium-hydroxide',
  'baking-soda',
] as const satisfies readonly HullingAlkali[]

export default function RunBegin() {
  const { facts } = useBook()
  const { say } = useWords()
  const canners = Object.values(facts.canners)
  const batchId = new URLSearchParams(useSearch()).get('batch')
  const batch = batchId === null ? undefined : facts.batches[batchId]
  if (canners.length === 0) {
    return (
      <Sheet title={say('canner:run-screen-begin-title')} drawing="canner">
        <Passage>
          <Empty
            drawing="canner"
            action={<NextAction href="/canner">{say('canner:run-screen-to-canners')}</NextAction>}
          >
            <p>{say('canner:run-screen-no-canner')}</p>
          </Empty>
        </Passage>
      </Sheet>
    )
  }
  const outcome = batch ? planOfBatch(batch) : null
  const plan = outcome?.kind === 'planned' ? outcome : null
  return <BeginSheet canners={canners} plan={plan} {...(batch && { batchId: batch.batchId })} />
}

function BeginSheet({
  canners,
  plan,
  batchId,
}: {
  readonly canners: readonly CannerFact[]
  readonly plan: BatchPlan | null
  readonly batchId?: string
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const [cannerId, setCannerId] = useState(canners.length === 1 ? canners[0]!.cannerId : null)
  const [jarSize, setJarSize] = useState<JarSize>(plan?.jars?.jarSize ?? 'pint')
  const [typedCount, setCount] = useState<number | null>(null)
  const [alkali, setAlkali] = useState<HullingAlkali>(plan?.input.alkali ?? 'ash')
  const [hotPack, setHotPack] = useState<'yes' | 'no' | null>(plan?.kettle.stages.at(-1)?.isHotPack ? 'yes' : null)
  const canner = canners.find((each) => each.cannerId === cannerId)
  const capacity = canner ? (jarSize === 'quart' ? canner.capacityQuarts : canner.capacityPints) : 0
  const jarCount = typedCount ?? (canner ? (plannedCount(plan, canner.name, facts, batchId) ?? capacity) : 0)
  const today = dayOfInstant(Date.now(), deviceZone())
  const seasonYear = seasonYearOf(facts, today)
  const outcome =
    canner && hotPack !== null
      ? cardOfCanner(canner, facts.kitchen, {
          today,
          jarSize,
          alkali,
          isHotPack: hotPack === 'yes',
          isStandingRead: isStandingRead(facts, alkali, seasonYear),
        })
      : undefined
  return (
    <Sheet title={say('canner:run-screen-begin-title')} drawing="canner" lead={say('canner:run-screen-begin-lead')}>
      {canners.length > 1 && (
        <Passage>
          <ChoiceTags
            legend={say('canner:run-screen-which-canner')}
            options={canners.map(({ cannerId: value, name }) => ({ value, label: name }))}
            value={cannerId}
            onValue={setCannerId}
          />
        </Passage>
      )}
      {canner && (
        <Passage title={canner.name}>
          <ChoiceTags
            legend={say('canner:run-screen-jar-size')}
            options={SIZES.map((value) => ({ value, label: say(`canner:run-screen-${value}`) }))}
            value={jarSize}
            onValue={setJarSize}
          />
          <CountField
            label={say('canner:run-screen-jar-count')}
            hint={<Say sentence={minimumLoad(jarSize === 'quart' ? 'quart' : 'pint').say} />}
            value={jarCount}
            onValue={setCount}
            min={1}
            max={200}
          />
          {jarCount > capacity && <p role="status">{say('canner:run-screen-over-capacity', { count: capacity })}</p>}
          {!plan && (
            <ChoiceTags
              legend={say('canner:run-screen-alkali')}
              options={ALKALIS.map((value) => ({ value, label: say(`shell:alkali-${value}`) }))}
              value={alkali}
              onValue={setAlkali}
            />
          )}
          <ChoiceTags
            legend={say('canner:run-screen-hot-pack')}
            options={(['yes', 'no'] as const).map((value) => ({ value, label: say(`canner:run-screen-hot-${value}`) }))}
            value={hotPack}
            onValue={setHotPack}
          />
        </Passage>
      )}
      {outcome === null && (
        <Passage title={say('canner:run-screen-number-title')}>
          <p>{say('canner:run-screen-no-elevation')}</p>
          <NextAction href="/house">{say('canner:run-screen-to-house')}</NextAction>
        </Passage>
      )}
      {canner && outcome && (
        <Numbered
          key={`${canner.cannerId}${jarSize}${alkali}${hotPack}`}
          {...{ canner, outcome, jarSize, jarCount, alkali, seasonYear, today }}
          {...(batchId !== undefined && { batchId })}
        />
      )}
    </Sheet>
  )
}

/** The next load planned for this canner that no run of the batch has taken yet. */
function plannedCount(
  plan: BatchPlan | null,
  cannerName: string,
  { runs }: ReturnType<typeof useBook>['facts'],
  batchId: string | undefined,
): number | undefined {
  const loads = plan?.jars?.rounds.flat().filter((load) => load.cannerName === cannerName) ?? []
  const doneCount = Object.values(runs).filter(
    ({ begun }) => begun.batchId !== undefined && begun.batchId === batchId && begun.cannerName === cannerName,
  ).length
  return loads[doneCount]?.jarCount
}

interface NumberedProps {
  readonly canner: CannerFact
  readonly outcome: CardOutcome
  readonly jarSize: JarSize
  readonly jarCount: number
  readonly alkali: HullingAlkali
  readonly seasonYear: number
  readonly today: string
  readonly batchId?: string
}

function Numbered({ outcome, ...props }: NumberedProps) {
  const { say } = useWords()
  if (outcome.kind === 'refused') {
    return (
      <Passage title={say('canner:run-screen-number-title')}>
        <Refusal
          title={say('canner:run-screen-refused')}
          why={[...outcome.why, ...outcome.forInformation]}
          askWhom={outcome.askWhom}
        />
      </Passage>
    )
  }
  const onlyUnread = outcome.withheld.some(({ key }) => key === 'canner:minutes-after-reading')
  if (!outcome.minutes && onlyUnread) {
    return <StandingRead card={outcome} alkali={props.alkali} seasonYear={props.seasonYear} />
  }
  if (!outcome.minutes) {
    return (
      <Passage title={say('canner:run-screen-number-title')}>
        <Refusal title={say('canner:run-screen-withheld')} why={[...outcome.withheld, ...outcome.standing]} />
      </Passage>
    )
  }
  return <Confirm card={outcome} {...props} />
}

function Confirm({
  card,
  canner,
  jarSize,
  jarCount,
  today,
  batchId,
}: Omit<NumberedProps, 'outcome'> & { readonly card: CannerCard }) {
  const { facts, newId, write } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [, go] = useLocation()
  const [gauge, setGauge] = useState(card.routes[0]?.gauge ?? 'dial')
  const [typed, setTyped] = useState('')
  const [when, setWhen] = useState<'now' | 'afterwards'>('now')
  const [busy, setBusy] = useState(false)
  const route = card.routes.find((each) => each.gauge === gauge) ?? card.routes[0]
  if (!route) return null
  const chosenPsi = typed.trim() === '' ? (route.holdAt?.value ?? Number.NaN) : Number(typed)
  const held = confirmHold(route, chosenPsi)
  const zone = deviceZone()
  const pressure = { value: held.ok ? chosenPsi : 0, unit: route.table.unit }
  const setup = {
    gauge: route.gauge,
    requiredReadingPsi: held.ok ? held.requiredReadingPsi : 1,
    processMin: card.minutes?.value ?? 1,
    rules: publishedRunRules(),
  }

  const begin = async (lines: readonly TypedLine[]) => {
    if (!held.ok || busy) return
    setBusy(true)
    const runId = newId()
    const atMs = lines.length === 0 ? Date.now() : Math.min(...lines.map((line) => line.atMs))
    const kept = await record.keep(
      'run-begun',
      runBegunBody(facts, {
        runId,
        ...(batchId !== undefined && { batchId }),
        canner,
        jarSize,
        jarCount,
        card,
        route,
        requiredReadingPsi: held.requiredReadingPsi,
        atMs,
        zone,
      }),
      { happenedAt: { instant: atMs, zone } },
    )
    if (kept) {
      for (const { atMs: instant, event } of lines) {
        await write('run-event', { runId, event }, { happenedAt: { instant, zone } })
      }
      go(`/run/${runId}`)
    }
    setBusy(false)
  }
  return (
    <>
      <Passage
        title={say('canner:run-screen-number-title')}
        margin={<MarginNote>{say('canner:run-screen-table', { table: formatReckoned(route.table) })}</MarginNote>}
      >
        {card.routes.length > 1 && (
          <ChoiceTags
            legend={say('canner:run-screen-gauge')}
            options={card.routes.map(({ gauge: value }) => ({ value, label: say(`shell:gauge-${value}`) }))}
            value={gauge}
            onValue={(value) => {
              setGauge(value)
              setTyped('')
            }}
          />
        )}
        <Route route={route} card={card} />
        <Fold title={say('canner:run-screen-other')} open={!route.usable}>
          <TextField
            label={say(gauge === 'dial' ? 'canner:run-screen-other-psi' : 'canner:run-screen-other-lb')}
            hint={say('canner:run-screen-other-hint')}
            value={typed}
            onValue={setTyped}
          />
        </Fold>
        {!held.ok && typed.trim() !== '' && (
          <div role="alert">
            {held.why.map((sentence) => (
              <FieldError key={sentence.key}>
                <Say sentence={sentence} />
              </FieldError>
            ))}
          </div>
        )}
        {held.ok && <Reasons sentences={held.notes} />}
        <Reasons sentences={card.standing} />
      </Passage>
      <Passage>
        <ChoiceTags
          legend={say('canner:run-screen-when')}
          options={(['now', 'afterwards'] as const).map((value) => ({
            value,
            label: say(`canner:run-screen-${value}`),
          }))}
          value={when}
          onValue={setWhen}
        />
        {when === 'now' && (
          <NextAction disabled={!held.ok || busy} onClick={() => void begin([])}>
            {say(gauge === 'dial' ? 'canner:run-screen-confirm-dial' : 'canner:run-screen-confirm-weight', {
              pressure: held.ok ? formatQuantity(pressure, 'alone') : formatReckoned(route.table, 'alone'),
            })}
          </NextAction>
        )}
        {when === 'afterwards' && held.ok && (
          <TypedLog held={{ setup, pressure }} zone={zone} today={today} onKeep={begin} />
        )}
        <Asked record={record} />
      </Passage>
    </>
  )
}

function Route({ route, card }: { readonly route: GaugeCard; readonly card: CannerCard }) {
  const { say } = useWords()
  return (
    <>
      {route.holdAt && (
        <BigNumber
          label={say(route.gauge === 'dial' ? 'canner:run-screen-hold' : 'canner:run-screen-use-weight')}
          reckoned={route.holdAt}
        />
      )}
      <Reasons sentences={[...route.reasons, ...card.reasons]} />
      <NumberRow>
        <BigNumber label={say('canner:run-screen-vent')} reckoned={card.vent} size="small" />
        {card.minutes && <BigNumber label={say('canner:run-screen-minutes')} reckoned={card.minutes} size="small" />}
      </NumberRow>
      {card.cautions.slice(0, 2).map((sentence) => (
        <Caution key={sentence.key} sentence={sentence} />
      ))}
    </>
  )
}
