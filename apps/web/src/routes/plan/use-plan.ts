/** The plan of the day as it stands, worked out anew whenever the book or an answer changes. */
import type { CornLotFact, Facts } from '@crib/journal'
import {
  type BatchOutcome,
  type BatchPlan,
  type BatchPlanInput,
  type BatchWish,
  batchInputFromFacts,
  batchPlan,
  type DayPlan,
  dayForPlan,
  type PlannedDay,
  seasonYearOf,
  sharesOfParts,
} from '@crib/planning'
import { type LiquidOrDry, parseQuantity, type Sentence } from '@crib/science'
import { useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import { localDay } from '../../local-day.ts'
import { clockMinutes } from '../../parts-of-the-sheet/index.ts'
import { usePreferences } from '../../preferences.tsx'
import { type Draft, useDraft } from './draft.tsx'

export interface PlanNow {
  readonly seasonYear: number
  readonly lot: CornLotFact | undefined
  /** Null while the amount, the seed line or the ends are not told. */
  readonly outcome: BatchOutcome | null
  readonly day: DayPlan | null
  readonly plannedDay: PlannedDay | null
  readonly remembered: readonly Sentence[]
  readonly title: string
}

export function usePlan(): PlanNow {
  const { facts } = useBook()
  const { draft } = useDraft()
  const { vagueQuart } = usePreferences()
  return useMemo(() => planNow(facts, draft, vagueQuart), [facts, draft, vagueQuart])
}

export function chosenLot({ cornLots }: Facts, { lotId }: Draft): CornLotFact | undefined {
  if (lotId !== null && cornLots[lotId]) return cornLots[lotId]
  const lots = Object.values(cornLots)
  return lots.length === 1 ? lots[0] : undefined
}

function planNow(facts: Facts, draft: Draft, vague: LiquidOrDry): PlanNow {
  const seasonYear = seasonYearOf(facts, localDay())
  const lot = chosenLot(facts, draft)
  const parsed = parseQuantity(draft.amountText, ['mass', 'volume'], { vague })
  const wish: BatchWish = {
    endings: sharesOfParts(draft.parts),
    ...(lot && { cornLotId: lot.lotId }),
    ...(draft.jarsWanted !== null
      ? { jarsWantedCount: draft.jarsWanted }
      : parsed.ok && { amount: { ...parsed.quantity, ...(parsed.assumed && { assumed: parsed.assumed }) } }),
    ...picked(draft.assumed, [
      'alkali',
      'alkaliLotId',
      'fill',
      'hull',
      'jarSize',
      'cannerIds',
      'wantsSalt',
      'spareLidFraction',
      'sortedOutDryFraction',
      'sortedOutWetFraction',
    ]),
  }
  const title = lot
    ? `${lot.name}, ${draft.jarsWanted === null ? draft.amountText.trim() || lot.asTyped : `× ${draft.jarsWanted}`}`
    : ''
  const clockMin = clockMinutes(draft.clock)
  const plannedDay: PlannedDay | null =
    clockMin === null
      ? null
      : {
          date: draft.date,
          clock: { from: draft.clockFrom, clockMin },
          // Without loads there is nothing at the canners to count.
          ...(draft.counts === 'canners' && (draft.parts.jars ?? 0) > 0 && { counts: draft.counts }),
          peopleCount: draft.peopleCount,
          dayCount: draft.dayCount,
        }
  const nothing = { seasonYear, lot, outcome: null, day: null, plannedDay, remembered: [], title }
  if (!lot || (draft.amountText.trim() !== '' && !parsed.ok)) return nothing
  const ready = batchInputFromFacts(facts, wish, seasonYear)
  if (ready.kind === 'asks') return nothing
  const outcome = batchPlan(withAssumed(ready.input, draft))
  const day =
    outcome.kind === 'planned' && plannedDay && hasWork(outcome, plannedDay) ? dayForPlan(outcome, plannedDay) : null
  return { ...nothing, outcome, day, remembered: ready.remembered }
}

/** Whether the clock has anything to lay out: pot-loads, or loads where the canners alone are counted. */
export function hasWork({ kettle, jars }: BatchPlan, { counts }: Pick<PlannedDay, 'counts'>): boolean {
  return counts === 'canners' ? (jars?.rounds.length ?? 0) > 0 : kettle.potLoads.length > 0
}

/** What was changed on the sheet stands over what is remembered. */
function withAssumed(input: BatchPlanInput, { assumed }: Draft): BatchPlanInput {
  const { cupsPerLiquidQt, potNames, stages } = assumed
  const { stages: remembered, ...withoutStages } = input
  const standing = stages === undefined ? remembered : stages
  return {
    ...withoutStages,
    ...(standing && { stages: standing }),
    ...picked(assumed, ['waterToCornRatio', 'hominyPerDryVolume', 'washPattern']),
    ...(cupsPerLiquidQt !== undefined && {
      alkaliLot: { name: '', ...input.alkaliLot, cupsPerLiquidQt },
    }),
    ...(potNames && { pots: input.pots.filter(({ name }) => potNames.includes(name)) }),
  }
}

function picked<T extends object, K extends keyof T>(
  from: T,
  keys: readonly K[],
): { [Key in K]?: Exclude<T[Key], undefined> } {
  return Object.fromEntries(keys.filter((key) => from[key] !== undefined).map((key) => [key, from[key]])) as never
}
