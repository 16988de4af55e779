/** The beta distribution: what a count of sprouts leaves open about the share that would sprout. */
import { requireInRange } from '../errors.ts'
import { lnBeta } from './gamma.ts'

const SOURCE = 'dlmf-8-17'

export interface BetaShape {
  /** [1] Valid: 0.001 to 100 000. */
  readonly a: number
  /** [1] Valid: 0.001 to 100 000. */
  readonly b: number
}

function requireShape({ a, b }: BetaShape): void {
  requireInRange('a', a, { min: 0.001, max: 100_000, unit: '', source: SOURCE })
  requireInRange('b', b, { min: 0.001, max: 100_000, unit: '', source: SOURCE })
}

/**
 * Share of a beta distribution below `x`: the regularised incomplete beta function I_x(a, b). [fraction]
 *
 * @param x [fraction] Valid: 0 to 1.
 * @throws {ValidRangeError} outside those ranges; {RangeError} when the continued fraction does not settle.
 * @source dlmf-8-17 eq. 8.17.22, 8.17.4
 */
export function betaCdfFraction(x: number, shape: BetaShape): number {
  requireShape(shape)
  requireInRange('x', x, { min: 0, max: 1, unit: 'fraction', source: SOURCE })
  const { a, b } = shape
  if (x === 0) return 0
  if (x === 1) return 1
  // Each side of the mean settles fast by itself.
  return x < (a + 1) / (a + b + 2) ? front(x, a, b) * fraction(x, a, b) : 1 - front(1 - x, b, a) * fraction(1 - x, b, a)
}

function front(x: number, a: number, b: number): number {
  return Math.exp(a * Math.log(x) + b * Math.log1p(-x) - lnBeta(a, b)) / a
}

/** The continued fraction of eq. 8.17.22, by Lentz's method. */
function fraction(x: number, a: number, b: number): number {
  const tiny = 1e-300
  let c = 1
  let d = 1 / keepOff(1 - ((a + b) * x) / (a + 1), tiny)
  let value = d
  for (let m = 1; m <= 5000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / keepOff(1 + even * d, tiny)
    c = keepOff(1 + even / c, tiny)
    value *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / keepOff(1 + odd * d, tiny)
    c = keepOff(1 + odd / c, tiny)
    const step = d * c
    value *= step
    if (Math.abs(step - 1) < 1e-15) return value
  }
  throw new RangeError(`the incomplete beta function did not settle at x = ${x}, a = ${a}, b = ${b}`)
}

function keepOff(value: number, tiny: number): number {
  return Math.abs(value) < tiny ? tiny : value
}

/**
 * The value below which a share of a beta distribution lies. [fraction]
 *
 * @param shareFraction [fraction] Valid: 0 to 1.
 * @throws {ValidRangeError} outside those ranges.
 * @source dlmf-8-17 inverted by halving, then Newton steps that stay inside the halved span
 */
export function betaQuantile(shareFraction: number, shape: BetaShape): number {
  requireShape(shape)
  requireInRange('shareFraction', shareFraction, { min: 0, max: 1, unit: 'fraction', source: SOURCE })
  if (shareFraction === 0 || shareFraction === 1) return shareFraction
  const { a, b } = shape
  let low = 0
  let high = 1
  let x = a / (a + b)
  for (let step = 0; step < 200 && high - low > 1e-16 * high; step++) {
    const over = betaCdfFraction(x, shape) - shareFraction
    if (over > 0) high = x
    else low = x
    const slope = Math.exp((a - 1) * Math.log(x) + (b - 1) * Math.log1p(-x) - lnBeta(a, b))
    const newton = x - over / slope
    const next = newton > low && newton < high ? newton : (low + high) / 2
    if (next === x || Math.abs(next - x) < 1e-16) return next
    x = next
  }
  return x
}
