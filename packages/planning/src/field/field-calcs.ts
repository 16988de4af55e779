/** Calculations of the field, to be listed in the catalogue. */
import type { Calc } from '@crib/science'
import { degreeDaysCalc } from './degree-days.calc.ts'
import { fieldPlanCalc } from './field-plan.calc.ts'
import { harvestWeightCalc } from './harvest-weight.calc.ts'
import { isolationCalc } from './isolation.calc.ts'
import { shellingTimeCalc } from './shelling.calc.ts'
import { yieldEstimateCalc } from './yield-estimate.calc.ts'

export const FIELD_CALCS: readonly Calc[] = [
  fieldPlanCalc,
  isolationCalc,
  degreeDaysCalc,
  yieldEstimateCalc,
  harvestWeightCalc,
  shellingTimeCalc,
]
