/**
 * How long shelled corn keeps its quality by moisture and temperature: days until half a percent of the dry matter is gone.
 * A clock of mould and dry matter, never a word on whether the corn may be eaten. Rival works are rival functions; the one
 * to show is the shorter (allowable-storage.ts). Leaves out: ear corn, insects, and rain in the crib.
 */

import { wetToDryFraction } from '../drying/equilibrium-moisture.ts'
import { requireInRange } from '../errors.ts'
import { cToF } from '../units/convert-named.ts'

export interface StoredCorn {
  /** Of the grain, not of the air. [°C] */
  readonly temperatureC: number
  /** Water over total weight. [fraction] */
  readonly wetFraction: number
}

/** Machine-shelled corn as the tables were made; sound hand-shelled corn has about 0.02. [fraction of kernels] */
export const TABLE_DAMAGE_FRACTION = 0.3

/**
 * Dry matter lost after an equivalent time. [fraction]
 *
 * DML % = 0.0884 [exp(0.006 te) - 1] + 0.00102 te, te in hours at 60 °F, 25 %, 30 % damage. 230.77 h: 0.5 %.
 *
 * @param equivalentHours Valid: 0 to 1000.
 * @throws {ValidRangeError} outside that range.
 * @source thompson-1972
 */
export function dryMatterLossFraction(equivalentHours: number): number {
  requireInRange('equivalentHours', equivalentHours, { min: 0, max: 1000, unit: 'h', source: 'thompson-1972' })
  return (0.0884 * (Math.exp(0.006 * equivalentHours) - 1) + 0.00102 * equivalentHours) / 100
}

/** te at 0.5 % dry-matter loss: the root of dryMatterLossFraction. [h] */
const HALF_PERCENT_H = 230.7703

/**
 * Days until 0.5 % of the dry matter is gone, shelled corn. [days]
 *
 * Steele, Saul and Hukill 1969 with Thompson 1972 as in ASAE D535: reference hours times a multiplier each for moisture,
 * temperature and damage. 16 %, 60 °F, 30 % damage: 151.9 days. Equations from memory, borne out by the printed tables.
 * Above 60 °F and 19 % the equations jump up by a few percent; never longer than at 60 °F is used there (project rule).
 *
 * @param corn Valid: 35 to 100 °F (1.6 to 37.8 °C), 0.13 to 0.28.
 * @param damageFraction share of kernels cracked or broken. [fraction] Valid: 0 to 0.4.
 * @throws {ValidRangeError} outside those ranges.
 * @source asae-d535 with thompson-1972, from memory; confirmed from 16 % up by midwest-storage-table
 */
export function storageDaysThompson1972(
  { temperatureC, wetFraction }: StoredCorn,
  damageFraction: number = TABLE_DAMAGE_FRACTION,
): number {
  const source = 'asae-d535'
  requireInRange('temperatureC', temperatureC, { min: 1.6, max: 37.8, unit: '°C', source })
  requireInRange('wetFraction', wetFraction, { min: 0.13, max: 0.28, unit: 'of total weight', source })
  requireInRange('damageFraction', damageFraction, { min: 0, max: 0.4, unit: 'of kernels', source })
  const F = cToF(temperatureC)
  const Mdb = 100 * wetToDryFraction(wetFraction)
  const moisture = 0.103 * (Math.exp(455 / Mdb ** 1.53) - 0.00845 * Mdb + 1.558)
  const damage = 2.08 * Math.exp(-0.0239 * 100 * damageFraction)
  const warmth = F <= 60 ? coolMultiplier(F) : Math.min(coolMultiplier(60), warmMultiplier(F, 100 * wetFraction))
  return (HALF_PERCENT_H * moisture * warmth * damage) / 24
}

function coolMultiplier(F: number): number {
  return 128.76 * Math.exp(-0.081 * F)
}

function warmMultiplier(F: number, Mwb: number): number {
  const extra = Mwb <= 19 ? 0 : ((Mwb - 19) / 100) * Math.exp((0.61 * (F - 60)) / 60)
  return 32.3 * Math.exp((-3.48 * F) / 60) + extra
}

/**
 * Days of allowable storage by a later fit to printed tables. [days]
 *
 * exp(2.64661 - 0.14096 T + 1183.71996/M^2), M in percent wet basis, T in °C. 16 %, 15.6 °C: 158 days.
 *
 * @param corn Valid: 0 to 30 °C and 0.14 to 0.28, the span of the tables it was fitted to as far as seen (project rule).
 * @throws {ValidRangeError} outside those ranges.
 * @source adams-rosentrater-ast
 */
export function storageDaysAdamsRosentrater({ temperatureC, wetFraction }: StoredCorn): number {
  const source = 'adams-rosentrater-ast'
  requireInRange('temperatureC', temperatureC, { min: 0, max: 30, unit: '°C', source })
  requireInRange('wetFraction', wetFraction, { min: 0.14, max: 0.28, unit: 'of total weight', source })
  return Math.exp(2.64661 - 0.14096 * temperatureC + 1183.71996 / (100 * wetFraction) ** 2)
}

const NDSU_F = [30, 40, 50, 60, 70, 80] as const
/** Days; null where the table prints "over 300". */
const NDSU_DAYS: readonly (readonly [number, readonly (number | null)[]])[] = [
  [14, [null, null, null, null, 200, 140]],
  [15, [null, null, null, 240, 125, 70]],
  [16, [null, null, 230, 120, 70, 40]],
  [18, [null, 200, 90, 50, 30, 15]],
  [20, [null, 90, 50, 25, 14, 7]],
  [24, [130, 40, 15, 10, 6, 2]],
  [28, [70, 30, 10, 7, 4, 2]],
]

/**
 * Days of storage by North Dakota's printed table: the cell at or just beyond this moisture and warmth, never between. [days]
 * Null where that cell prints "over 300".
 *
 * @param corn Valid: up to 80 °F (26.7 °C) and 0.28; drier and cooler corn reads the first column and row.
 * @throws {ValidRangeError} warmer, wetter, or no number.
 * @source ndsu-drying-2019 approximate days of storage
 */
export function storageDaysNdsu2019({ temperatureC, wetFraction }: StoredCorn): number | null {
  const source = 'ndsu-drying-2019'
  requireInRange('temperatureC', temperatureC, { min: -60, max: 26.7, unit: '°C', source })
  requireInRange('wetFraction', wetFraction, { min: 0, max: 0.28, unit: 'of total weight', source })
  // A hundredth of a degree or of a point forgives what conversion leaves behind.
  const column = NDSU_F.findIndex((F) => cToF(temperatureC) <= F + 0.05)
  const row = NDSU_DAYS.find(([percent]) => 100 * wetFraction <= percent + 1e-6)
  return row?.[1][column] ?? null
}
