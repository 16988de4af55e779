/**
 * Kinetics a heating curve is read with: how spores die and how quality goes, each D and z with where it is from.
 * A made-up jar may be given such figures; a keeper's own run never is.
 */
import { requireInRange } from '../errors.ts'
import { type LethalityModel, requireLethalityModel } from '../lethality/lethal-rate.ts'
import type { LowMidHigh } from './jar-materials.ts'

export interface Kinetics {
  /** D at the reference temperature. [min] */
  readonly dMin: number
  readonly zDeltaC: number
  readonly referenceC: number
}

/** The design value of the trade. @source food-biochemistry-ch38 */
export const BOTULINUM_DESIGN: Kinetics = { dMin: 0.21, zDeltaC: 10, referenceC: 121.1 }

/** Strain A16037, from an outbreak of home-canned food, in pH 7 buffer: D 1.3 min at 115.6 °C. @source odlaug-pflug-1977 */
export const BOTULINUM_OUTBREAK_STRAIN: Kinetics = { dMin: 1.3, zDeltaC: 9.9, referenceC: 115.6 }

/** z as published. [°C] @source crc-kinetics-table-10-10 */
export const BOTULINUM_Z_DELTA_C: LowMidHigh = { low: 7.8, mid: 10, high: 10 }

/** Thiamine in carrot puree, pH 5.9; none was found for hominy. @source crc-kinetics-table-10-10 */
export const THIAMINE: Kinetics = { dMin: 158, zDeltaC: 25, referenceC: 121 }

/**
 * D at another temperature: D_T = D_ref 10^((T_ref - T)/z). [min]  The outbreak strain at 121.1 °C: 0.36.
 *
 * @throws {ValidRangeError} for a temperature outside 0 to 150 °C.
 * @source bigelow-1920, general method
 */
export function dAtTemperatureMin({ dMin, zDeltaC, referenceC }: Kinetics, temperatureC: number): number {
  requireInRange('temperatureC', temperatureC, { min: 0, max: 150, unit: '°C', source: 'project-rule' })
  return dMin * 10 ** ((referenceC - temperatureC) / zDeltaC)
}

/**
 * Minutes at the reference temperature an evenly spaced curve is worth, each piece a straight line. [min]
 *
 * The rule of `lethalityMin`, for long curves kept as plain numbers. Temperatures below 0 or above 150 °C are not looked for.
 *
 * @throws {ValidRangeError} for a model out of range.
 * @source bigelow-1920, general method
 */
export function curveLethalityMin(
  { temperaturesC, stepS }: { readonly temperaturesC: Float64Array; readonly stepS: number },
  model: LethalityModel,
): number {
  requireLethalityModel(model)
  const k = Math.LN10 / model.zDeltaC
  let sum = 0
  let from = Math.exp(k * (temperaturesC[0]! - model.referenceC))
  for (let i = 1; i < temperaturesC.length; i += 1) {
    const to = Math.exp(k * (temperaturesC[i]! - model.referenceC))
    const x = k * (temperaturesC[i]! - temperaturesC[i - 1]!)
    // (e^x - 1)/x by its series where the difference of two rates would lose digits.
    sum += Math.abs(x) < 1e-3 ? from * (1 + x / 2 + (x * x) / 6) : (to - from) / x
    from = to
  }
  return (sum * stepS) / 60
}

/**
 * Share of a substance left after a curve, 10^(-minutes at the reference / D). [fraction]
 *
 * Thiamine after 60 min at 115.6 °C: 58.8 %.
 *
 * @throws {ValidRangeError} for kinetics out of range.
 * @source crc-kinetics-table-10-10 for thiamine; first order
 */
export function keptFraction(
  curve: { readonly temperaturesC: Float64Array; readonly stepS: number },
  { dMin, zDeltaC, referenceC }: Kinetics,
): number {
  return 10 ** (-curveLethalityMin(curve, { zDeltaC, referenceC }) / dMin)
}
