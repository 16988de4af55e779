/** Calculations of keeping and pantry, to be listed in the catalogue. */
import type { Calc } from '@crib/science'
import { lidsCalc } from '../pantry/lids.calc.ts'
import { coolingClockCalc, freezingCalc } from './cold.calc.ts'
import { cornStorageCalc } from './corn-storage.calc.ts'
import { dryingCalc } from './drying.calc.ts'
import { flourCalc, masaCalc, roastCalc } from './mill.calc.ts'
import { moistureCalc } from './moisture.calc.ts'
import { recallCalc } from './recall.calc.ts'

export const KEEPING_CALCS: readonly Calc[] = [
  moistureCalc,
  cornStorageCalc,
  dryingCalc,
  coolingClockCalc,
  freezingCalc,
  flourCalc,
  masaCalc,
  roastCalc,
  recallCalc,
  lidsCalc,
]
