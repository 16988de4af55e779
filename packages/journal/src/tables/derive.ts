/** What crosses stories, worked out for the lots and batches a change reaches: balances, corn used, their questions. */
import { cornBalance, withCornUsed } from '../fold/balance.ts'
import type { BatchFact, CannerFact, CornLotFact, Facts, SeedFact } from '../fold/facts.ts'
import type { Part } from '../fold/story-facts.ts'
import { factOf } from './fact-text.ts'
import type { FactRow, FactTables, QuestionRows } from './port.ts'
import { askAcross, factRow, RANK } from './story-rows.ts'

/** Facts folded anew and not in the tables yet, by `part id`; null where the story gives none any more. */
export type NewFacts = ReadonlyMap<string, Facts[Part][string] | null>

export interface Derived {
  readonly facts: readonly FactRow[]
  readonly questions: readonly QuestionRows[]
}

export const factKey = (part: string, id: string): string => `${part} ${id}`

/**
 * `reached`: stories changed, and those they name or that name them. `newRefs`: what changed stories name now, in place
 * of what the table says.
 */
export async function derive(
  tables: FactTables,
  kitchenId: string,
  {
    reached,
    newFacts,
    newRefs,
  }: { reached: ReadonlySet<string>; newFacts: NewFacts; newRefs: ReadonlyMap<string, readonly string[]> },
): Promise<Derived> {
  const lotIds = idsOf(reached, 'lot:')
  const batchIds = idsOf(reached, 'batch:')
  const near = await refsNow(tables, kitchenId, [...reached], newRefs)
  const neighbours = new Map<string, Set<string>>()
  for (const { from, to } of near) {
    join(neighbours, from, to)
    join(neighbours, to, from)
  }
  const around = (story: string, type: string): string[] => idsOf(neighbours.get(story) ?? new Set(), type).sort()
  const load = async <P extends Part>(part: P, ids: readonly string[]): Promise<Map<string, Facts[P][string]>> => {
    const wanted = [...new Set(ids)]
    const old = await tables.facts(
      kitchenId,
      part,
      wanted.filter((id) => !newFacts.has(factKey(part, id))),
    )
    const found = new Map<string, Facts[P][string]>()
    for (const id of wanted) {
      const fresh = newFacts.get(factKey(part, id))
      const kept = old.get(id)
      if (fresh) found.set(id, fresh as Facts[P][string])
      else if (kept !== undefined) found.set(id, factOf<Facts[P][string]>(kept))
    }
    return found
  }
  const batchesAround = lotIds.flatMap((id) => around(`lot:${id}`, 'batch:'))
  const lots = await load('cornLots', [...lotIds, ...batchIds.flatMap((id) => around(`batch:${id}`, 'lot:'))])
  const batches = await load('batches', [...batchIds, ...batchesAround])
  const seed = await load(
    'seed',
    lotIds.flatMap((id) => around(`lot:${id}`, 'seed:')),
  )

  const facts: FactRow[] = []
  const questions: QuestionRows[] = []
  for (const id of batchIds) {
    const batch = batches.get(id)
    if (batch)
      facts.push(factRow('batches', id, withCornUsed(batch, pick<CornLotFact>(lots, around(`batch:${id}`, 'lot:')))))
  }
  for (const id of lotIds) {
    const lot = lots.get(id)
    if (!lot) continue
    const across = {
      seed: pick<SeedFact>(seed, around(`lot:${id}`, 'seed:')),
      batches: pick<BatchFact>(batches, around(`lot:${id}`, 'batch:')),
    }
    const balanced = { ...lot, balance: cornBalance(lot, across) }
    facts.push(factRow('cornLots', id, balanced))
    questions.push(askAcross(`lot:${id}`, RANK.cornLots, { cornLots: { [id]: balanced } }))
  }
  return { facts, questions }
}

/** Two canners of one name: asked over all of them, which are few. */
export async function deriveCanners(tables: FactTables, kitchenId: string, newFacts: NewFacts): Promise<QuestionRows> {
  const canners: Record<string, CannerFact> = {}
  for (let after: string | undefined; ; ) {
    const page = await tables.page(kitchenId, 'canners', {
      limit: 1000,
      newestFirst: false,
      onlyOpen: false,
      ...(after !== undefined && { after }),
    })
    for (const { id, value } of page) if (!newFacts.has(factKey('canners', id))) canners[id] = factOf<CannerFact>(value)
    after = page.at(-1)?.id
    if (after === undefined) break
  }
  for (const [key, fact] of newFacts) if (fact && key.startsWith('canners ')) canners[key.slice(8)] = fact as CannerFact
  const inOrder = Object.fromEntries(Object.entries(canners).sort(([a], [b]) => (a < b ? -1 : 1)))
  return askAcross('canners', RANK.canners, { canners: inOrder })
}

/** Names between stories as they will stand once the change is in. */
async function refsNow(
  tables: FactTables,
  kitchenId: string,
  stories: readonly string[],
  newRefs: ReadonlyMap<string, readonly string[]>,
): Promise<{ readonly from: string; readonly to: string }[]> {
  const wanted = new Set(stories)
  const kept = (await tables.refs(kitchenId, stories)).filter(({ from }) => !newRefs.has(from))
  const fresh = [...newRefs].flatMap(([from, to]) =>
    to.filter((each) => wanted.has(from) || wanted.has(each)).map((each) => ({ from, to: each })),
  )
  return [...kept, ...fresh]
}

function idsOf(stories: Iterable<string>, type: string): string[] {
  return [...stories].filter((story) => story.startsWith(type)).map((story) => story.slice(type.length))
}

function join(map: Map<string, Set<string>>, key: string, value: string): void {
  const set = map.get(key) ?? new Set()
  set.add(value)
  map.set(key, set)
}

function pick<T>(from: ReadonlyMap<string, unknown>, ids: readonly string[]): Record<string, T> {
  return Object.fromEntries(ids.flatMap((id) => (from.has(id) ? [[id, from.get(id) as T]] : [])))
}
