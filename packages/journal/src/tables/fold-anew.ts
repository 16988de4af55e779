/**
 * All facts of a kitchen made anew, streamed: a page of stories at a time in the order of their names, every row written
 * once. Kept in memory meanwhile: corrections, corn lots, and of seed and batches what a lot's balance needs.
 */
import { cornBalance, withCornUsed } from '../fold/balance.ts'
import type { BatchFact, CornLotFact, Facts, LedgerLine, SeedFact } from '../fold/facts.ts'
import { UNREAD } from '../fold/ledger.ts'
import type { Part } from '../fold/story-facts.ts'
import { AMENDING } from './amended.ts'
import { deriveCanners } from './derive.ts'
import type { FactChange, FactRow, FactTables, FiledLine, LaneRows, QuestionRows, RefRows } from './port.ts'
import { askAcross, factRow, pageLedger, RANK, storyRows, unreadRows } from './story-rows.ts'

/** Small enough that what a page leaves behind is cleared away while it is young. */
const LINES_AT_ONCE = 500

/** Stories folded, in threads from `longBook` entries on; null when another program changed the facts meanwhile. */
export async function foldAnew(
  tables: FactTables,
  kitchenId: string,
  version: string,
  longBook = LONG_BOOK,
): Promise<number | null> {
  await tables.prepare()
  const { upTo, entryCount } = await tables.last(kitchenId)
  let turn = (await tables.state(kitchenId))?.turn ?? 0
  const making = { version: '', upTo: 0, entryCount: 0 }
  const change: Change = async (more) => {
    if (!(await tables.change({ kitchenId, fromTurn: turn, next: making, ...more }))) throw new Overtaken()
    turn += 1
  }
  const reading = { tables, kitchenId, upTo }
  try {
    await change({ anew: true })
    await refileUnread(reading, change)
    const lanes = entryCount >= longBook ? tables.inLanes : undefined
    const storyCount = lanes ? await lanes({ kitchenId, upTo }, change) : await foldLane(reading, 'all', change)
    const canners = await deriveCanners(tables, kitchenId, new Map())
    await change({ questions: [canners], next: { version, upTo, entryCount } })
    return storyCount
  } catch (cause) {
    if (cause instanceof Overtaken) return null
    throw cause
  }
}

class Overtaken extends Error {}

type Change = (more: Partial<FactChange>) => Promise<void>

/** From here on starting threads costs less than it saves. [entries] */
const LONG_BOOK = 50_000

/** Canner loads hang on no other story and are most of a long book: one thread folds them, another the rest. */
export const LANES = ['runs', 'rest'] as const

export type Lane = (typeof LANES)[number] | 'all'

export interface Reading {
  readonly tables: FactTables
  readonly kitchenId: string
  readonly upTo: number
}

/** What was filed as unread by a program of fewer kinds and can be read now. */
async function refileUnread({ tables, kitchenId, upTo }: Reading, change: Change): Promise<void> {
  for (let arrival = 0; ; ) {
    const page = await tables.inStoryOrder(kitchenId, { story: UNREAD, arrival, upTo, limit: LINES_AT_ONCE })
    const lines = page.filter(({ filedUnder }) => filedUnder === UNREAD)
    const refiled = lines.filter(({ story }) => story !== UNREAD)
    if (refiled.length > 0) {
      await change({ refiled: refiled.map((line) => ({ arrival: line.arrival, from: UNREAD, to: line.story })) })
    }
    const last = lines.at(-1)
    if (!last) return
    arrival = last.arrival
  }
}

interface StoryPart {
  readonly stories: ReadonlyMap<string, LedgerLine[]>
  readonly unread: readonly FiledLine[]
}

/** Hands on whole stories whose names begin so, some at a time; those that begin like one of `past` are passed by. */
async function eachPart(
  { tables, kitchenId, upTo }: Reading,
  { beginning, past = [] }: { readonly beginning: string; readonly past?: readonly string[] },
  take: (part: StoryPart) => Promise<void>,
): Promise<void> {
  let open: [string, LedgerLine[]] | null = null
  for (let place = { story: beginning, arrival: 0 }; ; ) {
    const page = await tables.inStoryOrder(kitchenId, { ...place, upTo, limit: LINES_AT_ONCE })
    const whole: Map<string, LedgerLine[]> = new Map(open ? [open] : [])
    const unread: FiledLine[] = []
    let next = null as { story: string; arrival: number } | null
    let telling = null as { readonly story: string; readonly lines: LedgerLine[] } | null
    for (const each of page) {
      const story = each.filedUnder!
      // Mostly it is the story of the line before.
      if (next && story === telling?.story && each.story !== UNREAD) {
        telling.lines.push(each.line)
        next.arrival = each.arrival
        continue
      }
      if (!story.startsWith(beginning)) break
      const passed: string | undefined = past.find((type) => story.startsWith(type))
      next = passed === undefined ? { story, arrival: each.arrival } : { story: `${passed}\u{7e}`, arrival: 0 }
      if (passed !== undefined) break
      if (each.story === UNREAD) unread.push(each)
      else {
        const lines: LedgerLine[] = whole.get(story) ?? []
        lines.push(each.line)
        whole.set(story, lines)
        telling = { story, lines }
      }
    }
    // The last story of a page may go on in the next one.
    const last: LedgerLine[] | undefined = next ? whole.get(next.story) : undefined
    open = next && last ? [next.story, last] : null
    if (open) whole.delete(open[0])
    if (whole.size > 0 || unread.length > 0) await take({ stories: whole, unread })
    if (!next) return
    place = next
  }
}

