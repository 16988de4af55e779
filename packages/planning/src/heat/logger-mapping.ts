/**
 * What the columns of a logger's file mean: said by the keeper, never guessed in silence. A proposal from the names of the
 * columns is a proposal to be confirmed.
 */

export type LoggerUnit = 'C' | 'F' | 'PsiGauge' | 'KPaGauge'

/** `instant`: a date and time with its zone. `clock`: HH:MM or HH:MM:SS, past midnight is the next day. */
export type LoggerTimeKind = 'instant' | 'clock' | 'seconds' | 'minutes'

export interface LoggerValueColumn {
  /** Name as the header has it. */
  readonly column: string
  readonly unit: LoggerUnit
}

export interface LoggerMapping {
  readonly delimiter: ',' | ';' | '\t'
  readonly decimal: '.' | ','
  readonly time: { readonly column: string; readonly kind: LoggerTimeKind }
  /** One or more probes; readings keep this order. */
  readonly values: readonly LoggerValueColumn[]
  /** How far the logger's clock was ahead of the kitchen's. [min] Only for `instant` and `clock`. */
  readonly clockAheadMin?: number
}

export interface ProposedMapping {
  readonly mapping: LoggerMapping
  /** Columns whose unit the header does not name: the keeper must say. */
  readonly unitUnsaid: readonly string[]
}

const TIME_NAME = /time|clock|date|elapsed|zeit|hora|\bmin(utes?)?\b|\bsec(onds?)?\b/i

/** What the header suggests, for the keeper to confirm; null where no time column or no value column can be told. */
export function proposeLoggerMapping(header: string, firstRow: string): ProposedMapping | null {
  const delimiter = (['\t', ';', ','] as const).find((mark) => header.includes(mark))
  if (delimiter === undefined) return null
  const names = splitLoggerRow(header, delimiter)
  const cells = splitLoggerRow(firstRow, delimiter)
  const timeAt = names.findIndex((name) => TIME_NAME.test(name))
  if (timeAt < 0) return null
  const decimal = delimiter !== ',' && cells.some((cell) => /^-?\d+,\d+$/.test(cell)) ? ',' : '.'
  const unitUnsaid: string[] = []
  const values = names.flatMap((column, index): LoggerValueColumn[] => {
    const cell = (cells[index] ?? '').replace(decimal, '.')
    if (index === timeAt || cell === '' || !Number.isFinite(Number(cell))) return []
    const unit = unitOfName(column)
    if (unit === null) unitUnsaid.push(column)
    return [{ column, unit: unit ?? 'C' }]
  })
  if (values.length === 0) return null
  const kind = timeKind(names[timeAt]!, cells[timeAt] ?? '')
  return { mapping: { delimiter, decimal, time: { column: names[timeAt]!, kind }, values }, unitUnsaid }
}

function unitOfName(name: string): LoggerUnit | null {
  if (/kpa/i.test(name)) return 'KPaGauge'
  if (/psi/i.test(name)) return 'PsiGauge'
  if (/°\s*c\b|\(c\)|\bdeg ?c\b|celsius|_c$/i.test(name)) return 'C'
  if (/°\s*f\b|\(f\)|\bdeg ?f\b|fahrenheit|_f$/i.test(name)) return 'F'
  return null
}

function timeKind(name: string, cell: string): LoggerTimeKind {
  if (/^\d{4}-\d\d-\d\dT/.test(cell)) return 'instant'
  if (/^\d{1,2}:\d\d(:\d\d)?$/.test(cell)) return 'clock'
  return /min/i.test(name) ? 'minutes' : 'seconds'
}

/** Cells of one row, with double quotes as RFC 4180 has them; a quoted line break is not expected of a logger. */
export function splitLoggerRow(row: string, delimiter: string): string[] {
  if (!row.includes('"')) return row.split(delimiter).map((cell) => cell.trim())
  const cells: string[] = []
  let cell = ''
  let quoted = false
  for (let i = 0; i < row.length; i += 1) {
    const mark = row[i]!
    if (quoted && mark === '"' && row[i + 1] === '"') {
      cell += '"'
      i += 1
    } else if (mark === '"') quoted = !quoted
    else if (mark === delimiter && !quoted) {
      cells.push(cell.trim())
      cell = ''
    } else cell += mark
  }
  return [...cells, cell.trim()]
}
