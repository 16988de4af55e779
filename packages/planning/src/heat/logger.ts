/**
 * Reads a logger's file piece by piece, so that ten million rows never stand in memory at once. Every row that cannot be
 * taken as it stands is named by row and column. Leaves out: what the readings mean (run-marks.ts).
 */
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { type LoggerMapping, type LoggerUnit, splitLoggerRow } from './logger-mapping.ts'

export interface LoggerReading {
  /** From the first reading, or from midnight for a `clock` column, or epoch minutes for an `instant` column. [min] */
  readonly atMin: number
  /** One for each column of the mapping, in °C or psi; null where nothing was read. */
  readonly values: readonly (number | null)[]
}

export type LoggerFaultKind = 'no-number' | 'no-time' | 'drop-out' | 'repeated' | 'repeated-otherwise' | 'short-row'

export interface LoggerFault {
  readonly kind: LoggerFaultKind
  /** As counted in the file, the first line being 1. */
  readonly row: number
  readonly column: string
  readonly sentence: Sentence
}

export interface LoggerGap {
  readonly fromMin: number
  readonly toMin: number
  /** The row after it, as counted in the file. */
  readonly beforeRow: number
}

export interface LoggerReport {
  readonly rowCount: number
  readonly readingCount: number
  readonly faultCounts: Readonly<Partial<Record<LoggerFaultKind, number>>>
  /** The first of them; all are counted. */
  readonly faults: readonly LoggerFault[]
  /** Where no reading came for far longer than the usual step. */
  readonly gaps: readonly LoggerGap[]
  readonly gapCount: number
}

export type LoggerOutcome =
  | ({ readonly ok: true } & LoggerReport)
  | ({ readonly ok: false; readonly refused: Sentence } & LoggerReport)

const KEPT_FAULTS = 50
const KEPT_GAPS = 50
const LONGEST_LINE = 100_000
/** A gap is longer than this, and than four usual steps. [min] Project rule. */
const GAP_MIN = 2

/**
 * Highest a reading of a household canner can be, above which the unit is not what was said, and beyond which a sensor has
 * dropped out (a broken thermocouple reads its full scale). Project rule: 20 psi of steam is 126 °C.
 */
const LIMITS: Record<LoggerUnit, { readonly low: number; readonly high: number; readonly other: number }> = {
  C: { low: -30, high: 135, other: 275 },
  F: { low: -22, high: 275, other: 275 },
  PsiGauge: { low: -3, high: 28, other: 200 },
  KPaGauge: { low: -20, high: 195, other: 195 },
}
const TO_CANONICAL: Record<LoggerUnit, (value: number) => number> = {
  C: (value) => value,
  F: (value) => (value - 32) / 1.8,
  PsiGauge: (value) => value,
  KPaGauge: (value) => value / 6.894757293168,
}

/**
 * Hands every reading of a file to `take`, in order, and reports what could not be taken. A file whose times run backward,
 * whose columns are not there, or whose figures cannot be in the unit said, is refused with the row; readings already
 * handed on are then to be dropped.
 *
 * @param pieces the text of the file in pieces of any size.
 */
export async function readLogger(
  pieces: AsyncIterable<string> | Iterable<string>,
  mapping: LoggerMapping,
  take: (reading: LoggerReading) => void,
): Promise<LoggerOutcome> {
  const reader = createRowReader(mapping, take)
  let rest = ''
  for await (const piece of pieces) {
    rest += piece
    let from = 0
    for (let end = rest.indexOf('\n', from); end >= 0; end = rest.indexOf('\n', from)) {
      const refused = reader.row(rest.slice(from, end))
      if (refused) return { ok: false, refused, ...reader.report() }
      from = end + 1
    }
    rest = rest.slice(from)
    if (rest.length > LONGEST_LINE) return { ok: false, refused: say('heat:logger-no-lines'), ...reader.report() }
  }
  // What ends with a line break has no line after it.
  const refused = (rest === '' ? null : reader.row(rest)) ?? reader.atEnd()
  return refused ? { ok: false, refused, ...reader.report() } : { ok: true, ...reader.report() }
}

