/**
 * How fast heat softens food and takes thiamine from it, as a z with its published spread. Nothing was measured on hominy:
 * the figures are of beans, beets, broccoli, carrots and of carrot puree, and no time is set from them.
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import type { LethalityModel } from '../lethality/lethal-rate.ts'
import type { LowMidHigh } from './jar-materials.ts'

/** R. [J/(mol K)] Exact since 2019, shortened. */
const GAS_CONSTANT = 8.314463
const KELVIN = 273.15
const ENERGY: ValidRange = { min: 10, max: 500, unit: 'kJ/mol', source: 'project-rule' }
const TEMPERATURE_C: ValidRange = { min: 0, max: 150, unit: '°C', source: 'project-rule' }

/**
 * z that gives the same ratio of two rates as an activation energy does between two temperatures. [°C]
 *
 * z = ln 10 R T1 T2 / Ea. 94.9 kJ/mol between 100 and 121.1 °C: 29.7.
 *
 * @param activationKJPerMol Ea. [kJ/mol] Valid: 10 to 500.
 * @param between the two temperatures. [°C] Valid: 0 to 150.
 * @throws {ValidRangeError} outside those ranges.
 * @source none: Arrhenius and Bigelow set equal at two temperatures
 */
export function zOfActivationEnergyDeltaC(activationKJPerMol: number, between: readonly [number, number]): number {
  requireInRange('activationKJPerMol', activationKJPerMol, ENERGY)
  const [T1, T2] = between.map((temperatureC) => {
    requireInRange('between', temperatureC, TEMPERATURE_C)
    return temperatureC + KELVIN
  }) as [number, number]
  return (Math.LN10 * GAS_CONSTANT * T1 * T2) / (activationKJPerMol * 1000)
}

/** What jars of vegetables are held at lies between. [°C] */
const CANNING_C = [100, 121.1] as const

/** Cook value: minutes at 100 °C that cook as much, z 33 °C. The usual convention of the trade, from memory. */
export const COOK_VALUE: LethalityModel = { zDeltaC: 33, referenceC: 100 }

/**
 * z of softening: from beans (171.5 kJ/mol) to broccoli (54.4), one author's times until cooked; the convention between.
 * @source lee-2017-texture table 1
 */
export const COOKED_Z_DELTA_C: LowMidHigh = {
  low: zOfActivationEnergyDeltaC(171.5, CANNING_C),
  mid: COOK_VALUE.zDeltaC,
  high: zOfActivationEnergyDeltaC(54.4, CANNING_C),
}

/**
 * z of the loss of thiamine: 25 °C in carrot puree; published activation energies run from 33 to 124 kJ/mol.
 * @source crc-kinetics-table-10-10; ramaswamy-1990 for the spread
 */
export const THIAMINE_Z_DELTA_C: LowMidHigh = {
  low: zOfActivationEnergyDeltaC(124, CANNING_C),
  mid: 25,
  high: zOfActivationEnergyDeltaC(33, CANNING_C),
}
