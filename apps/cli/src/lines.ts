/** Lays out worded text for a terminal: wrapped, indented, aligned. Knows no sentence of its own. */

/** `text` broken at spaces so that no line passes `columns`; lines after the first are indented as well. */
export function wrap(text: string, columns: number, indent = '', hanging = indent): string {
  const lines: string[] = []
  let line = indent
  for (const word of text.split(/\s+/)) {
    const blank = line.trim() === '' || line.endsWith(' ')
    if (!blank && line.length + 1 + word.length > columns) {
      lines.push(line)
      line = hanging
    }
    line += line.trim() === '' || line.endsWith(' ') ? word : ` ${word}`
  }
  return [...lines, line].join('\n')
}

/** A bulleted sentence. */
export function bullet(text: string, columns: number): string {
  return wrap(text, columns, '  - ', '    ')
}

/** A heading and its bullets; nothing at all without sentences. */
export function section(heading: string, texts: readonly string[], columns: number): string[] {
  return texts.length === 0 ? [] : ['', heading, ...texts.map((text) => bullet(text, columns))]
}

/** Rows with their columns aligned, two spaces between; the last column is left as it is. */
export function aligned(rows: readonly (readonly string[])[], indent = '  '): string[] {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)))
  return rows.map((row) =>
    `${indent}${row.map((cell, column) => (column === row.length - 1 ? cell : cell.padEnd(widths[column]!))).join('  ')}`.trimEnd(),
  )
}
