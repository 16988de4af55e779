/**
 * The standard normal distribution: share below a deviate, and the deviate below which a share lies.
 * In seed work that deviate is the "probit" without the five that older papers add.
 */
import { requireInRange } from '../errors.ts'

const SOURCE = 'abramowitz-stegun-1964'
const FAR = 38 // beyond it the tail is below the smallest double

/** Density of the standard normal at `z`. [per deviate]  @source abramowitz-stegun-1964 26.2.1 */
function densityAt(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
}

/**
 * Share of the standard normal below `z`. [fraction]  At 1.96: 0.975.
 *
 * @param z deviate. Valid: any finite number. Relative error below 1e-13 as far as z = -30.
 * @throws {ValidRangeError} when z is not finite.
 * @source abramowitz-stegun-1964 26.2.11 near the middle, 26.2.14 in the tails
 */
export function normalCdfFraction(z: number): number {
  requireInRange('z', z, { min: -1e9, max: 1e9, unit: 'standard deviations', source: SOURCE })
  return z > 0 ? 1 - lowerFraction(-z) : lowerFraction(z)
}

function lowerFraction(z: number): number {
  const x = -z
  if (x > FAR) return 0
  if (x > 2.5) {
    // Continued fraction 26.2.14, from the far end: 120 steps settle it from 2.5 on.
    let below = x
    for (let step = 120; step >= 1; step--) below = x + step / below
    return densityAt(x) / below
  }
  let term = x
  let sum = x
  for (let odd = 3; term > sum * 1e-17 && odd < 200; odd += 2) {
    term *= (x * x) / odd
    sum += term
  }
  return 0.5 - densityAt(x) * sum
}

/**
 * The deviate below which a share of the standard normal lies. [standard deviations]  Of 0.975: 1.95996.
 *
 * @param shareFraction [fraction] Valid: 1e-300 to below 1. A share of 0 or 1 has no finite deviate.
 * @throws {ValidRangeError} outside that range.
 * @source abramowitz-stegun-1964 26.2.23 for the first guess, then Halley steps on 26.2.2
 */
export function normalQuantile(shareFraction: number): number {
  requireInRange('shareFraction', shareFraction, { min: 1e-300, max: 1 - 2 ** -53, unit: 'fraction', source: SOURCE })
  const isUpper = shareFraction > 0.5
  const tail = isUpper ? 1 - shareFraction : shareFraction
  const t = Math.sqrt(-2 * Math.log(tail))
  let z = -(
    t -
    (2.515517 + 0.802853 * t + 0.010328 * t ** 2) / (1 + 1.432788 * t + 0.189269 * t ** 2 + 0.001308 * t ** 3)
  )
  for (let step = 0; step < 4; step++) {
    const newton = (normalCdfFraction(z) - tail) / densityAt(z)
    z -= newton / (1 + (z * newton) / 2)
  }
  return isUpper ? -z : z
}
