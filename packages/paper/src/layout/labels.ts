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
const PAD_MM = 1.8

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
  const codePt = label.qr ? mmToPt(label.qr.sizeMm) : 0
  const width = box.width - 2 * pad - (label.qr ? codePt + pad * 1.6 : 0)
  const texts = fittingTexts(label, width, box.height - 2 * pad, measure)
  if (!texts) throw new LabelTooSmallError(sheet, label.wordings[0]?.[0]?.text ?? '')
  const height = sum(texts.map((text) => text.height))
  return [
    ...(sheet.outline ? [{ ink: 'rect', box, strokePt: 0.4 } as const] : []),
    ...stackTexts(texts, box.x + pad, box.y + (box.height - height) / 2),
    ...(label.qr ? [code(label.qr, box.x + box.width - pad - codePt, box.y + (box.height - codePt) / 2)] : []),
  ]
}

/** The fullest wording, at the largest size, that fits. */
function fittingTexts(label: Label, width: number, height: number, measure: Measure): SetText[] | undefined {
  for (const wording of label.wordings) {
    for (let sizePt = 12; sizePt >= SMALLEST_PT; sizePt -= 0.5) {
      const texts = wording.map((line) => setLine(line, width, sizePt, measure))
      const wholeCode = texts.every((text, index) => wording[index]?.strength !== 'code' || text.lines.length === 1)
      if (wholeCode && sum(texts.map((text) => text.height)) <= height) return texts
    }
  }
  return undefined
}

function setLine({ text, strength }: LabelLine, width: number, sizePt: number, measure: Measure): SetText {
  const style = {
    code: { face: 'display', sizePt: sizePt * 1.35, leading: 1.1 },
    strong: { face: 'text-strong', sizePt, leading: 1.1 },
    plain: { face: 'text', sizePt, leading: 1.1 },
  } as const
  return setText(text, width, style[strength], measure)
}
