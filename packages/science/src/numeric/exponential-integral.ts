/** The exponential integral E1, for the closed form of a heating curve's lethality. */
import { requireInRange, type ValidRange } from '../errors.ts'

const ARGUMENT: ValidRange = { min: 1e-12, max: 700, unit: '', source: 'project-rule' }
const EULER_GAMMA = 0.5772156649015329

/** E1(x) = integral of exp(-t)/t from x on.  Valid: 1e-12 to 700; relative error below 1e-13. */
export function exponentialIntegralE1(x: number): number {
  requireInRange('x', x, ARGUMENT)
  if (x <= 1) {
    // Power series: -gamma - ln x + x - x^2/(2 2!) + ...
    let term = 1
    let sum = 0
    for (let k = 1; k < 40; k += 1) {
      term *= -x / k
      sum -= term / k
    }
    return sum - EULER_GAMMA - Math.log(x)
  }
  // Continued fraction by Lentz's rule, in its even form.
  let b = x + 1
  let c = 1e300
  let d = 1 / b
  let h = d
  for (let i = 1; i < 500; i += 1) {
    const a = -i * i
    b += 2
    d = 1 / (a * d + b)
    c = b + a / c
    const step = c * d
    h *= step
    if (Math.abs(step - 1) < 1e-15) break
  }
  return h * Math.exp(-x)
}
