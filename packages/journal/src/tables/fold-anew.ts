/**
 * All facts of a kitchen made anew, streamed: a page of stories at a time, in the order of their names, so that a book
 * of any length takes little memory.
 */
import type { LedgerLine } from '../fold/facts.ts'
import { UNREAD } from '../fold/ledger.ts'
import { AMENDING } from './amended.ts'
import { derive, deriveCanners } from './derive.ts'
import type { FactChange, FactRow, FactTables, FiledLine, QuestionRows, RefRows } from './port.ts'
import { factRow, pageLedger, storyRows, unreadRows } from './story-rows.ts'

const LINES_AT_ONCE = 20_000
const LOTS_AT_ONCE = 500

/** Stories folded; null when another program changed the facts meanwhile. */
export async function foldAnew(tables: FactTables, kitchenId: string, version: string): Promise<number | null> {
  const { upTo, entryCount } = await tables.last(kitchenId)
  let turn = (await tables.state(kitchenId))?.turn ?? 0
  const making = { version: '', upTo: 0, entryCount: 0 }
  const change = async (more: Partial<FactChange>): Promise<void> => {
    if (!(await tables.change({ kitchenId, fromTurn: turn, next: making, ...more }))) throw new Overtaken()
    turn += 1
  }
  try {
    await change({ anew: true })
    await refileUnread(tables, kitchenId, upTo, change)
    const amendments = await readAmendments(tables, kitchenId, upTo)
    const storyCount = await foldStories(tables, kitchenId, { upTo, amendments, change })
    await deriveLots(tables, kitchenId, change)
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

/** What was filed as unread by a program of fewer kinds and can be read now. */
async function refileUnread(tables: FactTables, kitchenId: string, upTo: number, change: Change): Promise<void> {
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

async function readAmendments(tables: FactTables, kitchenId: string, upTo: number): Promise<Map<string, LedgerLine[]>> {
  const amendments = new Map<string, LedgerLine[]>()
  for (let place = { story: AMENDING, arrival: 0 }; ; ) {
    const page = await tables.inStoryOrder(kitchenId, { ...place, upTo, limit: LINES_AT_ONCE })
    for (const { filedUnder, line } of page) {
      if (!filedUnder!.startsWith(AMENDING)) return amendments
      push(amendments, filedUnder!, line)
    }
    const last = page.at(-1)
    if (!last) return amendments
    place = { story: last.filedUnder!, arrival: last.arrival }
  }
}

async function foldStories(
  tables: FactTables,
  kitchenId: string,
  { upTo, amendments, change }: { upTo: number; amendments: Map<string, LedgerLine[]>; change: Change },
): Promise<number> {
  let storyCount = 0
  let open = new Map<string, LedgerLine[]>()
  for (let place = { story: '', arrival: 0 }; ; ) {
    const page = await tables.inStoryOrder(kitchenId, { ...place, upTo, limit: LINES_AT_ONCE })
    const rows: RowsToPut = { facts: [], questions: [], refs: [] }
    for (const each of page) {
      if (each.filedUnder === UNREAD) putUnread(each, rows)
      else push(open, each.filedUnder!, each.line)
    }
    const last = page.at(-1)
    // The last story of a page may go on in the next one.
    const goesOn = last && open.get(last.filedUnder!)
    if (goesOn) open.delete(last.filedUnder!)
    putStories(open, { amendments, kitchenId }, rows)
    storyCount += open.size
    open = goesOn ? new Map([[last.filedUnder!, goesOn]]) : new Map()
    if (rows.facts.length + rows.questions.length > 0) await change(rows)
    if (!last) return storyCount
    place = { story: last.filedUnder!, arrival: last.arrival }
  }
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

function putStories(
  stories: ReadonlyMap<string, LedgerLine[]>,
  { amendments, kitchenId }: { amendments: ReadonlyMap<string, LedgerLine[]>; kitchenId: string },
  put: RowsToPut,
): void {
  const whole = new Map(stories)
  for (const [story, lines] of amendments) whole.set(story, lines)
  const ledger = pageLedger(whole)
  for (const story of stories.keys()) {
    const rows = storyRows(ledger, story, kitchenId)
    if (rows.kitchen?.value) put.facts.push(rows.kitchen)
    for (const { part, id, fact } of rows.facts) if (fact) put.facts.push(factRow(part, id, fact))
    put.questions.push(...rows.questions.filter(({ values }) => values.length > 0))
    if (rows.refs.to.length > 0) put.refs.push(rows.refs)
  }
}

/** Balances of every lot, and corn used by every batch that a lot names. */
async function deriveLots(tables: FactTables, kitchenId: string, change: Change): Promise<void> {
  const nothingNew = { newFacts: new Map(), newRefs: new Map() }
  for (const [part, type] of [
    ['cornLots', 'lot'],
    ['batches', 'batch'],
  ] as const) {
    for (let after: string | undefined; ; ) {
      const query = { limit: LOTS_AT_ONCE, newestFirst: false, onlyOpen: false, ...(after !== undefined && { after }) }
      const page = await tables.page(kitchenId, part, query)
      if (page.length === 0) break
      after = page.at(-1)!.id
      const reached = new Set(page.map(({ id }) => `${type}:${id}`))
      const derived = await derive(tables, kitchenId, { reached, ...nothingNew })
      await change({ facts: derived.facts, questions: derived.questions })
    }
  }
}

function push(map: Map<string, LedgerLine[]>, story: string, line: LedgerLine): void {
  const lines = map.get(story)
  if (lines) lines.push(line)
  else map.set(story, [line])
}
