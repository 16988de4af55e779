export { GUIDANCE_EDITION, type Seen, type Standing } from '../schema/envelope.ts'
export type { HabitTopic, KeepingForm, Moment, UnsealedChoiceKey } from '../schema/list-tables.ts'
export type { NutritionFood } from '../schema/nutrition-table.ts'
export type { AlkaliKey, FoodKey, JarKey, PrintedJar, ProcessKey } from '../schema/process-tables.ts'
export { askWhom } from './ask-whom.ts'
export { boilBeforeTastingMin } from './boil.ts'
export { cautionsFor, MOMENTS } from './cautions.ts'
export { type CoolingStep, type CoolingWindow, coolingWindow } from './cooling.ts'
export { type GaugeFacts, type GaugeOutcome, type GaugeVerdict, gaugeRule } from './gauge.ts'
export { GUIDANCE_CALCS } from './guidance-calcs.ts'
export { HABIT_TOPICS, type HabitLine, habitLine } from './habits.ts'
export { JAR_KEYS, type JarUse, jarUses } from './jars.ts'
export { type KeepingAdvice, keepingAdvice } from './keeping.ts'
export { whatAlkaliFrees } from './nourishment.ts'
export { NUTRIENTS, NUTRITION_FOODS, type NutrientId, type Nutrition, nutritionOf } from './nutrition.ts'
export { type PowerCut, type PowerCutAdvice, powerCutAdvice } from './power-cut.ts'
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
export {
  type AlkaliRecipe,
  alkaliRecipesFor,
  partsPer10Corn,
  printedAshPartsPer10Corn,
  printedCalciumHydroxideFraction,
} from './recipes.ts'
export {
  cannerWaterRule,
  coolDownRule,
  headspaceRule,
  lidWaitRule,
  minimumLoad,
  type PrintedBySource,
  type Rule,
  type RuleTopic,
  restartRule,
  ruleFor,
  saltRule,
  sealWindow,
  ventRule,
  type WordedRule,
} from './rules.ts'
export { standingSentences, UNTESTED_ALKALI_STANDING } from './standing.ts'
export { suspectJarSteps } from './suspect.ts'
export { GUIDANCE_TABLES, type GuidanceTable } from './tables.ts'
export { type UnsealedChoice, type UnsealedOutcome, unsealedChoices } from './unsealed.ts'
