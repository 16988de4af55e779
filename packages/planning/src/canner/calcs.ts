/** Every public calculation of the canner. */
import type { Calc } from '@crib/science'
import { cannerCardCalc } from './canner-card.calc.ts'
import { cannerLoadsCalc } from './canner-loads.calc.ts'
import { cannerRunCalc } from './canner-run.calc.ts'
import { gaugeAimCalc } from './gauge-aim.calc.ts'

export const CANNER_CALCS: readonly Calc[] = [cannerCardCalc, gaugeAimCalc, cannerRunCalc, cannerLoadsCalc]
