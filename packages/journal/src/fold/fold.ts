/** Entries into facts: whole, or a few more at a time. A late entry refolds its own story alone. */
import type { StoredEntry } from '../envelope.ts'
import { cornBalance, withCornUsed } from './balance.ts'
import type { BatchFact, ById, CornLotFact, Facts, LedgerLine, Question, SeedFact, UnreadEntry } from './facts.ts'
import { compareLines, type PlacedLine, placeEntry, standingCopy, standingLines, UNREAD } from './ledger.ts'
import { questionsAcross } from './questions.ts'
import { kitchenStory } from './stories.ts'
import { foldStory, type Part, type PutFact } from './story-facts.ts'

export const NO_FACTS: Facts = {
  kitchen: null,
  cornLots: {},
  seed: {},
  alkaliLots: {},
  pots: {},
  canners: {},
  standings: {},
  batches: {},
  runs: {},
  foodLots: {},
  plots: {},
  plantings: {},
  seedLots: {},
  recalls: {},
  coolings: {},
  dryings: {},
  photos: {},
  entryCount: 0,
  questions: [],
  unread: [],
  ledger: { byEntity: {}, entityOf: {}, questionsOf: {} },
}

/**
 * The facts of one kitchen's entries. Any order of the same set gives the same facts; an entry handed in twice counts
 * once.
 *
 * @throws {RangeError} when the entries are of two kitchens.
 */
export function foldFacts(entries: Iterable<StoredEntry>): Facts {
  return applyEntries(NO_FACTS, entries)
}

/** `facts` with more entries folded in; the facts handed in are left as they were. */
export function applyEntries(facts: Facts, entries: Iterable<StoredEntry>): Facts {
  const sheet = openSheet(facts)
  for (const entry of entries) sheet.place(entry)
  return sheet.fold()
}

/** Facts by part and id while they are being folded; each part's own type is checked where a story is put. */
type Records = { [P in Part]: { [id: string]: unknown } }

function openSheet(facts: Facts) {
  const byEntity: { [entity: string]: readonly LedgerLine[] } = { ...facts.ledger.byEntity }
  const entityOf: { [entryId: string]: string } = { ...facts.ledger.entityOf }
  const grown = new Map<string, LedgerLine[]>()
  let kitchenId = firstLine(byEntity)?.kitchenId
  let { entryCount } = facts

  function linesOf(entity: string): LedgerLine[] {
    let lines = grown.get(entity)
    if (!lines) {
      lines = [...(byEntity[entity] ?? [])]
      grown.set(entity, lines)
      byEntity[entity] = lines
    }
    return lines
  }

  function add({ line, entity }: PlacedLine): void {
    linesOf(entity).push(line)
    entityOf[line.id] = entity
  }

  function place(entry: StoredEntry): void {
    kitchenId ??= entry.envelope.kitchenId
    if (entry.envelope.kitchenId !== kitchenId)
      throw new RangeError('facts are of one kitchen; these entries are of two')
    const entity = Object.hasOwn(entityOf, entry.envelope.id) ? entityOf[entry.envelope.id] : undefined
    if (entity === undefined) {
      add(placeEntry(entry))
      entryCount += 1
      return
    }
    const at = (byEntity[entity] ?? []).findIndex(({ id }) => id === entry.envelope.id)
    const kept = { line: byEntity[entity]![at]!, entity }
    if (kept.line.hash === entry.hash && (entry.body !== null || kept.line.why === 'erased')) return
    const standing = standingCopy(kept, placeEntry(entry))
    linesOf(entity).splice(at, 1)
    add(standing)
  }

  function fold(): Facts {
    if (grown.size === 0) return facts
    for (const [entity, lines] of grown) {
      lines.sort(compareLines)
      if (lines.length === 0) delete byEntity[entity]
    }
    const ledger = {
      byEntity: sortedById(byEntity),
      entityOf: sortedById(entityOf),
      questionsOf: { ...facts.ledger.questionsOf } as { [entity: string]: readonly Question[] },
    }
    const records = copyRecords(facts)
    let { kitchen } = facts
    const put: PutFact = (part, id, fact) => {
      const list: { [id: string]: unknown } = records[part]
      if (fact) list[id] = fact
      else delete list[id]
    }
    for (const entity of storiesTouched(grown.keys(), entityOf)) {
      const { lines, questions } = standingLines(ledger, entity)
      // A kitchen's habits are told in its own book; what another kitchen's name stands on is no habit of this one.
      if (entity === `kitchen:${kitchenId}`) kitchen = kitchenStory(lines)
      else questions.push(...foldStory(entity, lines, put))
      if (questions.length > 0) ledger.questionsOf[entity] = questions
      else delete ledger.questionsOf[entity]
    }
    ledger.questionsOf = sortedById(ledger.questionsOf)
    return finish({ ...facts, ...(sortedRecords(records) as Pick<Facts, Part>), kitchen, entryCount, ledger })
  }

  return { place, fold }
}

