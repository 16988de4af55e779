/** A kitchen's book as screens ask it: facts from tables, a page at a time, however long the book. */
import type { Facts, KitchenFact, LedgerLine, Question, UnreadEntry } from '../fold/facts.ts'
import { NO_FACTS } from '../fold/fold.ts'
import { type EntryHistory, history } from '../fold/history.ts'
import { compareLines } from '../fold/ledger.ts'
import type { Part } from '../fold/story-facts.ts'
import type { ServerStore } from '../server-store.ts'
import { AMENDING } from './amended.ts'
import { type CaughtUp, catchUp } from './catch-up.ts'
import { factOf } from './fact-text.ts'
import type { FactPage } from './port.ts'
import { KITCHEN_PART, UNREAD_PART } from './story-rows.ts'

export type ListPart = Part

export interface ListQuery {
  /** Id of the last one of the page before. */
  readonly after?: string
  /** 1 to 1,000; usually 50. */
  readonly limit?: number
  /** Newest first unless said otherwise: ids begin with the time of their making. */
  readonly oldestFirst?: boolean
  /** Only what something is left of (lots), or what is not finished (canner loads). */
  readonly onlyOpen?: boolean
}

export interface Book {
  readonly kitchenId: string
  /** Folds what has arrived since; every question below answers from what was folded last. */
  catchUp(): Promise<CaughtUp>
  kitchen(): Promise<KitchenFact | null>
  get<P extends ListPart>(part: P, id: string): Promise<Facts[P][string] | null>
  list<P extends ListPart>(part: P, query?: ListQuery): Promise<readonly Facts[P][string][]>
  /** How many there are of each, and of how many something is left. */
  counts(): Promise<Readonly<Record<string, { readonly all: number; readonly open: number }>>>
  /** The first of what the book asks. */
  questions(limit?: number): Promise<readonly Question[]>
  /** An entry with everything later said about it; null when the book has none of that id. */
  history(entryId: string): Promise<EntryHistory | null>
  /** All facts at once, without the ledger behind them: for a book that fits in memory. */
  facts(): Promise<Omit<Facts, 'ledger'>>
}

const USUAL_PAGE = 50
const MOST_PAGE = 1000

/** Opens one kitchen's book and folds in what has arrived. */
export async function openBook(store: Pick<ServerStore, 'facts'>, kitchenId: string): Promise<Book> {
  const tables = store.facts
  const page = async <T>(part: string, query: FactPage): Promise<readonly T[]> =>
    (await tables.page(kitchenId, part, query)).map(({ value }) => factOf<T>(value))

  async function all<T>(part: string): Promise<{ [id: string]: T }> {
    const found: { [id: string]: T } = {}
    for (let after: string | undefined; ; ) {
      const query = { limit: MOST_PAGE, newestFirst: false, onlyOpen: false, ...(after !== undefined && { after }) }
      const rows = await tables.page(kitchenId, part, query)
      for (const { id, value } of rows) found[id] = factOf<T>(value)
      after = rows.at(-1)?.id
      if (after === undefined) return found
    }
  }

  const book: Book = {
    kitchenId,
    catchUp: () => catchUp(tables, kitchenId),
    kitchen: async () => {
      const value = (await tables.facts(kitchenId, KITCHEN_PART, [kitchenId])).get(kitchenId)
      return value === undefined ? null : factOf<KitchenFact>(value)
    },
    async get<P extends ListPart>(part: P, id: string) {
      const value = (await tables.facts(kitchenId, part, [id])).get(id)
      return value === undefined ? null : factOf<Facts[P][string]>(value)
    },
    list<P extends ListPart>(part: P, { after, limit = USUAL_PAGE, oldestFirst, onlyOpen }: ListQuery = {}) {
      if (!(limit >= 1 && limit <= MOST_PAGE)) throw new RangeError(`limit is ${limit}; a page holds 1 to ${MOST_PAGE}`)
      return page<Facts[P][string]>(part, {
        limit: Math.floor(limit),
        newestFirst: !oldestFirst,
        onlyOpen: onlyOpen ?? false,
        ...(after !== undefined && { after }),
      })
    },
    counts: async () =>
      Object.fromEntries((await tables.counts(kitchenId)).map(({ part, all, open }) => [part, { all, open }])),
    questions: async (limit = USUAL_PAGE) =>
      (await tables.questions(kitchenId, limit)).map((value) => JSON.parse(value) as Question),
    async history(entryId) {
      const byEntity: { [entity: string]: LedgerLine[] } = {}
      const entityOf: { [id: string]: string } = {}
      const [found] = await tables.byId(kitchenId, [entryId])
      if (!found) return null
      byEntity[found.story] = [found.line]
      entityOf[entryId] = found.story
      for (let open = [entryId]; open.length > 0; ) {
        const told = await tables.ofStories(
          kitchenId,
          open.map((id) => AMENDING + id),
          Number.MAX_SAFE_INTEGER,
        )
        for (const { filedUnder, line } of told) byEntity[filedUnder!] = [...(byEntity[filedUnder!] ?? []), line]
        open = told.map(({ line }) => line.id).filter((id) => !byEntity[AMENDING + id])
      }
      for (const lines of Object.values(byEntity)) lines.sort(compareLines)
      return history({ ...NO_FACTS, ledger: { byEntity, entityOf, questionsOf: {} } }, entryId)
    },
    async facts() {
      const unread = Object.values(await all<{ told: UnreadEntry; order: LedgerLine }>(UNREAD_PART))
      const state = await tables.state(kitchenId)
      return {
        kitchen: await book.kitchen(),
        cornLots: await all('cornLots'),
        seed: await all('seed'),
        alkaliLots: await all('alkaliLots'),
        pots: await all('pots'),
        canners: await all('canners'),
        standings: await all('standings'),
        batches: await all('batches'),
        runs: await all('runs'),
        foodLots: await all('foodLots'),
        plots: await all('plots'),
        plantings: await all('plantings'),
        seedLots: await all('seedLots'),
        recalls: await all('recalls'),
        coolings: await all('coolings'),
        dryings: await all('dryings'),
        photos: await all('photos'),
        entryCount: state?.entryCount ?? 0,
        questions: await book.questions(1_000_000),
        unread: unread.sort((a, b) => compareLines(a.order, b.order)).map(({ told }) => told),
      }
    },
  }
  await book.catchUp()
  return book
}
