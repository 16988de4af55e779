/** Calculations of kettle chemistry, to be listed in the catalogue. */
import type { Calc } from '@crib/science'
import { alkaliDoseCalc } from './alkali-dose.calc.ts'
import { ashStrengthCalc } from './ash-strength.calc.ts'
import { cookAltitudeCalc } from './cook-altitude.calc.ts'
import { cookBalanceCalc } from './cook-balance.calc.ts'
import { disposalCalc } from './disposal.calc.ts'
import { doseLeftCalc } from './dose-left.calc.ts'
import { hydrationCalc } from './hydration.calc.ts'
import { rinsePlanCalc } from './rinse-plan.calc.ts'
import { titrationCalc } from './titration.calc.ts'
import { waterChemistryCalc } from './water-chemistry.calc.ts'
import { weakLotCalc } from './weak-lot.calc.ts'

export const KETTLE_CHEMISTRY_CALCS: readonly Calc[] = [
  titrationCalc,
  ashStrengthCalc,
  alkaliDoseCalc,
  doseLeftCalc,
  weakLotCalc,
  waterChemistryCalc,
  rinsePlanCalc,
  disposalCalc,
  cookAltitudeCalc,
  hydrationCalc,
  cookBalanceCalc,
]
