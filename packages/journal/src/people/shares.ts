/** How far each lot is opened as the book says, for screens and paper. The doors themselves ask the reading index. */
import type { Visibility } from '../envelope.ts'
import type { Facts, FoodLotFact, SeedLotFact } from '../fold/facts.ts'
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
  return mayNameTo(facts, lotId, 'community')
}

/** Whether paper for those eyes may name the lot. The keeper's own may name them all. */
export function mayNameTo(facts: Facts, lotId: string, audience: Visibility): boolean {
  return widthOf(shareOf(facts, lotId).visibility) >= widthOf(audience)
}

export interface Origin {
  readonly corn?: string
  /** Of the lot itself and of the corn it names, each once. They go where the lot goes. */
  readonly conditions: readonly string[]
}

/** Whose eyes a label is for: the family's, and where it goes to another household the community's. */
export function audienceOfLabel({ householdName }: Pick<FoodLotFact, 'householdName'>): Visibility {
  return householdName === undefined ? 'family' : 'community'
}

/** The corn lots a label of this food may name, by whose eyes it is for. A label works without any. */
export function originOnLabel(lot: FoodLotFact, facts: Facts): Origin {
  const { corn, conditions } = cornOnPaper(facts, lot.batchId, audienceOfLabel(lot))
  return {
    ...(corn !== undefined && { corn }),
    conditions: unique([shareOf(facts, lot.lotId).conditions, ...conditions]),
  }
}

/** The corn a batch was made from, where paper for those eyes may name it. */
export function cornOnPaper(facts: Facts, batchId: string | undefined, audience: Visibility): Origin {
  const lots = batchId === undefined ? [] : (facts.batches[batchId]?.plan.corn ?? [])
  // One lot that may not be named hides the others too: a part would pass for the whole.
  const mayBeNamed = lots.length > 0 && lots.every(({ lotId }) => mayNameTo(facts, lotId, audience))
  const corn = mayBeNamed ? facts.cornLots[lots[0]!.lotId]?.name : undefined
  if (corn === undefined) return { conditions: [] }
  return { corn, conditions: unique(lots.map(({ lotId }) => shareOf(facts, lotId).conditions)) }
}

export interface SeedOrigin {
  /** Absent: paper for those eyes neither names the lot nor says from where it is. */
  readonly name?: string
  readonly sourceNote?: string
  readonly conditions: readonly string[]
}

/** What an envelope, a tag or a test sheet may say of the seed in hand, by whose eyes it is for. */
export function seedOnPaper(lot: SeedLotFact, facts: Facts, audience: Visibility): SeedOrigin {
  const conditions = unique([shareOf(facts, lot.seedLotId).conditions])
  // A seed lot tells of the corn it was taken from, so it is opened no further than that.
  const mayBeNamed = [lot.seedLotId, ...(lot.lotId === undefined ? [] : [lot.lotId])].every((id) =>
    mayNameTo(facts, id, audience),
  )
  if (!mayBeNamed) return { conditions }
  return { name: lot.name, ...(lot.sourceNote !== undefined && { sourceNote: lot.sourceNote }), conditions }
}

function unique(said: readonly (string | undefined)[]): string[] {
  return [...new Set(said.filter((one): one is string => one !== undefined))]
}
