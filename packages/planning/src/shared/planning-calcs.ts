/** Calculations of seed, field, batch and day, to be listed in the catalogue. */
import type { Calc } from '@crib/science'
import { batchPlanCalc } from '../batch/batch-plan.calc.ts'
import { weakAshCalc } from '../batch/weak-ash.calc.ts'
import { dayTimelineCalc } from '../day/day-timeline.calc.ts'
import { villageDayCalc } from '../day/village-day.calc.ts'
import { FIELD_CALCS } from '../field/field-calcs.ts'
import { KEEPING_CALCS } from '../keeping/keeping-calcs.ts'
import { KETTLE_CHEMISTRY_CALCS } from '../kettle-chemistry/calcs.ts'
import { SEED_CALCS } from '../seed/calcs.ts'

export const PLANNING_CALCS: readonly Calc[] = [
  ...SEED_CALCS,
  batchPlanCalc,
  weakAshCalc,
  ...KETTLE_CHEMISTRY_CALCS,
  dayTimelineCalc,
  villageDayCalc,
  ...FIELD_CALCS,
  ...KEEPING_CALCS,
]
