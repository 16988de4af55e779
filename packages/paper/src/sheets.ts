/** Sizes of paper and of label sheets. Generic sizes: measured in millimetres, named by grid. */
import type { LabelSheet, PaperSize } from './model.ts'

/** Width and height of a sheet. [mm]  A4: ISO 216. Letter: 8 1/2 x 11 in, exactly. */
export const PAPER_MM: Readonly<Record<PaperSize, { readonly width: number; readonly height: number }>> = {
  letter: { width: 215.9, height: 279.4 },
  a4: { width: 210, height: 297 },
}

/** Points per millimetre: 72 pt to the inch, 25.4 mm to the inch. */
const PT_PER_MM = 72 / 25.4

/** A length in points. [pt] */
export function mmToPt(mm: number): number {
  return mm * PT_PER_MM
}

/** Label sheets the trade sells, and two for plain paper cut by hand (`outline`). */
export const LABEL_SHEETS = {
  'a4-3x7': grid({
    id: 'a4-3x7',
    paper: 'a4',
    columnCount: 3,
    rowCount: 7,
    widthMm: 63.5,
    heightMm: 38.1,
    gapXMm: 2.5,
  }),
  'a4-3x8': grid({
    id: 'a4-3x8',
    paper: 'a4',
    columnCount: 3,
    rowCount: 8,
    widthMm: 64,
    heightMm: 33.9,
    gapXMm: 2.5,
  }),
  'a4-2x7': grid({
    id: 'a4-2x7',
    paper: 'a4',
    columnCount: 2,
    rowCount: 7,
    widthMm: 99.1,
    heightMm: 38.1,
    gapXMm: 2.5,
  }),
  'a4-2x4': grid({
    id: 'a4-2x4',
    paper: 'a4',
    columnCount: 2,
    rowCount: 4,
    widthMm: 99.1,
    heightMm: 67.7,
    gapXMm: 2.5,
  }),
  'letter-3x10': grid({
    id: 'letter-3x10',
    paper: 'letter',
    columnCount: 3,
    rowCount: 10,
    widthMm: 66.675,
    heightMm: 25.4,
    gapXMm: 3.175,
  }),
  'letter-2x5': grid({
    id: 'letter-2x5',
    paper: 'letter',
    columnCount: 2,
    rowCount: 5,
    widthMm: 101.6,
    heightMm: 50.8,
    gapXMm: 4.8,
  }),
  'letter-2x7': grid({
    id: 'letter-2x7',
    paper: 'letter',
    columnCount: 2,
    rowCount: 7,
    widthMm: 101.6,
    heightMm: 33.87,
    gapXMm: 4.8,
  }),
  'letter-2x3': grid({
    id: 'letter-2x3',
    paper: 'letter',
    columnCount: 2,
    rowCount: 3,
    widthMm: 101.6,
    heightMm: 84.67,
    gapXMm: 4.8,
  }),
  'a4-2x5-cut': grid({
    id: 'a4-2x5-cut',
    paper: 'a4',
    columnCount: 2,
    rowCount: 5,
    widthMm: 95,
    heightMm: 50,
    gapXMm: 0,
    outline: true,
  }),
  'letter-2x5-cut': grid({
    id: 'letter-2x5-cut',
    paper: 'letter',
    columnCount: 2,
    rowCount: 5,
    widthMm: 95,
    heightMm: 50,
    gapXMm: 0,
    outline: true,
  }),
} as const satisfies Record<string, LabelSheet>

export type LabelSheetId = keyof typeof LABEL_SHEETS

/** A grid centred on its paper, without gaps between rows. */
function grid(
  known: Omit<LabelSheet, 'topMm' | 'leftMm' | 'gapYMm' | 'outline'> & { readonly outline?: boolean },
): LabelSheet {
  const { width, height } = PAPER_MM[known.paper]
  const gridWidthMm = known.columnCount * known.widthMm + (known.columnCount - 1) * known.gapXMm
  return {
    outline: false,
    ...known,
    gapYMm: 0,
    leftMm: (width - gridWidthMm) / 2,
    topMm: (height - known.rowCount * known.heightMm) / 2,
  }
}
