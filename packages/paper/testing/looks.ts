/**
 * What a printed page looks like, as a few hundred characters: its ink in squares of 5 mm, each a darkness from 0 to f.
 * Coarse on purpose: another version of the renderer hints letters otherwise, and that is no change; a moved line, a
 * lost rule or a grown heading is one.
 */
import type { PNG } from 'pngjs'

/** Edge of a square. [mm] */
const SQUARE_MM = 5
const MM_PER_INCH = 25.4
const LEVELS = '0123456789abcdef'

/** Dots an inch at which pages are looked at. */
export const LOOK_DPI = 50

/** One line for each row of squares. */
export function lookOf(page: PNG): string {
  const edge = (SQUARE_MM / MM_PER_INCH) * LOOK_DPI
  const columns = Math.ceil(page.width / edge)
  const rows = Math.ceil(page.height / edge)
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => LEVELS[levelOf(page, column * edge, row * edge, edge)])
      .join('')
      .replace(/0+$/, ''),
  ).join('\n')
}

/** Root of the darkness, so that a hairline still counts beside a black figure. */
function levelOf(page: PNG, left: number, top: number, edge: number): number {
  let dark = 0
  let dots = 0
  for (let y = Math.round(top); y < Math.min(page.height, Math.round(top + edge)); y += 1) {
    for (let x = Math.round(left); x < Math.min(page.width, Math.round(left + edge)); x += 1) {
      dark += 255 - (page.data[(y * page.width + x) * 4] ?? 255)
      dots += 1
    }
  }
  const darkness = dots === 0 ? 0 : dark / 255 / dots
  return Math.round(Math.sqrt(darkness) * (LEVELS.length - 1))
}

/** Squares that differ by more than one level, as `column,row: was, is`; a page of another size differs in `size`. */
export function changedSquares(was: string, is: string): readonly string[] {
  const before = was.split('\n')
  const after = is.split('\n')
  if (before.length !== after.length) return [`size: ${before.length} rows, ${after.length} rows`]
  return before.flatMap((line, row) => {
    const other = after[row] ?? ''
    return Array.from({ length: Math.max(line.length, other.length) }, (_, column) => {
      const a = line[column] ?? '0'
      const b = other[column] ?? '0'
      return Math.abs(LEVELS.indexOf(a) - LEVELS.indexOf(b)) > 1 ? `${column},${row}: ${a}, ${b}` : ''
    }).filter((change) => change !== '')
  })
}
