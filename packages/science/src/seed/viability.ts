/**
 * How long seed keeps its life: the improved viability equation. Rival equations would stand beside it, named by author
 * and year. Leaves out: how a lot's own tests move the answer (ageing-belief.ts); what kept the seed dry.
 */
import { dryToWetFraction, equilibriumMoistureHendersonDryFraction } from '../drying/equilibrium-moisture.ts'
import { requireInRange } from '../errors.ts'
import { normalCdfFraction, normalQuantile } from '../statistics/normal.ts'
import {
  FLOOR_RELATIVE_HUMIDITY,
  MAIZE_LONGEVITY,
  MAIZE_LONGEVITY_2007,
  MOISTURE_CEILING_WET_FRACTION,
} from './maize-longevity.ts'

export interface StorageCondition {
  /** Moisture of the kernels, wet basis. [fraction] Valid: 0.02 to 0.18; below the floor counts as the floor. */
  readonly wetFraction: number
  /** [°C] Valid: -20 to 40. */
  readonly temperatureC: number
}

export const SEED_MOISTURE = {
  min: 0.02,
  max: MOISTURE_CEILING_WET_FRACTION,
  unit: 'of seed weight, wet basis',
  source: 'project-rule',
} as const
export const SEED_TEMPERATURE_C = { min: -20, max: 40, unit: '°C', source: 'ellis-roberts-1980' } as const

/**
 * Moisture below which drying maize further buys no more life. [fraction, wet basis]  At 20 °C: 0.046, at 0 °C: 0.054.
 *
 * @param temperatureC [°C] Valid: -20 to 40. Below 0 °C, where the isotherm has no data, the floor of 0 °C stands.
 * @throws {ValidRangeError} outside that range.
 * @source ellis-hong-roberts-1989 for the humidity, asae-d245 (modified Henderson, yellow dent) for the moisture
 */
export function moistureFloorWetFraction(temperatureC: number): number {
  requireInRange('temperatureC', temperatureC, SEED_TEMPERATURE_C)
  const air = { temperatureC: Math.max(0, temperatureC), humidityFraction: FLOOR_RELATIVE_HUMIDITY }
  return dryToWetFraction(equilibriumMoistureHendersonDryFraction(air))
}

/**
 * Days in store in which maize loses one probit of life: 84 % becomes 50 %. [days]
 *
 * 12 % moisture at 20 °C: 269.79 days.
 *
 * @throws {ValidRangeError} outside the ranges of StorageCondition.
 * @source ellis-roberts-1980, constants of hong-1996 and dickie-1990
 */
export function probitDaysEllisRoberts1980(store: StorageCondition): number {
  requireInRange('temperatureC', store.temperatureC, SEED_TEMPERATURE_C)
  return probitDays(store, MAIZE_LONGEVITY)
}

/** Where the later constants were fitted, as far as our own ceiling. */
export const SEED_TEMPERATURE_2007_C = { min: 0, max: 40, unit: '°C', source: 'ellis-hong-2007' } as const

/**
 * Days in store in which maize loses one probit of life, by the constants printed in 2007. [days]  Shown beside the other
 * set, never in its place: it gives the longer life throughout, and maize kept cold for decades lived shorter than either.
 *
 * 12 % moisture at 20 °C: 501.03 days.
 *
 * @throws {ValidRangeError} outside 0 to 40 °C, or the moisture of StorageCondition.
 * @source ellis-roberts-1980, constants of ellis-hong-2007
 */
export function probitDaysEllisHong2007(store: StorageCondition): number {
  requireInRange('temperatureC', store.temperatureC, SEED_TEMPERATURE_2007_C)
  return probitDays(store, MAIZE_LONGEVITY_2007)
}

type LongevityConstants = Record<'KE' | 'CW' | 'CH' | 'CQ', number>

function probitDays(
  { wetFraction, temperatureC: t }: StorageCondition,
  { KE, CW, CH, CQ }: LongevityConstants,
): number {
  requireInRange('wetFraction', wetFraction, SEED_MOISTURE)
  const m = 100 * Math.max(wetFraction, moistureFloorWetFraction(t))
  return 10 ** (KE - CW * Math.log10(m) - CH * t - CQ * t ** 2)
}

export interface StoragePeriod extends StorageCondition {
  /** [days] Valid: 0 to 73 050, two hundred years. */
  readonly days: number
}

const DAYS = { min: 0, max: 73_050, unit: 'days', source: 'project-rule' } as const

