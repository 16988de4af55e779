/** Which season a day belongs to, and what was said of seed in it. */
import type { Facts, SeedFact } from '@crib/journal'
import { yearOf } from './day-of.ts'

/** A word on seed stands for corn that comes in up to so long after it; the next harvest is asked about anew. [days] project rule */
const WORD_STANDS_DAYS = 120
const DAY_MS = 86_400_000

/**
 * A season is named by the year its corn came in, and lasts until newer corn does: a batch in February still belongs to
 * the autumn before. Dressed seed corn is no food and opens none. Before any corn, the year of `today` (YYYY-MM-DD).
 * project rule
 *
 * @throws {RangeError} when `today` is no date.
 */
export function seasonYearOf({ cornLots }: Pick<Facts, 'cornLots'>, today: string): number {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(today)) throw new RangeError(`today is "${today}"; a date as YYYY-MM-DD is needed`)
  const years = foodCorn(cornLots).map(yearOf)
  return years.length === 0 ? Number(today.slice(0, 4)) : Math.max(...years)
}

/** What was said of seed for a season and still stands: a word of spring does not speak for the autumn's harvest. */
export function seedOfSeason({ cornLots, seed }: Pick<Facts, 'cornLots' | 'seed'>, seasonYear: number): SeedFact[] {
  const cornMs = foodCorn(cornLots)
    .filter((lot) => yearOf(lot) === seasonYear)
    .map(({ at }) => Date.parse(at.instant))
  const standsFromMs = Math.max(...cornMs) - WORD_STANDS_DAYS * DAY_MS // without corn, any word stands
  return Object.values(seed).filter(
    (one) => one.seasonYear === seasonYear && Date.parse(one.at.instant) >= standsFromMs,
  )
}

function foodCorn(cornLots: Facts['cornLots']): Facts['cornLots'][string][] {
  return Object.values(cornLots).filter(({ treatedSeed }) => !treatedSeed)
}
