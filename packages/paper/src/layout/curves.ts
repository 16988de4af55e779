/** Layout of lines over time: axes on both sides, strokes that need no colour, a hatched band, numbered moments, a key. */
import type { CurvesBlock, DrawnAxis, DrawnLine } from '../drawn-blocks.ts'
import { mmToPt } from '../sheets.ts'
import { BLACK, DARK, HAIR, type Ink } from './ink.ts'
import type { Piece, Room } from './piece.ts'
import { type SetText, setText } from './text.ts'

const STROKES: Record<DrawnLine['stroke'], { readonly widthPt: number; readonly dashPt?: number }> = {
  heavy: { widthPt: 2.4 },
  plain: { widthPt: 1.1 },
  dashed: { widthPt: 1.1, dashPt: 6 },
  dotted: { widthPt: 1.3, dashPt: 1.6 },
}
/** Hatching of a band. [pt] */
const HATCH_PT = 3
const SAMPLE_PT = 34

export function curvesPiece(block: CurvesBlock, room: Room): Piece {
  const { width, type, measure } = room
  const small = { face: 'text', sizePt: type.small, grey: DARK } as const
  const wide = (text: string) => measure.width(text, 'text', type.small)
  const wideStrong = (text: string) => measure.width(text, 'text-strong', type.small)
  const line = type.small * 1.18
  const left = Math.max(...block.up.ticks.map(({ text }) => wide(text))) + 6
  const right = Math.max(...block.upAlso.ticks.map(({ text }) => wide(text))) + 6
  const plotWidth = width - left - right
  const plotHeight = mmToPt(block.heightMm)
  const scaleX = scaleOf(block.across, 0, plotWidth)
  const marks = rowsOf(block.marks.map((at, index) => ({ at: scaleX(at), wide: wideStrong(String(index + 1)) + 6 })))
  const top = (Math.max(0, ...marks.map(({ row }) => row)) + 1) * line + 3
  const foot = top + plotHeight
  const keys = keyOf(block)
  const keyWidth = room.isLarge ? width : width / 2
  const keyTexts = keys.map(({ name }) => setText(name, keyWidth - SAMPLE_PT - 14, small, measure))
  const keyRows = rowsOfKey(keyTexts, room.isLarge ? 1 : 2)
  const keyTop = foot + line + 6
  return {
    height: keyTop + keyRows.height,
    gapBefore: type.gap,
    ink: (x, y) => {
      const atX = (value: number) => x + left + scaleX(value)
      const scaleY = scaleOf(block.up, foot, top)
      const scaleAlso = scaleOf(block.upAlso, foot, top)
      const atY = (value: number) => y + scaleY(value)
      const fromX = x + left
      const toX = x + left + plotWidth
      return [
        ...block.up.ticks.flatMap(({ at, text }) => [
          stroke(
            [
              [fromX, atY(at)],
              [toX, atY(at)],
            ],
            0.4,
            HAIR,
          ),
          ...setText(text, left - 5, { ...small, align: 'right' }, measure).ink(x, atY(at) - line / 2),
        ]),
        ...block.upAlso.ticks.flatMap(({ at, text }) =>
          setText(text, right - 4, small, measure).ink(toX + 5, y + scaleAlso(at) - line / 2),
        ),
        ...acrossTicks(block.across, scaleX, plotWidth, wide).flatMap(({ middle, text }) => [
          stroke(
            [
              [fromX + middle, y + foot],
              [fromX + middle, y + foot + 3],
            ],
            0.8,
          ),
          ...setText(text, wide(text) + 0.5, small, measure).ink(
            Math.min(fromX + middle - wide(text) / 2, x + width - wide(text) - 0.5),
            y + foot + 3,
          ),
        ]),
        stroke(
          [
            [fromX, y + foot],
            [toX, y + foot],
          ],
          1.2,
        ),
        ...marks.flatMap(({ at, row }, index): Ink[] => {
          const text = String(index + 1)
          const markY = y + row * line
          return [
            stroke(
              [
                [fromX + at, markY + line],
                [fromX + at, y + foot],
              ],
              0.6,
              HAIR,
              2,
            ),
            ...setText(text, wideStrong(text) + 0.5, { ...small, face: 'text-strong' }, measure).ink(
              fromX + at - wideStrong(text) / 2,
              markY,
            ),
          ]
        }),
        ...bandInk(block, atX, atY),
        ...block.lines.map(({ stroke: name, points }): Ink => {
          const { widthPt, dashPt } = STROKES[name]
          return stroke(
            points.map(([across, up]) => [atX(across), atY(up)] as const),
            widthPt,
            BLACK,
            dashPt,
          )
        }),
        ...keys.flatMap((key, index) => {
          const [column, rowY] = keyRows.places[index]!
          const keyX = x + column * keyWidth
          const keyY = y + keyTop + rowY
          return [...sample(key, keyX, keyY + line / 2), ...keyTexts[index]!.ink(keyX + SAMPLE_PT + 6, keyY)]
        }),
      ]
    },
  }
}

