/** Chances of counts: so many of so many, when each has one chance, or a chance that is itself not known. */
import { requireInRange, ValidRangeError } from '../errors.ts'
import { lnBeta, lnGamma } from './gamma.ts'

const SOURCE = 'clopper-pearson-1934'

/**
 * Chance that at least `k` of `n` seeds grow, each with chance `p`: the exact binomial tail. [fraction]
 *
 * Of 26 seeds at 0.85, at least 20 grow with 0.917; of 27, with 0.960.
 *
 * @throws {ValidRangeError} unless n and k are whole numbers from 0 to 100 000 and 0 <= p <= 1.
 * @source clopper-pearson-1934 (the binomial sum)
 */
export function atLeastFraction(k: number, n: number, p: number): number {
  requireWhole('n', n, 0, 100_000)
  requireWhole('k', k, 0, 100_000)
  requireInRange('p', p, { min: 0, max: 1, unit: 'fraction', source: SOURCE })
  if (k <= 0) return 1
  if (k > n) return 0
  if (p === 0) return 0
  if (p === 1) return 1
  // Sum the tail that holds no peak: its terms only shrink, so nothing overflows and nothing cancels.
  return k > n * p ? tailFrom(k, n, p, +1) : 1 - tailFrom(k - 1, n, p, -1)
}

/** Sum of binomial terms from `k` outward, up (+1) or down (-1). */
function tailFrom(k: number, n: number, p: number, step: 1 | -1): number {
  const first = Math.exp(logTerm(k, n, p))
  let term = first
  let sum = first
  for (let at = k; step > 0 ? at < n : at > 0; at += step) {
    term *= step > 0 ? ((n - at) / (at + 1)) * (p / (1 - p)) : (at / (n - at + 1)) * ((1 - p) / p)
    sum += term
    if (term < sum * 1e-17) break
  }
  return sum
}

function logTerm(k: number, n: number, p: number): number {
  let log = k * Math.log(p) + (n - k) * Math.log1p(-p)
  const few = Math.min(k, n - k)
  if (few > 64) return log + lnGamma(n + 1) - lnGamma(k + 1) - lnGamma(n - k + 1)
  for (let i = 1; i <= few; i++) log += Math.log((n - few + i) / i)
  return log
}

/**
 * Chance that at least `k` of `n` grow when the chance of each is itself only known as a beta distribution: what a test
 * with Jeffreys' prior foretells for the next sowing. [fraction]
 *
 * @param shape a = sprouted + 1/2, b = not sprouted + 1/2 after a test.
 * @throws {ValidRangeError} unless n and k are whole numbers from 0 to 20 000.
 * @source johnson-kotz-kemp-1992 (the beta-binomial sum)
 */
export function betaBinomialAtLeastFraction(
  k: number,
  n: number,
  { a, b }: { readonly a: number; readonly b: number },
) {
  requireWhole('n', n, 0, 20_000)
  requireWhole('k', k, 0, 20_000)
  if (k <= 0) return 1
  if (k > n) return 0
  const whole = lnBeta(a, b)
  const term = (i: number) =>
    Math.exp(lnGamma(n + 1) - lnGamma(i + 1) - lnGamma(n - i + 1) + lnBeta(a + i, b + n - i) - whole)
  // The shorter side is summed.
  const [from, to] = n - k < k ? [k, n] : [0, k - 1]
  let sum = 0
  for (let i = from; i <= to; i++) sum += term(i)
  return from === 0 ? 1 - sum : sum
}

/** @throws {ValidRangeError} unless `value` is a whole number from min to max. */
export function requireWhole(argument: string, value: number, min: number, max: number): void {
  requireInRange(argument, value, { min, max, unit: 'count', source: SOURCE })
  if (!Number.isInteger(value))
    throw new ValidRangeError(argument, value, { min, max, unit: 'whole count', source: SOURCE })
}
