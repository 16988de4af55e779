/**
 * The reserve for any number of plantings: what each takes on average, with the germination just as tested, and over
 * everything the test leaves open; with the lot ageing to each planting. Leaves out: how the food is split afterwards.
 */
import {
  beliefMeanFraction,
  beliefOfTest,
  beliefRangeFraction,
  ceilCount,
  clopperPearson1934,
  convert,
  type GerminationBelief,
  germinationAfter,
  lotAgeing,
  normalCdfFraction,
  normalQuantile,
  type Reckoned,
  reserveLostFraction,
  type Sentence,
  seedReserveByBeliefCount,
  type WeightedFraction,
} from '@crib/science'
import { down, nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { kernelsAsTested, rangeSentence, testFault } from './germination.ts'
import { earsAdvice } from './line-advice.ts'
import { PLANTINGS_COUNT } from './seed-answer.ts'
import { LIFE_KEYS } from './seed-life.ts'
import { isStoreKnown, probitsInDays, type SeedStore, storeFault } from './seed-store.ts'

export interface FieldYear {
  readonly year: number
  /** Sprouts, or kernels sown times their germination. */
  readonly sproutsCount: number
  readonly grownCount: number
}

export type ReserveLine = 'on-average' | 'as-tested' | 'whole-range'

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
function germinationFor(
  input: ReservePlanInput,
  planting: number,
): Pick<PlantingNeed, 'germination' | 'germinationFraction' | 'isAssumed'> {
  const { sproutedCount, testedCount, daysToFirst = 0, assumed = [] } = input
  const tested = beliefOfTest(input)
  const told = assumed.find((one) => one.planting === planting)
  if (told) {
    return {
      germination: movedTo(tested, told.germinationFraction),
      germinationFraction: told.germinationFraction,
      isAssumed: true,
    }
  }
  const days = daysToFirst + (planting - 1) * 365.25
  if (days === 0 || !isStoreKnown(input)) {
    return { germination: tested, germinationFraction: sproutedCount / testedCount, isAssumed: false }
  }
  const ageing = lotAgeing({ tests: [{ sproutedCount, testedCount, lostProbits: 0 }] })
  const germination = germinationAfter(ageing, probitsInDays(input, days))
  return { germination, germinationFraction: beliefMeanFraction(germination), isAssumed: false }
}

/** A belief moved by one number of probits, so that its mean is as assumed and its width stays the test's. */
function movedTo(belief: GerminationBelief, meanFraction: number): GerminationBelief {
  const moved = (probits: number): GerminationBelief =>
    belief.map(({ fraction, weight }) => {
      const inside = Math.min(1 - 1e-12, Math.max(1e-12, fraction))
      return { fraction: normalCdfFraction(normalQuantile(inside) + probits), weight }
    })
  let [low, high] = [-9, 9]
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
  const plantings = Array.from({ length: input.plantingsCount }, (_, i): PlantingNeed => {
    const known = germinationFor(input, i + 1)
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
  const totals = {
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
    reasons: [
      say('seed:first'),
      rangeSentence(input),
      say('seed:three-lines', {
        average: totals['on-average'],
        asTested: totals['as-tested'],
        wholeRange: totals['whole-range'],
        confidence: { value: confidenceFraction, unit: 'Fraction' },
      }),
      ...(input.plantingsCount < PLANTINGS_COUNT
        ? [say('seed:fewer-plantings', { plantings: input.plantingsCount, reason: input.reason! })]
        : []),
      say('seed:equal-share', { each: kernelsPerEar, ears: parentEarsCount }),
      say('seed:parents-apart'),
      say('seed:two-places'),
      ...(input.failureFraction === undefined ? [] : [say('seed:two-lots')]),
      say('seed:an-estimate'),
    ],
    warnings: reserveWarnings(input, kernelsPerEar),
  }
}

function reserveWarnings(input: ReservePlanInput, kernelsPerEar: number): readonly Sentence[] {
  const lb = convert((kernelsPerEar * input.parentEarsCount) / input.kernelsPerOz, 'Oz', 'Lb')
  const isAged = isStoreKnown(input)
  const agesUnseen = Array.from({ length: input.plantingsCount }, (_, i) => i + 1).some(
    (planting) => planting > 1 && !isAged && !input.assumed?.some((one) => one.planting === planting),
  )
  return [
    ...earsAdvice(input.parentEarsCount),
    ...(agesUnseen ? [say('seed:no-ageing-counted')] : []),
    ...(input.shelledLb !== undefined && lb > input.shelledLb ? [say('seed:takes-it-all')] : []),
  ]
}

function reserveValues(
  input: ReservePlanInput,
  plantings: readonly PlantingNeed[],
  totals: { readonly [L in ReserveLine]: number },
  kernelsPerEar: number,
): readonly Reckoned[] {
  const { sproutedCount, testedCount, parentEarsCount, shelledLb, failureFraction } = input
  const inputs = { ...input } as unknown as Reckoned['inputs']
  const equalShare = kernelsPerEar * parentEarsCount
  const oz = (kernels: number) => kernels / input.kernelsPerOz
  const lb = (kernels: number) => convert(oz(kernels), 'Oz', 'Lb')
  const kernels = (id: string, value: number, basis: Reckoned['basis'] = 'project-rule', sourceKeys: string[] = []) =>
    reckon({ id, value, unit: 'Count', rounding: up(1), basis, sourceKeys, inputs })
  const weight = (id: string, value: number, unit: 'Oz' | 'G' | 'Lb', step: number) =>
    reckon({ id, value, unit, rounding: nearest(step), basis: 'project-rule', inputs })
  const food = (id: string, kept: number) =>
    shelledLb === undefined
      ? []
      : [
          reckon({
            id,
            value: Math.max(0, shelledLb - lb(kept)),
            unit: 'Lb',
            rounding: down(0.01),
            basis: 'project-rule',
            inputs,
          }),
        ]
  const binomial = ['clopper-pearson-1934']
  const germination = (
    id: string,
    value: number,
    range: { low: number; high: number },
    sourceKeys: readonly string[],
  ) => reckon({ id, value, ...range, unit: 'Fraction', rounding: nearest(0.01), basis: 'computed', sourceKeys, inputs })
  const reserve = totals[input.line]
  return [
    germination(
      'germinationFraction',
      sproutedCount / testedCount,
      clopperPearson1934({ foundCount: sproutedCount, ofCount: testedCount }),
      binomial,
    ),
    ...plantings.map((need) =>
      germination(
        `plantingGermination:${need.planting}`,
        need.germinationFraction,
        beliefRangeFraction(need.germination, 0.9),
        isStoreKnown(input) && !need.isAssumed ? LIFE_KEYS : ['jeffreys-1946'],
      ),
    ),
    ...plantings.map((need) => kernels(`onAverageKernels:${need.planting}`, need.onAverageKernels)),
    ...plantings.map((need) => kernels(`asTestedKernels:${need.planting}`, need.asTestedKernels, 'computed', binomial)),
    ...plantings.map((need) =>
      kernels(`wholeRangeKernels:${need.planting}`, need.wholeRangeKernels, 'computed', [...binomial, 'jeffreys-1946']),
    ),
    kernels('testKernels', input.plantingsCount * input.testKernelsCount),
    kernels('giftKernels', input.giftKernelsCount, 'as-typed'),
    kernels('onAverageTotalKernels', totals['on-average']),
    kernels('asTestedTotalKernels', totals['as-tested'], 'computed', binomial),
    kernels('wholeRangeTotalKernels', totals['whole-range'], 'computed', [...binomial, 'jeffreys-1946']),
    kernels('reserveKernels', reserve),
    weight('reserveOz', oz(reserve), 'Oz', 0.01),
    weight('reserveG', convert(oz(reserve), 'Oz', 'G'), 'G', 0.1),
    kernels('parentEars', parentEarsCount, 'as-typed'),
    kernels('kernelsPerEar', kernelsPerEar),
    kernels('equalShareKernels', equalShare),
    weight('equalShareOz', oz(equalShare), 'Oz', 0.01),
    weight('equalShareLb', lb(equalShare), 'Lb', 0.01),
    ...food('foodLb', equalShare),
    ...food('foodIfExactlyReserveLb', reserve),
    ...(failureFraction === undefined
      ? []
      : [
          reckon({
            id: 'allFailFraction',
            value: reserveLostFraction(failureFraction, input.plantingsCount),
            unit: 'Fraction',
            rounding: nearest(0.0001),
            basis: 'project-rule',
            inputs,
          }),
        ]),
  ]
}
