export { type AirLeft, airLeftTemperatureC, steamPartialPressureKPaAbs } from './air/trapped-air.ts'
export {
  ASH_G_PER_CUP,
  ASH_K2O_FRACTION,
  ASH_SOLUBLE_FRACTION,
  type AshEstimate,
  type AshKept,
  ashEstimate,
  ashPotassiumEqPerKg,
  asPotassiumCarbonateGPerKg,
} from './alkali/ash-estimate.ts'
export { type DoseWish, lotDoseG, lotStrengthEqPerKg, neutralisingVinegarL } from './alkali/dose.ts'
export {
  ALKALI_MAKES,
  type AlkaliMake,
  alkaliEq,
  alkaliG,
  BAKED_SODA_FRACTION,
  BOUGHT_ALKALIS,
  type BoughtAlkali,
} from './alkali/equivalents.ts'
export { type LiquorIntensity, liquorIntensity, molPerLForHydroxide } from './alkali/intensity.ts'
export {
  CORROSIVE_PH,
  hydroxideOfPHMolPerL,
  isCorrosive,
  STRIP_SPREAD_PH,
  stripHydroxideMolPerL,
} from './alkali/liquor-reading.ts'
export {
  LABEL_SPREAD_FRACTION,
  type LiquorStrength,
  liquorStrength,
  type Spread,
  SYRINGE_STEP_MEANT_ML,
  type VinegarTitration,
  vinegarMolPerL,
} from './alkali/vinegar-titration.ts'
export {
  STANDARD_ATMOSPHERE_ELEVATION_M,
  standardElevationM,
  standardPressureKPaAbs,
} from './atmosphere/standard-atmosphere.ts'
export type { Calc, CalcResult, Field, Fields, Sentence, SeriesPoint } from './calc.ts'
export { SCIENCE_EDITION } from './calc-value.ts'
export { type CoolingReadings, coolingMinutes } from './cold/cooling.ts'
export {
  type FreezingBody,
  type FreezingShape,
  freezingHeatKJPerKg,
  freezingHoursPham1986,
  freezingHoursPlank1913,
  hominyHeats,
  type WarmBody,
} from './cold/freezing-time.ts'
export { type AirSpell, type DryingBand, type DryingWish, dryingHours } from './drying/drying-course.ts'
export {
  type Air,
  dryToWetFraction,
  equilibriumHumidityFraction,
  equilibriumMoistureChungPfostDryFraction,
  equilibriumMoistureHendersonDryFraction,
  wetToDryFraction,
} from './drying/equilibrium-moisture.ts'
export {
  equilibriumMoistureGabDryFraction,
  equilibriumMoistureHalseyDryFraction,
  equilibriumMoistureOswinDryFraction,
  type GabConstants,
  type HalseyConstants,
} from './drying/isotherms.ts'
export {
  dewPointC,
  humidityFromWetBulb,
  humidityOfRatio,
  humidityRatio,
  type MoistAir,
  moistAirEnthalpyKJPerKg,
  moistAirVolumeM3PerKg,
  saturationVapourKPa,
  wetBulbC,
} from './drying/moist-air.ts'
export {
  cleanSaltJarWetFraction,
  JAR_TEST_FRACTION,
  type JarReading,
  jarMoistureWetFraction,
  moistureByWeightWetFraction,
  OVEN_REPLICATE_FRACTION,
  type OvenDish,
  ovenMoistureWetFraction,
  saltHumidityFraction,
} from './drying/moisture-test.ts'
export {
  FLINT_KERNEL_RADIUS_M,
  flintDiffusivityM2PerS,
  hoursPage,
  hoursThompson1968,
  type Layer,
  moistureRatioLewis,
  moistureRatioPage,
  moistureRatioSphere,
  type PageCurve,
  pageCurveMisraBrooker1980,
} from './drying/thin-layer.ts'
export { requireInRange, type ValidRange, ValidRangeError } from './errors.ts'
export { type Block, placesPerM2, ROWS_FLOOR_COUNT, type Spacing, squarestBlock } from './field/block.ts'
export { type BorderRows, borderRows } from './field/border-rows.ts'
export {
  CROSSING_DISTANCE_M,
  type CrossingBand,
  CURVE_DISTANCE_M,
  crossingAtDistance,
  crossingTogetherFraction,
} from './field/crossing.ts'
export {
  type DayTemperatures,
  DEGREE_DAYS_TO_STAGE_F,
  degreeDaysC,
  degreeDaysRunningC,
  degreeDaysToStageC,
  type MaturityGroup,
} from './field/degree-days.ts'
export {
  type DayWindow,
  overlapDays,
  shedLagDays,
  shedMeetingFraction,
  shedWindow,
  silkWindow,
} from './field/flowering.ts'
export {
  type EarCount,
  MARKET_WET_FRACTION,
  thousandKernelsPerBushel,
  thousandthAcreRowFt,
  type WeighUp,
  yieldByEarsBuPerAcre,
  yieldByWeightKgPerM2,
} from './field/yield.ts'
export {
  type GaugePoint,
  gaugeErrorPsi,
  nextFaceMarkPsi,
  requiredReadingPsi,
  truePsiAtReading,
} from './gauge/gauge-correction.ts'
export {
  type Band,
  bandOf,
  bandsOf,
  type Spreads,
  type Swing,
  swingsOf,
  triangularQuantile,
  type Values,
} from './heat/band.ts'
export {
  airLeftAfterVentFraction,
  type CannerSchedule,
  cannerHistory,
  historyFromPressure,
  type PressureSample,
  PURGE_MIN,
} from './heat/canner-atmosphere.ts'
export {
  componentProperties,
  FOOD_COMPONENTS,
  FOOD_PROPERTY_TEMPERATURE_C,
  type FoodComponent,
  type ThermalProperties,
} from './heat/components.ts'
export { type BrineCurve, type BrineJar, brineCurve, sphereHeatingFhMin } from './heat/convecting-brine.ts'
export { type CurveBand, createCurveBand } from './heat/curve-band.ts'
export {
  type ConductingCylinder,
  type CylinderCurve,
  type CylinderPlace,
  type CylinderSize,
  curveSamples,
  cylinderAxisUnaccomplished,
  cylinderCurve,
  cylinderHeatingFhMin,
  slabMiddleUnaccomplished,
} from './heat/cylinder-series.ts'
export { type EmpiricalHeating, empiricalHeatingC, type FittedHeating, fitHeating } from './heat/empirical-heating.ts'
export { conductInto, type HeatField, type HeatRun } from './heat/finite-volume.ts'
export type { HeatMesh } from './heat/finite-volume-grid.ts'
export { ballFhPerU, ballGDeltaF } from './heat/formula-ball.ts'
export {
  type FormulaResult,
  type HeatingLine,
  heatingOnlyFhPerU,
  heatingTimeBall1923,
  heatingTimeStumbo1973,
  lethalityBall1923,
  lethalityStumbo1973,
  minutesPerReferenceMinute,
} from './heat/formula-method.ts'
export { stumboFhPerU, stumboGDeltaF } from './heat/formula-stumbo.ts'
export {
  JAR_GLASS,
  JAR_GLASS_CONDUCTIVITY_W_PER_M_K,
  JAR_HEADSPACE,
  JAR_SIZES,
  type JarSize,
  type LowMidHigh,
  type Material,
  PACKED_HOMINY_DIFFUSIVITY_M2_PER_S,
} from './heat/jar-materials.ts'
export {
  DEFAULT_MESH,
  type FilledJar,
  filledJarMesh,
  isFoodCell,
  middleTemperatureC,
  plainCylinderMesh,
} from './heat/jar-mesh.ts'
export { type JarFrames, type JarMoments, type JarPicture, jarFrames, jarPicture } from './heat/jar-picture.ts'
export { type JarQuality, studyQuality } from './heat/jar-quality.ts'
export { type JarInput, type JarStudy, jarSpreads, type MadeUpRun, type Pack, studyJar } from './heat/jar-study.ts'
export {
  BOTULINUM_DESIGN,
  BOTULINUM_OUTBREAK_STRAIN,
  BOTULINUM_Z_DELTA_C,
  curveLethalityMin,
  dAtTemperatureMin,
  type Kinetics,
  keptFraction,
  THIAMINE,
} from './heat/kill-and-cook.ts'
export { type Composition, DRAINED_HOMINY, type FoodProperties, foodProperties } from './heat/mixture.ts'
export { HISTORY_TEMPERATURE_C, type SurfaceHistory } from './heat/surface-history.ts'
export { cookTimeFactor, SOFTENING_Z_C } from './hydration/cook-altitude.ts'
export { fitPeleg, type PelegFit, pelegMassG, type Weighing } from './hydration/peleg.ts'
export {
  GELATINISATION_C,
  type StarchState,
  soakedFractionRange,
  starchState,
  UPTAKE_SETS,
  type UptakeSet,
} from './hydration/soaking.ts'
export { bulkDensityKgPerL, SHELLED_CORN_KG_PER_L, shelledCornKg, shelledCornL } from './kernels/bulk.ts'
export { type CookBalance, type CookWeights, cookBalance } from './kernels/cook-balance.ts'
export {
  bushelOfDryMatterLb,
  SHELLED_PER_EAR_CORN_TRADE_FRACTION,
  shelledFromEarCornKg,
  shelledPerEarCornFraction,
} from './kernels/ear-corn.ts'
export {
  type Cook,
  cookedPerRaw,
  type MoistureChange,
  massAtMoistureKg,
  moistureShrinkFraction,
  wetFractionOfSample,
} from './kernels/moisture.ts'
export { HOMINY_SWELLING, hominyVolumeRangeL, type Swelling, type VolumeRange } from './kernels/swelling.ts'
export {
  LETHALITY_121_1C,
  LETHALITY_250F,
  LETHALITY_TEMPERATURE_C,
  type LethalityModel,
  lethalRate,
} from './lethality/lethal-rate.ts'
export {
  hasEqualSteps,
  lethalityMin,
  lethalityRectangleMin,
  lethalitySimpsonMin,
  lethalityTrapezoidMin,
  type TemperatureSample,
} from './lethality/lethality.ts'
export {
  type Basis,
  CODE_VERSION,
  ceilCount,
  DOWN_TO_WHOLE,
  floorCount,
  type Json,
  type Reckoned,
  type Rounding,
  roundTo,
  shownValue,
  TO_WHOLE,
  UP_TO_WHOLE,
} from './reckoned.ts'
export {
  type AfterBath,
  type Bath,
  type BathStep,
  bathStep,
  drainedKernels,
  type Kernels,
  kernelMean,
  type RinseState,
} from './rinse/bath.ts'
export {
  afterStandingFraction,
  type BathKind,
  type BathKindSetup,
  followBaths,
  KERNEL_DIFFUSIVITY_M2_PER_S,
  KERNEL_RADIUS_M,
  leastAlkaliPlan,
  type PlannedBath,
  type RinsePlan,
  type RinseQuestion,
} from './rinse/plan.ts'
export { dilutedFraction, leftInfiniteBathFraction, limitedBathRoots, toEquilibriumFraction } from './rinse/sphere.ts'
export { SCIENCE_CALCS } from './science-calcs.ts'
export {
  alleleMissedFraction,
  earsPresentCount,
  effectiveEarsCount,
  effectiveSizeOfEars,
  effectiveSizeOfFamilies,
  effectiveSizeOverYears,
  inbreedingFraction,
  individualsToKeepAllelesCount,
  reserveLostFraction,
  varianceOfGametes,
  yieldLostFraction,
} from './seed/effective-size.ts'
export {
  beliefMeanFraction,
  beliefOfTest,
  beliefQuantileFraction,
  beliefRangeFraction,
  type GerminationBelief,
  type WeightedFraction,
} from './seed/germination-belief.ts'
export {
  type AgedTest,
  ageingRateMiddle,
  FRESH_FRACTION,
  germinationAfter,
  type LotAgeing,
  type LotStart,
  lotAgeing,
  probitsUntil,
} from './seed/lot-ageing.ts'
export { type OffTypeCount, type OffTypeTrend, offTypeTrend } from './seed/off-type-trend.ts'
export { type ReplicateSpread, regrowBelowFraction, replicateSpread } from './seed/replicate-tolerance.ts'
export { germinationRangeFraction, type SeedNeed, type SproutTest, seedReserveCount } from './seed/reserve.ts'
export { type NeedByBelief, plantsReachedFraction, seedReserveByBeliefCount } from './seed/reserve-by-belief.ts'
export {
  RULE_TEST_COUNT,
  type SequentialStep,
  sequentialStep,
  type TwoTestsGap,
  twoTestsGap,
} from './seed/two-tests.ts'
export {
  daysToViability,
  type LifeWanted,
  moistureFloorWetFraction,
  probitDaysEllisHong2007,
  probitDaysEllisRoberts1980,
  probitsLost,
  SEED_TEMPERATURE_2007_C,
  type StorageCondition,
  type StoragePeriod,
  viabilityEllisRoberts1980,
  warmestForLifeC,
  wettestForLifeWetFraction,
} from './seed/viability.ts'
export { DOSE_EXPONENT, type Dosing, minuteReached, minutesAtOne } from './slip/dosed-minutes.ts'
export { learnSlip, type SlipBelief } from './slip/slip-belief.ts'
export {
  type SlipPlaces,
  type SlipRange,
  type SlipWish,
  slipPlaces,
  slippedRange,
  slipRange,
} from './slip/slip-forecast.ts'
export { SLIP_PRIOR, type SlipPot, type SlipRub } from './slip/slip-model.ts'
export { type SlipScore, type StageScore, scoreSlip } from './slip/slip-score.ts'
export { type BetaShape, betaCdfFraction, betaQuantile } from './statistics/beta.ts'
export { atLeastFraction, betaBinomialAtLeastFraction } from './statistics/binomial.ts'
export { differenceNewcombe1998 } from './statistics/difference.ts'
export {
  type CountOf,
  clopperPearson1934,
  type FractionRange,
  testSizeForWidthCount,
  type WidthWanted,
  wilson1927,
} from './statistics/intervals.ts'
export { normalCdfFraction, normalQuantile } from './statistics/normal.ts'
export {
  boilingTemperatureC,
  type CannerSteam,
  steamPressureKPaGauge,
  steamTemperatureC,
} from './steam/canner-steam.ts'
export {
  SATURATION_PRESSURE_KPA_ABS,
  SATURATION_TEMPERATURE_C,
  saturationPressureKPaAbs,
  saturationPressureWagnerPruss1992KPaAbs,
  saturationTemperatureC,
} from './steam/saturation.ts'
export {
  type AllowableStorage,
  allowableStorage,
  type CountedAs,
  type StorageFigure,
  type StorageSpell,
  type StorageUsed,
  storageUsed,
} from './storage/allowable-storage.ts'
export {
  dryMatterLossFraction,
  type StoredCorn,
  storageDaysAdamsRosentrater,
  storageDaysNdsu2019,
  storageDaysThompson1972,
  TABLE_DAMAGE_FRACTION,
} from './storage/storage-life.ts'
export { cToF, fToC, ftToM, kPaAbsToPsiGauge, mToFt, psiGaugeToKPaAbs } from './units/convert-named.ts'
export {
  type LiquidOrDry,
  type ParsedQuantity,
  type ParseQuantityOptions,
  parseQuantity,
  type QuantityFault,
} from './units/parse-quantity.ts'
export { convert, type Measure, type Quantity, UNITS, type Unit } from './units/unit.ts'
export { type ActivityModel, DAVIES, TRUESDELL_JONES } from './water/activity.ts'
export { type Equilibria, equilibriaAt } from './water/equilibria.ts'
export type { Mixture, Speciation, SpeciationOptions, SpeciationOutcome, Species } from './water/mixture.ts'
export {
  calciumHydroxideSolubilityGPerKg,
  openToCO2,
  type SettledLiquor,
  type SettledOutcome,
  type Solid,
  settle,
  withCO2Lost,
} from './water/solids.ts'
export { speciate } from './water/speciation.ts'
export { type TitrationPoint, type TitrationSetup, titratedMixture, titrationCurve } from './water/titration-curve.ts'
