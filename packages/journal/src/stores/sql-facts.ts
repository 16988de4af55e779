/**
 * Facts in tables, for every SQL store: the same statements, run by the engine's own hands. Lists of names travel as one
 * JSON text, so that a statement is the same whatever their number.
 */
import type { FactChange, FactState, FactTables, FiledLine } from '../tables/port.ts'
import { filedLine, LINE_COLUMNS, type LineRow } from './rows.ts'

export type SqlValue = string | number | null

/** One engine: statements with `?` gaps, rows as arrays. */
export interface SqlEngine {
  /** Turns one `?` holding a JSON list of texts into a list for `in`. */
  readonly textList: string
  /** Counts its rows anew, where it plans by counts. */
  prepare?(): Promise<void>
  all<Row>(sql: string, parameters: readonly SqlValue[]): Promise<Row[]>
  /** One transaction: `guard` first, which must give one row, else nothing is changed and the answer is false. */
  changeIf(guard: Statement, changes: readonly RowsChange[]): Promise<boolean>
}

export interface Statement {
  readonly sql: string
  readonly parameters: readonly SqlValue[]
}

/** Many rows put into one table or taken out of it. */
export interface RowsChange {
  readonly does: 'put' | 'remove'
  readonly table: string
  readonly columns: readonly string[]
  /** Columns that hold whole numbers; the others hold text. */
  readonly bigs?: readonly string[]
  /** Columns that name a row, where an old one gives way. Without it a row that is there stays. */
  readonly key?: readonly string[]
  readonly rows: readonly (readonly SqlValue[])[]
}

const BODIES = 'left join body b on b.kitchen_id = e.kitchen_id and b.arrival = e.arrival'

export function sqlFacts(engine: SqlEngine, bodies = BODIES, ofEntry = 'e.kitchen_id = s.kitchen_id and'): FactTables {
  const lines = async (kitchenId: string, sql: string, parameters: readonly SqlValue[]): Promise<FiledLine[]> =>
    (await engine.all<LineRow>(sql, parameters)).map((row) => filedLine(row, kitchenId))
  // `cross join`: the story leads and its entries are looked up, whatever a planner thinks of the sizes.
  const storied = (columns = LINE_COLUMNS) =>
    `select ${columns}, s.story from story s cross join entry e ${bodies} where ${ofEntry} e.arrival = s.arrival`

  return {
    async state(kitchenId) {
      const [row] = await engine.all<[string, number, number, number]>(
        'select version, up_to, entry_count, turn from fact_state where kitchen_id = ?',
        [kitchenId],
      )
      if (!row) return null
      const [version, upTo, entryCount, turn] = row
      return { version, upTo, entryCount, turn } satisfies FactState
    },
    prepare: async () => {
      await engine.prepare?.()
    },
    async last(kitchenId) {
      // Counting a million rows takes longer than a screen may: count from where the facts stand.
      const [state] = await engine.all<[number, number]>(
        'select up_to, entry_count from fact_state where kitchen_id = ?',
        [kitchenId],
      )
      const [foldedUpTo, folded] = state ?? [0, 0]
      const [row] = await engine.all<[number | null, number]>(
        'select max(arrival), count(*) from entry where kitchen_id = ? and arrival > ?',
        [kitchenId, foldedUpTo],
      )
      return { upTo: row?.[0] ?? foldedUpTo, entryCount: folded + (row?.[1] ?? 0) }
    },
    arrivals: (kitchenId, after, limit) =>
      lines(
        kitchenId,
        `select ${LINE_COLUMNS} from entry e ${bodies} where e.kitchen_id = ? and e.arrival > ?
          order by e.arrival limit ${Number(limit)}`,
        [kitchenId, after],
      ),
    ofStories: (kitchenId, stories, upTo) =>
      stories.length === 0
        ? Promise.resolve([])
        : lines(kitchenId, `${storied()} and s.kitchen_id = ? and s.arrival <= ? and s.story in ${engine.textList}`, [
            kitchenId,
            upTo,
            JSON.stringify(stories),
          ]),
    inStoryOrder: (kitchenId, { story, arrival, upTo, limit }) =>
      lines(
        kitchenId,
        `${storied(LINE_COLUMNS.replace('e.hash', "''"))} and s.kitchen_id = ? and (s.story, s.arrival) > (?, ?) and s.arrival <= ?
          order by s.story, s.arrival limit ${Number(limit)}`,
        [kitchenId, story, arrival, upTo],
      ),
    async storiesBeginning(kitchenId, beginning) {
      const rows = await engine.all<[string]>(
        'select distinct story from story where kitchen_id = ? and story >= ? and story < ?',
        [kitchenId, beginning, `${beginning}\u{7e}`],
      )
      return rows.map(([story]) => story)
    },
    byId: (kitchenId, ids) =>
      lines(
        kitchenId,
        `select ${LINE_COLUMNS} from entry e ${bodies} where e.kitchen_id = ? and e.id in ${engine.textList}`,
        [kitchenId, JSON.stringify(ids)],
      ),
    async refs(kitchenId, stories) {
      if (stories.length === 0) return []
      const list = JSON.stringify(stories)
      const rows = await engine.all<[string, string]>(
        `select from_story, to_story from story_ref where kitchen_id = ? and from_story in ${engine.textList}
          union all select from_story, to_story from story_ref where kitchen_id = ? and to_story in ${engine.textList}`,
        [kitchenId, list, kitchenId, list],
      )
      return rows.map(([from, to]) => ({ from, to }))
    },
    async stale(kitchenId) {
      const rows = await engine.all<[string]>('select story from stale_story where kitchen_id = ?', [kitchenId])
      return rows.map(([story]) => story)
    },
    change: (change) => engine.changeIf(guardOf(change), changesOf(change)),
    async facts(kitchenId, part, ids) {
      if (ids.length === 0) return new Map()
      const rows = await engine.all<[string, string]>(
        `select fact_id, value from fact where kitchen_id = ? and part = ? and fact_id in ${engine.textList}`,
        [kitchenId, part, JSON.stringify(ids)],
      )
      return new Map(rows)
    },
    async page(kitchenId, part, { after, limit, newestFirst, onlyOpen }) {
      const [beyond, order] = newestFirst ? ['<', 'desc'] : ['>', 'asc']
      const rows = await engine.all<[string, string]>(
        `select fact_id, value from fact where kitchen_id = ? and part = ? ${onlyOpen ? 'and still_open = 1' : ''}
          and fact_id ${beyond} ? order by fact_id ${order} limit ${Number(limit)}`,
        [kitchenId, part, after ?? (newestFirst ? '\u{7e}' : '')],
      )
      return rows.map(([id, value]) => ({ id, value }))
    },
    async counts(kitchenId) {
      const rows = await engine.all<[string, number, number]>(
        `select part, count(*), sum(still_open) from fact where kitchen_id = ? group by part`,
        [kitchenId],
      )
      return rows.map(([part, all, open]) => ({ part, all: Number(all), open: Number(open) }))
    },
    async questions(kitchenId, limit) {
      const rows = await engine.all<[string]>(
        `select value from question where kitchen_id = ? order by rank, story, place limit ${Number(limit)}`,
        [kitchenId],
      )
      return rows.map(([value]) => value)
    },
  }
}

