/** The reserve in numbers with their units and in sentences. Leaves out: the counting (reserve-plan.ts). */
import {
  beliefRangeFraction,
  clopperPearson1934,
  convert,
  type Reckoned,
  reserveLostFraction,
  type Sentence,
} from '@crib/science'
import { down, nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { rangeSentence } from './germination.ts'
import { earsAdvice } from './line-advice.ts'
import type { PlantingNeed, ReservePlanInput, ReserveTotals } from './reserve-plan.ts'
import { PLANTINGS_COUNT } from './seed-answer.ts'
import { LIFE_KEYS } from './seed-life.ts'
import { isStoreKnown } from './seed-store.ts'

export function reserveReasons(
  input: ReservePlanInput,
  totals: ReserveTotals,
  kernelsPerEar: number,
): readonly Sentence[] {
  const { confidenceFraction = 0.95, plantingsCount, parentEarsCount, failureFraction, reason } = input
  return [
    say('seed:first'),
    rangeSentence(input),
    say('seed:three-lines', {
      average: totals['on-average'],
      asTested: totals['as-tested'],
      wholeRange: totals['whole-range'],
      confidence: { value: confidenceFraction, unit: 'Fraction' },
    }),
    ...(plantingsCount < PLANTINGS_COUNT
      ? [say('seed:fewer-plantings', { plantings: plantingsCount, reason: reason! })]
      : []),
    say('seed:equal-share', { each: kernelsPerEar, ears: parentEarsCount }),
    say('seed:parents-apart'),
    say('seed:two-places'),
    ...(failureFraction === undefined ? [] : [say('seed:two-lots')]),
    say('seed:an-estimate'),
  ]
}

export function reserveWarnings(input: ReservePlanInput, kernelsPerEar: number): readonly Sentence[] {
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

export function reserveValues(
  input: ReservePlanInput,
  plantings: readonly PlantingNeed[],
  totals: ReserveTotals,
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
