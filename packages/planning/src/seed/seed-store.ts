/** Where seed is kept, as the ageing equation needs it: one condition, or a year's record that repeats itself. */
import {
  probitDaysEllisHong2007,
  probitsLost,
  SEED_TEMPERATURE_2007_C,
  type Sentence,
  type StorageCondition,
  type StoragePeriod,
} from '@crib/science'
import { say } from '../shared/say.ts'

export interface SeedStore {
  /** One condition throughout. */
  readonly wetFraction?: number
  readonly temperatureC?: number
  /** A year's record, or any other span; it repeats. Goes before the one condition. */
  readonly record?: readonly StoragePeriod[]
}

/** The equation's own limits, and what to do outside them. */
export const STORE_LIMITS = { driestWetFraction: 0.02, wettestWetFraction: 0.18, coldestC: -20, warmestC: 40 } as const

/** Why a store cannot be reckoned with, or null. */
export function storeFault(store: SeedStore): { code: string; why: Sentence } | null {
  for (const { wetFraction, temperatureC, days } of periodsOf(store)) {
    if (!(days >= 0)) return { code: 'days-below-zero', why: say('seed:days-below-zero', { given: days }) }
    if (!(wetFraction <= STORE_LIMITS.wettestWetFraction)) {
      const given = { value: wetFraction, unit: 'Fraction' } as const
      return { code: 'seed-too-wet', why: say('seed:too-wet', { given }) }
    }
    if (!(wetFraction >= STORE_LIMITS.driestWetFraction)) {
      const given = { value: wetFraction, unit: 'Fraction' } as const
      return { code: 'seed-too-dry-to-believe', why: say('seed:too-dry-to-believe', { given }) }
    }
    if (!(temperatureC >= STORE_LIMITS.coldestC && temperatureC <= STORE_LIMITS.warmestC)) {
      const given = { value: temperatureC, unit: 'C' } as const
      return { code: 'store-outside-equation', why: say('seed:store-outside-equation', { given }) }
    }
  }
  return null
}

function periodsOf({ wetFraction, temperatureC, record }: SeedStore): readonly StoragePeriod[] {
  if (record && record.length > 0) return record
  if (wetFraction === undefined || temperatureC === undefined) return []
  return [{ days: 365.25, wetFraction, temperatureC }]
}

export function isStoreKnown(store: SeedStore): boolean {
  return periodsOf(store).reduce((sum, { days }) => sum + days, 0) > 0
}

export const conditionsOf: (store: SeedStore) => readonly StorageCondition[] = periodsOf

/** Probits the equation takes in so many days of this store, its record repeating. [probits]  0 for an unknown store. */
export function probitsInDays(store: SeedStore, days: number): number {
  const periods = periodsOf(store)
  const span = periods.reduce((sum, period) => sum + period.days, 0)
  if (span === 0) return 0
  const rounds = Math.floor(days / span)
  let left = days - rounds * span
  const part: StoragePeriod[] = []
  for (const period of periods) {
    const taken = Math.min(left, period.days)
    part.push({ ...period, days: taken })
    left -= taken
  }
  return rounds * probitsLost(periods) + probitsLost(part)
}

/**
 * How many times the life the later constants give this store. [ratio]  Null where some of it is off their range, or nothing
 * is known of it.
 *
 * 12 % at 20 °C: 1.86.
 */
export function laterConstantsRatio(store: SeedStore): number | null {
  const periods = periodsOf(store).filter(({ days }) => days > 0)
  const { min, max } = SEED_TEMPERATURE_2007_C
  if (periods.length === 0 || periods.some(({ temperatureC: t }) => t < min || t > max)) return null
  const lost = periods.reduce((sum, period) => sum + period.days / probitDaysEllisHong2007(period), 0)
  return probitsLost(periods) / lost
}

/** Days until this store has taken so many probits. [days] */
export function daysForProbits(store: SeedStore, probits: number): number {
  const periods = periodsOf(store)
  const span = periods.reduce((sum, period) => sum + period.days, 0)
  const perSpan = probitsLost(periods)
  const rounds = Math.floor(probits / perSpan)
  let left = probits - rounds * perSpan
  let days = rounds * span
  for (const period of periods) {
    const loss = probitsLost([period])
    if (left <= loss) return days + (loss === 0 ? 0 : (left / loss) * period.days)
    left -= loss
    days += period.days
  }
  return days
}
