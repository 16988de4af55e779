export { GUIDANCE_EDITION, type Seen, type Standing } from '../schema/envelope.ts'
export type { AlkaliKey, FoodKey, JarKey, PrintedJar, ProcessKey } from '../schema/process-tables.ts'
export { askWhom } from './ask-whom.ts'
export { JAR_KEYS, type JarUse, jarUses } from './jars.ts'
export {
  type FoundPressure,
  type GaugeKind,
  type OffTablePressure,
  PRESSURE_TABLE_MAX_FT,
  PRESSURE_TABLE_MIN_FT,
  type PressureOutcome,
  pressureRowFor,
} from './pressure.ts'
export { findProcess } from './process.ts'
export type { HearsayMinutes, ProcessOutcome, ProcessQuery, PublishedProcess, UnmetCondition } from './process-types.ts'
export { standingSentences, UNTESTED_ALKALI_STANDING } from './standing.ts'
