/**
 * Layout of the walk: a stitched margin with the planned clock, a box to tick, what to do, and lines for the real time.
 * Cautions stand under the step they belong to.
 */
import type { ChecklistBlock, ChecklistItem } from '../model.ts'
import { BLACK, DARK, HAIR, type Ink } from './ink.ts'
import { type Piece, type Room, stack, type TypeScale } from './piece.ts'
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
    setText(word, width, { face: 'text', sizePt: type.small, grey: DARK, leading: type.leading }, measure),
  )
  const writeWidth = sum(writeWords.map(({ widest }) => widest + type.body * 4.6))
  const tallyWidth = item.tallyCount ? (item.tallyCount * 1.5 + 0.6) * boxEdge : 0
  const textWidth = width - left - tallyWidth - (writeWidth > 0 ? writeWidth + type.body * 0.5 : 0)
  const title = setText(
    item.text,
    textWidth,
    { face: 'text-strong', sizePt: type.body, leading: type.leading },
    measure,
  )
  const texts = withDetails(title, item.details ?? [], { textWidth, tallyWidth, below: width - left }, room)
  const cautions = cautionsUnder(item, careWord, { title, left, textWidth, tallyWidth }, room)
  const margin = setText(
    item.margin ?? '',
    marginWidth,
    { face: 'display', sizePt: type.body, leading: type.leading },
    measure,
  )
  const body = stack([{ ...texts, height: Math.max(texts.height, margin.height) }, ...cautions.under])
  const pad = type.body * (room.isTight ? 0.15 : 0.28)
  const tally = Array.from(
    { length: item.tallyCount ?? 0 },
    (_, index) => left + title.widest + boxEdge * (0.8 + index * 1.5),
  )
  const tick = (x: number, y: number): Ink => ({
    ink: 'rect',
    box: { x, y: y + pad + type.body * 0.14, width: boxEdge, height: boxEdge },
    strokePt: 1,
  })
  const stitchX = marginWidth + type.body * 0.15
  return {
    height: body.height + 2 * pad,
    gapBefore: first ? type.gap * 0.6 : 0,
    ink: (x, y) => [
      ...(marginWidth > 0 ? stitch(x + stitchX, y, body.height + 2 * pad) : []),
      ...margin.ink(x, y + pad),
      tick(x + left - boxEdge - type.body * 0.5, y),
      ...tally.map((boxX) => tick(x + boxX, y)),
      ...body.ink(x + left, y + pad),
      ...(cautions.beside?.ink(x + left + cautions.besideLeft, y + pad) ?? []),
      ...writeLines(writeWords, x + width, y + pad, type),
    ],
  }
}

/** One short detail runs on behind the title; more stand below it. */
function withDetails(
  title: SetText,
  details: readonly string[],
  { textWidth: width, tallyWidth, below }: { textWidth: number; tallyWidth: number; below: number },
  { type, measure }: Room,
): Piece {
  const style = { face: 'text', sizePt: type.body, leading: type.leading } as const
  const [first, ...rest] = details
  const runInLeft = title.widest + tallyWidth + type.body * 0.6
  if (first !== undefined && rest.length === 0 && title.lines.length === 1 && runInLeft < width + tallyWidth) {
    const runIn = setText(first, width + tallyWidth - runInLeft, style, measure)
    if (runIn.lines.length === 1 && runIn.widest <= width + tallyWidth - runInLeft) {
      return { height: title.height, gapBefore: 0, ink: (x, y) => [...title.ink(x, y), ...runIn.ink(x + runInLeft, y)] }
    }
  }
  const sets = [title, ...details.map((detail) => setText(detail, below, style, measure))]
  return stack(sets.map(({ height, ink }) => ({ height, gapBefore: 0, ink })))
}

interface Cautions {
  readonly under: readonly Piece[]
  readonly beside?: Piece
  readonly besideLeft: number
}

/** Under the step; a single short one stands beside a step that has no more to say. */
function cautionsUnder(
  { cautions = [], details = [] }: ChecklistItem,
  careWord: string,
  at: { title: SetText; left: number; textWidth: number; tallyWidth: number },
  room: Room,
): Cautions {
  const { type, width } = room
  const besideLeft = at.title.widest + at.tallyWidth + type.body
  const besideWidth = at.textWidth + at.tallyWidth - besideLeft
  const [first, ...rest] = cautions
  const oneLine = at.title.lines.length === 1 && details.length === 0 && rest.length === 0
  if (first !== undefined && oneLine && besideWidth > type.body * 8) {
    const beside = cautionPiece(careWord, first, { ...room, width: besideWidth }, 0)
    if (beside.height <= at.title.height * 1.01) return { under: [], beside, besideLeft }
  }
  const lines = room.isTight && cautions.length > 0 ? [cautions.join(' ')] : cautions
  const under = lines.map((line) => cautionPiece(careWord, line, { ...room, width: width - at.left }, type.body * 0.15))
  return { under, besideLeft }
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
function writeLines(words: readonly SetText[], right: number, y: number, { body: bodyPt, leading }: TypeScale): Ink[] {
  const lineWidth = bodyPt * 3.8
  let x = right
  return [...words].reverse().flatMap((word): Ink[] => {
    const end = x
    const start = end - lineWidth
    const wordX = start - bodyPt * 0.3 - word.widest
    x = wordX - bodyPt * 0.5
    const foot = y + bodyPt * (leading - 0.08)
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
