/**
 * Grow a lot out now, or let it wait: from what it sprouts as, what is left of it, and how long its seed will do. An advice
 * with its reasons, for the keeper to decide by.
 */
import type { SeedLotFact } from '@crib/journal'
import type { Sentence } from '@crib/science'
import { dayNumber, dayText } from '../field/days.ts'
import { say } from '../shared/say.ts'
import { type SeedLotView, seedLotView } from './seed-lot-view.ts'

export interface GrowOut {
  /** `test-first` where no test says what it sprouts as. */
  readonly kind: 'grow-out' | 'wait' | 'test-first'
  readonly reasons: readonly Sentence[]
  readonly view: SeedLotView
}

/** Sowings of so many kernels are counted in this. Project rule: with fewer than two left a failed year ends the lot. */
const SOWINGS_FLOOR_COUNT = 2

/**
 * Whether to grow a lot out this spring.
 *
 * @param today ISO 8601.
 * @param kernelsForSowing kernels one sowing takes, where a plan says so. [kernels]
 * @source rao-2006 table 8.2: grown anew below 85 % of the first germination
 */
export function growOut(lot: SeedLotFact, today: string, kernelsForSowing?: number): GrowOut {
  const view = seedLotView(lot, today)
  const low = view.warnings.filter(({ key }) => key === 'seed:grow-out')
  const left = lot.kernels?.leftCount
  const isFew = left !== undefined && kernelsForSowing !== undefined && left < SOWINGS_FLOOR_COUNT * kernelsForSowing
  const few = isFew ? [say('seed:grow-out-few', { left, sowing: kernelsForSowing })] : []
  const isDue = view.testAgainBy <= today
  if (low.length > 0 || isFew) return { kind: 'grow-out', view, reasons: [...low, ...few, say('seed:grow-out-how')] }
  if (lot.tests.length === 0) return { kind: 'test-first', view, reasons: [say('seed:grow-out-test-first')] }
  if (isDue)
    return { kind: 'test-first', view, reasons: [say('seed:grow-out-test-due', { due: dayInWords(view.testAgainBy) })] }
  return { kind: 'wait', view, reasons: [say('seed:grow-out-wait', { due: dayInWords(view.testAgainBy) })] }
}

function dayInWords(isoDay: string): string {
  return dayText(dayNumber(isoDay)!)
}