function scaleOf({ min, max }: DrawnAxis, from: number, to: number): (value: number) => number {
  return (value) => from + ((Math.min(max, Math.max(min, value)) - min) / (max - min)) * (to - from)
}

function stroke(
  points: readonly (readonly [number, number])[],
  widthPt: number,
  grey: number = BLACK,
  dashPt?: number,
): Ink {
  return { ink: 'line', points, widthPt, grey, ...(dashPt !== undefined && { dashPt }) }
}

/** Ticks along the foot whose words do not touch. */
function acrossTicks(axis: DrawnAxis, x: (value: number) => number, roomPt: number, wide: (text: string) => number) {
  let takenTo = Number.NEGATIVE_INFINITY
  return axis.ticks.flatMap(({ at, text }) => {
    const middle = x(at)
    const from = middle - wide(text) / 2
    if (from < takenTo || middle > roomPt + 0.01) return []
    takenTo = from + wide(text) + 6
    return [{ middle, text }]
  })
}

/** Each number in the lowest row in which it does not touch the one before. */
function rowsOf(marks: readonly { readonly at: number; readonly wide: number }[]) {
  const takenTo: number[] = []
  return marks.map(({ at, wide }) => {
    const free = takenTo.findIndex((to) => at - wide / 2 >= to)
    const row = free < 0 ? takenTo.length : free
    takenTo[row] = at + wide / 2
    return { at, row }
  })
}

function bandInk({ band }: CurvesBlock, atX: (value: number) => number, atY: (value: number) => number): Ink[] {
  if (!band) return []
  let hatchedTo = Number.NEGATIVE_INFINITY
  const hatches = band.points.flatMap(([across, low, high]): Ink[] => {
    const x = atX(across)
    if (x < hatchedTo + HATCH_PT || Math.abs(atY(low) - atY(high)) < 0.6) return []
    hatchedTo = x
    return [
      stroke(
        [
          [x, atY(low)],
          [x, atY(high)],
        ],
        0.7,
        HAIR,
      ),
    ]
  })
  return hatches
}

type Key = { readonly name: string; readonly stroke: DrawnLine['stroke'] | 'hatched' }

function keyOf({ lines, band }: CurvesBlock): readonly Key[] {
  return [...lines, ...(band ? [{ name: band.name, stroke: 'hatched' as const }] : [])]
}

function sample({ stroke: name }: Key, x: number, y: number): Ink[] {
  if (name === 'hatched') {
    return Array.from({ length: Math.floor(SAMPLE_PT / HATCH_PT) }, (_, i) =>
      stroke(
        [
          [x + i * HATCH_PT, y - 3.5],
          [x + i * HATCH_PT, y + 3.5],
        ],
        0.7,
        HAIR,
      ),
    )
  }
  const { widthPt, dashPt } = STROKES[name]
  return [
    stroke(
      [
        [x, y],
        [x + SAMPLE_PT, y],
      ],
      widthPt,
      BLACK,
      dashPt,
    ),
  ]
}

/** Down the first column, then the next. */
function rowsOfKey(texts: readonly SetText[], columnCount: number) {
  const perColumn = Math.ceil(texts.length / columnCount)
  const heights: number[] = []
  const places = texts.map(({ height }, index): readonly [column: number, y: number] => {
    const column = Math.floor(index / perColumn)
    const y = heights[column] ?? 0
    heights[column] = y + height + 2
    return [column, y]
  })
  return { places, height: Math.max(0, ...heights) }
}
