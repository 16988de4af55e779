/**
 * The storage time to show, and how much of it a real history has used. Shows the shorter of the published figures and
 * names which one it was. Leaves out: deciding anything; a lot past its time is looked at and smelled.
 */
import { requireInRange } from '../errors.ts'
import { type StoredCorn, storageDaysNdsu2019, storageDaysThompson1972, TABLE_DAMAGE_FRACTION } from './storage-life.ts'

/** Which published figure was the shorter. */
export type StorageFigure = 'asae-d535' | 'ndsu-drying-2019'

/** How the corn lies outside the tables, where it does: it is then counted as at their edge, which is the shorter time. */
export type CountedAs = 'drier-as-13-percent' | 'colder-as-35-f'

export interface AllowableStorage {
  readonly days: number
  readonly figure: StorageFigure
  readonly countedAs: readonly CountedAs[]
}

const DRIEST_FRACTION = 0.13
/** 35 °F, where the equations begin. [°C] */
const COLDEST_C = 5 / 3
/** 80 °F, where the printed table ends. [°C] */
const WARMEST_PRINTED_C = 80 / 3

/**
 * Days until 0.5 % of the dry matter is gone: the shorter of the equations and North Dakota's printed table. [days]
 *
 * Never longer than printed: drier than 13 % counts as 13 %, colder than 35 °F as 35 °F, and both are said.
 * 18 %, 60 °F: 50 days, the table; the equations say 58. Above 80 °F the table's 80 °F column still bounds it.
 *
 * @param corn Valid: -40 to 37.8 °C, 0.05 to 0.28.
 * @throws {ValidRangeError} outside those ranges: above 28 % or 100 °F nothing is printed, and drying cannot wait.
 * @source asae-d535; ndsu-drying-2019
 */
export function allowableStorage(
  { temperatureC, wetFraction }: StoredCorn,
  damageFraction: number = TABLE_DAMAGE_FRACTION,
): AllowableStorage {
  requireInRange('temperatureC', temperatureC, { min: -40, max: 37.8, unit: '°C', source: 'asae-d535' })
  requireInRange('wetFraction', wetFraction, { min: 0.05, max: 0.28, unit: 'of total weight', source: 'asae-d535' })
  const counted = {
    temperatureC: Math.max(temperatureC, COLDEST_C),
    wetFraction: Math.max(wetFraction, DRIEST_FRACTION),
  }
  const countedAs: CountedAs[] = [
    ...(wetFraction < DRIEST_FRACTION ? (['drier-as-13-percent'] as const) : []),
    ...(temperatureC < COLDEST_C ? (['colder-as-35-f'] as const) : []),
  ]
  const model = storageDaysThompson1972(counted, damageFraction)
  // The printed table ends at 80 °F; warmer corn keeps no longer than its 80 °F column says.
  const inTable = { ...counted, temperatureC: Math.min(counted.temperatureC, WARMEST_PRINTED_C) }
  const printed = wetFraction > DRIEST_FRACTION ? storageDaysNdsu2019(inTable) : null
  if (printed !== null && printed < model) return { days: printed, figure: 'ndsu-drying-2019', countedAs }
  return { days: model, figure: 'asae-d535', countedAs }
}

/** Corn that lay so for a while. */
export interface StorageSpell extends StoredCorn {
  readonly days: number
}

export interface StorageUsed {
  /** Share of the allowable time that is gone; above 1 when it is over. [fraction] */
  readonly usedFraction: number
  /** Days left if it stays as in `next`. [days]  Never below 0. */
  readonly leftDays: number
  readonly countedAs: readonly CountedAs[]
}

/**
 * Share of the storage life used by a history, summed over its spells, and the days left in what comes next.
 *
 * Sum of days/allowable days. Half used at one place leaves half of what the next place allows.
 *
 * @param history in any order; days 0 and above. Valid as allowableStorage.
 * @throws {ValidRangeError} as allowableStorage, or for days below 0.
 * @source mcneill-late-season
 */
export function storageUsed(
  history: readonly StorageSpell[],
  next: StoredCorn,
  damageFraction: number = TABLE_DAMAGE_FRACTION,
): StorageUsed {
  const countedAs = new Set<CountedAs>()
  let usedFraction = 0
  for (const { days, ...corn } of history) {
    requireInRange('days', days, { min: 0, max: 40_000, unit: 'days', source: 'project-rule' })
    const allowable = allowableStorage(corn, damageFraction)
    for (const each of allowable.countedAs) countedAs.add(each)
    usedFraction += days / allowable.days
  }
  const ahead = allowableStorage(next, damageFraction)
  for (const each of ahead.countedAs) countedAs.add(each)
  return { usedFraction, leftDays: Math.max(0, 1 - usedFraction) * ahead.days, countedAs: [...countedAs] }
}
