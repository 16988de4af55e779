/** Reserve: how much of a seed lot's corn stays back, three ways of counting, and whether it is put by. Props: choice (which lot). */
import type { SeedLotFact } from '@crib/journal'
import {
  isSameCorn,
  nextSowingOn,
  PLANTINGS_COUNT,
  type ReserveFromBook,
  type ReserveLine,
  type ReservePlan,
  type ReservePlanInput,
  reserveFromBook,
  reservePlan,
  reserveStanding,
} from '@crib/planning'
import { convert, type Quantity, type Reckoned } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { useMemo, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ChoiceTags,
  CountField,
  FlagTag,
  Ledger,
  NumberRow,
  QuantityField,
  Reasons,
  Refusal,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

const LINES: readonly ReserveLine[] = ['on-average', 'as-tested', 'whole-range']
const CONFIDENCES = ['80', '90', '95', '99'] as const
const SHELLED_LIMIT = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const

interface Wish {
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

const FRESH: Wish = {
  ...{
    plants: 240,
    plantings: PLANTINGS_COUNT,
    reason: '',
    surviveOf100: 80,
    assumedPercent: 0,
    testKernels: 50,
    giftKernels: 0,
  },
  ...{ kernelsPerOz: 0, parentEars: 0, confidence: '95', line: 'as-tested', shelledText: '' },
}

export function Reserve({ choice, today }: { readonly choice: LotChoice; readonly today: string }) {
  const { say } = useWords()
  const { lot } = choice
  const test = lot?.tests.at(-1)
  if (!lot) return null
  return (
    <>
      <WhichLot {...choice} />
      {test ? (
        <ReserveOf key={lot.seedLotId} lot={lot} today={today} />
      ) : (
        <p>{say('seed:screen-reserve-needs-test')}</p>
      )}
    </>
  )
}

function ReserveOf({ lot, today }: { readonly lot: SeedLotFact; readonly today: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const known = useMemo(() => reserveFromBook(lot, facts, nextSowingOn(today)), [lot, facts, today])
  const [kept, setWish] = useHalfTyped<Wish>(`reserve:${lot.seedLotId}`, {
    ...FRESH,
    kernelsPerOz: Math.round(lot.kernelsPerOz ?? 0),
    parentEars: lot.parentEarsCount ?? 0,
  })
  // What an earlier version kept half typed has fewer fields.
  const wish = { ...FRESH, ...kept }
  const [shelled, setShelled] = useState<Quantity | null>(null)
  const years = known?.input.fieldYears ?? []
  const change = (part: Partial<Wish>) => setWish({ ...wish, ...part })
  return (
    <>
      <CountField
        label={say('seed:screen-plants')}
        value={wish.plants}
        onValue={(plants) => change({ plants })}
        max={20_000}
      />
      <CountField
        label={say('seed:screen-plantings')}
        hint={say('seed:screen-plantings-hint')}
        value={wish.plantings}
        onValue={(plantings) => change({ plantings })}
        max={10}
      />
      {wish.plantings < PLANTINGS_COUNT && (
        <TextField
          label={say('seed:screen-plantings-reason')}
          value={wish.reason}
          onValue={(reason) => change({ reason })}
          error={wish.reason.trim() === '' ? say('seed:screen-reason-needed') : null}
        />
      )}
      {years.length > 0 ? (
        <div>
          <p>{say('seed:screen-own-years', { count: years.length })}</p>
          <ul className="reasons">
            {years.map(({ year, sproutsCount, grownCount }) => (
              <li key={year}>
                {say('seed:screen-own-year', { year: String(year), grown: grownCount, sprouts: sproutsCount })}
              </li>
            ))}
          </ul>
        </div>
      ) : (
        <CountField
          label={say('seed:screen-survive')}
          hint={say('seed:screen-survive-hint')}
          value={wish.surviveOf100}
          onValue={(surviveOf100) => change({ surviveOf100 })}
          max={100}
        />
      )}
      {known?.isAged && wish.assumedPercent === 0 && <p>{say('seed:screen-aged')}</p>}
      <FlagTag
        label={say('seed:screen-assume')}
        value={wish.assumedPercent > 0}
        onValue={(isAssumed) => change({ assumedPercent: isAssumed ? 85 : 0 })}
      />
      {wish.assumedPercent > 0 && (
        <CountField
          label={say('seed:screen-assumed')}
          value={wish.assumedPercent}
          onValue={(assumedPercent) => change({ assumedPercent })}
          min={1}
          max={100}
        />
      )}
      <CountField
        label={say('seed:screen-tests')}
        value={wish.testKernels}
        onValue={(testKernels) => change({ testKernels })}
        max={10_000}
      />
      <CountField
        label={say('seed:screen-gifts')}
        value={wish.giftKernels}
        onValue={(giftKernels) => change({ giftKernels })}
        max={1_000_000}
      />
      <CountField
        label={say('seed:screen-per-oz')}
        value={wish.kernelsPerOz}
        onValue={(kernelsPerOz) => change({ kernelsPerOz })}
        max={500}
      />
      <CountField
        label={say('seed:screen-parents')}
        value={wish.parentEars}
        onValue={(parentEars) => change({ parentEars })}
        max={1_000_000}
      />
      <QuantityField
        label={say('seed:screen-shelled')}
        hint={say('seed:screen-shelled-hint')}
        measures="mass"
        bareNumberUnit="Lb"
        text={wish.shelledText}
        onText={(shelledText) => change({ shelledText })}
        onQuantity={setShelled}
        limits={SHELLED_LIMIT}
      />
      <ChoiceTags
        legend={say('seed:screen-confidence')}
        options={CONFIDENCES.map((value) => ({ value, label: value }))}
        value={wish.confidence}
        onValue={(confidence) => change({ confidence })}
      />
      <ChoiceTags
        legend={say('seed:screen-line')}
        options={LINES.map((value) => ({
          value,
          label: say(`seed:screen-line-${value}`),
          note: say(`seed:screen-line-${value}-note`),
        }))}
        value={wish.line}
        onValue={(line) => change({ line })}
      />
      <div aria-live="polite" className="passage-body" id="reserve">
        {known && <Planned {...{ lot, wish, shelled, known }} />}
      </div>
    </>
  )
}

interface PlannedProps {
  readonly lot: SeedLotFact
  readonly known: ReserveFromBook
  readonly wish: Wish
  readonly shelled: Quantity | null
}

function Planned({ lot, known, wish, shelled }: PlannedProps) {
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
