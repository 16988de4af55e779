/**
 * What to do when hulls do not slip: weak ash. In a given order, with amounts; no pH, no minute, no hope sold.
 * Leaves out: why an ash is weak beyond what is known of open air.
 */
import { printedAshPartsPer10Corn } from '@crib/guidance'
import { convert, type Reckoned, type Sentence } from '@crib/science'
import { LB_PER_LIQUID_QT } from '../shared/corn-measure.ts'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { ASH_PARTS_PER_10_CORN, LIME_FRACTION } from './alkali.ts'

/** One measured step of ash, and when to rub again.  common practice, no source */
export const ASH_STEP_CUPS = 0.5
export const RUB_AGAIN_MIN = 15

export interface WeakAshInput {
  readonly lotName: string
  /** Lot whose record was followed. */
  readonly recordLotName?: string
  readonly dryCornLiquidQt: number
  /** Ash put in so far, all together. [cup] */
  readonly ashSoFarCups: number
  readonly boiledMin: number
  /** Kernels of the last rub test that slipped, and how many were rubbed. */
  readonly slippedCount: number
  readonly rubbedCount: number
  readonly isSoftening: boolean
  readonly stoodOpenMonths?: number
  /** The lot's own weight. [lb per liquid qt] */
  readonly lbPerLiquidQt?: number
}

export interface WeakAshAdvice {
  readonly values: readonly Reckoned[]
  /** Why, then what to do, in this order. */
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
  /** To be written into the ash record. */
  readonly judged: 'weak' | 'unknown'
}

/** Half of the kernels slipping is a pot on its way.  project rule */
const SLIPPING_FRACTION = 0.5

export function weakAshAdvice(input: WeakAshInput): WeakAshAdvice {
  const { lotName, recordLotName, dryCornLiquidQt, ashSoFarCups, slippedCount, rubbedCount } = input
  const isWeak = slippedCount / rubbedCount < SLIPPING_FRACTION
  const cornG = convert(dryCornLiquidQt * (input.lbPerLiquidQt ?? LB_PER_LIQUID_QT), 'Lb', 'G')
  const inputs = { lotName, dryCornLiquidQt, ashSoFarCups, boiledMin: input.boiledMin, slippedCount, rubbedCount }
  const cups = (id: string, value: number) =>
    reckon({ id, value, unit: 'Cup', rounding: nearest(0.25), basis: 'common-practice', inputs })
  const parts = (id: string, value: number) =>
    reckon({
      id,
      value,
      unit: 'Count',
      rounding: nearest(1),
      basis: 'published',
      sourceKeys: printedAshPartsPer10Corn().sourceKeys,
    })
  const limeG = LIME_FRACTION.middle * cornG
  const lime = (id: string, value: number, step: number) =>
    reckon({ id, value, unit: 'G', rounding: nearest(step), basis: 'published', sourceKeys: ['naggayi-2020'], inputs })
  return {
    judged: isWeak ? 'weak' : 'unknown',
    values: [
      cups('ashStepCups', ASH_STEP_CUPS),
      cups('ashAfterStepCups', ashSoFarCups + ASH_STEP_CUPS),
      reckon({ id: 'rubAgainMin', value: RUB_AGAIN_MIN, unit: 'Min', rounding: nearest(1), basis: 'common-practice' }),
      lime('calciumHydroxideG', limeG, 0.1),
      lime('calciumHydroxideGPerLiquidQt', limeG / dryCornLiquidQt, 1),
      parts('ashPartsPer10CornLow', ASH_PARTS_PER_10_CORN.low),
      parts('ashPartsPer10CornHigh', ASH_PARTS_PER_10_CORN.high),
    ],
    reasons: [
      say('kettle:rub-seen', { slipped: slippedCount, rubbed: rubbedCount }),
      ...(isWeak && input.stoodOpenMonths
        ? [say('kettle:ash-open-air', { lot: lotName, count: input.stoodOpenMonths })]
        : [say('kettle:ash-weakens')]),
      ...(recordLotName && recordLotName !== lotName
        ? [say('kettle:record-does-not-carry', { record: recordLotName, lot: lotName })]
        : []),
      say('kettle:rescue-more-ash', {
        lot: lotName,
        step: { value: ASH_STEP_CUPS, unit: 'Cup' },
        again: { value: RUB_AGAIN_MIN, unit: 'Min' },
      }),
      say('kettle:rescue-lime', { grams: { value: Number(limeG.toFixed(1)), unit: 'G' } }),
      say('kettle:rescue-grind'),
      say('kettle:no-single-ratio', ASH_PARTS_PER_10_CORN),
      ...(isWeak ? [say('kettle:mark-weak', { lot: lotName })] : []),
    ],
    warnings: input.isSoftening ? [say('kettle:soft-not-into-jars')] : [],
  }
}
