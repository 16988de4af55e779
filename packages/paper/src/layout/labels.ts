/** Layout of label sheets: each label's words stay inside its own label, or nothing is printed. */
import type { Label, LabelLine, LabelSheet, LabelsBlock } from '../model.ts'
import { qrSquares } from '../qr.ts'
import { mmToPt } from '../sheets.ts'
import type { Box, Ink, SquaresInk } from './ink.ts'
import { stackTexts, sum } from './plain-blocks.ts'
import { type Measure, type SetText, setText } from './text.ts'

/** No wording of a label fits its size. Says which words are too many; take a larger label sheet, or write less. */
export class LabelTooSmallError extends RangeError {
  readonly sheetId: string
  /** The longest of its lines, as it was to be printed. */
  readonly text: string

  constructor(sheet: LabelSheet, label: Label, leastPt: number) {
    const shortest = label.wordings.at(-1) ?? []
    const text = shortest.reduce((longest, line) => (line.text.length > longest.length ? line.text : longest), '')
    super(
      `"${text}" does not fit a label of ${sheet.widthMm} x ${sheet.heightMm} mm (${sheet.id}) at ${leastPt} pt; take a larger label or write less`,
    )
    this.name = 'LabelTooSmallError'
    this.sheetId = sheet.id
    this.text = text
  }
}

/** White kept inside a label's edge, against a feed that is a little off. [mm] */
const PAD_MM = 1.5

/**
 * Page after page, so that a thousand labels need no more room than a sheet of them.
 *
 * @throws {LabelTooSmallError} when not even the shortest wording fits.
 */
export function* labelPages(
  { sheet, skipCount, labels }: LabelsBlock,
  measure: Measure,
  leastPt: number,
): Generator<Ink[]> {
  const perPage = sheet.columnCount * sheet.rowCount
  // Labels of one lot are alike, and are fitted once.
  let last: { readonly label: Label; readonly setting: Setting } | undefined
  for (let first = -skipCount; first < labels.length; first += perPage) {
    const page: Ink[] = []
    for (const [index, label] of labels.slice(Math.max(0, first), first + perPage).entries()) {
      if (last?.label !== label) last = { label, setting: fittingTexts(label, sheet, measure, leastPt) }
      page.push(...labelInk(label, labelBox(sheet, index + Math.max(0, -first)), sheet, last.setting))
    }
    yield page
  }
}

/** Where the label numbered `place` lies on its page, counted along the rows from 0. [pt] */
export function labelBox(sheet: LabelSheet, place: number): Box {
  const column = place % sheet.columnCount
  const row = Math.floor(place / sheet.columnCount)
  return {
    x: mmToPt(sheet.leftMm + column * (sheet.widthMm + sheet.gapXMm)),
    y: mmToPt(sheet.topMm + row * (sheet.heightMm + sheet.gapYMm)),
    width: mmToPt(sheet.widthMm),
    height: mmToPt(sheet.heightMm),
  }
}

interface Setting {
  readonly texts: readonly SetText[]
  readonly squares?: SquaresInk['rows']
}

function labelInk(label: Label, box: Box, sheet: LabelSheet, { texts, squares }: Setting): Ink[] {
  const inside = insideOf(box)
  const codePt = label.qr ? mmToPt(label.qr.sizeMm) : 0
  const corner = { x: inside.x + inside.width - codePt, y: inside.y + inside.height - codePt }
  return [
    ...(sheet.outline ? [{ ink: 'rect', box, strokePt: 0.4 } as const] : []),
    ...stackTexts(texts, inside.x, inside.y),
    ...(squares ? [{ ink: 'squares', box: { ...corner, width: codePt, height: codePt }, rows: squares } as const] : []),
  ]
}

function insideOf(box: Box): Box {
  const pad = mmToPt(PAD_MM)
  return { x: box.x + pad, y: box.y + pad, width: box.width - 2 * pad, height: box.height - 2 * pad }
}

/** Largest size of a label's words, in least sizes: beyond it they shout. */
const LARGEST_IN_LEAST = 16 / 9

/** The fullest wording, at the largest size, that fits. */
function fittingTexts(label: Label, sheet: LabelSheet, measure: Measure, leastPt: number): Setting {
  const inside = insideOf({ x: 0, y: 0, width: mmToPt(sheet.widthMm), height: mmToPt(sheet.heightMm) })
  for (const wording of label.wordings) {
    const heightAtLeast = leastHeight(wording, inside.width, measure)
    for (let sizePt = leastPt * LARGEST_IN_LEAST; sizePt >= leastPt; sizePt -= 0.5) {
      if (heightAtLeast(sizePt) > inside.height) continue
      const texts = flow(wording, label.qr?.sizeMm ?? 0, inside, sizePt, measure)
      const wholeCode = texts.every((text, index) => wording[index]?.strength !== 'code' || text.lines.length === 1)
      if (wholeCode && sum(texts.map((text) => text.height)) <= inside.height) {
        return { texts, ...(label.qr && { squares: qrSquares(label.qr.content) }) }
      }
    }
  }
  throw new LabelTooSmallError(sheet, label, leastPt)
}

/** Broken inside a word, the two parts may together be narrower than the word. */
const BROKEN_WORDS = 0.97

/** By the words' whole length alone: no breaking of lines makes a wording lower. Most sizes need no more than this. [pt] */
function leastHeight(wording: readonly LabelLine[], width: number, measure: Measure): (sizePt: number) => number {
  const lengths = wording.map(({ text, strength }) => {
    const { face, leading, scale } = LINE_STYLES[strength]
    const run = text.trim().replace(/\s+/g, ' ')
    return { length: measure.width(run, face, scale), space: measure.width(' ', face, scale), height: scale * leading }
  })
  return (sizePt) =>
    lengths.reduce((total, { length, space, height }) => {
      const lines = Math.ceil((BROKEN_WORDS * (length + space) * sizePt) / (width + space * sizePt))
      return total + Math.max(1, lines) * height * sizePt
    }, 0)
}

/** Lines from the top, full width until they reach the code in the lower right corner, then beside it. */
function flow(wording: readonly LabelLine[], codeMm: number, inside: Box, sizePt: number, measure: Measure): SetText[] {
  const quiet = mmToPt(PAD_MM * 1.6)
  const codePt = mmToPt(codeMm)
  const codeTop = codeMm === 0 ? inside.height : inside.height - codePt - quiet
  let used = 0
  return wording.map((line) => {
    const wide = setLine(line, inside.width, sizePt, measure)
    const clear = used + wide.height <= codeTop
    const text = clear || codeMm === 0 ? wide : setLine(line, inside.width - codePt - quiet, sizePt, measure)
    used += text.height
    return text
  })
}

/** Sizes in sizes of the label. */
const LINE_STYLES = {
  code: { face: 'display', scale: 1.35, leading: 1.1 },
  strong: { face: 'text-strong', scale: 1, leading: 1.1 },
  plain: { face: 'text', scale: 1, leading: 1.1 },
} as const

function setLine({ text, strength }: LabelLine, width: number, sizePt: number, measure: Measure): SetText {
  const { face, scale, leading } = LINE_STYLES[strength]
  return setText(text, width, { face, sizePt: sizePt * scale, leading }, measure)
}
