/** Calculations of keeping and pantry, to be listed in the catalogue. */
import type { Calc } from '@crib/science'
import { recallCalc } from './recall.calc.ts'

export const KEEPING_CALCS: readonly Calc[] = [recallCalc]