/** Only what a lot's balance needs of a batch and of seed put by. */
interface AcrossLots {
  readonly seed: Map<string, Record<string, SeedFact>>
  readonly batches: Map<string, Record<string, BatchFact>>
  /** Corn lots by the batches they name. */
  readonly lotsOfBatch: Map<string, Record<string, CornLotFact>>
}

/** Folds the stories of a lane and hands their rows on; how many stories. */
export async function foldLane(
  reading: Reading,
  lane: Lane,
  change: (rows: LaneRows) => Promise<void>,
): Promise<number> {
  const amendments = new Map<string, LedgerLine[]>()
  await eachPart(reading, { beginning: AMENDING }, async ({ stories }) => {
    for (const [story, lines] of stories) amendments.set(story.slice(AMENDING.length), lines)
  })
  let storyCount = 0
  const across: AcrossLots = { seed: new Map(), batches: new Map(), lotsOfBatch: new Map() }
  const lots: CornLotFact[] = []
  const take = async ({ stories, unread }: StoryPart): Promise<void> => {
    const put: RowsToPut = { facts: [], questions: [], refs: [] }
    for (const line of unread) putUnread(line, put)
    for (const [story, lines] of stories) {
      const needed = new Map([[story, lines]])
      if (amendments.size > 0) addAmending(needed, lines, amendments)
      const rows = storyRows(pageLedger(needed), story, reading.kitchenId, needed.size > 1)
      if (rows.kitchen?.value) put.facts.push(rows.kitchen)
      for (const { part, id, fact } of rows.facts) {
        if (part === 'cornLots' && fact) lots.push(keepLot(fact as CornLotFact, across))
        else if (fact) put.facts.push(factRow(part, id, keepAcross(part, id, fact, across)))
      }
      for (const each of rows.questions) if (each.values.length > 0) put.questions.push(each)
      if (rows.refs.to.length > 0) put.refs.push(rows.refs)
    }
    storyCount += stories.size
    await change(put)
  }
  if (lane === 'runs') {
    await eachPart(reading, { beginning: 'run:' }, take)
    return storyCount
  }
  // Seed and lots first: a batch's corn is told by its lots. The lots themselves are written last.
  await eachPart(reading, { beginning: 'seed:' }, take)
  await eachPart(reading, { beginning: 'lot:' }, take)
  await eachPart(
    reading,
    { beginning: '', past: lane === 'rest' ? ['lot:', 'run:', 'seed:'] : ['lot:', 'seed:'] },
    take,
  )
  for (let at = 0; at < lots.length; at += LOTS_AT_ONCE)
    await change(balanced(lots.slice(at, at + LOTS_AT_ONCE), across))
  return storyCount
}

const LOTS_AT_ONCE = 500

function keepLot(lot: CornLotFact, { lotsOfBatch }: AcrossLots): CornLotFact {
  for (const { batchId } of lot.uses) if (batchId !== undefined) under(lotsOfBatch, batchId)[lot.lotId] = lot
  return lot
}

/** The fact as it is written; what lots will need of it is kept. */
function keepAcross<P extends Part>(part: P, id: string, fact: Facts[P][string], across: AcrossLots): Facts[P][string] {
  if (part === 'seed') {
    const put = fact as SeedFact
    if (put.lotId !== undefined) under(across.seed, put.lotId)[id] = put
  }
  if (part !== 'batches') return fact
  const { batchId, begun, plan } = fact as BatchFact
  const needed = { batchId, begun, plan: { corn: plan.corn } } as BatchFact
  for (const { lotId } of plan.corn ?? []) under(across.batches, lotId)[id] = needed
  return withCornUsed(fact as BatchFact, sorted(across.lotsOfBatch.get(id))) as Facts[P][string]
}

function balanced(
  lots: readonly CornLotFact[],
  { seed, batches }: AcrossLots,
): Pick<FactChange, 'facts' | 'questions'> {
  const facts: FactRow[] = []
  const questions: QuestionRows[] = []
  for (const lot of lots) {
    const balance = cornBalance(lot, { seed: sorted(seed.get(lot.lotId)), batches: sorted(batches.get(lot.lotId)) })
    const whole = { ...lot, balance }
    facts.push(factRow('cornLots', lot.lotId, whole))
    const asked = askAcross(`lot:${lot.lotId}`, RANK.cornLots, { cornLots: { [lot.lotId]: whole } })
    if (asked.values.length > 0) questions.push(asked)
  }
  return { facts, questions }
}

/** Sums come out alike to the last digit only when added up in one order: that of ids. */
function sorted<T>(record: Record<string, T> = {}): Record<string, T> {
  return Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)))
}

function under<T>(map: Map<string, Record<string, T>>, key: string): Record<string, T> {
  const record = map.get(key) ?? {}
  map.set(key, record)
  return record
}

interface RowsToPut {
  readonly facts: FactRow[]
  readonly questions: QuestionRows[]
  readonly refs: RefRows[]
}

function putUnread(line: FiledLine, rows: RowsToPut): void {
  const { fact, questions } = unreadRows(line)
  rows.facts.push(fact)
  if (questions.values.length > 0) rows.questions.push(questions)
}

/** Corrections of these lines, and of the corrections. `amendments` goes by the id of the entry they name. */
function addAmending(
  needed: Map<string, LedgerLine[]>,
  lines: readonly LedgerLine[],
  amendments: ReadonlyMap<string, LedgerLine[]>,
): void {
  for (const { id } of lines) {
    const amending = amendments.get(id)
    if (!amending || needed.has(AMENDING + id)) continue
    needed.set(AMENDING + id, amending)
    addAmending(needed, amending, amendments)
  }
}
