/**
 * A year on one sheet: the corn by weight, what it became, the canner loads, the seed. Made from the facts it is handed:
 * for other eyes than the keeper's those are the facts opened so far (`factsOpenedTo`), and totals are of these alone.
 */
import type { Facts, FoodLotFact } from '@crib/journal'
import type { Reckoned, Sentence } from '@crib/science'
import { germinationOfTest } from '../seed/germination.ts'
import { seedLotView } from '../seed/seed-lot-view.ts'
import { yearOf } from '../shared/day-of.ts'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { balanceOfYear, becameInYear, type Strand } from './balance-of-year.ts'

export interface PutUpOfYear {
  readonly form: FoodLotFact['form']
  /** `Count`, as are all of them: put up = gone + left. */
  readonly putUp: Reckoned
  readonly gone: Reckoned
  readonly left: Reckoned
}

export interface LoadOfYear {
  readonly code: string
  readonly canner: string
  /** `Count`. */
  readonly jars: Reckoned
  /** `Min`: the minutes it was to be held. */
  readonly processMin: Reckoned
  readonly departed: boolean
}

export interface SeedOfYear {
  readonly name: string
  readonly seasonYear: number
  /** `Count`; absent where kernels were never counted. */
  readonly kernelsLeft?: Reckoned
  /** Of the newest test, with its range. */
  readonly germination?: Reckoned
  /** YYYY-MM-DD */
  readonly testAgainBy?: string
}

export interface YearSummary {
  readonly year: number
  /** Names of the corn brought in. */
  readonly cornNames: readonly string[]
  /** Null where nothing was weighed in. */
  readonly broughtInKg: number | null
  /** Parts of what was brought in; they add up to it. */
  readonly strands: readonly Strand[]
  /** Said where weights cannot tell all. */
  readonly notes: readonly Sentence[]
  readonly putUp: readonly PutUpOfYear[]
  readonly loads: readonly LoadOfYear[]
  readonly seed: readonly SeedOfYear[]
}

/** `today` as YYYY-MM-DD: until when the seed is to be tested again is told from it. */
export function yearSummary(facts: Facts, year: number, today: string): YearSummary {
  const balance = balanceOfYear(facts, year)
  const lots = Object.values(facts.cornLots).filter((lot) => yearOf(lot) === year)
  return {
    year,
    cornNames: [...new Set(lots.map(({ name }) => name))],
    broughtInKg: balance.broughtInKg > 0 ? balance.broughtInKg : null,
    strands: balance.strands,
    notes: [
      ...(balance.unweighed.length > 0 ? [say('paper:year-unweighed', { count: balance.unweighed.length })] : []),
      ...(balance.overdrawnKg > 0
        ? [say('paper:year-overdrawn', { weight: { value: balance.overdrawnKg, unit: 'Kg' } })]
        : []),
    ],
    putUp: putUpOf(facts, year),
    loads: loadsOf(facts, year),
    seed: seedOf(facts, today),
  }
}

function putUpOf(facts: Facts, year: number): PutUpOfYear[] {
  return becameInYear(facts, year).map(({ form, count: putUp }) => {
    const lots = Object.values(facts.foodLots).filter((lot) => lot.form === form && yearOf(lot) === year)
    const left = lots.reduce((sum, { remainingCount }) => sum + Math.max(0, remainingCount), 0)
    return { form, putUp: count('putUp', putUp), gone: count('gone', putUp - left), left: count('left', left) }
  })
}

function loadsOf({ runs, foodLots }: Facts, year: number): LoadOfYear[] {
  const departed = new Set(
    Object.values(foodLots).flatMap(({ loadCode, departures = [] }) => (departures.length > 0 ? [loadCode] : [])),
  )
  return Object.values(runs)
    .filter(({ begun }) => yearOf(begun) === year)
    .map(({ begun }) => ({
      code: begun.loadCode,
      canner: begun.cannerName,
      jars: count('jars', begun.jarCount),
      processMin: reckon({
        id: 'processMin',
        value: begun.processMin,
        unit: 'Min',
        rounding: nearest(1),
        basis: 'published',
      }),
      departed: departed.has(begun.loadCode),
    }))
}

/** All the seed that is kept, whatever year it grew in. */
function seedOf({ seedLots }: Facts, today: string): SeedOfYear[] {
  return Object.values(seedLots).map((lot) => {
    const test = lot.tests.at(-1)
    return {
      name: lot.name,
      seasonYear: lot.seasonYear,
      ...(lot.kernels && { kernelsLeft: count('kernelsLeft', Math.max(0, lot.kernels.leftCount)) }),
      ...(test && {
        germination: germinationOfTest({ sproutedCount: test.sproutedCount, testedCount: test.ofCount }),
        testAgainBy: seedLotView(lot, today).testAgainBy,
      }),
    }
  })
}

function count(id: string, value: number): Reckoned {
  return reckon({ id, value, unit: 'Count', rounding: nearest(1), basis: 'own-record' })
}
