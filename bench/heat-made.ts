/** The made-up pint and run of the heat benches; finite-volume.c has the same written in. */
import { JAR_SIZES } from '@crib/science'

export const HISTORY = [
  { timeMin: 0, temperatureC: 60 },
  { timeMin: 5, temperatureC: 98 },
  { timeMin: 15, temperatureC: 99 },
  { timeMin: 20, temperatureC: 116 },
  { timeMin: 60, temperatureC: 116 },
  { timeMin: 90, temperatureC: 98 },
  { timeMin: 120, temperatureC: 40 },
]
export const INITIAL_C = 60
export const PINT = { ...JAR_SIZES.pint, diffusivityM2PerS: 1.5e-7 }
export const FOOD = { conductivityWPerMK: 0.6, heatCapacityJPerM3K: 4e6 }
export const CELLS = { nr: 64, nz: 128 }
export const STEP_COUNT = 7200
