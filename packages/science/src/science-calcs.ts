/** The calculations of this package, as the catalogue lists them. */
import { trappedAirCalc } from './air/trapped-air.calc.ts'
import { standardAtmosphereCalc } from './atmosphere/standard-atmosphere.calc.ts'
import type { Calc } from './calc.ts'
import { equilibriumMoistureCalc } from './drying/equilibrium-moisture.calc.ts'
import { moistAirCalc } from './drying/moist-air.calc.ts'
import { gaugeCorrectionCalc } from './gauge/gauge-correction.calc.ts'
import { foodPropertiesCalc } from './heat/food-properties.calc.ts'
import { formulaMethodCalc } from './heat/formula-method.calc.ts'
import { heatingFitCalc } from './heat/heating-fit.calc.ts'
import { jarHeatingCalc } from './heat/jar-heating.calc.ts'
import { jarQualityCalc } from './heat/jar-quality.calc.ts'
import { whatVentingCostsCalc } from './heat/what-venting-costs.calc.ts'
import { cookedYieldCalc } from './kernels/cooked-yield.calc.ts'
import { earCornCalc } from './kernels/ear-corn.calc.ts'
import { kernelMeasureCalc } from './kernels/kernel-measure.calc.ts'
import { moistureShrinkCalc } from './kernels/moisture-shrink.calc.ts'
import { lethalityCalc } from './lethality/lethality.calc.ts'
import { steamTemperatureCalc } from './steam/steam-temperature.calc.ts'

export const SCIENCE_CALCS: readonly Calc[] = [
  standardAtmosphereCalc,
  steamTemperatureCalc,
  trappedAirCalc,
  gaugeCorrectionCalc,
  lethalityCalc,
  foodPropertiesCalc,
  formulaMethodCalc,
  heatingFitCalc,
  jarHeatingCalc,
  jarQualityCalc,
  whatVentingCostsCalc,
  kernelMeasureCalc,
  earCornCalc,
  moistureShrinkCalc,
  equilibriumMoistureCalc,
  cookedYieldCalc,
  moistAirCalc,
]
