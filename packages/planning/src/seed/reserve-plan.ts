/**
 * The reserve for any number of plantings: what each takes on average, with the germination just as tested, and over
 * everything the test leaves open; with the lot ageing to each planting. Leaves out: how it is said (reserve-words.ts), and
 * how the food is split afterwards.
 */
import {
  beliefMeanFraction,
  beliefOfTest,
  ceilCount,
  type GerminationBelief,
  germinationAfter,
  lotAgeing,
  normalCdfFraction,
  normalQuantile,
  type Reckoned,
  type Sentence,
  seedReserveByBeliefCount,
  type WeightedFraction,
} from '@crib/science'
import { say } from '../shared/say.ts'
import { kernelsAsTested, testFault } from './germination.ts'
import { reserveReasons, reserveValues, reserveWarnings } from './reserve-words.ts'
import { PLANTINGS_COUNT } from './seed-answer.ts'
import { isStoreKnown, probitsInDays, type SeedStore, storeFault } from './seed-store.ts'

export interface FieldYear {
  readonly year: number
  /** Sprouts, or kernels sown times their germination. */
  readonly sproutsCount: number
  readonly grownCount: number
}

export type ReserveLine = 'on-average' | 'as-tested' | 'whole-range'
export type ReserveTotals = { readonly [L in ReserveLine]: number }

export interface ReservePlanInput extends SeedStore {
  /** Clean shelled weight of everything, for what may be eaten. [lb] */
  readonly shelledLb?: number
  readonly plantsAimCount: number
  readonly plantingsCount: number
  /** Why fewer than two plantings. */
  readonly reason?: string
  readonly sproutedCount: number
  readonly testedCount: number
  /** Days from the test to the first sowing; later ones follow a year apart.  Default 0. */
  readonly daysToFirst?: number
  /** Germination the keeper wants to assume for a planting, in place of ageing. [fraction] */
  readonly assumed?: readonly { readonly planting: number; readonly germinationFraction: number }[]
  /** Own record: sprouts that reach maturity. [fraction]  Needed unless years are told. */
  readonly maturityFraction?: number
  /** Own record year by year: next year may be like any of them. */
  readonly fieldYears?: readonly FieldYear[]
  /** Kernels used up in a test each spring. */
  readonly testKernelsCount: number
  readonly giftKernelsCount: number
  readonly kernelsPerOz: number
  /** Ears that give the seed, one a plant. */
  readonly parentEarsCount: number
  /** Default 0.95, for each planting by itself. */
  readonly confidenceFraction?: number
  /** Chance that a planting fails outright, where the keeper has a number for it. [fraction] */
  readonly failureFraction?: number
  readonly line: ReserveLine
}

export interface PlantingNeed {
  /** 1 is the next one. */
  readonly planting: number
  readonly germination: GerminationBelief
  /** Best single number for it. [fraction] */
  readonly germinationFraction: number
  readonly isAssumed: boolean
  readonly onAverageKernels: number
  readonly asTestedKernels: number
  readonly wholeRangeKernels: number
  /** Chance that one kernel becomes a plant, as far as it is known. */
  readonly chances: readonly WeightedFraction[]
}

export type ReservePlan =
  | {
      readonly kind: 'planned'
      readonly plantings: readonly PlantingNeed[]
      readonly reserveKernels: number
      readonly kernelsPerEar: number
      readonly values: readonly Reckoned[]
      readonly reasons: readonly Sentence[]
      readonly warnings: readonly Sentence[]
    }
  | { readonly kind: 'refused'; readonly refused: string; readonly why: readonly Sentence[] }

/** The germination each planting will meet: the test's own, aged by the store, or moved to what is assumed. */
function germinationsOf(
  input: ReservePlanInput,
): (planting: number) => Pick<PlantingNeed, 'germination' | 'germinationFraction' | 'isAssumed'> {
  const { sproutedCount, testedCount, daysToFirst = 0, assumed = [] } = input
  // The same for every planting, and most of the work: made once, and only if asked for.
  const tested = once(() => beliefOfTest(input))
  const ageing = once(() => lotAgeing({ tests: [{ sproutedCount, testedCount, lostProbits: 0 }] }))
  return (planting) => {
    const told = assumed.find((one) => one.planting === planting)
    if (told) {
      const { germinationFraction } = told
      return { germination: movedTo(tested(), germinationFraction), germinationFraction, isAssumed: true }
    }
    const days = daysToFirst + (planting - 1) * 365.25
    if (days === 0 || !isStoreKnown(input)) {
      return { germination: tested(), germinationFraction: sproutedCount / testedCount, isAssumed: false }
    }
    const germination = germinationAfter(ageing(), probitsInDays(input, days))
    return { germination, germinationFraction: beliefMeanFraction(germination), isAssumed: false }
  }
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

/** A belief moved by one number of probits, so that its mean is as assumed and its width stays the test's. */
function movedTo(belief: GerminationBelief, meanFraction: number): GerminationBelief {
  const moved = (probits: number): GerminationBelief =>
    belief.map(({ fraction, weight }) => {
      const inside = Math.min(1 - 1e-12, Math.max(1e-12, fraction))
      return { fraction: normalCdfFraction(normalQuantile(inside) + probits), weight }
    })
  let low = -9
  let high = 9
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2
    if (beliefMeanFraction(moved(middle)) < meanFraction) low = middle
    else high = middle
  }
  return moved((low + high) / 2)
}

