/** What a value is and how its unit changes: all that wording and paper need of science, so that neither loads its physics. */
export { CODE_VERSION, type Reckoned, shownValue } from './reckoned.ts'
export { convert, type Quantity, type Unit } from './units/unit.ts'
