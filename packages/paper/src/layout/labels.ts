/** Layout of label sheets: each label's words stay inside its own label, or nothing is printed. */
import type { Label, LabelLine, LabelSheet, LabelsBlock } from '../model.ts'
import { mmToPt } from '../sheets.ts'
import type { Box, Ink } from './ink.ts'
import { code, stackTexts, sum } from './plain-blocks.ts'
import { type Measure, type SetText, SMALLEST_PT, setText } from './text.ts'

/** No wording of a label fits its size at 9 pt. Take a larger label sheet. */
export class LabelTooSmallError extends RangeError {
  readonly sheetId: string

  constructor(sheet: LabelSheet, firstLine: string) {
    super(
      `label "${firstLine}" does not fit ${sheet.widthMm} x ${sheet.heightMm} mm (${sheet.id}) at ${SMALLEST_PT} pt; take a larger label`,
    )
    this.name = 'LabelTooSmallError'
    this.sheetId = sheet.id
  }
}

/** White kept inside a label's edge, against a feed that is a little off. [mm] */
const PAD_MM = 1.5

/** @throws {LabelTooSmallError} when not even the shortest wording fits. */
export function labelPages({ sheet, skipCount, labels }: LabelsBlock, measure: Measure): Ink[][] {
  const perPage = sheet.columnCount * sheet.rowCount
  const pages: Ink[][] = []
  for (const [index, label] of labels.entries()) {
    const place = index + skipCount
    const pageIndex = Math.floor(place / perPage)
    while (pages.length <= pageIndex) pages.push([])
    pages[pageIndex]?.push(...labelInk(label, labelBox(sheet, place % perPage), sheet, measure))
  }
  return pages
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

function labelInk(label: Label, box: Box, sheet: LabelSheet, measure: Measure): Ink[] {
  const pad = mmToPt(PAD_MM)
  const inside = { x: box.x + pad, y: box.y + pad, width: box.width - 2 * pad, height: box.height - 2 * pad }
  const texts = fittingTexts(label, inside, measure)
  if (!texts) throw new LabelTooSmallError(sheet, label.wordings[0]?.[0]?.text ?? '')
  const codePt = label.qr ? mmToPt(label.qr.sizeMm) : 0
  return [
    ...(sheet.outline ? [{ ink: 'rect', box, strokePt: 0.4 } as const] : []),
    ...stackTexts(texts, inside.x, inside.y),
    ...(label.qr ? [code(label.qr, inside.x + inside.width - codePt, inside.y + inside.height - codePt)] : []),
  ]
}

/** The fullest wording, at the largest size, that fits. */
function fittingTexts(label: Label, inside: Box, measure: Measure): SetText[] | undefined {
  for (const wording of label.wordings) {
    for (let sizePt = 16; sizePt >= SMALLEST_PT; sizePt -= 0.5) {
      const texts = flow(wording, label.qr?.sizeMm ?? 0, inside, sizePt, measure)
      const wholeCode = texts.every((text, index) => wording[index]?.strength !== 'code' || text.lines.length === 1)
      if (wholeCode && sum(texts.map((text) => text.height)) <= inside.height) return texts
    }
  }
  return undefined
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

function setLine({ text, strength }: LabelLine, width: number, sizePt: number, measure: Measure): SetText {
  const style = {
    code: { face: 'display', sizePt: sizePt * 1.35, leading: 1.1 },
    strong: { face: 'text-strong', sizePt, leading: 1.1 },
    plain: { face: 'text', sizePt, leading: 1.1 },
  } as const
  return setText(text, width, style[strength], measure)
}
