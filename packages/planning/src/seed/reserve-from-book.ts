/** What the book itself knows for a reserve: how the lot ages until each sowing, and how its sprouts fared in the field. */
import type { PlantingFact, SeedLotFact } from '@crib/journal'
import { fieldYears } from '../field/field-years.ts'
import type { ReservePlanInput } from './reserve-plan.ts'
import { daysBetween, storeFromDay } from './seed-lot-view.ts'
import { isStoreKnown } from './seed-store.ts'

export interface ReserveFromBook {
  /** Goes into a reserve as it is: the newest test, the store from that day on, own years of the field. */
  readonly input: Pick<ReservePlanInput, 'sproutedCount' | 'testedCount' | 'record' | 'daysToFirst' | 'fieldYears'>
  /** Whether the lot is aged by what was told of its store. */
  readonly isAged: boolean
}

/**
 * Null before the lot has a test. The first sowing comes no earlier than the test it is reckoned from.
 *
 * @param firstSowingOn ISO 8601.
 */
export function reserveFromBook(
  lot: SeedLotFact,
  facts: {
    readonly plantings: { readonly [id: string]: PlantingFact }
    readonly seedLots: { readonly [id: string]: SeedLotFact }
  },
  firstSowingOn: string,
): ReserveFromBook | null {
  const test = lot.tests.at(-1)
  if (!test) return null
  const store = storeFromDay(lot, test.testedOn)
  const isAged = isStoreKnown(store)
  const years = fieldYears(facts, lot.name)
  return {
    isAged,
    input: {
      sproutedCount: test.sproutedCount,
      testedCount: test.ofCount,
      ...(isAged && { ...store, daysToFirst: Math.max(0, daysBetween(test.testedOn, firstSowingOn)) }),
      ...(years.length > 0 && { fieldYears: years }),
    },
  }
}

/** The next sowing when none is dated: 10 May of this year, or of the next once it is past. Common practice, no source. */
export function nextSowingOn(today: string): string {
  const year = Number(today.slice(0, 4))
  return today <= `${year}-05-10` ? `${year}-05-10` : `${year + 1}-05-10`
}
