/** Entries into facts: whole, or a few more at a time. A late entry refolds its own story alone. */
import type { StoredEntry } from '../envelope.ts'
import { cornBalance, withCornUsed } from './balance.ts'
import type { ById, Facts, LedgerLine, Question, UnreadEntry } from './facts.ts'
import { compareLines, type PlacedLine, placeEntry, standingCopy, standingLines, UNREAD } from './ledger.ts'
import { questionsAcross } from './questions.ts'
import {
  alkaliLotStory,
  batchStory,
  cannerStory,
  cornLotStory,
  foodLotStory,
  kitchenStory,
  runStory,
  told,
} from './stories.ts'

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

type Part = Exclude<keyof Facts, 'kitchen' | 'entryCount' | 'questions' | 'unread' | 'ledger'>

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
    for (const entity of storiesTouched(grown.keys(), entityOf)) {
      const { lines, questions } = standingLines(ledger, entity)
      if (entity.startsWith('kitchen:')) kitchen = kitchenStory(lines)
      else questions.push(...foldStory(records, entity, lines))
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

function foldStory(records: Records, entity: string, lines: readonly LedgerLine[]): Question[] {
  const [type, id] = entity.split(':') as [string, string]
  const put = <P extends Part>(part: P, fact: Facts[P][string] | null | undefined): boolean => {
    const table: { [id: string]: unknown } = records[part]
    if (fact) table[id] = fact
    else delete table[id]
    return Boolean(fact)
  }
  let found = true
  if (type === 'lot') {
    const corn = put('cornLots', cornLotStory(lines))
    const food = put('foodLots', foodLotStory(lines))
    found = corn || food
  } else if (type === 'seed') put('seed', told(lines, 'seed-put-by').at(-1))
  else if (type === 'alkali-lot') found = put('alkaliLots', alkaliLotStory(lines))
  else if (type === 'pot') put('pots', told(lines, 'pot-recorded').at(-1))
  else if (type === 'canner') found = put('canners', cannerStory(lines))
  else if (type === 'standing') put('standings', told(lines, 'standing-read').at(-1))
  else if (type === 'batch') found = put('batches', batchStory(lines))
  else if (type === 'run') found = put('runs', runStory(lines))
  if (found || lines.length === 0) return []
  const entryIds = lines.map((line) => line.id)
  return [{ code: 'question-story-without-beginning', params: { kind: lines[0]!.kind }, entryIds, entities: [entity] }]
}

/** What crosses stories: balances, corn used by batches, questions, the list of entries not read. */
function finish(facts: Facts): Facts {
  const batches = mapValues(facts.batches, (batch) => withCornUsed(batch, facts.cornLots))
  const cornLots = mapValues(facts.cornLots, (lot) => ({ ...lot, balance: cornBalance(lot, { ...facts, batches }) }))
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
