/** How far each lot is opened as the book says, for screens and paper. The doors themselves ask the reading index. */
import type { Visibility } from '../envelope.ts'
import type { Facts, FoodLotFact } from '../fold/facts.ts'
import type { BodyOf } from '../kinds/index.ts'
import { widthOf } from './roles.ts'

export interface Share {
  readonly visibility: Visibility
  readonly conditions?: string
  /** Said by a visibility-set, not only by the lot's first line. */
  readonly set: boolean
}

/** What was last set for a thing; else what the first line of its story says; the keeper alone where there is none. */
export function shareOf(facts: Facts, lotId: string): Share {
  const last = facts.ledger.byEntity[`share:${lotId}`]?.filter(({ body }) => body !== null).at(-1)
  if (last) {
    const { visibility, conditions } = last.body as unknown as BodyOf<'visibility-set'>
    return { visibility, set: true, ...(conditions !== undefined && { conditions }) }
  }
  const told = ['lot', 'seed', 'seed-lot', 'batch', 'run', 'alkali-lot', 'canner', 'pot', 'kitchen']
  const first = told.map((type) => facts.ledger.byEntity[`${type}:${lotId}`]?.[0]).find((line) => line !== undefined)
  return { visibility: first?.visibility ?? 'keeper', set: false }
}

/** Whether paper that leaves the house (a label, a class sheet, a recall list) may name the lot it comes from. */
export function mayNameOrigin(facts: Facts, lotId: string): boolean {
  return isOpenedTo(facts, lotId, 'community')
}

/**
 * The corn lots a label of this food may name: those opened to the family, and for a jar that goes to another household
 * those opened to the community. A label works without any.
 */
export function originOnLabel(
  { lotId, batchId, householdName }: FoodLotFact,
  facts: Facts,
): { readonly corn?: string; readonly conditions?: string } {
  const lots = batchId === undefined ? [] : (facts.batches[batchId]?.plan.corn ?? [])
  const asked = householdName === undefined ? 'family' : 'community'
  // One lot that may not be named hides the others too: a part would pass for the whole.
  const named = lots.every((each) => isOpenedTo(facts, each.lotId, asked))
  const corn = named ? lots[0] && facts.cornLots[lots[0].lotId]?.name : undefined
  const { conditions } = shareOf(facts, lotId)
  return { ...(corn !== undefined && { corn }), ...(conditions !== undefined && { conditions }) }
}

function isOpenedTo(facts: Facts, lotId: string, visibility: Visibility): boolean {
  return widthOf(shareOf(facts, lotId).visibility) >= widthOf(visibility)
}
