/**
 * Further equations of equilibrium moisture, beside the two of equilibrium-moisture.ts. All on the dry basis, T in °C.
 * Oswin has constants for yellow dent corn, from memory. For Halsey and GAB no constants of corn were found, so these two
 * take the constants of whoever measured a flour or a hominy. Leaves out: choosing among the models.
 */
import { requireInRange } from '../errors.ts'
import type { Air } from './equilibrium-moisture.ts'

const OSWIN = { A: 15.303, B: -0.10164, C: 3.0358 } as const

/**
 * Equilibrium moisture of shelled corn by the modified Oswin equation, dry basis. [kg water/kg dry matter]
 *
 * M = (A + B T) [RH/(1 - RH)]^(1/C), M in percent. At 20 °C and 65 %: 0.16272. Constants from memory, not re-read.
 *
 * @throws {ValidRangeError} outside 0 to 60 °C and 0.10 to 0.90 humidity.
 * @source asae-d245 modified Oswin, yellow dent, from memory
 */
export function equilibriumMoistureOswinDryFraction({ temperatureC: T, humidityFraction: RH }: Air): number {
  requireAir({ temperatureC: T, humidityFraction: RH })
  const { A, B, C } = OSWIN
  return ((A + B * T) * (RH / (1 - RH)) ** (1 / C)) / 100
}

/** Constants of a modified Halsey equation, fitted with M in percent dry basis and T in °C. */
export interface HalseyConstants {
  readonly A: number
  readonly B: number
  readonly C: number
}

/**
 * Equilibrium moisture by the modified Halsey equation with measured constants, dry basis. [kg water/kg dry matter]
 *
 * M = [-exp(A + B T) / ln RH]^(1/C), M in percent.
 *
 * @throws {ValidRangeError} outside 0 to 60 °C and 0.10 to 0.90 humidity, or where C is not above 0.
 * @source asae-d245 form of the modified Halsey equation
 */
export function equilibriumMoistureHalseyDryFraction(air: Air, { A, B, C }: HalseyConstants): number {
  requireAir(air)
  requireInRange('C', C, { min: 1e-6, max: 100, unit: '', source: 'project-rule' })
  return (-Math.exp(A + B * air.temperatureC) / Math.log(air.humidityFraction)) ** (1 / C) / 100
}

/** Constants of a GAB equation at one temperature. */
export interface GabConstants {
  /** Moisture of one layer, dry basis. [fraction] */
  readonly monolayerDryFraction: number
  readonly C: number
  readonly k: number
}

/**
 * Equilibrium moisture by the GAB equation with measured constants, dry basis. [kg water/kg dry matter]
 *
 * M = Mm C k RH / [(1 - k RH)(1 - k RH + C k RH)]. With k = 1 it is the BET equation.
 *
 * @throws {ValidRangeError} outside 0.01 to 0.97 humidity, or where k RH reaches 1.
 * @source gab-form
 */
export function equilibriumMoistureGabDryFraction(
  humidityFraction: number,
  { monolayerDryFraction: Mm, C, k }: GabConstants,
): number {
  requireInRange('humidityFraction', humidityFraction, { min: 0.01, max: 0.97, unit: 'humidity', source: 'gab-form' })
  const x = k * humidityFraction
  requireInRange('k times humidity', x, { min: 0, max: 0.999, unit: '', source: 'gab-form' })
  return (Mm * C * x) / ((1 - x) * (1 - x + C * x))
}

function requireAir({ temperatureC, humidityFraction }: Air): void {
  requireInRange('temperatureC', temperatureC, { min: 0, max: 60, unit: '°C', source: 'asae-d245' })
  requireInRange('humidityFraction', humidityFraction, { min: 0.1, max: 0.9, unit: 'humidity', source: 'asae-d245' })
}
