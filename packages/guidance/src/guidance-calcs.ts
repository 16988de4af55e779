/** The calculations of this package, as the catalogue lists them. */
import type { Calc } from '@crib/science'
import { boilBeforeTastingCalc } from './boil-before-tasting.calc.ts'
import { nutritionCalc } from './nutrition.calc.ts'
import { powerCutCalc } from './power-cut.calc.ts'
import { pressureBandCalc } from './pressure-band.calc.ts'
import { processLookupCalc } from './process-lookup.calc.ts'
import { unsealedJarsCalc } from './unsealed-jars.calc.ts'

export const GUIDANCE_CALCS: readonly Calc[] = [
  pressureBandCalc,
  processLookupCalc,
  boilBeforeTastingCalc,
  unsealedJarsCalc,
  powerCutCalc,
  nutritionCalc,
]
