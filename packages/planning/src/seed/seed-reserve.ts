/**
 * How many kernels stay back for the plantings ahead, what they weigh, how many from each ear, and what may be eaten.
 * Two lines stand side by side: what it takes on average, and what it takes with a chosen confidence.
 * Leaves out: ageing of stored seed (the keeper says what germination to assume) and how a line is chosen.
 */
import {
  ceilCount,
  convert,
  germinationRangeFraction,
  type Reckoned,
  type Sentence,
  seedReserveCount,
} from '@crib/science'
import { down, nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

/** Seed savers ask for these many plants.  @source seed-saving-guides */
export const PLANTS_FLOOR_COUNT = 100
export const PLANTS_BETTER_COUNT = 200

export interface SeedReserveInput {
  /** Clean shelled weight of everything. [lb] */
  readonly shelledLb: number
  /** Grown plants wanted, each year. */
  readonly plantsAimCount: number
  readonly sproutedCount: number
  readonly testedCount: number
  /** Own record: sprouts that reach maturity. [fraction] */
  readonly maturityFraction: number
  /** Germination to assume for the second year. [fraction] */
  readonly secondYearGerminationFraction: number
  /** Kernels used up in a sprouting test each spring. */
  readonly testKernelsCount: number
  readonly giftKernelsCount: number
  readonly kernelsPerOz: number
  /** Ears chosen for seed, one per plant. */
  readonly parentEarsCount: number
  /** Default 0.95. */
  readonly confidenceFraction?: number
  /** Which line the reserve, the share per ear and the food stand on. */
  readonly line: 'on-average' | 'chosen-confidence'
}

export interface SeedReserve {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/**
 * The reserve for two plantings. [kernels, oz, g, lb]  Kernels round up, food rounds down; nothing rounds in between.
 *
 * 240 plants, 46 of 50 sprouted, 80 % to maturity, then 85 %: 327 + 353 kernels on average, 344 + 375 at 95 %.
 *
 * @source clopper-pearson-1934 (germination range and the line with a confidence); the average line is arithmetic
 */
export function seedReserve(input: SeedReserveInput): SeedReserve {
  const { sproutedCount, testedCount, maturityFraction, plantsAimCount, confidenceFraction = 0.95 } = input
  const germination = sproutedCount / testedCount
  const range = germinationRangeFraction({ sproutedCount, testedCount })
  const years = [germination * maturityFraction, input.secondYearGerminationFraction * maturityFraction] as const
  const [onAverage1, onAverage2] = years.map((chance) => ceilCount(plantsAimCount / chance)) as [number, number]
  const [sure1, sure2] = years.map((viabilityFraction) =>
    seedReserveCount({ plantsNeededCount: plantsAimCount, viabilityFraction, confidenceFraction }),
  ) as [number, number]

  const tests = 2 * input.testKernelsCount
  const besides = tests + input.giftKernelsCount
  const average = onAverage1 + onAverage2 + besides
  const sure = sure1 + sure2 + besides
  const total = input.line === 'on-average' ? average : sure
  const perEar = ceilCount(total / input.parentEarsCount)
  const equalShare = perEar * input.parentEarsCount
  const oz = (kernels: number) => kernels / input.kernelsPerOz
  const lb = (kernels: number) => convert(oz(kernels), 'Oz', 'Lb')

  const inputs = { ...input, confidenceFraction } as unknown as Reckoned['inputs']
  const kernels = (id: string, value: number, basis: Reckoned['basis'] = 'project-rule', sourceKeys: string[] = []) =>
    reckon({ id, value, unit: 'Count', rounding: up(1), basis, sourceKeys, inputs })
  const weight = (id: string, value: number, unit: 'Oz' | 'G' | 'Lb', step: number) =>
    reckon({ id, value, unit, rounding: nearest(step), basis: 'project-rule', inputs })
  const food = (id: string, kept: number) =>
    reckon({
      id,
      value: Math.max(0, input.shelledLb - lb(kept)),
      unit: 'Lb',
      rounding: down(0.01),
      basis: 'project-rule',
      inputs,
    })
  const binomial = ['clopper-pearson-1934']
  return {
    values: [
      reckon({
        id: 'germinationFraction',
        value: germination,
        unit: 'Fraction',
        rounding: nearest(0.01),
        ...range,
        basis: 'computed',
        sourceKeys: binomial,
        inputs,
      }),
      kernels('yearOneKernels', onAverage1),
      kernels('yearTwoKernels', onAverage2),
      kernels('yearOneKernelsAtConfidence', sure1, 'computed', binomial),
      kernels('yearTwoKernelsAtConfidence', sure2, 'computed', binomial),
      kernels('testKernels', tests),
      kernels('giftKernels', input.giftKernelsCount, 'as-typed'),
      kernels('onAverageKernels', average),
      kernels('atConfidenceKernels', sure, 'computed', binomial),
      kernels('reserveKernels', total),
      weight('reserveOz', oz(total), 'Oz', 0.01),
      weight('reserveG', convert(oz(total), 'Oz', 'G'), 'G', 0.1),
      kernels('kernelsPerEar', perEar),
      kernels('equalShareKernels', equalShare),
      weight('equalShareOz', oz(equalShare), 'Oz', 0.01),
      weight('equalShareLb', lb(equalShare), 'Lb', 0.01),
      food('foodLb', equalShare),
      food('foodIfExactlyReserveLb', total),
    ],
    reasons: [
      say('seed:first'),
      say('seed:germination-range', {
        sprouted: sproutedCount,
        tested: testedCount,
        low: Math.round(range.low * 100),
        high: Math.round(range.high * 100),
      }),
      say('seed:two-lines', {
        average,
        sure,
        confidence: { value: confidenceFraction, unit: 'Fraction' },
      }),
      say('seed:equal-share', { each: perEar, ears: input.parentEarsCount }),
      say('seed:two-places'),
      say('seed:an-estimate'),
    ],
    warnings: [
      ...(input.parentEarsCount < PLANTS_BETTER_COUNT ? [say(earsKey(input.parentEarsCount), earsParams(input))] : []),
      ...(lb(equalShare) > input.shelledLb ? [say('seed:takes-it-all')] : []),
    ],
  }
}

function earsKey(parentEarsCount: number) {
  return parentEarsCount < PLANTS_FLOOR_COUNT ? 'seed:more-ears' : 'seed:more-ears-better'
}

function earsParams({ parentEarsCount }: SeedReserveInput) {
  return { ears: parentEarsCount, floor: PLANTS_FLOOR_COUNT, better: PLANTS_BETTER_COUNT }
}