/**
 * Probits of life lost over periods in store, one after the other: the sum of days over the days of a probit. [probits]
 *
 * @throws {ValidRangeError} outside the ranges of StoragePeriod.
 * @source ellis-roberts-1980: each period takes its own share, whatever came before
 */
export function probitsLost(periods: readonly StoragePeriod[]): number {
  return periods.reduce((sum, period) => {
    requireInRange('days', period.days, DAYS)
    return sum + period.days / probitDaysEllisRoberts1980(period)
  }, 0)
}

/**
 * Share that still germinates after periods in store. [fraction]
 *
 * 98 % at the start, 365 days at 12 % and 20 °C: 75.83 %.
 *
 * @param startFraction germination at the start. [fraction] Valid: 0.001 to 0.999; 0 and 1 have no finite probit.
 * @throws {ValidRangeError} outside those ranges.
 * @source ellis-roberts-1980
 */
export function viabilityEllisRoberts1980(startFraction: number, periods: readonly StoragePeriod[]): number {
  return normalCdfFraction(startProbits(startFraction) - probitsLost(periods))
}

/** The lot's constant Ki. [probits, without the five of older papers]  @source ellis-roberts-1980 */
function startProbits(startFraction: number): number {
  requireInRange('startFraction', startFraction, {
    min: 0.001,
    max: 0.999,
    unit: 'fraction',
    source: 'ellis-roberts-1980',
  })
  return normalQuantile(startFraction)
}

export interface LifeWanted {
  readonly startFraction: number
  readonly endFraction: number
}

function probitsToLose({ startFraction, endFraction }: LifeWanted): number {
  const start = startProbits(startFraction)
  requireInRange('endFraction', endFraction, {
    min: 0.001,
    max: startFraction,
    unit: 'fraction',
    source: 'ellis-roberts-1980',
  })
  return start - normalQuantile(endFraction)
}

/**
 * Days until germination has fallen from one share to another in a constant store. [days]
 *
 * 98 to 85 % at 8 % and 5 °C: 25.9 years.
 *
 * @throws {ValidRangeError} outside the ranges of StorageCondition, or when the end is above the start.
 * @source ellis-roberts-1980
 */
export function daysToViability(life: LifeWanted, store: StorageCondition): number {
  return probitsToLose(life) * probitDaysEllisRoberts1980(store)
}

/**
 * Wettest seed that still falls no lower in so many days, at one temperature. [fraction, wet basis]
 *
 * 98 to 85 % over two years at 20 °C: 0.0983.
 *
 * @throws {ValidRangeError} outside the ranges above, or where no moisture from the floor to 0.18 does it.
 * @source ellis-roberts-1980 solved for moisture
 */
export function wettestForLifeWetFraction(life: LifeWanted, days: number, temperatureC: number): number {
  requireInRange('days', days, { ...DAYS, min: 1 })
  requireInRange('temperatureC', temperatureC, SEED_TEMPERATURE_C)
  const { KE, CW, CH, CQ } = MAIZE_LONGEVITY
  const logSigma = Math.log10(days / probitsToLose(life))
  const wetFraction = 10 ** ((KE - CH * temperatureC - CQ * temperatureC ** 2 - logSigma) / CW) / 100
  requireInRange('wetFraction', wetFraction, { ...SEED_MOISTURE, min: moistureFloorWetFraction(temperatureC) })
  return wetFraction
}

/**
 * Warmest store in which seed of one moisture still falls no lower in so many days. [°C]
 *
 * 98 to 85 % over three years at 12 %: 6.85 °C.
 *
 * @throws {ValidRangeError} outside the ranges above, or where no temperature from -20 to 40 °C does it.
 * @source ellis-roberts-1980 solved for temperature
 */
export function warmestForLifeC(life: LifeWanted, days: number, wetFraction: number): number {
  requireInRange('days', days, { ...DAYS, min: 1 })
  requireInRange('wetFraction', wetFraction, SEED_MOISTURE)
  const { KE, CW, CH, CQ } = MAIZE_LONGEVITY
  const rest = Math.log10(days / probitsToLose(life)) - KE + CW * Math.log10(100 * wetFraction)
  const temperatureC = (-CH + Math.sqrt(CH ** 2 - 4 * CQ * rest)) / (2 * CQ)
  requireInRange('temperatureC', temperatureC, SEED_TEMPERATURE_C)
  return temperatureC
}
