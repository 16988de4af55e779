/** Beginning a run: which canner, what is in it, and the number its keeper settles on, never below the table's. */
import { minimumLoad } from '@crib/guidance'
import type { CannerFact } from '@crib/journal'
import {
  type BatchPlan,
  type CardOutcome,
  cardOfCanner,
  dayOfInstant,
  type HullingAlkali,
  isStandingRead,
  type JarSize,
  planOfBatch,
  seasonYearOf,
} from '@crib/planning'
import { useState } from 'react'
import { useSearch } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { deviceZone } from '../../book/keeper.ts'
import { ChoiceTags, CountField, Empty, NextAction, Passage, Refusal, Sheet } from '../../parts-of-the-sheet/index.ts'
import { Say, useWords } from '../../words.tsx'
import '../../walk/walk.css'
import { Confirm } from './run-confirm.tsx'
import { StandingRead } from './standing-read.tsx'

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
          canner={canner}
          outcome={outcome}
          jarSize={jarSize}
          jarCount={jarCount}
          alkali={alkali}
          seasonYear={seasonYear}
          today={today}
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
