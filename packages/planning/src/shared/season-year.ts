/** Which season a day belongs to. */
import type { Facts } from '@crib/journal'

/**
 * A season is named by the year its corn came in, and lasts until newer corn does: a batch in February still belongs to
 * the autumn before. Before any corn, the year of `today` (YYYY-MM-DD).  project rule
 *
 * @throws {RangeError} when `today` is no date.
 */
export function seasonYearOf({ cornLots }: Pick<Facts, 'cornLots'>, today: string): number {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(today)) throw new RangeError(`today is "${today}"; a date as YYYY-MM-DD is needed`)
  const years = Object.values(cornLots).map(({ at }) => Number(at.instant.slice(0, 4)))
  return years.length === 0 ? Number(today.slice(0, 4)) : Math.max(...years)
}
