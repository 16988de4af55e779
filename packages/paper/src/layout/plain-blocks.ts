/** Layout of the simpler blocks: head, headings, lines, notices, facts, cautions, lines to write on, codes. */
import type {
  CautionsBlock,
  FactsBlock,
  HeadBlock,
  HeadingBlock,
  LineBlock,
  NoticeBlock,
  QrBlock,
  QrCode,
  WriteInsBlock,
} from '../model.ts'
import { qrSquares } from '../qr.ts'
import { mmToPt } from '../sheets.ts'
import { BLACK, DARK, HAIR, type Ink } from './ink.ts'
import { type Piece, type Room, stack } from './piece.ts'
import { type SetText, setText } from './text.ts'

/** Nail hole, title, a heavy and a light rule: a sheet made to be pinned by the fire. */
export function headPiece({ title, lines, strongLines = [], qr }: HeadBlock, { width, type, measure }: Room): Piece {
  const codePt = qr ? mmToPt(qr.sizeMm) : 0
  const textWidth = width - (qr ? codePt + mmToPt(6) : 0)
  const titleText = setText(title, textWidth, { face: 'display', sizePt: type.title, leading: 1.1 }, measure)
  const lineTexts = [
    ...lines.map((line) => setText(line, textWidth, { face: 'text', sizePt: type.body + 1 }, measure)),
    ...strongLines.map((line) => setText(line, textWidth, { face: 'text-strong', sizePt: type.body + 1 }, measure)),
  ]
  const textHeight = titleText.height + sum(lineTexts.map(({ height }) => height))
  const body = Math.max(textHeight, codePt)
  return {
    height: body + type.gap,
    gapBefore: 0,
    keepWithNext: true,
    ink: (x, y) => {
      const ruleY = y + body + type.gap - 3
      return [
        // The nail hole lies in the margin.
        { ink: 'circle', x: x + width / 2, y: y - 11, radius: 4.5, strokePt: 0.8 },
        ...(qr ? [code(qr, x + width - codePt, y)] : []),
        ...stackTexts([titleText, ...lineTexts], x, y),
        {
          ink: 'line',
          points: [
            [x, ruleY],
            [x + width, ruleY],
          ],
          widthPt: 2.2,
          grey: BLACK,
        },
        {
          ink: 'line',
          points: [
            [x, ruleY + 3],
            [x + width, ruleY + 3],
          ],
          widthPt: 0.6,
          grey: BLACK,
        },
      ]
    },
  }
}

export function headingPiece({ level, text }: HeadingBlock, { width, type, measure }: Room): Piece {
  const sizePt = level === 2 ? type.h2 : type.h3
  const set = setText(text, width, { face: 'display', sizePt, leading: 1.15 }, measure)
  return { height: set.height, gapBefore: type.gap * (level === 2 ? 1.5 : 1.1), keepWithNext: true, ink: set.ink }
}

/** One piece a line, so that even a very long note turns the page. */
export function linePieces({ text, strength = 'plain' }: LineBlock, { width, type, measure }: Room): Piece[] {
  const style = {
    strong: { face: 'text-strong', sizePt: type.body, grey: BLACK, leading: type.leading },
    plain: { face: 'text', sizePt: type.body, grey: BLACK, leading: type.leading },
    small: { face: 'text', sizePt: type.small, grey: DARK, leading: type.leading },
  } as const
  return setText(text, width, style[strength], measure).lines.map((line, index) => {
    const set = setText(line, width, style[strength], measure)
    return { height: set.height, gapBefore: index === 0 ? type.gap * 0.45 : 0, ink: set.ink }
  })
}

export function noticePiece({ title, lines }: NoticeBlock, { width, type, measure }: Room): Piece {
  const pad = type.body * 0.7
  const inside = width - 2 * pad
  const texts = [
    ...(title === undefined ? [] : [setText(title, inside, { face: 'display', sizePt: type.h3 }, measure)]),
    ...lines.map((line) => setText(line, inside, { face: 'text', sizePt: type.body }, measure)),
  ]
  const height = sum(texts.map((text) => text.height)) + 1.6 * pad
  return {
    height,
    gapBefore: type.gap,
    ink: (x, y) => [
      { ink: 'rect', box: { x, y, width, height }, strokePt: 1.4 },
      ...stackTexts(texts, x + pad, y + 0.8 * pad),
    ],
  }
}

