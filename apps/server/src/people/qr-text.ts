/** A QR code in letters, two rows of squares to a line, light on dark as terminals are: for a phone held to the screen. */
import { qrSquares } from '@crib/paper'

const QUIET = 2

export function qrText(content: string): string {
  const squares = qrSquares(content)
  const isBlack = (row: number, column: number): boolean => squares[row]?.[column] ?? false
  const lines: string[] = []
  for (let row = -QUIET; row < squares.length + QUIET; row += 2) {
    let line = ''
    for (let column = -QUIET; column < squares.length + QUIET; column += 1) {
      const upper = isBlack(row, column)
      const lower = isBlack(row + 1, column)
      line += upper ? (lower ? ' ' : '▄') : lower ? '▀' : '█'
    }
    lines.push(line)
  }
  return lines.join('\n')
}
