/** What the keeper says of a logger's file: kept while half typed, and a task for the reader once all of it is said. */
import {
  dayOfInstant,
  type LoggerMapping,
  type LoggerTimeKind,
  type LoggerUnit,
  proposeLoggerMapping,
  type ReadingClock,
  splitLoggerRow,
  type TraceRole,
} from '@crib/planning'
import type { Sentence } from '@crib/science'
import { deviceZone } from '../../book/keeper.ts'
import { clockMinutes } from '../../parts-of-the-sheet/index.ts'

export type Delimiter = LoggerMapping['delimiter']

export interface LoggerHead {
  /** First line that is not a remark. */
  readonly line: string
  readonly firstRow: string
}

export interface ColumnAnswer {
  readonly column: string
  readonly role: TraceRole | 'out' | ''
  readonly unit: LoggerUnit | ''
}

export interface FileAnswers {
  /** The head they were given for. */
  readonly head: string
  readonly delimiter: Delimiter
  readonly decimal: LoggerMapping['decimal']
  readonly timeColumn: string
  readonly timeKind: LoggerTimeKind | ''
  readonly columns: readonly ColumnAnswer[]
  /** YYYY-MM-DD, HH:MM and minutes as typed. */
  readonly day: string
  readonly startClock: string
  readonly aheadMin: string
  readonly zone: string
}

/** Enough for the longest head and a row. */
const HEAD_BYTES = 200_000

/** Null where the file has no line and a row after it. */
export async function headOf(file: Blob): Promise<LoggerHead | null> {
  const text = (await file.slice(0, HEAD_BYTES).text()).replace(/^\uFEFF/, '')
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '' && !line.startsWith('#'))
  const [line, firstRow] = lines
  return line === undefined || firstRow === undefined ? null : { line, firstRow }
}

/** The questions with what the head itself says filled in; what it does not say stays open. */
export function emptyAnswers(
  head: LoggerHead,
  begun: { readonly instant: string; readonly zone: string } | undefined,
): FileAnswers {
  const zone = begun?.zone ?? deviceZone()
  const proposed = proposeLoggerMapping(head.line, head.firstRow)
  const delimiter = proposed?.mapping.delimiter ?? likelyDelimiter(head.line)
  const timeColumn = proposed?.mapping.time.column ?? ''
  const unsaid = new Set(proposed?.unitUnsaid)
  const columns = splitLoggerRow(head.line, delimiter).map((column): ColumnAnswer => {
    const found = proposed?.mapping.values.find((value) => value.column === column)
    if (!found || unsaid.has(column)) return { column, role: '', unit: '' }
    return { column, role: likelyRole(column, found.unit), unit: found.unit }
  })
  return {
    head: head.line,
    delimiter,
    decimal: proposed?.mapping.decimal ?? '.',
    timeColumn,
    timeKind: proposed?.mapping.time.kind ?? '',
    columns,
    day: dayOfInstant(begun ? Date.parse(begun.instant) : Date.now(), zone),
    startClock: '',
    aheadMin: '0',
    zone,
  }
}

/** The columns anew, cut at another mark. */
export function cutAt(answers: FileAnswers, delimiter: Delimiter): FileAnswers {
  const columns = splitLoggerRow(answers.head, delimiter).map((column): ColumnAnswer => {
    return answers.columns.find((before) => before.column === column) ?? { column, role: '', unit: '' }
  })
  return { ...answers, delimiter, columns, timeColumn: '', timeKind: '' }
}

function likelyDelimiter(line: string): Delimiter {
  return (['\t', ';', ','] as const).find((mark) => line.includes(mark)) ?? ','
}

/** Only what the name itself says. */
function likelyRole(column: string, unit: LoggerUnit): TraceRole | '' {
  if (unit === 'PsiGauge' || unit === 'KPaGauge') return 'gauge'
  if (/canner|steam/i.test(column)) return 'canner'
  return /jar|kernel|food/i.test(column) ? 'jar' : ''
}

export interface Settled {
  /** Null until everything is said. */
  readonly task: { readonly mapping: LoggerMapping; readonly roles: readonly TraceRole[] } | null
  readonly missing: readonly Sentence[]
}

export function settledAnswers(answers: FileAnswers): Settled {
  const { delimiter, decimal, timeColumn, timeKind, columns } = answers
  const others = columns.filter(({ column }) => column !== timeColumn)
  const aheadMin = Number(answers.aheadMin.replace(',', '.'))
  const names = columns.map(({ column }) => column)
  const missing: Sentence[] = [
    ...[...new Set(names.filter((name, i) => names.indexOf(name) !== i))].map((column) => ({
      key: 'heat:missing-own-name',
      params: { column },
    })),
    ...(timeColumn === '' || timeKind === '' ? [{ key: 'heat:missing-time' }] : []),
    ...others.flatMap(({ column, role, unit }) => {
      if (role === '') return [{ key: 'heat:missing-role', params: { column } }]
      return role !== 'out' && unit === '' ? [{ key: 'heat:missing-unit', params: { column } }] : []
    }),
    ...(others.some(({ role }) => role !== '' && role !== 'out') ? [] : [{ key: 'heat:missing-all' }]),
    ...(needsStart(timeKind) && clockMinutes(answers.startClock) === null ? [{ key: 'heat:missing-start' }] : []),
    ...(needsDay(timeKind) && answers.day === '' ? [{ key: 'heat:missing-day' }] : []),
    ...(Number.isFinite(aheadMin) ? [] : [{ key: 'heat:missing-ahead', params: { typed: answers.aheadMin } }]),
  ]
  if (missing.length > 0 || timeKind === '') return { task: null, missing }
  const kept = others.flatMap(({ column, role, unit }) =>
    role === '' || role === 'out' || unit === '' ? [] : [{ column, role, unit }],
  )
  return {
    missing,
    task: {
      mapping: {
        delimiter,
        decimal,
        time: { column: timeColumn, kind: timeKind },
        values: kept.map(({ column, unit }) => ({ column, unit })),
        ...(!needsStart(timeKind) && aheadMin !== 0 && { clockAheadMin: aheadMin }),
      },
      roles: kept.map(({ role }) => role),
    },
  }
}

export const needsStart = (kind: LoggerTimeKind | '') => kind === 'seconds' || kind === 'minutes'
export const needsDay = (kind: LoggerTimeKind | '') => kind === 'clock' || needsStart(kind)

export function clockOfAnswers({ timeKind, day, startClock, zone }: FileAnswers): ReadingClock {
  return {
    kind: timeKind === '' ? 'minutes' : timeKind,
    day,
    startClockMin: clockMinutes(startClock) ?? 0,
    zone,
  }
}
