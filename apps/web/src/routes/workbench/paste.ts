/**
 * Rows copied out of a spreadsheet: cells parted by tabs, semicolons or commas, with quotes as CSV (RFC 4180) has them.
 * A first row of column names is taken as such; without one the columns stand in the order of the form.
 * Leaves out: reading the cells, which stay as they were written.
 */
export interface Column {
  readonly name: string
  readonly label: string
}

export type PastedRow = { readonly [name: string]: string }

export function rowsFrom(text: string, columns: readonly Column[]): readonly PastedRow[] {
  const lines = cellsOf(text).filter((cells) => cells.some((cell) => cell !== ''))
  const [first = []] = lines
  const named = first.map((cell) => columns.find(({ name, label }) => isSame(cell, name) || isSame(cell, label)))
  const hasNames = named.some((column) => column !== undefined)
  const order = hasNames ? named : columns
  return lines
    .slice(hasNames ? 1 : 0)
    .map((cells) =>
      Object.fromEntries(
        cells.flatMap((cell, index) => (order[index] && cell !== '' ? [[order[index].name, cell] as const] : [])),
      ),
    )
}

/** Whether a pasted text is more than the words of one field. */
export function isRows(text: string): boolean {
  return /\t|\n./.test(text.trim())
}

function isSame(cell: string, name: string): boolean {
  return cell.toLowerCase() === name.toLowerCase()
}

function cellsOf(text: string): readonly (readonly string[])[] {
  const mark = ['\t', ';', ','].find((candidate) => text.includes(candidate)) ?? '\t'
  const rows: string[][] = []
  let row: string[] = []
  let cell = ''
  let quoted = false
  const endCell = () => {
    row.push(cell.trim())
    cell = ''
  }
  const endRow = () => {
    endCell()
    rows.push(row)
    row = []
  }
  const letters = text.replaceAll('\r\n', '\n')
  for (let at = 0; at < letters.length; at += 1) {
    const letter = letters[at]
    if (quoted) {
      if (letter !== '"') cell += letter
      else if (letters[at + 1] === '"') {
        cell += '"'
        at += 1
      } else quoted = false
    } else if (letter === '"' && cell.trim() === '') quoted = true
    else if (letter === mark) endCell()
    else if (letter === '\n' || letter === '\r') endRow()
    else cell += letter
  }
  endRow()
  return rows
}
