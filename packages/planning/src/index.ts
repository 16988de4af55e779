export { ASH_CUPS_PER_LIQUID_QT, ASH_PARTS_PER_10_CORN, LIME_FRACTION } from './batch/alkali.ts'
export { batchPlan, SWELLING_IN_POT } from './batch/batch-plan.ts'
export { SHELLED_PER_EAR_FRACTION, SHELLING_LB_PER_H } from './batch/corn.ts'
export type { EndingPlan } from './batch/endings.ts'
export type {
  AlkaliLot,
  BatchPlanInput,
  CannerTimings,
  CornType,
  Ending,
  EndingShare,
  Fill,
  Hull,
  HullingAlkali,
  JarSize,
  OwnSpread,
  PlanCanner,
  Pot,
  Spread,
  WaterRecord,
} from './batch/input.ts'
export { FILL_FRACTION, HOMINY_PER_DRY_VOLUME, JAR_LIQUID_QT, jarCapacity } from './batch/jars.ts'
export {
  type BatchOutcome,
  type BatchPlan,
  type BatchRefusal,
  type JarSection,
  type KettleSection,
  type PlanSection,
  planValue,
} from './batch/plan.ts'
export { POT_FILL_LIMIT_FRACTION, type PotLoad, WATER_TO_CORN_RATIO } from './batch/pots.ts'
export {
  alkaliBoilRangeMin,
  builtInStages,
  ownStage,
  STAGE_KINDS,
  type Stage,
  stageQuestions,
  type WashPattern,
} from './batch/stages.ts'
export type { StageWater } from './batch/water.ts'
export { PLANTINGS_COUNT, type SeedAnswer, type SeedLine, type SeedOutcome, seedLine } from './seed/seed-answer.ts'
export { type Amount, LB_PER_LIQUID_QT, shelledLb } from './shared/corn-measure.ts'
export { type OwnRecord, shrinkToOwn } from './shared/own-record.ts'
