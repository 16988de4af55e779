export { CATALOGUE, findCalc } from './catalogue.ts'
export { fieldLabel } from './field-label.ts'
export { type InputFault, type ReadInputs, readInputs } from './read-inputs.ts'
export { BASIS_KEYS, type Reckoning, reckonById, reckonCalc, type WordedSentence, type WordedValue } from './reckon.ts'
