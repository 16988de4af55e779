/** Everything a screen is made of, one door. The props stand at the top of each file. */
export { ButtonRow, NextAction, SideAction } from './actions.tsx'
export { Behind, BehindBody, SourceLine } from './behind.tsx'
export { BigNumber, NumberRow } from './big-number.tsx'
export { CountField, PercentField } from './count-field.tsx'
export { FieldError } from './field-error.tsx'
export {
  ChoiceTags,
  ClockField,
  clockMinutes,
  DateField,
  FlagTag,
  TextField,
} from './fields.tsx'
export { Figure, Ledger } from './figure.tsx'
export { Fold } from './fold.tsx'
export { Caution, Reasons, Refusal } from './lines.tsx'
export { QuantityField } from './quantity-field.tsx'
export { MarginNote, Passage, Sheet } from './sheet.tsx'
export { Slip } from './slips.tsx'
export { Empty, Loading } from './standstill.tsx'
export { TextFileField } from './text-file-field.tsx'
