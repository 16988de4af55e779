/**
 * Equilibrium moisture of shelled corn: where its moisture settles in still air of one temperature and humidity.
 * The two equations of the standard stand side by side, named for their models. Both work on the dry basis; the wet
 * basis is what the trade speaks. Leaves out: how long it takes, ear corn, hominy, and the hysteresis of wetting.
 */
import { requireInRange } from '../errors.ts'

export interface Air {
  /** [°C] Valid: 0 to 60. */
  readonly temperatureC: number
  /** Relative humidity over water. [fraction] Valid: 0.10 to 0.90. */
  readonly humidityFraction: number
}

const SOURCE = 'asae-d245'
/** Yellow dent; flint may lie half a point to a point below. */
const HENDERSON = { K: 8.6541e-5, N: 1.8634, C: 49.81 } as const
const CHUNG_PFOST = { A: 312.3, B: 0.1696, C: 30.205 } as const

/**
 * Equilibrium moisture of shelled corn, dry basis, by the modified Henderson equation. [kg water/kg dry matter]
 *
 * M = [-ln(1 - RH) / (K (T + C))]^(1/N), M in percent dry basis, T in °C. At 20 °C and 65 %: 0.15925.
 *
 * @throws {ValidRangeError} outside 0 to 60 °C and 0.10 to 0.90 humidity.
 * @source asae-d245 modified Henderson, yellow dent; every cell of grain-fan-manual-emc is met by it
 */
export function equilibriumMoistureHendersonDryFraction({ temperatureC: T, humidityFraction: RH }: Air): number {
  requireAir(T, RH)
  const { K, N, C } = HENDERSON
  return (-Math.log(1 - RH) / (K * (T + C))) ** (1 / N) / 100
}

/**
 * Equilibrium moisture of shelled corn, dry basis, by the modified Chung-Pfost equation. [kg water/kg dry matter]
 *
 * M = -(1/B) ln[-(T + C) ln RH / A], M in percent dry basis, T in °C. At 20 °C and 65 %: 0.15743.
 *
 * @throws {ValidRangeError} outside 0 to 60 °C and 0.10 to 0.90 humidity.
 * @source asae-d245 modified Chung-Pfost, yellow dent; A and B from memory, borne out by the explicit form seen
 */
export function equilibriumMoistureChungPfostDryFraction({ temperatureC: T, humidityFraction: RH }: Air): number {
  requireAir(T, RH)
  const { A, B, C } = CHUNG_PFOST
  return -Math.log((-(T + C) * Math.log(RH)) / A) / B / 100
}

/**
 * Relative humidity that holds shelled corn at a moisture, by the modified Henderson equation. [fraction]
 *
 * RH = 1 - exp[-K (T + C) M^N]. Corn at 13 % wet basis and 20 °C: 0.6064.
 *
 * @param wetFraction moisture, water over total weight. [fraction] Valid: 0.02 to 0.27.
 * @throws {ValidRangeError} outside those ranges and 0 to 60 °C.
 * @source asae-d245 modified Henderson, yellow dent
 */
export function equilibriumHumidityFraction(wetFraction: number, temperatureC: number): number {
  requireTemperature(temperatureC)
  requireInRange('wetFraction', wetFraction, { min: 0.02, max: 0.27, unit: 'of total weight', source: SOURCE })
  const { K, N, C } = HENDERSON
  const M = 100 * wetToDryFraction(wetFraction)
  return 1 - Math.exp(-K * (temperatureC + C) * M ** N)
}

/**
 * Moisture on the wet basis from the dry basis: M / (1 + M). [fraction]  0.151 dry is 0.131 wet.
 *
 * @param dryFraction water over dry matter. [fraction] Valid: 0 to 19.
 * @throws {ValidRangeError} outside that range.
 * @source none: definition of the two bases
 */
export function dryToWetFraction(dryFraction: number): number {
  requireInRange('dryFraction', dryFraction, { min: 0, max: 19, unit: 'of dry matter', source: 'project-rule' })
  return dryFraction / (1 + dryFraction)
}

/**
 * Moisture on the dry basis from the wet basis: M / (1 - M). [fraction]  0.13 wet is 0.14943 dry.
 *
 * @param wetFraction water over total weight. [fraction] Valid: 0 to 0.95.
 * @throws {ValidRangeError} outside that range.
 * @source none: definition of the two bases
 */
export function wetToDryFraction(wetFraction: number): number {
  requireInRange('wetFraction', wetFraction, { min: 0, max: 0.95, unit: 'of total weight', source: 'project-rule' })
  return wetFraction / (1 - wetFraction)
}

function requireAir(temperatureC: number, humidityFraction: number): void {
  requireTemperature(temperatureC)
  requireInRange('humidityFraction', humidityFraction, { min: 0.1, max: 0.9, unit: 'humidity', source: SOURCE })
}

function requireTemperature(temperatureC: number): void {
  requireInRange('temperatureC', temperatureC, { min: 0, max: 60, unit: '°C', source: SOURCE })
}
