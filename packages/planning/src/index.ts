export { ASH_CUPS_PER_LIQUID_QT, ASH_PARTS_PER_10_CORN, LIME_FRACTION } from './batch/alkali.ts'
export { type AmountId, amountName, classAmounts, jarName, type SheetAmounts, sheetAmounts } from './batch/amounts.ts'
export { ASH_STEP_CUPS, type WeakAshAdvice, type WeakAshInput, weakAshAdvice } from './batch/ash-advice.ts'
export { type BatchPlanForm, batchPlanInput } from './batch/batch-plan.calc.ts'
export { batchPlan, SWELLING_IN_POT } from './batch/batch-plan.ts'
export { SHELLING_LB_PER_H } from './batch/corn.ts'
export type { EndingPlan } from './batch/endings.ts'
export {
  type Asked,
  type BatchWish,
  batchInputFromFacts,
  type FactsOutcome,
  isHullingLot,
  isStandingRead,
  standingFood,
} from './batch/from-facts.ts'
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
  doseInEntry,
  lotWorked,
  type PotSeen,
  type PotWalk,
  potCornLiquidQt,
  potDose,
  potWalk,
  type RubSeen,
  type WalkStep,
} from './batch/kettle-walk.ts'
export { type NoSlipCause, type NoSlipCauseId, type NoSlipKnown, noSlipCauses } from './batch/no-slip-causes.ts'
export { ownShellingRate } from './batch/own-records.ts'
export {
  type BatchOutcome,
  type BatchPlan,
  type BatchRefusal,
  type JarSection,
  type KettleSection,
  type PlanSection,
  planValue,
} from './batch/plan.ts'
export { type Moved, planRecord, whatMoved } from './batch/plan-record.ts'
export {
  type BatchToPlan,
  batchPlannedBody,
  cornTakenKg,
  type PlannedDay,
  type PlannedInputs,
  plannedInputs,
  planOfBatch,
} from './batch/planned-batch.ts'
export { POT_FILL_LIMIT_FRACTION, type PotLoad, WATER_TO_CORN_RATIO } from './batch/pots.ts'
export {
  asksForAshAdvice,
  type FirstLook,
  firstLook,
  RUB_TEST_KERNELS,
  type RubWord,
  rubAgainAtMs,
  rubWord,
  stoodOpenMonths,
} from './batch/rub.ts'
export { type RubReading, type RubTest, rubTest } from './batch/rub-test.ts'
export { sharesOfParts } from './batch/shares.ts'
export {
  SLIP_RANGE_FRACTION,
  type SlipForecast,
  type SlipKnowledge,
  type SlipOutcome,
  type SlipQuestion,
  slipBelief,
  slipForecast,
  slipKnowledge,
  WANTED_FRACTION,
} from './batch/slip-forecast.ts'
export { slipPots } from './batch/slip-records.ts'
export {
  alkaliBoilRangeMin,
  builtInStages,
  ownStage,
  readStages,
  STAGE_KINDS,
  type Stage,
  stageQuestions,
  type WashPattern,
} from './batch/stages.ts'
export type { StageWater } from './batch/water.ts'
export { nextKettleCode, nextLoadCode, type RunToBegin, runBegunBody, runSetupOf } from './canner/begin-run.ts'
export { CANNER_CALCS } from './canner/calcs.ts'
export {
  type CannerCard,
  type CardInput,
  type CardOutcome,
  type CardRefusal,
  cannerCard,
  type JarConditions,
} from './canner/card.ts'
export { type CardWish, cardOfCanner, WEIGHTS_LB } from './canner/card-of-canner.ts'
export { dayOfInstant, instantOnDay, lastInstantOfClock, logInstants } from './canner/clock-instants.ts'
export { confirmHold, type HoldConfirmed } from './canner/confirm-hold.ts'
export { type Dial, type DialTest, dialOf, testDueOn } from './canner/dial.ts'
export { type GaugeCard, nextTestSentence } from './canner/gauge-card.ts'
export { cannerLetter, type LoadCodeParts, loadCode } from './canner/load-code.ts'
export {
  type CannerShare,
  type Load,
  type LoadCanner,
  type LoadsInput,
  type LoadsPlan,
  planLoads,
} from './canner/loads.ts'
export { type ProcessLog, type ProcessLogInput, processLog } from './canner/process-log.ts'
export { type RunMarks, type RunState, runClock, runState } from './canner/run.ts'
export type { RunClock } from './canner/run-clock.ts'
export type { Departure, DepartureId } from './canner/run-departures.ts'
export type { SealWindow } from './canner/run-due.ts'
export { LOG_EVENTS, type RunEventType, type RunRecord, runRecords } from './canner/run-event.ts'
export { runNumbers } from './canner/run-numbers.ts'
export type { OutcomeKind, RunPhase } from './canner/run-phase.ts'
export { publishedRunRules } from './canner/run-rules.ts'
export type { RunRules, RunSetup } from './canner/run-setup.ts'
export { type PressureTrace, pressureTrace, type TracePoint, type TraceSpan } from './canner/trace.ts'
export { type VentAdvice, type VentQuestion, ventAdvice } from './canner/vent-advice.ts'
export type { Dip, DipCause, OpenDip, Restart } from './canner/walk.ts'
export type { DayCanner, DayInput, DayPotLoad, DayStage, LoadTimings } from './day/day-input.ts'
export { DAY_LIMIT_MIN, type DayPlan, type DayPlanInput, dayPlan } from './day/day-plan.ts'
export { bookTimings, type DayCounts, type DayWish, dayForPlan } from './day/from-plan.ts'
export { type SharedKitchen, sharedKitchen } from './day/shared-kitchen.ts'
export { type Day, type DayStep, type DayWait, dayTimeline } from './day/timeline.ts'
export { type VillageInput, type VillagePlan, villageDay } from './day/village.ts'
export { type NeighbourCorn, type NeighbourShare, neighbourShare, type Share, shareTogether } from './field/crossing.ts'
export { dayNumber, dayText, isoDayOf } from './field/days.ts'
export {
  type DegreeDayInput,
  type DegreeDayOutcome,
  type DegreeDayPlan,
  type DegreeDayStep,
  degreeDayPlan,
} from './field/degree-day-plan.ts'
export { type FieldPlan, type FieldPlanInput, fieldPlan, fieldPlanTooLarge } from './field/field-plan.ts'
export { type FieldSheetBeside, fieldSheetBeside } from './field/field-sheet-beside.ts'
export { fieldYears, standFractionOfYears } from './field/field-years.ts'
export { groundOfPlot, type PlotGround } from './field/ground.ts'
export { cribLotOfHarvest, type PlantingRecords, plantingRecords, seedSownWithPlanting } from './field/harvest.ts'
export { harvestWeightCalc } from './field/harvest-weight.calc.ts'
export { type Isolation, type IsolationInput, type IsolationOutcome, isolation } from './field/isolation.ts'
export { totalOnDay } from './field/own-totals.ts'
export { fieldPlannedBody, type PlannedField, plannedField } from './field/planned-field.ts'
export { crossingOfPlot, neighboursOf, type PlotCrossing } from './field/plot-crossing.ts'
export {
  halfSeenOn,
  nextSeasonStep,
  plantingsOfPlot,
  SEASON_STEPS,
  type SeasonStep,
} from './field/season-of-planting.ts'
export { earsLeftKg, type ShellingInput, shellingTime } from './field/shelling.ts'
export { type DayReading, type Readings, readPasted, readRows, type TypedDay } from './field/temperatures.ts'
export {
  type CountedPlace,
  type Estimate,
  estimateByEars,
  estimateByPart,
  estimateByWeight,
  type PartOutcome,
} from './field/yield-estimate.ts'
export { type BesideDirected, type DippedRun, dipsBesideDirected } from './heat/dips-beside-directed.ts'
export { type HeatingTrial, heatingTrial } from './heat/heating-trial.ts'
export { type CutJar, type JarHeat, jarHeat, type WorkedJar, workJar } from './heat/jar-heat.ts'
export { type JarStudyValues, type JarSwing, jarAt, qualityValues, studyValues } from './heat/jar-values.ts'
export {
  type LoggerFault,
  type LoggerFaultKind,
  type LoggerGap,
  type LoggerOutcome,
  type LoggerReading,
  type LoggerReport,
  readLogger,
} from './heat/logger.ts'
export {
  type LoggerMapping,
  type LoggerTimeKind,
  type LoggerUnit,
  type LoggerValueColumn,
  type ProposedMapping,
  proposeLoggerMapping,
  splitLoggerRow,
} from './heat/logger-mapping.ts'
export {
  instantOfReading,
  type LoggerTrace,
  type ReadingClock,
  type TracedLogger,
  type TraceRole,
  traceLogger,
} from './heat/logger-traces.ts'
export { madeUpLikeRun, madeUpRun } from './heat/made-up-run.ts'
export { type CannerOwnTimes, cannerOwnTimes, type OwnTime } from './heat/own-times.ts'
export { type PictureCsv, pictureCsv } from './heat/picture-csv.ts'
export { type PracticeRun, practiceLog } from './heat/practice-log.ts'
export { alreadyWritten, type ModelledTrace, type Replay, type ReplayWish, replayRun } from './heat/replay.ts'
export { type LoggedRun, type MeasuredTrace, type RunHeat, runHeat } from './heat/run-heat.ts'
export {
  findRunMarks,
  type MarksWish,
  type ProposedMark,
  pressureFromTemperature,
  type RunMarksFound,
  type TraceDip,
} from './heat/run-marks.ts'
export {
  createTraceThinner,
  type ThinTrace,
  type TraceReading,
  type TraceThinner,
  traceAt,
} from './heat/thin-trace.ts'
export { type WhyCard, type WhyId, type WhyVariant, whyCards } from './heat/why-cards.ts'
export { type ColdAnswer, type CoolingInput, coolingClock, type FreezingInput, freezingPlan } from './keeping/cold.ts'
export { type CoolingPan, coolingPan, type PanStanding } from './keeping/cooling-pan.ts'
export { type CornStorage, type CornStorageInput, cornStorage } from './keeping/corn-storage.ts'
export { type DryingAir, readDryingAir } from './keeping/drying-air.ts'
export { type DryingInput, type DryingOf, type DryingPlan, dryingPlan } from './keeping/drying-plan.ts'
export { type DryingTray, dryingTray } from './keeping/drying-tray.ts'
export { lotShrink } from './keeping/lot-shrink.ts'
export { type LotStorage, lotStorages, storageSpells } from './keeping/lot-storage.ts'
export {
  type FlourInput,
  flourFromHominy,
  type MasaInput,
  type MillAnswer,
  masaFromFlour,
  type RoastInput,
  roastedYield,
} from './keeping/mill.ts'
export { type MoistureForm, moistureTest } from './keeping/moisture.calc.ts'
export { type OnTheClock, onTheClock } from './keeping/on-the-clock.ts'
export {
  type Recall,
  type RecallOrigin,
  recall,
  type TraceBack,
  traceBack,
} from './keeping/recall.ts'
export { type RecallChoice, recallChoices } from './keeping/recall-choices.ts'
export { type CodeNode, type RecallFacts, type RecallGraph, recallGraph } from './keeping/recall-graph.ts'
export {
  type DrillFound,
  type DrillOutcome,
  drillOf,
  drillOutcome,
  findableCount,
  type RecallDrill,
  recallDrill,
  recallValues,
} from './keeping/recall-numbers.ts'
export type {
  GivenAway,
  RecalledLot,
} from './keeping/recalled-lots.ts'
export { type MoistureBasis, percentFraction, type TypedMoisture, typedMoisture } from './keeping/typed-moisture.ts'
export {
  type AlkaliDose,
  alkaliDose,
  ashLiquor,
  type DosedAlkali,
  type DoseInput,
} from './kettle-chemistry/alkali-dose.ts'
export {
  anHourAtElevation,
  type DoseRow,
  doseAcross,
  doseOf,
  eqPerKgForHydroxide,
} from './kettle-chemistry/dose-across.ts'
export { type Addition, type DoseLeft, type DoseLeftInput, doseLeft } from './kettle-chemistry/dose-left.ts'
export { type DosePot, type DoseWish, dosePot } from './kettle-chemistry/dose-pot.ts'
export {
  type LyePaper,
  lyePaper,
  type RubPaper,
  rubPaper,
  sortPaper,
  type TitrationPaper,
  titrationPaper,
} from './kettle-chemistry/kettle-paper.ts'
export { type LotStrength, type LotTest, lotStrength } from './kettle-chemistry/lot-strength.ts'
export {
  type LotTestFound,
  lotOverTime,
  readLotTest,
  type TestOverTime,
  unmeasuredAsh,
} from './kettle-chemistry/lot-tests.ts'
export { type NeverIn, neverGoesIn, stoppedBy } from './kettle-chemistry/never-goes-in.ts'
export {
  alkaliInPot,
  type OwnStrength,
  type OwnStrengths,
  ownStrengths,
  potCornKg,
} from './kettle-chemistry/own-strengths.ts'
export {
  cornLotOf,
  type LotYield,
  lotYield,
  potBalance,
  type WeighedYield,
  weighedYields,
} from './kettle-chemistry/own-yields.ts'
export { type PotDisposal, potDisposal } from './kettle-chemistry/pot-disposal.ts'
export { type PotDoseLeft, potDoseLeft } from './kettle-chemistry/pot-dose-left.ts'
export {
  type CauseOfTails,
  hominyWeighed,
  mouldFound,
  type PotTails,
  potTails,
  type SortCause,
  type TailsGo,
} from './kettle-chemistry/pot-tails.ts'
export { type PrintedRecipe, printedRecipes, type RecipeStrength, recipeStrengths } from './kettle-chemistry/recipes.ts'
export { rinseResult } from './kettle-chemistry/rinse-plan.calc.ts'
export { type Wash, type WashInput, washPlan } from './kettle-chemistry/rinse-wash.ts'
export { type SortTails, sortTails } from './kettle-chemistry/sort-tails.ts'
export { type TestedStrength, testedStrength, testedStrengths } from './kettle-chemistry/tested-lot.ts'
export { readStandTest, type WashSoFar, washSoFar } from './kettle-chemistry/wash-so-far.ts'
export { type WeakLotAdvice, type WeakLotInput, weakLotAdvice } from './kettle-chemistry/weak-lot.ts'
export {
  enoughSlipped,
  type WeakPot,
  type WeakPotAdvice,
  weakPotAdvice,
  whyNoSlip,
} from './kettle-chemistry/weak-pot.ts'
export { type FiveWaysSetup, fiveWays, type ToldLine } from './pantry/five-ways.ts'
export { dayAfter, pantryShelf, type ShelfLot, shelfLot } from './pantry/shelf.ts'
export { type UnsealedJars, unsealedJars } from './pantry/unsealed-jars.ts'
export { type LidNeed, lidsAndJarsToBuy, type UseForecast, useForecasts } from './pantry/use-forecast.ts'
export { type CornStrand, type PlaceOfCorn, type WhereItWent, whereItWent } from './pantry/where-it-went.ts'
export { type FoodLabel, foodLabel } from './papers/food-label.ts'
export { recallAbout } from './papers/recall-about.ts'
export { type SeedPaper, seedPaper } from './papers/seed-paper.ts'
export { SEED_CALCS } from './seed/calcs.ts'
export { isSameCorn } from './seed/corn-names.ts'
export {
  type GerminationInput,
  germinationInterval,
  germinationOfTest,
  germinationRanges,
  replicateTolerance,
  type SproutCount,
} from './seed/germination.ts'
export { type GrowOut, growOut } from './seed/grow-out.ts'
export { gPerThousandOfKernelsPerOz, kernelsPerOzOfHundred } from './seed/kernels-per-oz.ts'
export {
  type AlleleLossInput,
  alleleLoss,
  type EffectiveSizeInput,
  earsAdvice,
  effectiveSize,
  type OffTypeInput,
  offTypeTrend,
} from './seed/line-advice.ts'
export { type OffTypeKind, offTypeCounts, offTypesOfCorn } from './seed/off-types-of-corn.ts'
export { nextSowingOn, type ReserveFromBook, reserveFromBook } from './seed/reserve-from-book.ts'
export {
  type FieldYear,
  type PlantingNeed,
  type ReserveLine,
  type ReservePlan,
  type ReservePlanInput,
  reservePlan,
} from './seed/reserve-plan.ts'
export { PLANTINGS_COUNT, type SeedAnswer, type SeedLine, type SeedOutcome, seedLine } from './seed/seed-answer.ts'
export {
  ageingOf,
  KEEP_ABOVE_FRACTION,
  type SeedLifeInput,
  type StoredTest,
  seedLife,
} from './seed/seed-life.ts'
export {
  daysBetween,
  type ReserveStanding,
  reserveStanding,
  type SeedLotView,
  seedLotView,
  storeOfLot,
} from './seed/seed-lot-view.ts'
export { type SeedReserve, type SeedReserveInput, seedReserve } from './seed/seed-reserve.ts'
export { daysForProbits, isStoreKnown, probitsInDays, type SeedStore } from './seed/seed-store.ts'
export { probitsLeft, type SeedWhatIfInput, type StoreWay, seedWhatIf } from './seed/seed-what-if.ts'
export { testBesideOthers } from './seed/two-tests.ts'
export { type Amount, LB_PER_LIQUID_QT, shelledLb } from './shared/corn-measure.ts'
export { dayOf } from './shared/day-of.ts'
export { type OwnRecord, shrinkToOwn } from './shared/own-record.ts'
export { PLANNING_CALCS } from './shared/planning-calcs.ts'
export { seasonYearOf, seedOfSeason } from './shared/season-year.ts'
export type { ElevationKnownBy } from './shared/set-pressure.ts'
export { yearsOf } from './year/balance-of-year.ts'
export {
  type LoadOfYear,
  type PutUpOfYear,
  type SeedOfYear,
  type YearSummary,
  yearSummary,
} from './year/year-summary.ts'
