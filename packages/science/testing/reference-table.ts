/**
 * Reads a published table that lies beside its test. Tests only: it touches the file system.
 * A table opens with `# name: value` lines (source and printed-to are required), then the column names, then numbers.
 */
import { readFileSync } from 'node:fs'

export interface ReferenceTable<Column extends string> {
  /** Bib key and locator, as the table names them. */
  readonly source: string
  readonly printedTo: string
  readonly headers: { readonly [name: string]: string }
  readonly rows: readonly { readonly [C in Column]: number }[]
}

/** @throws {Error} on a missing header, other columns than those named, a ragged row or a cell that is no number. */
export function readReferenceTable<const Column extends string>(
  url: URL,
  columns: readonly Column[],
): ReferenceTable<Column> {
  return parseReferenceTable(readFileSync(url, 'utf8'), columns, url.pathname.split('/').at(-1) ?? '')
}

export function parseReferenceTable<const Column extends string>(
  text: string,
  columns: readonly Column[],
  name: string,
): ReferenceTable<Column> {
  const { headers, columnNames, cells } = splitReferenceTable(text)
  const { source, 'printed-to': printedTo } = headers
  if (source === undefined || printedTo === undefined) throw new Error(`${name}: needs "# source:" and "# printed-to:"`)
  if (columnNames.join() !== columns.join()) throw new Error(`${name}: has columns ${columnNames}, wanted ${columns}`)
  if (cells.length === 0) throw new Error(`${name}: has no rows`)
  const rows = cells.map((row, index) => {
    const numbers = row.map((cell) => (cell === '' ? Number.NaN : Number(cell)))
    if (numbers.length !== columns.length || numbers.some(Number.isNaN)) {
      throw new Error(`${name}: row ${index + 1} "${row}" is not ${columns.length} numbers`)
    }
    return Object.fromEntries(columns.map((column, c) => [column, numbers[c]])) as { [C in Column]: number }
  })
  return { source, printedTo, headers, rows }
}

/** The parts of a table file, unchecked. */
export function splitReferenceTable(text: string) {
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  const headers: { [name: string]: string } = {}
  for (const line of lines) {
    const header = /^#\s*([a-z-]+):\s*(.+)$/.exec(line)
    if (header) headers[header[1]!] = header[2]!.trim()
  }
  const [columnLine = '', ...rowLines] = lines.filter((line) => !line.startsWith('#'))
  const split = (line: string) => line.split(',').map((cell) => cell.trim())
  return { headers, columnNames: split(columnLine), cells: rowLines.map(split) }
}
