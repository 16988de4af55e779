/** Everything a screen is made of, one door. The props stand at the top of each file. */
export { ButtonRow, NextAction, SideAction } from './actions.tsx'
export { Behind, BehindBody, SourceLine } from './behind.tsx'
export { Amount, BigNumber, NumberRow } from './big-number.tsx'
export { FieldError } from './field-error.tsx'
export {
  type Choice,
  ChoiceTags,
  ClockField,
  CountField,
  clockMinutes,
  DateField,
  FlagTag,
  TextField,
} from './fields.tsx'
export { type Cell, Figure, Ledger } from './figure.tsx'
export { Fold } from './fold.tsx'
export { Caution, Reasons, Refusal } from './lines.tsx'
export { QuantityField, type QuantityLimits } from './quantity-field.tsx'
export { MarginNote, Passage, Sheet } from './sheet.tsx'
export { InventedSlip, Slip } from './slips.tsx'
export { Empty, ErrorState, Loading } from './standstill.tsx'
