export { ENGLISH, type MessageKey, type Part } from './messages.ts'
export {
  type Companion,
  formatClock,
  formatDuration,
  formatNumber,
  formatQuantity,
  formatReckoned,
  formatWeight,
  unitName,
} from './units.ts'
export {
  createWords,
  createWordsOf,
  type MessageFiles,
  type Nouns,
  PLAIN_NOUNS,
  type SayParams,
  type Words,
} from './words.ts'