/** Label above, value below in heavier type; read along the rows. */
export function factPieces({ columns, facts, large }: FactsBlock, { width, type, isTight, measure }: Room): Piece[] {
  const gutter = type.body * 1.4
  const cell = (width - gutter * (columns - 1)) / columns
  const cells = facts.map(({ label, value, note }) => [
    setText(label, cell, { face: 'text', sizePt: type.small, grey: DARK, leading: 1.2 }, measure),
    setText(
      value,
      cell,
      large
        ? { face: 'display', sizePt: type.title }
        : { face: 'text-strong', sizePt: type.body + (isTight ? 0.5 : 1.5), leading: type.leading },
      measure,
    ),
    ...(note === undefined ? [] : [setText(note, cell, { face: 'text', sizePt: type.small, leading: 1.2 }, measure)]),
  ])
  return rowsOf(cells, columns).map((row, index) => ({
    height: Math.max(...row.map((texts) => sum(texts.map(({ height }) => height)))),
    gapBefore: index === 0 ? type.gap * 0.8 : type.gap * 0.6,
    ink: (x, y) => row.flatMap((texts, column) => stackTexts(texts, x + column * (cell + gutter), y)),
  }))
}

/** One line each, behind a heavy bar. */
export function cautionPieces({ careWord, lines }: CautionsBlock, room: Room): Piece[] {
  return lines.map((line, index) => cautionPiece(careWord, line, room, room.type.gap * (index === 0 ? 0.8 : 0.4)))
}

export function cautionPiece(careWord: string, line: string, { width, type, measure }: Room, gapBefore: number): Piece {
  const bar = 3
  const indent = bar + type.body * 0.5
  const word = setText(careWord, width, { face: 'text-strong', sizePt: type.body, leading: type.leading }, measure)
  const wordWidth = word.widest + type.body * 0.45
  const text = setText(
    line,
    width - indent - wordWidth,
    { face: 'text', sizePt: type.body, leading: type.leading },
    measure,
  )
  return {
    height: text.height,
    gapBefore,
    ink: (x, y) => [
      { ink: 'rect', box: { x, y: y + 1, width: bar, height: text.height - 2 }, fill: BLACK },
      ...word.ink(x + indent, y),
      ...text.ink(x + indent + wordWidth, y),
    ],
  }
}

/** A word and a line to write on, high enough for a wet pencil. */
export function writeInPieces({ columns, lines }: WriteInsBlock, { width, type, measure }: Room): Piece[] {
  const gutter = type.body * 1.4
  const cell = (width - gutter * (columns - 1)) / columns
  const rowHeight = Math.max(mmToPt(8), type.body * 2)
  const cells = lines.map(({ label, value }) => {
    const labelText = setText(label, cell * 0.7, { face: 'text', sizePt: type.body, grey: DARK }, measure)
    const from = label === '' ? 0 : Math.min(labelText.widest + type.body * 0.5, cell * 0.75)
    const valueText = setText(value ?? '', cell - from, { face: 'text-strong', sizePt: type.body }, measure)
    const height = Math.max(rowHeight, labelText.height + 8, valueText.height + 8)
    return { labelText, valueText, from, height }
  })
  return rowsOf(cells, columns).map((row, index) => {
    const height = Math.max(...row.map((one) => one.height))
    return {
      height,
      gapBefore: index === 0 ? type.gap * 0.4 : 0,
      ink: (x, y) =>
        row.flatMap(({ labelText, valueText, from }, column): Ink[] => {
          const left = x + column * (cell + gutter)
          const foot = y + height - 3
          return [
            ...labelText.ink(left, foot - labelText.height),
            ...valueText.ink(left + from, foot - valueText.height),
            {
              ink: 'line',
              points: [
                [left + from, foot],
                [left + cell, foot],
              ],
              widthPt: 0.6,
              grey: HAIR,
            },
          ]
        }),
    }
  })
}

export function qrPiece(block: QrBlock, { width, type, measure }: Room): Piece {
  const codePt = mmToPt(block.sizeMm)
  const beside = mmToPt(5)
  const caption = setText(block.caption, width - codePt - beside, { face: 'text', sizePt: type.body }, measure)
  return {
    height: Math.max(codePt, caption.height),
    gapBefore: type.gap * 1.3,
    ink: (x, y) => [code(block, x, y), ...caption.ink(x + codePt + beside, y)],
  }
}

function code({ content, sizeMm }: QrCode, x: number, y: number): Ink {
  const edge = mmToPt(sizeMm)
  return { ink: 'squares', box: { x, y, width: edge, height: edge }, rows: qrSquares(content) }
}

export function stackTexts(texts: readonly SetText[], x: number, y: number, gapBefore = 0): Ink[] {
  return stack(texts.map(({ height, ink }) => ({ height, gapBefore, ink }))).ink(x, y)
}

function rowsOf<T>(cells: readonly T[], columns: number): T[][] {
  const rows: T[][] = []
  for (let at = 0; at < cells.length; at += columns) rows.push(cells.slice(at, at + columns))
  return rows
}

export function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0)
}
