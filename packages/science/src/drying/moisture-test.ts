/**
 * What a home test of moisture says, each with how far it can be trusted. All give the wet basis.
 * Leaves out: the microwave, for which no accuracy on corn is published.
 */
import { requireInRange, ValidRangeError } from '../errors.ts'
import { dryToWetFraction, equilibriumMoistureHendersonDryFraction } from './equilibrium-moisture.ts'

/** Weights of one dish, all on the same scale. [g] */
export interface OvenDish {
  readonly dishG: number
  readonly withWetG: number
  readonly withDryG: number
}

/**
 * Moisture by the oven, wet basis: weight lost over weight put in. [fraction]
 *
 * Whole corn, 103 °C, 72 h, 15 g or more. A 50 g dish, 80 g with corn, 76.1 g after: 3.9 of 30 g, 0.13.
 *
 * @throws {ValidRangeError} when a weight rises while drying, or nothing was in the dish.
 * @source asae-s352
 */
export function ovenMoistureWetFraction({ dishG, withWetG, withDryG }: OvenDish): number {
  const unit = 'g'
  requireInRange('dishG', dishG, { min: 0, max: 1e5, unit, source: 'project-rule' })
  requireInRange('withWetG', withWetG, { min: dishG + 1e-6, max: 1e5, unit, source: 'project-rule' })
  requireInRange('withDryG', withDryG, { min: dishG + 1e-6, max: withWetG, unit, source: 'project-rule' })
  return (withWetG - withDryG) / (withWetG - dishG)
}

/** How far two dishes of one lot may differ. [fraction]  0.2 of a point.  @source asae-s352 */
export const OVEN_REPLICATE_FRACTION = 0.002

/**
 * Moisture now, from moisture and weight before, when only water went. [fraction]
 *
 * M = 1 - m0 (1 - M0)/m. 10 kg at 18 % that now weighs 9.425 kg stands at 13 %.
 *
 * @param nowKg Valid: from the dry matter alone up to `startKg`: corn that gained weight took up water, or the scale was not the same.
 * @throws {ValidRangeError} outside those ranges.
 * @source hicks-cloud-nch-61
 */
export function moistureByWeightWetFraction({
  startKg,
  startWetFraction,
  nowKg,
}: {
  readonly startKg: number
  readonly startWetFraction: number
  readonly nowKg: number
}): number {
  requireInRange('startKg', startKg, { min: 1e-6, max: 1e6, unit: 'kg', source: 'project-rule' })
  requireInRange('startWetFraction', startWetFraction, {
    min: 0,
    max: 0.95,
    unit: 'of total weight',
    source: 'project-rule',
  })
  const dryKg = startKg * (1 - startWetFraction)
  // A billionth either way forgives what working in binary leaves behind; no scale shows it.
  const range = { min: dryKg * (1 - 1e-9), max: startKg * (1 + 1e-9), unit: 'kg', source: 'hicks-cloud-nch-61' }
  requireInRange('nowKg', nowKg, range)
  return Math.max(0, 1 - dryKg / nowKg)
}

export interface JarReading {
  readonly temperatureC: number
  /** As the hygrometer in the closed jar reads. [fraction] */
  readonly readsFraction: number
  /** What the same hygrometer read over wet salt at the same warmth; left out, it is taken as true. [fraction] */
  readonly overSaltFraction?: number
}

/** Width of this test. [fraction of total weight]  About a point either way. */
export const JAR_TEST_FRACTION = 0.01

/**
 * Moisture from a hygrometer in a closed jar of kernels, wet basis. [fraction]
 *
 * The reading, less the hygrometer's error over wet table salt, through the equilibrium of shelled corn. 25 °C, 65 %: 0.133.
 *
 * @throws {ValidRangeError} outside 10 to 25 °C with a salt reading (the salt's table ends there), 0 to 60 °C without,
 *   humidity 0.10 to 0.90; where the hygrometer is more than 0.15 off over salt.
 * @source jar-hygrometer-purdue; salt by greenspan-1977; equilibrium by asae-d245
 */
export function jarMoistureWetFraction({ temperatureC, readsFraction, overSaltFraction }: JarReading): number {
  const errorFraction = overSaltFraction === undefined ? 0 : overSaltFraction - saltHumidityFraction(temperatureC)
  if (Math.abs(errorFraction) > 0.15) {
    const range = { min: -0.15, max: 0.15, unit: 'humidity off', source: 'project-rule' }
    throw new ValidRangeError('overSaltFraction', errorFraction, range)
  }
  const humidityFraction = readsFraction - errorFraction
  return dryToWetFraction(equilibriumMoistureHendersonDryFraction({ temperatureC, humidityFraction }))
}

/**
 * Humidity over wet table salt. [fraction]  25 °C: 0.753; 20 °C: 0.757; a straight line between, and on to 30 and 10 °C.
 *
 * @throws {ValidRangeError} outside 10 to 30 °C.
 * @source greenspan-1977
 */
export function saltHumidityFraction(temperatureC: number): number {
  requireInRange('temperatureC', temperatureC, { min: 10, max: 30, unit: '°C', source: 'greenspan-1977' })
  return 0.757 - ((temperatureC - 20) / 5) * 0.004
}

/**
 * Wettest corn a clean salt jar can hide, wet basis. [fraction]  25 °C: 0.152; 20 °C: 0.157.
 *
 * Salt takes up water only above its own humidity: a clean jar says "not above this", never "dry enough".
 *
 * @throws {ValidRangeError} outside 10 to 30 °C.
 * @source greenspan-1977; asae-d245
 */
export function cleanSaltJarWetFraction(temperatureC: number): number {
  const humidityFraction = saltHumidityFraction(temperatureC)
  return dryToWetFraction(equilibriumMoistureHendersonDryFraction({ temperatureC, humidityFraction }))
}
