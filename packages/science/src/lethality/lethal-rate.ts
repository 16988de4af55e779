/**
 * Lethal rate: minutes at the reference temperature worth one minute at another, for a given z.
 * Used to explain (altitude, air, gauge error). It never sets, stretches or rescues a process.
 */
import { requireInRange, type ValidRange } from '../errors.ts'

export interface LethalityModel {
  /** z, degrees per tenfold change of the death rate. [°C difference] Valid: 1 to 60. */
  readonly zDeltaC: number
  /** Temperature at which one minute counts as one. [°C] Valid: 0 to 150. */
  readonly referenceC: number
}

/** z 18 °F, reference 250 °F, which is 121.111 °C: the model of the printed tables and the one this project shows. */
export const LETHALITY_250F: LethalityModel = { zDeltaC: 10, referenceC: (250 - 32) / 1.8 }

/** z 10 °C, reference 121.1 °C: gives figures 0.26 % higher than LETHALITY_250F. */
export const LETHALITY_121_1C: LethalityModel = { zDeltaC: 10, referenceC: 121.1 }

export const LETHALITY_TEMPERATURE_C: ValidRange = { min: 0, max: 150, unit: '°C', source: 'project-rule' }
const Z_DELTA_C: ValidRange = { min: 1, max: 100, unit: '°C', source: 'project-rule' }

/** @throws {ValidRangeError} unless z is 1 to 100 °C and the reference 0 to 150 °C. */
export function requireLethalityModel({ zDeltaC, referenceC }: LethalityModel): void {
  requireInRange('zDeltaC', zDeltaC, Z_DELTA_C)
  requireInRange('referenceC', referenceC, LETHALITY_TEMPERATURE_C)
}

/**
 * Lethal rate L = 10^((T - T_ref)/z). [minutes at the reference per minute]
 *
 * 240 °F with z 18 °F and reference 250 °F: 0.27826.
 *
 * @param temperatureC T. [°C] Valid: 0 to 150.
 * @throws {ValidRangeError} outside that range, or for a model out of range.
 * @source bigelow-1920, general method
 */
export function lethalRate(temperatureC: number, model: LethalityModel): number {
  requireInRange('temperatureC', temperatureC, LETHALITY_TEMPERATURE_C)
  requireLethalityModel(model)
  return 10 ** ((temperatureC - model.referenceC) / model.zDeltaC)
}
