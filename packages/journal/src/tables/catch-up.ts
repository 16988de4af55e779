/**
 * Facts in tables kept up with the entries: only the stories that new or late entries touch are folded again. Several
 * programs may do it at once; a change worked out from an older state is thrown away and tried again.
 */
import { sha256Hex } from '../envelope.ts'
import type { Facts, LedgerLine } from '../fold/facts.ts'
import { UNREAD } from '../fold/ledger.ts'
import type { Part } from '../fold/story-facts.ts'
import { KINDS } from '../kinds/index.ts'
import { AMENDING } from './amended.ts'
import { derive, deriveCanners, factKey } from './derive.ts'
import { foldAnew } from './fold-anew.ts'
import type { FactRow, FactState, FactTables, FiledLine, QuestionRows } from './port.ts'
import { factRow, pageLedger, storyRows, unreadRows } from './story-rows.ts'

/**
 * Raise it when the fold gives other facts from the same entries, or writes them otherwise; a kind added or brought
 * forward does so by itself.
 */
const FOLD_RULES = 2

/** Names the fold that made the facts: with another one they are made anew. */
export const FOLD_VERSION = sha256Hex(
  JSON.stringify([FOLD_RULES, Object.values(KINDS).map(({ kind, version }) => [kind, version])]),
).slice(0, 16)

export interface CaughtUp {
  /** Cursor: everything that arrived up to it is in the facts. */
  readonly upTo: number
  readonly entryCount: number
  /** Stories folded for it. */
  readonly storyCount: number
  /** All facts were made anew. */
  readonly anew: boolean
}

const LINES_AT_ONCE = 5000
const MOST_TRIES = 50

/** @throws {Error} when other programs were faster fifty times running. */
export async function catchUp(tables: FactTables, kitchenId: string): Promise<CaughtUp> {
  let storyCount = 0
  let anew = false
  for (let tries = 0; tries < MOST_TRIES; ) {
    const state = await tables.state(kitchenId)
    if (state?.version === BEING_MADE && (await isMoving(tables, kitchenId, state.turn))) continue
    if (state?.version !== FOLD_VERSION) {
      const folded = await foldAnew(tables, kitchenId, FOLD_VERSION)
      if (folded === null) tries += 1
      else {
        storyCount += folded
        anew = true
      }
      continue
    }
    const step = await foldOn(tables, kitchenId, state)
    if (step === 'nothing') return { upTo: state.upTo, entryCount: state.entryCount, storyCount, anew }
    if (step === 'overtaken') tries += 1
    else storyCount += step
  }
  throw new Error(`the facts of ${kitchenId} were changed by other programs ${MOST_TRIES} times while being folded`)
}

const BEING_MADE = ''
const PATIENCE_MS = 3000
const LOOK_AGAIN_MS = 50

/** Whether another program is making the facts anew: then wait for it. False once nothing has moved for a while. */
async function isMoving(tables: FactTables, kitchenId: string, turn: number): Promise<boolean> {
  for (let waitedMs = 0; waitedMs < PATIENCE_MS; waitedMs += LOOK_AGAIN_MS) {
    await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN_MS))
    if ((await tables.state(kitchenId))?.turn !== turn) return true
  }
  return false
}