/** Shares of sprouts that reach maturity: one number, or each recorded year as likely as another. */
function fieldShares({ maturityFraction, fieldYears = [] }: ReservePlanInput): readonly WeightedFraction[] {
  if (fieldYears.length === 0) return [{ fraction: maturityFraction!, weight: 1 }]
  return fieldYears.map(({ sproutsCount, grownCount }) => ({
    fraction: grownCount / sproutsCount,
    weight: 1 / fieldYears.length,
  }))
}

function reserveFault(input: ReservePlanInput): { code: string; why: Sentence } | null {
  const { plantingsCount, reason, maturityFraction, fieldYears = [] } = input
  if (plantingsCount < PLANTINGS_COUNT && !reason?.trim()) {
    return { code: 'seed-reason-missing', why: say('seed:reason-missing', { plantings: plantingsCount }) }
  }
  const fault = testFault(input) ?? storeFault(input)
  if (fault) return fault
  if (input.sproutedCount === 0) return { code: 'none-sprouted', why: say('seed:none-sprouted') }
  for (const { year, sproutsCount, grownCount } of fieldYears) {
    if (sproutsCount === 0 || grownCount === 0 || grownCount > sproutsCount) {
      const why = say('seed:field-year-odd', { year: String(year), sprouts: sproutsCount, grown: grownCount })
      return { code: 'field-year-odd', why }
    }
  }
  if (fieldYears.length === 0 && maturityFraction === undefined) {
    return { code: 'field-record-missing', why: say('seed:field-record-missing') }
  }
  return null
}

/**
 * The reserve, planting by planting and together. [kernels, oz, g, lb]  Kernels round up, food rounds down.
 *
 * 240 plants, 46 of 50 sprouted, 80 % to maturity, 85 % assumed for the second: 327 + 353 on average, 344 + 375 with 95 %
 * when germination is as tested, more over everything the test leaves open.
 *
 * @source clopper-pearson-1934, jeffreys-1946, ellis-roberts-1980
 */
export function reservePlan(input: ReservePlanInput): ReservePlan {
  const fault = reserveFault(input)
  if (fault) return { kind: 'refused', refused: fault.code, why: [say('seed:first'), fault.why] }
  const { confidenceFraction = 0.95, plantsAimCount, parentEarsCount } = input
  const field = fieldShares(input)
  const survival = field.reduce((sum, { fraction, weight }) => sum + fraction * weight, 0)
  const germinationOf = germinationsOf(input)
  const plantings = Array.from({ length: input.plantingsCount }, (_, i): PlantingNeed => {
    const known = germinationOf(i + 1)
    const chances = known.germination.flatMap((one) =>
      field.map((share) => ({ fraction: one.fraction * share.fraction, weight: one.weight * share.weight })),
    )
    const chance = known.germinationFraction * survival
    return {
      planting: i + 1,
      ...known,
      chances,
      onAverageKernels: ceilCount(plantsAimCount / chance),
      asTestedKernels: kernelsAsTested(plantsAimCount, chance, confidenceFraction),
      wholeRangeKernels: seedReserveByBeliefCount({ plantsNeededCount: plantsAimCount, chances, confidenceFraction }),
    }
  })
  const besides = input.plantingsCount * input.testKernelsCount + input.giftKernelsCount
  const totalOf = (of: (need: PlantingNeed) => number) => plantings.reduce((sum, need) => sum + of(need), besides)
  const totals: ReserveTotals = {
    'on-average': totalOf((need) => need.onAverageKernels),
    'as-tested': totalOf((need) => need.asTestedKernels),
    'whole-range': totalOf((need) => need.wholeRangeKernels),
  }
  const reserveKernels = totals[input.line]
  const kernelsPerEar = ceilCount(reserveKernels / parentEarsCount)
  return {
    kind: 'planned',
    plantings,
    reserveKernels,
    kernelsPerEar,
    values: reserveValues(input, plantings, totals, kernelsPerEar),
    reasons: reserveReasons(input, totals, kernelsPerEar),
    warnings: reserveWarnings(input, kernelsPerEar),
  }
}
