/** Does a slider on the sheets of seed and field reckon anew before it is felt to lag: where to keep seed, a reserve, a plan? */
import {
  degreeDayPlan,
  type FieldPlanInput,
  fieldPlan,
  type IsolationInput,
  isolation,
  type ReservePlanInput,
  reservePlan,
  type SeedWhatIfInput,
  seedWhatIf,
} from '@crib/planning'
import { KETTLEBROOK_FIELD } from '../packages/planning/testing/kettlebrook-field.ts'
import type { BenchQuestion, Measured } from './question.ts'
import { medianCallMs } from './question.ts'

const LIMIT_MS = 50

/** Scenario S1 (invented), over the whole range of its test and aged in the store: the most a reserve can ask. */
const reserve = (plantsAimCount: number): ReservePlanInput => ({
  plantsAimCount,
  plantingsCount: 2,
  sproutedCount: 46,
  testedCount: 50,
  maturityFraction: 0.8,
  testKernelsCount: 50,
  giftKernelsCount: 200,
  kernelsPerOz: 110,
  parentEarsCount: 60,
  line: 'whole-range',
  wetFraction: 0.11,
  temperatureC: 12,
  daysToFirst: 40,
})
const whatIf = (wetFraction: number): SeedWhatIfInput => ({
  sproutedCount: 46,
  testedCount: 50,
  ways: [10, 20, -18].map((temperatureC) => ({ name: String(temperatureC), wetFraction, temperatureC })),
})
const field = (foodLb: number): FieldPlanInput => ({ ...KETTLEBROOK_FIELD, foodLb })
const neighbours = (distanceM: number): IsolationInput => ({
  neighbours: Array.from({ length: 10 }, (_, more) => ({
    name: `field ${more + 1}`,
    distanceM: distanceM + 10 * more,
  })),
  plotLengthM: 15,
  plotWidthM: 12,
})

/** A year of like days: invented. */
const YEAR = Array.from({ length: 365 }, (_, day) => ({ day, highC: 30.6, lowC: 17.2 }))
const degreeDays = (ownToSilkC: number) =>
  ({ days: YEAR, missingDays: 0, plantedDay: 0, ownToSilkC, ownToRipeC: 1300, group: 'early' }) as const

let turn = 0
/** Another number each time, as a slider gives: nothing can be kept from the last. */
const next = (from: number, step: number) => from + step * (turn++ % 20)

function measured(what: string, call: () => unknown, asked: unknown): Measured {
  const value = medianCallMs(call, { warmUpCount: 5, samplesCount: 41 })
  const reference = medianCallMs(() => JSON.parse(JSON.stringify(asked)))
  return {
    what: `${what}, median`,
    value,
    unit: 'ms',
    limit: LIMIT_MS,
    reference: { what: 'what is asked through JSON and back', value: reference },
  }
}

export const seedWhatIfSlider: BenchQuestion = {
  asks: 'How long does a slider of the seed and field sheets take to reckon anew?',
  answer: async () => [
    measured('cellar, cupboard and freezer', () => seedWhatIf(whatIf(next(0.08, 0.002))), whatIf(0.12)),
    measured('reserve of S1, three ways, aged', () => reservePlan(reserve(next(240, 1))), reserve(240)),
    measured('field plan for food', () => fieldPlan(field(next(20, 1))), field(20)),
    measured('degree-days of a year', () => degreeDayPlan(degreeDays(next(600, 1))), degreeDays(600)),
    measured('crossing band of ten neighbours', () => isolation(neighbours(next(40, 1))), neighbours(40)),
  ],
}
