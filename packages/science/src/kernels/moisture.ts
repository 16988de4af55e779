/**
 * Weight of grain as it dries or cooks: dry matter is kept, water comes and goes.
 * Moisture is on the wet basis throughout: water over total weight, as a fraction.
 */
import { requireInRange } from '../errors.ts'
import { requireAmount } from './bulk.ts'

export interface MoistureChange {
  /** Moisture before, water over total weight. [fraction] Valid: 0 to 0.95. */
  readonly fromWetFraction: number
  /** Moisture after, water over total weight. [fraction] Valid: 0 to 0.95. */
  readonly toWetFraction: number
}

/**
 * Weight after the moisture has changed and nothing else. [kg]
 *
 * m2 = m1 (1 - M1) / (1 - M2). 10 kg dried from 18 % to 13 %: 9.425 kg.
 *
 * @param massKg weight before. [kg] Valid: 0 to 1e6.
 * @throws {ValidRangeError} outside the ranges named.
 * @source hicks-cloud-nch-61
 */
export function massAtMoistureKg(massKg: number, { fromWetFraction, toWetFraction }: MoistureChange): number {
  requireAmount('massKg', massKg, 'kg')
  requireWetFraction('fromWetFraction', fromWetFraction)
  requireWetFraction('toWetFraction', toWetFraction)
  return (massKg * (1 - fromWetFraction)) / (1 - toWetFraction)
}

/**
 * Share of the weight that drying takes off; negative when water is taken up. [fraction]
 *
 * 25.5 % to 15.5 %: 0.1183. Handling loss is extra and is not moisture.
 *
 * @throws {ValidRangeError} outside the ranges named.
 * @source hicks-cloud-nch-61
 */
export function moistureShrinkFraction(change: MoistureChange): number {
  return 1 - massAtMoistureKg(1, change)
}

/**
 * Moisture of a sample that was weighed wet and, once dried, again. [fraction of total weight]
 *
 * 100 g, 30 g dried: 0.70.
 *
 * @param wetG [g] Valid: above 0, to 1e6.
 * @param dryG [g] Valid: 0 to wetG.
 * @throws {ValidRangeError} outside those ranges: drying adds no weight.
 * @source none: the definition of moisture on the wet basis
 */
export function wetFractionOfSample(wetG: number, dryG: number): number {
  requireInRange('wetG', wetG, { min: 1e-6, max: 1e6, unit: 'g', source: 'project-rule' })
  requireInRange('dryG', dryG, { min: 0, max: wetG, unit: 'g', source: 'project-rule' })
  return 1 - dryG / wetG
}

export interface Cook {
  /** M0, moisture of the raw kernels, wet basis. [fraction] Valid: 0 to 0.95. */
  readonly rawWetFraction: number
  /** L, share of the dry matter that leaves with hulls, tips and liquor. [fraction] Valid: 0 to 0.9. */
  readonly dryMatterLossFraction: number
  /** M1, moisture of the cooked kernels, wet basis. [fraction] Valid: 0 to 0.95. */
  readonly cookedWetFraction: number
}

/**
 * Weight of cooked kernels from one unit weight of raw ones. [kg cooked per kg raw]
 *
 * (1 - M0)(1 - L)/(1 - M1). Raw at 10.4 %, 10 % of the dry matter lost, cooked to 70 % water: 2.69.
 *
 * @throws {ValidRangeError} outside the ranges named.
 * @source fao-maize-1992 chapter 5 for the losses; the balance itself is conservation of dry matter
 */
export function cookedPerRaw({ rawWetFraction, dryMatterLossFraction, cookedWetFraction }: Cook): number {
  requireInRange('dryMatterLossFraction', dryMatterLossFraction, {
    min: 0,
    max: 0.9,
    unit: 'of the dry matter',
    source: 'project-rule',
  })
  const waterOnly = massAtMoistureKg(1, { fromWetFraction: rawWetFraction, toWetFraction: cookedWetFraction })
  return waterOnly * (1 - dryMatterLossFraction)
}

/** @throws {ValidRangeError} unless 0 <= value <= 0.95. */
export function requireWetFraction(argument: string, value: number): void {
  requireInRange(argument, value, { min: 0, max: 0.95, unit: 'of total weight', source: 'project-rule' })
}
