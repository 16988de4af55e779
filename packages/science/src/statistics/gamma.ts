/** Logarithm of the gamma function, for the counts and halves that binomial work needs. */

// Coefficients B_2k / (2k (2k-1)) of Stirling's series.
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156]

/** ln of the gamma function of `x`. [1]  Valid: x above 0.  @source abramowitz-stegun-1964 6.1.41 with 6.1.15 */
export function lnGamma(x: number): number {
  let shifted = x
  let product = 1
  while (shifted < 12) {
    product *= shifted
    shifted += 1
  }
  return stirling(shifted) - Math.log(product)
}

function stirling(x: number): number {
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + correction(x)
}

function correction(x: number): number {
  let power = 1 / x
  let sum = 0
  for (const coefficient of STIRLING) {
    sum += coefficient * power
    power /= x * x
  }
  return sum
}

/** ln of the beta function. [1]  Valid: a, b above 0.  @source abramowitz-stegun-1964 6.2.2 */
export function lnBeta(a: number, b: number): number {
  return lnGamma(a) + lnGamma(b) - lnGamma(a + b)
}
