export type * from './model.ts'
export { qrSquares } from './qr.ts'
export { LABEL_SHEETS, type LabelSheetId, PAPER_MM } from './sheets.ts'