/** Moves the state on, only from the turn the change was worked out from. */
function guardOf({ kitchenId, fromTurn, next }: FactChange): Statement {
  const { version, upTo, entryCount } = next
  if (fromTurn === 0)
    return {
      sql: `insert into fact_state (kitchen_id, version, up_to, entry_count, turn) values (?, ?, ?, ?, 1)
        on conflict (kitchen_id) do nothing returning 1`,
      parameters: [kitchenId, version, upTo, entryCount],
    }
  return {
    sql: `update fact_state set version = ?, up_to = ?, entry_count = ?, turn = turn + 1
      where kitchen_id = ? and turn = ? returning 1`,
    parameters: [version, upTo, entryCount, kitchenId, fromTurn],
  }
}

function changesOf(change: FactChange): RowsChange[] {
  const { kitchenId, anew, facts = [], questions = [], refs = [], fresh = [], refiled = [] } = change
  const remove = (table: string, columns: readonly string[], rows: readonly (readonly SqlValue[])[]): RowsChange => ({
    does: 'remove',
    table,
    columns: ['kitchen_id', ...columns],
    rows: rows.map((row) => [kitchenId, ...row]),
  })
  const put = (
    table: string,
    columns: readonly string[],
    rows: readonly (readonly SqlValue[])[],
    more: Pick<RowsChange, 'bigs' | 'key'> = {},
  ): RowsChange => ({
    does: 'put',
    table,
    columns: ['kitchen_id', ...columns],
    rows: rows.map((row) => [kitchenId, ...row]),
    ...more,
  })
  const changes = [
    ...(anew ? ['fact', 'question', 'story_ref', 'stale_story'].map((table) => remove(table, [], [[]])) : []),
    remove(
      'fact',
      ['part', 'fact_id'],
      facts.filter(({ value }) => value === null).map(({ part, id }) => [part, id]),
    ),
    put(
      'fact',
      ['part', 'fact_id', 'still_open', 'value'],
      facts.filter(({ value }) => value !== null).map(({ part, id, open, value }) => [part, id, open ? 1 : 0, value]),
      { bigs: ['still_open'], key: ['kitchen_id', 'part', 'fact_id'] },
    ),
    {
      ...remove(
        'question',
        ['story', 'rank'],
        questions.map(({ story, rank }) => [story, rank]),
      ),
      bigs: ['rank'],
    },
    put(
      'question',
      ['story', 'rank', 'place', 'value'],
      questions.flatMap(({ story, rank, values }) => values.map((value, place) => [story, rank, place, value])),
      { bigs: ['rank', 'place'] },
    ),
    remove(
      'story_ref',
      ['from_story'],
      refs.map(({ from }) => [from]),
    ),
    put(
      'story_ref',
      ['from_story', 'to_story'],
      refs.flatMap(({ from, to }) => to.map((each) => [from, each])),
    ),
    remove(
      'stale_story',
      ['story'],
      fresh.map((story) => [story]),
    ),
    {
      ...remove(
        'story',
        ['story', 'arrival'],
        refiled.map(({ from, arrival }) => [from, arrival]),
      ),
      bigs: ['arrival'],
    },
    put(
      'story',
      ['story', 'arrival'],
      refiled.map(({ to, arrival }) => [to, arrival]),
      { bigs: ['arrival'] },
    ),
  ]
  return changes.filter(({ rows }) => rows.length > 0)
}
