/**
 * How fast water goes into kernels, as published: diffusion constants that differ sixtyfold between laboratories, all
 * from 30 to 60 °C. None is stretched to the boil, where starch opens a second, larger uptake.
 */
import { requireInRange } from '../errors.ts'
import { leftInfiniteBathFraction } from '../rinse/sphere.ts'

export interface UptakeSet {
  readonly kernels: string
  /** At `coolC` and `warmC`. [m2/s] */
  readonly coolM2PerS: number
  readonly warmM2PerS: number
  readonly sourceKey: string
}

const COOL_C = 30
const WARM_C = 60

/** @source afolabi-2014; addo-2009 */
export const UPTAKE_SETS: readonly UptakeSet[] = [
  { kernels: 'dent-yellow', coolM2PerS: 3.28e-11, warmM2PerS: 4.68e-11, sourceKey: 'afolabi-2014' },
  { kernels: 'dent-white', coolM2PerS: 4.25e-11, warmM2PerS: 5.69e-11, sourceKey: 'afolabi-2014' },
  { kernels: 'popcorn', coolM2PerS: 4.44e-11, warmM2PerS: 5.79e-11, sourceKey: 'afolabi-2014' },
  { kernels: 'flour-yellow', coolM2PerS: 5.27e-11, warmM2PerS: 7.09e-11, sourceKey: 'afolabi-2014' },
  { kernels: 'flour-white', coolM2PerS: 6.74e-11, warmM2PerS: 8.88e-11, sourceKey: 'afolabi-2014' },
  { kernels: 'hybrid-obatanpa', coolM2PerS: 7.31e-12, warmM2PerS: 9.33e-12, sourceKey: 'addo-2009' },
  { kernels: 'hybrid-mamaba', coolM2PerS: 6.3e-12, warmM2PerS: 8.25e-12, sourceKey: 'addo-2009' },
]

/**
 * Share of its whole uptake that a kernel has taken, over all published sets. [fraction]
 *
 * A sphere, surface wet at once; constants between 30 and 60 °C on a straight line of log D over 1/T.
 *
 * @param hours [h] Valid: 0 to 48. @param temperatureC [°C] Valid: 30 to 60: nothing is stretched past it.
 * @param radiusM [m] Valid: 0.001 to 0.02.
 * @throws {ValidRangeError} outside those ranges.
 * @source afolabi-2014; addo-2009
 */
export function soakedFractionRange(
  hours: number,
  temperatureC: number,
  radiusM: number,
): { readonly low: number; readonly high: number } {
  requireInRange('hours', hours, { min: 0, max: 48, unit: 'h', source: 'project-rule' })
  requireInRange('temperatureC', temperatureC, { min: COOL_C, max: WARM_C, unit: '°C', source: 'afolabi-2014' })
  requireInRange('radiusM', radiusM, { min: 0.001, max: 0.02, unit: 'm', source: 'project-rule' })
  const inverse = (t: number) => 1 / (t + 273.15)
  const at = (inverse(COOL_C) - inverse(temperatureC)) / (inverse(COOL_C) - inverse(WARM_C))
  const taken = UPTAKE_SETS.map(({ coolM2PerS, warmM2PerS }) => {
    const D = coolM2PerS * (warmM2PerS / coolM2PerS) ** at
    return leftInfiniteBathFraction(Math.min(100, (D * hours * 3600) / radiusM ** 2))
  })
  return { low: Math.min(...taken), high: Math.max(...taken) }
}

/** Corn starch in plenty of water. [°C]  from memory, not re-read; alkali raises all three */
export const GELATINISATION_C = {
  onset: { low: 62, high: 67 },
  peak: { low: 68, high: 72 },
  end: { low: 75, high: 80 },
} as const

export type StarchState = 'below' | 'beginning' | 'under-way' | 'past'

/**
 * Where starch stands at a temperature: below about 70 °C granules do not fully open, and calcium hydroxide frees no hull.
 *
 * @param temperatureC [°C] Valid: 0 to 100.
 * @throws {ValidRangeError} outside that range.
 * @source ratnayake-jackson-2006
 */
export function starchState(temperatureC: number): StarchState {
  requireInRange('temperatureC', temperatureC, { min: 0, max: 100, unit: '°C', source: 'project-rule' })
  if (temperatureC < GELATINISATION_C.onset.low) return 'below'
  if (temperatureC < GELATINISATION_C.peak.low) return 'beginning'
  return temperatureC < GELATINISATION_C.end.high ? 'under-way' : 'past'
}
