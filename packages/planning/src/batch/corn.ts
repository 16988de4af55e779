/** From ears or sack to clean, dry corn: shelling, seed first, sorting. Leaves out moisture. */
import { convert, type Reckoned, type Sentence, SHELLED_PER_EAR_CORN_TRADE_FRACTION, UNITS } from '@crib/science'
import type { SeedLine } from '../seed/seed-answer.ts'
import { LB_PER_LIQUID_QT, shelledLb } from '../shared/corn-measure.ts'
import { down, nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import type { BatchPlanInput, CornType } from './input.ts'

/** Two bushels of ears by volume give one of shelled corn.  common practice (a 1964 farm census counted so) */
export const SHELLED_PER_EAR_VOLUME_FRACTION = 0.5
/** Shelling by hand, one person, shelled corn. [lb/h]  common practice, no source */
export const SHELLING_LB_PER_H = { low: 5, middle: 10, high: 20 } as const

export interface CornPlan {
  readonly values: readonly Reckoned[]
  readonly dryCornLiquidQt: number
  readonly cleanCornLb: number
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/** Clean corn for the pot from what is at hand; the seed goes off first, food rounds down. */
export function cornFromHand(input: BatchPlanInput, seed: SeedLine): CornPlan | { readonly missingLb: number } {
  if (input.from.kind !== 'corn') throw new TypeError('cornFromHand is for corn at hand')
  const { form, amount } = input.from
  const lbPerQt = input.lbPerLiquidQt ?? LB_PER_LIQUID_QT
  const isByWeight = UNITS[amount.unit].measure === 'mass'
  const perEar = isByWeight ? SHELLED_PER_EAR_CORN_TRADE_FRACTION : SHELLED_PER_EAR_VOLUME_FRACTION
  const brought = shelledLb(amount, lbPerQt)
  const shelled = form === 'ears' ? brought * perEar : brought
  const afterSeed = shelled - seed.takenOffLb
  if (!(afterSeed > 0)) return { missingLb: -afterSeed }
  const cleanCornLb = afterSeed * (1 - (input.sortedOutDryFraction ?? 0))

  const given = { value: amount.value, unit: amount.unit, form, seedTakenOffLb: seed.takenOffLb }
  const values: Reckoned[] = []
  if (form === 'ears') {
    values.push(
      reckon({
        id: 'shelledLb',
        value: shelled,
        unit: 'Lb',
        rounding: down(0.1),
        basis: 'common-practice',
        inputs: { ...given, shelledPerEarFraction: perEar },
      }),
      shellingHours(shelled, input),
    )
  }
  return finished(input, values, cleanCornLb, lbPerQt, given, [
    ...(amount.assumed
      ? [say(`kettle:assumed-${amount.assumed}`, { amount: { value: amount.value, unit: amount.unit } })]
      : []),
    ...(form === 'ears' ? [say('kettle:from-ears')] : []),
  ])
}

/** Corn to shell and clean for a number of jars: worked back, shelling rounds up. */
export function cornForJars(input: BatchPlanInput, dryCornLiquidQt: number): CornPlan {
  const lbPerQt = input.lbPerLiquidQt ?? LB_PER_LIQUID_QT
  const cleanCornLb = dryCornLiquidQt * lbPerQt
  const toShell = cleanCornLb / (1 - (input.sortedOutDryFraction ?? 0))
  const inputs = { dryCornLiquidQt, lbPerLiquidQt: lbPerQt, sortedOutDryFraction: input.sortedOutDryFraction ?? 0 }
  const values = [
    reckon({ id: 'cornToShellLb', value: toShell, unit: 'Lb', rounding: up(0.1), basis: 'project-rule', inputs }),
    ...(input.shellersCount ? [shellingHours(toShell, input)] : []),
  ]
  return finished(input, values, cleanCornLb, lbPerQt, inputs, [])
}

function finished(
  input: BatchPlanInput,
  values: readonly Reckoned[],
  cleanCornLb: number,
  lbPerQt: number,
  given: Reckoned['inputs'],
  reasons: readonly Sentence[],
): CornPlan {
  const ownWeight = input.lbPerLiquidQt !== undefined
  const basis = ownWeight ? ('own-record' as const) : ('project-rule' as const)
  const sourceKeys = ownWeight ? [] : ['rankin-wisconsin-bushels']
  const inputs = { ...given, lbPerLiquidQt: lbPerQt, sortedOutDryFraction: input.sortedOutDryFraction ?? 0 }
  return {
    values: [
      ...values,
      reckon({ id: 'cleanCornLb', value: cleanCornLb, unit: 'Lb', rounding: down(0.01), basis, sourceKeys, inputs }),
      reckon({
        id: 'dryCornLiquidQt',
        value: cleanCornLb / lbPerQt,
        unit: 'LiquidQt',
        rounding: nearest(0.01),
        basis,
        sourceKeys,
        inputs,
      }),
    ],
    dryCornLiquidQt: cleanCornLb / lbPerQt,
    cleanCornLb,
    reasons: [
      ...reasons,
      ownWeight
        ? say('kettle:own-weight', { weight: { value: lbPerQt, unit: 'Lb' } })
        : say('kettle:book-weight', { weight: { value: lbPerQt, unit: 'Lb' } }),
      ...(input.sortedOutDryFraction
        ? [say('kettle:sorted-dry', { share: { value: input.sortedOutDryFraction, unit: 'Fraction' } })]
        : []),
      say(`kettle:corn-type-${input.cornType}` as const),
    ],
    warnings: notSuited(input.cornType),
  }
}

function notSuited(cornType: CornType): readonly Sentence[] {
  return cornType === 'popcorn' ? [say('kettle:popcorn-does-not-suit')] : []
}

/** Hours of shelling by hand for all helpers together. [h]  common practice, no source, until there is an own record. */
function shellingHours(lb: number, { shellersCount = 1, shellingLbPerH }: BatchPlanInput): Reckoned {
  const hours = (rate: number) => lb / (rate * shellersCount)
  return reckon({
    id: 'shellingH',
    value: hours(shellingLbPerH ?? SHELLING_LB_PER_H.middle),
    unit: 'H',
    rounding: up(0.1),
    low: hours(Math.max(SHELLING_LB_PER_H.high, shellingLbPerH ?? 0)),
    high: hours(Math.min(SHELLING_LB_PER_H.low, shellingLbPerH ?? Number.POSITIVE_INFINITY)),
    basis: shellingLbPerH === undefined ? 'common-practice' : 'own-record',
    inputs: { shelledLb: lb, helpersCount: shellersCount, lbPerH: shellingLbPerH ?? SHELLING_LB_PER_H.middle },
  })
}

/** Hominy weighs about this, drained. [lb per liquid qt]  165 g a cup.  @source usda-sr */
export const HOMINY_LB_PER_LIQUID_QT = convert(165 * 4, 'G', 'Lb')
