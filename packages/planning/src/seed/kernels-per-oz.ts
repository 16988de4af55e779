/** Kernels in an ounce, from a hundred of them on the scale. Leaves out how many the lot holds. */
import { convert } from '@crib/science'

const WEIGHED_COUNT = 100

/**
 * Kernels in an ounce where 100 kernels weigh so much. [kernels/oz]  Above 0 kg; throws RangeError otherwise.
 *
 * 100 kernels of 25.77 g: 110.
 */
export function kernelsPerOzOfHundred(hundredKernelsKg: number): number {
  if (!(hundredKernelsKg > 0 && Number.isFinite(hundredKernelsKg))) {
    throw new RangeError(`hundredKernelsKg is ${hundredKernelsKg}; a weight above 0 kg is needed`)
  }
  return WEIGHED_COUNT / convert(hundredKernelsKg, 'Kg', 'Oz')
}

/** Weight of a thousand kernels, where so many make an ounce. [g]  110 in an ounce: 257.7 g.  Above 0; throws RangeError otherwise. */
export function gPerThousandOfKernelsPerOz(kernelsPerOz: number): number {
  if (!(kernelsPerOz > 0 && Number.isFinite(kernelsPerOz))) {
    throw new RangeError(`kernelsPerOz is ${kernelsPerOz}; a number of kernels above 0 is needed`)
  }
  return convert(1000 / kernelsPerOz, 'Oz', 'G')
}
