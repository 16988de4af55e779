/** Papers of a planned batch: its sheet and its wall board. */
import type { Facts } from '@crib/journal'
import { dayForPlan, dayOf, plannedInputs, planOfBatch } from '@crib/planning'
import { dayAfter } from '../clock-times.ts'
import { badInput } from '../exit-codes.ts'
import { batchSheetDocument, wallBoardDocument } from '../sheets.ts'
import type { Asked, MakePaper } from './paper-flags.ts'

export const BATCH_PAPERS = {
  'batch-sheet': (asked) => batchSheetDocument({ ...asked, ...chosenBatch(asked, 'hull') }),
  'wall-board': (asked) => wallBoardDocument({ ...asked, ...chosenBatch(asked, 'can') }),
} satisfies Record<string, MakePaper>

/** The batch named, else the latest of the book, with its day; of two days the one the sheet is for. */
export function chosenBatch({ facts, flags }: Asked, part: 'hull' | 'can') {
  const batch = batchOf(facts, flags.batch)
  const outcome = batch && planOfBatch(batch)
  if (!batch && flags.batch === undefined) throw badInput('terminal:no-batch-yet')
  if (!batch || outcome?.kind !== 'planned')
    throw badInput('terminal:no-such-batch', { given: flags.batch ?? batch?.plan.title ?? '' })
  const planned = plannedInputs(batch)?.day
  const dayPlan = planned && dayForPlan(outcome, planned)
  const twoDays = planned?.dayCount === 2 ? dayPlan?.twoDays : null
  const firstDate = planned?.date ?? dayOf(batch.plan.at)
  return {
    batchId: batch.batchId,
    plan: outcome,
    title: batch.plan.title,
    date: twoDays && part === 'can' ? dayAfter(firstDate) : firstDate,
    day: twoDays ? twoDays[part] : dayPlan?.day,
  }
}

function batchOf({ batches }: Facts, title: string | undefined) {
  const wanted = title?.toLowerCase()
  return Object.values(batches).findLast(({ plan }) => wanted === undefined || plan.title.toLowerCase() === wanted)
}
