/** Layout of what is read from afar: the number on a canner card, and the tag tied to the lid. */
import type { BigNumberBlock, TagBlock } from '../model.ts'
import { mmToPt } from '../sheets.ts'
import { BLACK, DARK, HAIR } from './ink.ts'
import type { Piece, Room } from './piece.ts'
import { stackTexts, sum } from './plain-blocks.ts'
import { setText } from './text.ts'

export function bigNumberPiece(block: BigNumberBlock, { width, type, measure }: Room): Piece {
  const { capital } = measure.metrics('display')
  const over = setText(block.over, width, { face: 'display', sizePt: type.h2 }, measure)
  const unitPt = type.title * 1.25
  const gutter = type.body * 1.6
  const unitWidth = Math.max(measure.width(block.unit, 'display', unitPt), width * 0.24)
  const wantedPt = mmToPt(block.digitMm) / capital
  const widthAtOnePt = measure.width(block.number, 'display', 1)
  const sizePt = Math.min(wantedPt, (width - gutter - unitWidth) / widthAtOnePt)
  const digitHeight = capital * sizePt
  const digitsWidth = widthAtOnePt * sizePt
  const unitLeft = digitsWidth + gutter
  const unitRoom = width - unitLeft
  const unitTexts = [
    setText(block.unit, unitRoom, { face: 'display', sizePt: unitPt, leading: 1.1 }, measure),
    ...(block.beside ? [setText(block.beside, unitRoom, { face: 'text', sizePt: type.h2 }, measure)] : []),
  ]
  const notes = [
    ...block.why.map((line) => setText(line, unitRoom, { face: 'text', sizePt: type.body }, measure)),
    ...block.small.map((line) => setText(line, unitRoom, { face: 'text', sizePt: type.small, grey: DARK }, measure)),
  ]
  const unitHeight = sum(unitTexts.map(({ height }) => height))
  const notesHeight = sum(notes.map(({ height }) => height)) + (notes.length - 1) * type.gap * 0.6
  const tail = Math.max(digitHeight, unitHeight + type.gap + notesHeight)
  const lead = over.height + type.gap * 1.4
  return {
    height: lead + tail,
    gapBefore: type.gap,
    ink: (x, y) => {
      const top = y + lead
      const foot = top + digitHeight
      return [
        ...over.ink(x, y),
        {
          ink: 'text',
          text: block.number,
          face: 'display',
          sizePt,
          grey: BLACK,
          x,
          baselineY: foot,
          // Digits have no tails: their room is the height of a capital, and a hair for round ones.
          box: { x, y: top, width: digitsWidth, height: digitHeight },
        },
        ...stackTexts(unitTexts, x + unitLeft, top),
        ...stackTexts(notes, x + unitLeft, top + tail - notesHeight, type.gap * 0.6),
      ]
    },
  }
}

/** Two corners cut off and a hole to punch, as on a tag tied to a sack. */
export function tagPiece(block: TagBlock, { width, type, measure }: Room): Piece {
  const cut = mmToPt(9)
  const pad = type.body
  const holeRoom = mmToPt(20)
  const textX = holeRoom
  const bigPt = type.title * 1.5
  const bigWidth = Math.min(measure.width(block.big, 'display', bigPt), width * 0.4)
  const leftWidth = width - textX - bigWidth - 3 * pad
  const cutLine = setText(block.cutLine, width, { face: 'text', sizePt: type.small, grey: DARK }, measure)
  const texts = [
    setText(block.title, leftWidth, { face: 'display', sizePt: type.h2 }, measure),
    ...block.lines.map((line) => setText(line, leftWidth, { face: 'text', sizePt: type.body }, measure)),
  ]
  const big = setText(block.big, bigWidth, { face: 'display', sizePt: bigPt, align: 'right' }, measure)
  const inside = Math.max(sum(texts.map(({ height }) => height)), big.height, cut * 2)
  const tagHeight = inside + 2 * pad
  const tagTop = cutLine.height + 2
  return {
    height: tagTop + tagHeight,
    gapBefore: type.gap * 1.4,
    ink: (x, y) => {
      const top = y + tagTop
      const bottom = top + tagHeight
      const right = x + width
      return [
        ...cutLine.ink(x, y),
        {
          ink: 'line',
          points: [
            [x + cut, top],
            [right, top],
            [right, bottom],
            [x + cut, bottom],
            [x, bottom - cut],
            [x, top + cut],
          ],
          closed: true,
          widthPt: 1,
          grey: HAIR,
          dashPt: 3,
        },
        { ink: 'circle', x: x + mmToPt(10), y: (top + bottom) / 2, radius: mmToPt(3), strokePt: 1.2 },
        ...stackTexts(texts, x + textX, top + pad + (inside - sum(texts.map(({ height }) => height))) / 2),
        ...big.ink(right - pad - bigWidth, top + pad + (inside - big.height) / 2),
      ]
    },
  }
}
