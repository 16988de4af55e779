/**
 * Layout of the walk: a stitched margin with the planned clock, a box to tick, what to do, and lines for the real time.
 * Cautions stand under the step they belong to.
 */
import type { ChecklistBlock, ChecklistItem } from '../model.ts'
import { BLACK, DARK, HAIR, type Ink } from './ink.ts'
import { type Piece, type Room, stack } from './piece.ts'
import { cautionPiece, sum } from './plain-blocks.ts'
import { type SetText, setText } from './text.ts'

export function checklistPieces(block: ChecklistBlock, room: Room): Piece[] {
  const hasMargin = block.items.some(({ margin }) => margin !== undefined)
  const marginWidth = hasMargin ? room.type.body * 4.4 : 0
  return block.items.map((item, index) => itemPiece(item, block.careWord, marginWidth, index === 0, room))
}

function itemPiece(item: ChecklistItem, careWord: string, marginWidth: number, first: boolean, room: Room): Piece {
  const { width, type, measure } = room
  const boxEdge = type.body * 0.95
  const left = marginWidth + boxEdge + type.body * (marginWidth > 0 ? 1.1 : 0.6)
  const writeWords = (item.writeIns ?? []).map((word) =>
    setText(word, width, { face: 'text', sizePt: type.small, grey: DARK }, measure),
  )
  const writeWidth = sum(writeWords.map(({ widest }) => widest + type.body * 4.6))
  const textWidth = width - left - (writeWidth > 0 ? writeWidth + type.body * 0.5 : 0)
  const title = setText(item.text, textWidth, { face: 'text-strong', sizePt: type.body }, measure)
  const details = (item.details ?? []).map((detail) =>
    setText(detail, textWidth, { face: 'text', sizePt: type.body }, measure),
  )
  const cautions = (item.cautions ?? []).map((line) =>
    cautionPiece(careWord, line, { ...room, width: width - left }, type.body * 0.15),
  )
  const margin = setText(item.margin ?? '', marginWidth, { face: 'display', sizePt: type.body }, measure)
  const texts: Piece = stack([title, ...details].map(({ height, ink }) => ({ height, gapBefore: 0, ink })))
  const body = stack([{ ...texts, height: Math.max(texts.height, margin.height) }, ...cautions])
  const pad = type.body * 0.28
  const stitchX = marginWidth + type.body * 0.15
  return {
    height: body.height + 2 * pad,
    gapBefore: first ? type.gap * 0.6 : 0,
    ink: (x, y) => [
      ...(marginWidth > 0 ? stitch(x + stitchX, y, body.height + 2 * pad) : []),
      ...margin.ink(x, y + pad),
      {
        ink: 'rect',
        box: {
          x: x + left - boxEdge - type.body * 0.5,
          y: y + pad + type.body * 0.14,
          width: boxEdge,
          height: boxEdge,
        },
        strokePt: 1,
      },
      ...body.ink(x + left, y + pad),
      ...writeLines(writeWords, x + width, y + pad, type.body),
    ],
  }
}

/** Long stitches down the margin, as on a sewn book. */
function stitch(x: number, y: number, height: number): Ink[] {
  return [
    {
      ink: 'line',
      points: [
        [x, y],
        [x, y + height],
      ],
      widthPt: 0.9,
      grey: HAIR,
      dashPt: 4,
    },
  ]
}

/** Words and lines, set from the right edge. */
function writeLines(words: readonly SetText[], right: number, y: number, bodyPt: number): Ink[] {
  const lineWidth = bodyPt * 3.8
  let x = right
  return [...words].reverse().flatMap((word): Ink[] => {
    const end = x
    const start = end - lineWidth
    const wordX = start - bodyPt * 0.3 - word.widest
    x = wordX - bodyPt * 0.5
    const foot = y + bodyPt * 1.15
    return [
      ...word.ink(wordX, y),
      {
        ink: 'line',
        points: [
          [start, foot],
          [end, foot],
        ],
        widthPt: 0.7,
        grey: BLACK,
      },
    ]
  })
}