async function foldOn(
  tables: FactTables,
  kitchenId: string,
  state: FactState,
): Promise<number | 'nothing' | 'overtaken'> {
  const fresh = await tables.stale(kitchenId)
  const arrived = await tables.arrivals(kitchenId, state.upTo, LINES_AT_ONCE)
  if (arrived.length === 0 && fresh.length === 0) return 'nothing'
  const upTo = arrived.at(-1)?.arrival ?? state.upTo
  const next = { version: state.version, upTo, entryCount: state.entryCount + arrived.length }
  const refiled = await misfiled(tables, kitchenId, state.upTo, upTo)
  if (refiled.length > 0) {
    const same = { version: state.version, upTo: state.upTo, entryCount: state.entryCount }
    return (await tables.change({ kitchenId, fromTurn: state.turn, next: same, refiled })) ? 0 : 'overtaken'
  }

  const facts: FactRow[] = []
  const questions: QuestionRows[] = []
  const erased = fresh.filter((story) => story.startsWith(`${UNREAD}:`)).map((story) => story.slice(UNREAD.length + 1))
  const unread = arrived.filter(({ story }) => story === UNREAD)
  const once = new Map([...unread, ...(await byId(tables, kitchenId, erased))].map((each) => [each.line.id, each]))
  for (const each of once.values()) {
    const rows = unreadRows(each)
    facts.push(rows.fact)
    questions.push(rows.questions)
  }
  const named = [...arrived.map(({ story }) => story), ...fresh].filter((story) => !story.startsWith(UNREAD))
  const touched = await withAmended(tables, kitchenId, new Set(named))
  const ledger = pageLedger(await linesOf(tables, kitchenId, touched, upTo))
  const newFacts = new Map<string, Facts[Part][string] | null>()
  const newRefs = new Map<string, readonly string[]>()
  for (const story of touched) {
    const rows = storyRows(ledger, story, kitchenId)
    questions.push(...rows.questions)
    if (rows.kitchen) facts.push(rows.kitchen)
    for (const { part, id, fact } of rows.facts) newFacts.set(factKey(part, id), fact)
    newRefs.set(story, rows.refs.to)
  }

  const before = await tables.refs(kitchenId, [...touched])
  const reached = new Set(touched)
  for (const { from, to } of before) reached.add(from).add(to)
  for (const named of newRefs.values()) for (const to of named) reached.add(to)
  const derived = await derive(tables, kitchenId, { reached, newFacts, newRefs })
  const settled = new Set(derived.facts.map(({ part, id }) => factKey(part, id)))
  for (const [key, fact] of newFacts) {
    const [part, id] = key.split(' ') as [Part, string]
    if (!settled.has(key)) facts.push(factRow(part, id, fact))
  }
  questions.push(...derived.questions)
  if ([...touched].some((story) => story.startsWith('canner:'))) {
    questions.push(await deriveCanners(tables, kitchenId, newFacts))
  }
  const refs = [...newRefs].map(([from, to]) => ({ from, to }))
  const change = { kitchenId, fromTurn: state.turn, next, facts: [...facts, ...derived.facts], questions, refs, fresh }
  return (await tables.change(change)) ? touched.size : 'overtaken'
}

/** Lines a program of fewer kinds filed as unread, which this one reads. */
export async function misfiled(tables: FactTables, kitchenId: string, after: number, upTo: number) {
  const lines = await tables.inStoryOrder(kitchenId, { story: UNREAD, arrival: after, upTo, limit: LINES_AT_ONCE })
  return lines
    .filter(({ filedUnder, story }) => filedUnder === UNREAD && story !== UNREAD)
    .map(({ arrival, story }) => ({ arrival, from: UNREAD, to: story }))
}

/** A correction touches the story of the entry it names, through corrections of corrections. */
async function withAmended(tables: FactTables, kitchenId: string, stories: Set<string>): Promise<Set<string>> {
  const touched = new Set(stories)
  for (let open = [...stories]; open.length > 0; ) {
    const ids = open.filter((story) => story.startsWith(AMENDING)).map((story) => story.slice(AMENDING.length))
    const found = await byId(tables, kitchenId, ids)
    open = found.map(({ story }) => story).filter((story) => story !== UNREAD && !touched.has(story))
    for (const story of open) touched.add(story)
  }
  return touched
}

const byId = (tables: FactTables, kitchenId: string, ids: readonly string[]): Promise<readonly FiledLine[]> =>
  ids.length === 0 ? Promise.resolve([]) : tables.byId(kitchenId, ids)

/** The lines of stories, with the corrections that name them and the corrections of those. */
async function linesOf(
  tables: FactTables,
  kitchenId: string,
  stories: ReadonlySet<string>,
  upTo: number,
): Promise<Map<string, LedgerLine[]>> {
  const lines = new Map<string, LedgerLine[]>()
  const amended = new Set(await tables.storiesBeginning(kitchenId, AMENDING))
  for (let open = [...stories]; open.length > 0; ) {
    for (const story of open) lines.set(story, [])
    const found = await tables.ofStories(kitchenId, open, upTo)
    // A newer program may have filed here what this one cannot read: that is listed as unread.
    for (const { filedUnder, story, line } of found) if (story !== UNREAD) lines.get(filedUnder!)!.push(line)
    open = found.map(({ line }) => `${AMENDING}${line.id}`).filter((story) => amended.has(story) && !lines.has(story))
  }
  return lines
}
