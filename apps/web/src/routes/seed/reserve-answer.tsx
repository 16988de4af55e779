/** What a wished reserve comes to: kernels three ways of counting, the weight, what may be eaten, and whether it is put by. */
import type { SeedLotFact } from '@crib/journal'
import {
  isSameCorn,
  PLANTINGS_COUNT,
  type ReserveFromBook,
  type ReserveLine,
  type ReservePlan,
  type ReservePlanInput,
  reservePlan,
  reserveStanding,
} from '@crib/planning'
import { convert, type Quantity, type Reckoned } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { BigNumber, Ledger, NumberRow, Reasons, Refusal } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export const LINES: readonly ReserveLine[] = ['on-average', 'as-tested', 'whole-range']
export const CONFIDENCES = ['80', '90', '95', '99'] as const

export interface Wish {
  readonly plants: number
  readonly plantings: number
  readonly reason: string
  readonly surviveOf100: number
  /** 0: none assumed. [%] */
  readonly assumedPercent: number
  readonly testKernels: number
  readonly giftKernels: number
  /** 0: as the lot has it, and not known where it has none. */
  readonly kernelsPerOz: number
  readonly parentEars: number
  readonly confidence: (typeof CONFIDENCES)[number]
  readonly line: ReserveLine
  readonly shelledText: string
}

export const FRESH: Wish = {
  plants: 240,
  plantings: PLANTINGS_COUNT,
  reason: '',
  surviveOf100: 80,
  assumedPercent: 0,
  testKernels: 50,
  giftKernels: 0,
  kernelsPerOz: 0,
  parentEars: 0,
  confidence: '95',
  line: 'as-tested',
  shelledText: '',
}

interface PlannedProps {
  readonly lot: SeedLotFact
  readonly known: ReserveFromBook
  readonly wish: Wish
  readonly shelled: Quantity | null
}

export function Planned({ lot, known, wish, shelled }: PlannedProps) {
  const { say } = useWords()
  const { plants, surviveOf100, kernelsPerOz, parentEars } = wish
  if (plants === 0 || wish.plantings === 0 || surviveOf100 === 0 || parentEars === 0 || kernelsPerOz === 0) {
    return <p>{say('seed:screen-reserve-needs')}</p>
  }
  const input: ReservePlanInput = {
    ...(shelled && { shelledLb: convert(shelled.value, shelled.unit, 'Lb') }),
    plantsAimCount: plants,
    plantingsCount: wish.plantings,
    ...(wish.plantings < PLANTINGS_COUNT && wish.reason.trim() !== '' && { reason: wish.reason.trim() }),
    ...known.input,
    ...(wish.assumedPercent > 0 &&
      wish.plantings >= PLANTINGS_COUNT && {
        assumed: [{ planting: PLANTINGS_COUNT, germinationFraction: wish.assumedPercent / 100 }],
      }),
    maturityFraction: surviveOf100 / 100,
    testKernelsCount: wish.testKernels,
    giftKernelsCount: wish.giftKernels,
    kernelsPerOz,
    parentEarsCount: parentEars,
    confidenceFraction: Number(wish.confidence) / 100,
    line: wish.line,
  }
  const plan = reservePlan(input)
  if (plan.kind === 'refused') return <Refusal title={say('seed:screen-reserve')} why={plan.why} />
  return <PlanNumbers plan={plan} lot={lot} />
}

function PlanNumbers({
  plan,
  lot,
}: {
  readonly plan: Extract<ReservePlan, { kind: 'planned' }>
  readonly lot: SeedLotFact
}) {
  const { say } = useWords()
  const value = (id: string): Reckoned | undefined => plan.values.find((one) => one.id === id)
  const number = (id: string) => {
    const found = value(id)
    return { number: found ? formatReckoned(found) : '' }
  }
  const three = (of: string) => ['onAverage', 'asTested', 'wholeRange'].map((line) => number(`${line}${of}`))
  const stamped = [
    ['reserveKernels', say('seed:screen-stays')],
    ['reserveOz', say('seed:screen-stays-weight')],
    ['kernelsPerEar', say('seed:screen-each-ear')],
    ['equalShareKernels', say('seed:screen-share-kernels')],
    ['foodLb', say('seed:screen-food')],
    ['foodIfExactlyReserveLb', say('seed:screen-food-exactly')],
  ] as const
  return (
    <>
      <Ledger
        caption={say('seed:screen-table')}
        head={[say('seed:screen-column-for'), ...LINES.map((line) => say(`seed:screen-line-${line}`))]}
        rows={[
          ...plan.plantings.map(({ planting }) => ({
            key: String(planting),
            cells: [say('seed:screen-row-planting', { number: planting }), ...three(`Kernels:${planting}`)],
          })),
          ...(['test', 'gift'] as const).map((which) => ({
            key: which,
            cells: [say(`seed:screen-row-${which}s`), ...LINES.map(() => number(`${which}Kernels`))],
          })),
          { key: 'together', cells: [say('seed:screen-row-together'), ...three('TotalKernels')] },
        ]}
      />
      <NumberRow>
        {stamped.map(([id, label]) => {
          const reckoned = value(id)
          return reckoned && <BigNumber key={id} label={label} reckoned={reckoned} size="small" />
        })}
      </NumberRow>
      <Reasons sentences={[...plan.reasons, ...plan.warnings]} />
      <Standing lot={lot} neededKernels={plan.reserveKernels} />
    </>
  )
}

/** Lots of one name are one reserve, in as many tins as it has. */
function Standing({ lot, neededKernels }: { readonly lot: SeedLotFact; readonly neededKernels: number }) {
  const { facts } = useBook()
  const { say } = useWords()
  const lots = Object.values(facts.seedLots).filter(({ name }) => isSameCorn(name, lot.name))
  const standing = reserveStanding(lots, neededKernels)
  return (
    <div>
      <h3>{say('seed:screen-standing')}</h3>
      {!standing.isMet && <p>{say('seed:screen-not-food-yet')}</p>}
      <Reasons
        sentences={[
          // What heads the reasons of the plan is not said again.
          ...standing.sentences.filter(({ key }) => key !== 'seed:first'),
          ...standing.warnings.filter(({ key }) => key !== 'seed:two-places'),
        ]}
      />
    </div>
  )
}
