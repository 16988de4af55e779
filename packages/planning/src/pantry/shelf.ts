/**
 * The pantry as it stands: what is left of each lot, and which goes first by published advice.
 * Leaves out: whether anything may be eaten; that is looked at and boiled, not reckoned.
 */
import { type KeepingAdvice, type KeepingForm, keepingAdvice } from '@crib/guidance'
import type { Facts, FoodLotFact } from '@crib/journal'
import { dayOf } from '../shared/day-of.ts'

export interface ShelfLot {
  readonly lot: FoodLotFact
  /** Null where nothing is printed for this form. */
  readonly advice: KeepingAdvice | null
  /** By the calendar where it was done; of jars the day they were canned, not the day their seals were looked at. YYYY-MM-DD */
  readonly putUpOn: string
  /** The earliest day any printed advice names: eat this before others. YYYY-MM-DD; null where none is printed. */
  readonly useFirstBy: string | null
  /** The latest day the advice names. YYYY-MM-DD */
  readonly bestUntil: string | null
}

const KEPT_AS: Record<FoodLotFact['form'], KeepingForm | null> = {
  jar: 'canned',
  fridge: 'fresh',
  tonight: 'fresh',
  freezer: 'frozen',
  dried: 'dried',
  // Printed for neither flour nor parched kernels.
  flour: null,
  roasted: null,
}

/** What is left, the one to use first at the top; lots without a printed day stand last, oldest first. */
export function pantryShelf(facts: Pick<Facts, 'foodLots' | 'runs'>): readonly ShelfLot[] {
  return Object.values(facts.foodLots)
    .filter(({ remainingCount }) => remainingCount > 0)
    .map((lot) => shelfLot(lot, facts))
    .sort((a, b) => compare(a.useFirstBy ?? '9999', b.useFirstBy ?? '9999') || compare(a.putUpOn, b.putUpOn))
}

/** One lot with its days. */
export function shelfLot(lot: FoodLotFact, { runs }: Pick<Facts, 'runs'>): ShelfLot {
  const form = KEPT_AS[lot.form]
  const advice = form && keepingAdvice(form)
  const run = lot.form === 'jar' && lot.runId !== undefined ? runs[lot.runId] : undefined
  const putUpOn = dayOf((run?.begun ?? lot).at)
  const keeps = advice?.keeps ?? null
  return {
    lot,
    advice,
    putUpOn,
    useFirstBy: keeps && dayAfter(putUpOn, keeps.low, keeps.unit),
    bestUntil: keeps && dayAfter(putUpOn, keeps.high, keeps.unit),
  }
}

/**
 * The same day of a later month, or the month's last day where it has none: 31 August and six months is 28 February.
 *
 * @param from YYYY-MM-DD
 * @throws {RangeError} when `from` is no date.
 */
export function dayAfter(from: string, count: number, unit: 'Days' | 'Months'): string {
  const start = new Date(`${from}T00:00:00Z`)
  if (Number.isNaN(start.getTime())) throw new RangeError(`"${from}" is no date; write it as 2026-11-03`)
  if (unit === 'Days') start.setUTCDate(start.getUTCDate() + count)
  else {
    const day = start.getUTCDate()
    start.setUTCDate(1)
    start.setUTCMonth(start.getUTCMonth() + count)
    const last = new Date(Date.UTC(start.getUTCFullYear(), start.getUTCMonth() + 1, 0)).getUTCDate()
    start.setUTCDate(Math.min(day, last))
  }
  return start.toISOString().slice(0, 10)
}

function compare(a: string, b: string): number {
  return a < b ? -1 : +(a > b)
}
