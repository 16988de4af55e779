/** Layout of a table: the head row is printed again on every page the table reaches. */
import type { TableBlock } from '../model.ts'
import { mmToPt } from '../sheets.ts'
import { columnWidths } from './column-widths.ts'
import { BLACK, HAIR, type Ink, TINT } from './ink.ts'
import { type Piece, type Room, stack } from './piece.ts'
import { sum, writeInPieces } from './plain-blocks.ts'
import { glued, type SetText, setText } from './text.ts'

export function tablePieces(table: TableBlock, room: Room): Piece[] {
  const { columns, rows, rowMm = 0 } = table
  const { width, type, measure } = room
  const pad = { x: type.body * 0.45, y: type.body * 0.24 }
  const leasts = columns.map(({ title, strong }, index) =>
    Math.max(
      ...words(title).map((word) => measure.width(word, 'text-strong', type.small)),
      ...rows.flatMap((row) =>
        words(row[index] ?? '').map((word) => measure.width(word, strong ? 'text-strong' : 'text', type.body)),
      ),
    ),
  )
  if (room.isLarge && sum(leasts.map((least) => least + 2 * pad.x)) > width) return rowByRow(table, room)
  const widths = columnWidths(
    columns.map(({ share }) => share),
    leasts.map((least) => least + 2 * pad.x + 0.1),
    width,
  )
  const lefts = widths.map((_, index) => sum(widths.slice(0, index)))

  const cellsOf = (texts: readonly string[], head: boolean) =>
    columns.map(({ align = 'left', strong }, index) => {
      const style = head
        ? ({ face: 'text-strong', sizePt: type.small, align } as const)
        : ({ face: strong ? 'text-strong' : 'text', sizePt: type.body, align } as const)
      return setText(texts[index] ?? '', (widths[index] ?? 0) - 2 * pad.x, style, measure)
    })
  const inkOf = (cells: readonly SetText[], x: number, y: number): Ink[] =>
    cells.flatMap((cell, index) => cell.ink(x + (lefts[index] ?? 0) + pad.x, y + pad.y))
  const heightOf = (cells: readonly SetText[]) => Math.max(...cells.map(({ height }) => height)) + 2 * pad.y

  const headCells = cellsOf(
    columns.map(({ title }) => title),
    true,
  )
  const headHeight = heightOf(headCells)
  const head: Piece = {
    height: headHeight,
    gapBefore: type.gap * 0.9,
    keepWithNext: true,
    ink: (x, y) => [
      { ink: 'rect', box: { x, y, width, height: headHeight }, fill: TINT },
      {
        ink: 'line',
        points: [
          [x, y + headHeight],
          [x + width, y + headHeight],
        ],
        widthPt: 1,
        grey: BLACK,
      },
      ...inkOf(headCells, x, y),
    ],
  }
  const body = rows
    .flatMap((row) => split(cellsOf(row, false), row))
    .map((row): Piece => {
      const cells = cellsOf(row, false)
      const height = Math.max(heightOf(cells), mmToPt(rowMm))
      return {
        height,
        gapBefore: 0,
        repeat: head,
        ink: (x, y) => [
          ...inkOf(cells, x, y),
          {
            ink: 'line',
            points: [
              [x, y + height],
              [x + width, y + height],
            ],
            widthPt: 0.5,
            grey: HAIR,
          },
          ...(rowMm > 0 ? uprights(x, y, height) : []),
        ],
      }
    })
  function uprights(x: number, y: number, height: number): Ink[] {
    return lefts.slice(1).map((left) => ({
      ink: 'line',
      points: [
        [x + left, y],
        [x + left, y + height],
      ],
      widthPt: 0.5,
      grey: HAIR,
    }))
  }
  return [head, ...body]
}

/** A table whose words would have to break is set as its rows, each a list of what stands in it; empty cells are lines. */
function rowByRow({ columns, rows }: TableBlock, room: Room): Piece[] {
  return rows.map((row) => {
    const lines = columns.map(({ title }, index) => ({ label: title, value: row[index] ?? '' }))
    const piece = stack(writeInPieces({ kind: 'write-ins', columns: 2, lines }, room))
    return { ...piece, gapBefore: room.type.gap * 1.6 }
  })
}

/** More lines than this, and a row goes on in a second one, so that it can turn the page. */
const MOST_LINES = 30

function split(cells: readonly SetText[], row: readonly string[]): (readonly string[])[] {
  const longest = Math.max(...cells.map(({ lines }) => lines.length))
  if (longest <= MOST_LINES) return [row]
  return Array.from({ length: Math.ceil(longest / MOST_LINES) }, (_, part) =>
    cells.map(({ lines }) => lines.slice(part * MOST_LINES, (part + 1) * MOST_LINES).join('\n')),
  )
}

/** As lines break: a number is one word with its unit. */
function words(text: string): string[] {
  return glued(text).split(/[ \t\n]+/)
}