/** A correction touches the story of the entry it names, through corrections of corrections. */
function storiesTouched(grown: Iterable<string>, entityOf: ById<string>): Set<string> {
  const touched = new Set<string>()
  for (let entity of grown) {
    while (entity.startsWith('entry:') && !touched.has(entity)) {
      touched.add(entity) // a correction's own lines can raise questions too
      entity = entityOf[entity.slice('entry:'.length)] ?? UNREAD
    }
    touched.add(entity)
  }
  return touched
}

/** What crosses stories: balances, corn used by batches, questions, the list of entries not read. */
function finish(facts: Facts): Facts {
  const across = acrossLots(facts)
  const batches = mapValues(facts.batches, (batch) => withCornUsed(batch, across.lotsOf(batch.batchId)))
  const cornLots = mapValues(facts.cornLots, (lot) => {
    const balance = cornBalance(lot, { seed: across.seedOf(lot.lotId), batches: across.batchesOf(lot.lotId) })
    return { ...lot, balance }
  })
  const whole = { ...facts, batches, cornLots }
  const own = Object.keys(facts.ledger.questionsOf)
    .sort()
    .flatMap((entity) => facts.ledger.questionsOf[entity] ?? [])
  const unread = (facts.ledger.byEntity[UNREAD] ?? []).map(
    ({ id, kind, kindVersion, why }): UnreadEntry => ({
      entryId: id,
      kind,
      kindVersion,
      why: why ?? 'unreadable-body',
    }),
  )
  return { ...whole, questions: [...own, ...questionsAcross(whole)], unread }
}

/** Which seed, batches and lots bear on each other, so that no lot looks through every batch of ten years. */
function acrossLots({ seed, batches, cornLots }: Pick<Facts, 'seed' | 'batches' | 'cornLots'>) {
  const seedOf = new Map<string, Record<string, SeedFact>>()
  const batchesOf = new Map<string, Record<string, BatchFact>>()
  const lotsOf = new Map<string, Record<string, CornLotFact>>()
  for (const [id, put] of Object.entries(seed)) if (put.lotId !== undefined) sublist(seedOf, put.lotId)[id] = put
  for (const [id, batch] of Object.entries(batches))
    for (const { lotId } of batch.plan.corn ?? []) sublist(batchesOf, lotId)[id] = batch
  for (const [id, lot] of Object.entries(cornLots))
    for (const { batchId } of lot.uses) if (batchId !== undefined) sublist(lotsOf, batchId)[id] = lot
  return {
    seedOf: (lotId: string) => seedOf.get(lotId) ?? {},
    batchesOf: (lotId: string) => batchesOf.get(lotId) ?? {},
    lotsOf: (batchId: string) => lotsOf.get(batchId) ?? {},
  }
}

function sublist<T>(of: Map<string, Record<string, T>>, key: string): Record<string, T> {
  const list = of.get(key) ?? {}
  of.set(key, list)
  return list
}

function copyRecords(facts: Facts): Records {
  return {
    cornLots: { ...facts.cornLots },
    seed: { ...facts.seed },
    alkaliLots: { ...facts.alkaliLots },
    pots: { ...facts.pots },
    canners: { ...facts.canners },
    standings: { ...facts.standings },
    batches: { ...facts.batches },
    runs: { ...facts.runs },
    foodLots: { ...facts.foodLots },
    plots: { ...facts.plots },
    plantings: { ...facts.plantings },
    seedLots: { ...facts.seedLots },
    recalls: { ...facts.recalls },
    coolings: { ...facts.coolings },
    dryings: { ...facts.dryings },
    photos: { ...facts.photos },
  }
}

function sortedRecords(records: Records): Records {
  return mapValues(records, sortedById) as Records
}

/** Keys in order, so that two devices list alike; ids begin with the time of their making. */
function sortedById<T>(record: ById<T>): { [id: string]: T } {
  const keys = Object.keys(record)
  if (keys.every((key, i) => i === 0 || keys[i - 1]! < key)) return record as { [id: string]: T }
  return Object.fromEntries(keys.sort().map((key) => [key, record[key] as T]))
}

function mapValues<T, U>(record: ById<T>, map: (value: T) => U): { [id: string]: U } {
  return Object.fromEntries(Object.entries(record).map(([id, value]) => [id, map(value)]))
}

function firstLine(byEntity: ById<readonly LedgerLine[]>): LedgerLine | undefined {
  for (const lines of Object.values(byEntity)) if (lines[0]) return lines[0]
  return undefined
}
