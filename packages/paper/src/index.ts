export {
  type BatchLoad,
  type BatchSheetInput,
  type BatchStage,
  batchSheet,
  type StageWriteIn,
} from './documents/batch-sheet.ts'
export {
  type CannerCardInput,
  cannerCard,
  type GaugeTest,
  type RefusedCardInput,
  refusedCard,
} from './documents/canner-card.ts'
export { type ClassSheetInput, type ClassStage, classSheet } from './documents/class-sheet.ts'
export {
  type FieldSheetInput,
  fieldSheet,
  type Ground,
  plotBlock,
  type SheetNeighbour,
} from './documents/field-sheet.ts'
export { type GerminationSheetInput, germinationSheet } from './documents/germination-sheet.ts'
export {
  type LyeSheetInput,
  lyeSheet,
  type RubLogInput,
  rubLog,
  type TitrationSheetInput,
  titrationSheet,
} from './documents/kettle-sheets.ts'
export {
  type BagLabelInput,
  bagLabels,
  foodLabels,
  type JarLabelInput,
  jarLabels,
  type LabelSheetChoice,
} from './documents/labels.ts'
export { type ProcessLogHead, type ProcessLogInput, processLog, type RunLine } from './documents/process-log.ts'
export {
  type CalledHousehold,
  type CallListInput,
  callList,
  type RecalledCode,
  type RecallNoticeInput,
  recallNotice,
} from './documents/recall-notice.ts'
export { type ReserveTagInput, type ReserveTin, reserveTags } from './documents/reserve-tag.ts'
export type { LabelledValue, PrintSetting, Said } from './documents/said.ts'
export { type SeedEnvelopeInput, seedEnvelope, seedTitle } from './documents/seed-envelope.ts'
export { type WallBoardInput, type WallBoardLoad, wallBoard } from './documents/wall-board.ts'
export { type YearSheetInput, yearSheet } from './documents/year-sheet.ts'
export { type BatchBeside, batchSheetOfPlan } from './from-plan/batch-sheet.ts'
export { type CardBeside, cannerCardOfPlan } from './from-plan/canner-card.ts'
export { type ClassBeside, classSheetOfPlan } from './from-plan/class-sheet.ts'
export { type FieldBeside, fieldSheetOfPlan } from './from-plan/field-sheet.ts'
export { type LabelsBeside, labelsOfFood } from './from-plan/food-labels.ts'
export { jarHeatSheet } from './from-plan/jar-heat-sheet.ts'
export { type LogBeside, processLogOfPlan } from './from-plan/process-log.ts'
export { callListOfRecall, type RecallBeside, recallNoticeOfRecall } from './from-plan/recall-notice.ts'
export { runHeatSheet } from './from-plan/run-heat-sheet.ts'
export { renderHtml, renderHtmlPage } from './html.ts'
export type * from './model.ts'
export { PRINT_CSS } from './print-css.ts'
export { qrSquares } from './qr.ts'
export { LABEL_SHEETS, type LabelSheetId, PAPER_MM } from './sheets.ts'
