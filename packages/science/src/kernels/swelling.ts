/**
 * Volume of hominy from a volume of dry kernels: a range, since corns differ and kernels go on swelling in the jar.
 * The keeper's own record should replace it.
 */
import { requireInRange } from '../errors.ts'
import { requireAmount } from './bulk.ts'

/** Volumes of hominy from one volume of dry kernels. Same unit on both sides. */
export interface Swelling {
  readonly low: number
  readonly middle: number
  readonly high: number
}

/**
 * low: 9 to 20 in print (hominy-yield-statements). middle: 1 liquid quart to 3 quart jars, liquid counted, as printed
 * (so-easy-to-preserve-1999). high: four of an easy-hulling large flint (common practice, no source).
 */
export const HOMINY_SWELLING: Swelling = { low: 2.2, middle: 3, high: 4 }

export interface VolumeRange {
  readonly lowL: number
  readonly middleL: number
  readonly highL: number
}

/**
 * Volume of hominy to expect, as a range. [L]
 *
 * 6 liquid quarts dry: 13.2 to 24 liquid quarts, 18 in the middle.
 *
 * @param dryVolumeL dry shelled kernels. [L] Valid: 0 to 1e6.
 * @param swelling printed range unless the keeper has an own one. Valid: 1 <= low <= middle <= high <= 8.
 * @throws {ValidRangeError} outside those ranges.
 * @source hominy-yield-statements; the high end is common practice, no source
 */
export function hominyVolumeRangeL(dryVolumeL: number, swelling: Swelling = HOMINY_SWELLING): VolumeRange {
  requireAmount('dryVolumeL', dryVolumeL, 'L')
  const { low, middle, high } = swelling
  const range = (min: number, max: number) => ({ min, max, unit: 'volumes per dry volume', source: 'project-rule' })
  requireInRange('low', low, range(1, 8))
  requireInRange('middle', middle, range(low, 8))
  requireInRange('high', high, range(middle, 8))
  return { lowL: dryVolumeL * low, middleL: dryVolumeL * middle, highL: dryVolumeL * high }
}