function createRowReader(mapping: LoggerMapping, take: (reading: LoggerReading) => void) {
  const faults: LoggerFault[] = []
  const faultCounts: Partial<Record<LoggerFaultKind, number>> = {}
  const gaps: LoggerGap[] = []
  const clock = createLoggerClock(mapping)
  let rowCount = 0
  let readingCount = 0
  let gapCount = 0
  let timeAt = -1
  let valuesAt: number[] | null = null
  let before: LoggerReading | null = null
  let usualStepMin = Number.POSITIVE_INFINITY

  const fault = (kind: LoggerFaultKind, column: string, sentence: Sentence) => {
    faultCounts[kind] = (faultCounts[kind] ?? 0) + 1
    if (faults.length < KEPT_FAULTS) faults.push({ kind, row: rowCount, column, sentence })
  }

  function header(names: readonly string[]): Sentence | null {
    timeAt = names.indexOf(mapping.time.column)
    if (timeAt < 0) return say('heat:logger-no-column', { column: mapping.time.column, found: names.join(', ') })
    const found = mapping.values.map(({ column }) => names.indexOf(column))
    const missing = mapping.values.find((_, i) => found[i]! < 0)
    if (missing) return say('heat:logger-no-column', { column: missing.column, found: names.join(', ') })
    valuesAt = found
    return null
  }

  /** The value in °C or psi, null where none; a sentence where the unit cannot be right. */
  function value(cell: string | undefined, index: number): number | null | Sentence {
    const { column, unit } = mapping.values[index]!
    if (cell === undefined) {
      fault('short-row', column, say('heat:logger-short-row', { row: String(rowCount), column }))
      return null
    }
    if (cell === '') {
      fault('drop-out', column, say('heat:logger-empty', { row: String(rowCount), column }))
      return null
    }
    const figure = numberOf(cell, mapping.decimal)
    if (figure === null) {
      fault(
        'no-number',
        column,
        say('heat:logger-no-number', { row: String(rowCount), column, cell: cell.slice(0, 30) }),
      )
      return null
    }
    const { low, high, other } = LIMITS[unit]
    if (figure > high && figure <= other) {
      const key = unit === 'C' ? 'heat:logger-fahrenheit-as-celsius' : 'heat:logger-kpa-as-psi'
      return say(key, { row: String(rowCount), column, cell: cell.slice(0, 30) })
    }
    if (figure < low || figure > high) {
      fault('drop-out', column, say('heat:logger-drop-out', { row: String(rowCount), column, cell: cell.slice(0, 30) }))
      return null
    }
    return TO_CANONICAL[unit](figure)
  }

  function row(line: string): Sentence | null {
    rowCount += 1
    const text = line.endsWith('\r') ? line.slice(0, -1) : line
    const bare = rowCount === 1 && text.startsWith('\uFEFF') ? text.slice(1) : text
    if (bare.trim() === '' || bare.startsWith('#')) return null
    const cells = splitLoggerRow(bare, mapping.delimiter)
    if (valuesAt === null) return header(cells)
    const atMin = clock(cells[timeAt] ?? '')
    if (atMin === null) {
      const cell = (cells[timeAt] ?? '').slice(0, 30)
      fault(
        'no-time',
        mapping.time.column,
        say('heat:logger-no-time', { row: String(rowCount), column: mapping.time.column, cell }),
      )
      return null
    }
    const values: (number | null)[] = []
    for (let i = 0; i < valuesAt.length; i += 1) {
      const read = value(cells[valuesAt[i]!], i)
      if (read !== null && typeof read === 'object') return read
      values.push(read)
    }
    return accept({ atMin, values })
  }

  function accept(reading: LoggerReading): Sentence | null {
    if (before) {
      const stepMin = reading.atMin - before.atMin
      if (stepMin < 0) return say('heat:logger-backward', { row: String(rowCount), column: mapping.time.column })
      if (stepMin === 0) {
        const same = reading.values.every((read, i) => read === before!.values[i])
        const kind = same ? 'repeated' : 'repeated-otherwise'
        fault(
          kind,
          mapping.time.column,
          say(`heat:logger-${kind}`, { row: String(rowCount), column: mapping.time.column }),
        )
        return null
      }
      if (stepMin > GAP_MIN && stepMin > 4 * usualStepMin) {
        gapCount += 1
        if (gaps.length < KEPT_GAPS) gaps.push({ fromMin: before.atMin, toMin: reading.atMin, beforeRow: rowCount })
      } else usualStepMin = Number.isFinite(usualStepMin) ? 0.9 * usualStepMin + 0.1 * stepMin : stepMin
    }
    before = reading
    readingCount += 1
    take(reading)
    return null
  }

  return {
    row,
    atEnd: () => (readingCount < 2 ? say('heat:logger-too-few') : null),
    report: (): LoggerReport => ({ rowCount, readingCount, faultCounts, faults, gaps, gapCount }),
  }
}

function numberOf(cell: string, decimal: '.' | ','): number | null {
  const text = decimal === ',' ? cell.replace(',', '.') : cell
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text)) return null
  const figure = Number(text)
  return Number.isFinite(figure) ? figure : null
}

const HALF_DAY_MIN = 720
const DAY_MIN = 1440

/** Minutes of a time cell; a clock that falls back by more than half a day has passed midnight. */
function createLoggerClock({ time, decimal, clockAheadMin = 0 }: LoggerMapping): (cell: string) => number | null {
  switch (time.kind) {
    case 'seconds':
    case 'minutes': {
      const perUnit = time.kind === 'seconds' ? 1 / 60 : 1
      return (cell) => {
        const figure = numberOf(cell, decimal)
        return figure === null ? null : figure * perUnit
      }
    }
    case 'instant':
      return (cell) => {
        // Without a zone the instant would depend on the machine that reads it.
        if (!/^\d{4}-\d\d-\d\d[T ]\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:?\d\d)$/.test(cell)) return null
        const ms = Date.parse(cell.replace(' ', 'T'))
        return Number.isFinite(ms) ? ms / 60_000 - clockAheadMin : null
      }
    case 'clock': {
      let lastMin: number | null = null
      let days = 0
      return (cell) => {
        const parts = /^(\d{1,2}):(\d\d)(?::(\d\d(?:\.\d+)?))?$/.exec(cell)
        if (!parts) return null
        const hours = Number(parts[1])
        const minutes = Number(parts[2])
        const seconds = Number(parts[3] ?? 0)
        if (hours > 23 || minutes > 59 || seconds >= 60) return null
        const clockMin = hours * 60 + minutes + seconds / 60
        if (lastMin !== null && clockMin < lastMin - HALF_DAY_MIN) days += 1
        lastMin = clockMin
        return clockMin + days * DAY_MIN - clockAheadMin
      }
    }
  }
}
