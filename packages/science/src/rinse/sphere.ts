/**
 * Diffusion out of a sphere, in closed form: into water without end, and into a limited bath. The check for bath.ts, and
 * the explanation of why quick rinses leave the inside alone.
 */
import { requireInRange } from '../errors.ts'

const FOURIER = { min: 0, max: 100, unit: 'Dt/a2', source: 'crank-1975' }
const TERMS = 400

/**
 * Share that has left a sphere kept in ever fresh water. [fraction]
 *
 * Fo = D t / a^2. Fo 0.1: 0.7705.
 *
 * @param fourier [1] Valid: 0 to 100.
 * @throws {ValidRangeError} outside that range.
 * @source crank-1975 ch. 6, sphere with constant surface concentration
 */
export function leftInfiniteBathFraction(fourier: number): number {
  requireInRange('fourier', fourier, FOURIER)
  // The series needs ever more terms near zero, where the closed form for short times is exact to 1e-6.
  if (fourier < 0.001) return 6 * Math.sqrt(fourier / Math.PI) - 3 * fourier
  let sum = 0
  for (let n = 1; n <= TERMS; n++) {
    const term = Math.exp(-n * n * Math.PI ** 2 * fourier) / (n * n)
    sum += term
    if (term < 1e-17) break
  }
  return 1 - (6 / Math.PI ** 2) * sum
}

/**
 * The first non-zero roots of tan q = 3 q / (3 + alpha q^2), one in each (n pi, n pi + pi/2). [rad]
 *
 * alpha 3: 3.4056, 6.4338, 9.5282.
 *
 * @param alpha bath volume over that of the kernel's water. [1] Valid: 0.01 to 1e4.
 * @throws {ValidRangeError} outside that range.
 * @source crank-1975 eq. 6.30
 */
export function limitedBathRoots(alpha: number, count: number): readonly number[] {
  requireAlpha(alpha)
  return Array.from({ length: count }, (_, index) => {
    const n = index + 1
    // With q = n pi + u, tan u rises from 0 without bound and the right side stays finite: one crossing.
    let low = 0
    let high = Math.PI / 2
    for (let step = 0; step < 60; step++) {
      const middle = (low + high) / 2
      const q = n * Math.PI + middle
      if (Math.tan(middle) < (3 * q) / (3 + alpha * q * q)) low = middle
      else high = middle
    }
    return n * Math.PI + (low + high) / 2
  })
}

/**
 * Share of the way to equilibrium that a sphere has come in a limited bath. [fraction]
 *
 * At equilibrium 1/(1 + alpha) stays in the kernel. alpha 3, Fo 0.01: 0.3795.
 *
 * @param fourier [1] Valid: 0.001 to 100.
 * @throws {ValidRangeError} outside that range or that of `limitedBathRoots`.
 * @source crank-1975 eq. 6.30
 */
export function toEquilibriumFraction(fourier: number, alpha: number): number {
  requireInRange('fourier', fourier, { ...FOURIER, min: 0.001 })
  let sum = 0
  for (const q of limitedBathRoots(alpha, 60)) {
    sum += (6 * alpha * (alpha + 1) * Math.exp(-q * q * fourier)) / (9 + 9 * alpha + q * q * alpha * alpha)
  }
  return 1 - sum
}

/**
 * Strength of the liquor that clings, after draining and filling up again and again. [share of the first]
 *
 * 0.2 clinging and 3 fresh: 0.0625, 0.0039, 0.00024 after one, two, three.
 *
 * @param clingingL what stays after draining. @param freshL fresh water each time. [L] Valid: above 0 to 1e4.
 * @throws {ValidRangeError} outside those ranges.
 * @source none: mass balance of a stirred bath
 */
export function dilutedFraction(clingingL: number, freshL: number, timesCount: number): number {
  requireInRange('clingingL', clingingL, { min: 1e-6, max: 1e4, unit: 'L', source: 'project-rule' })
  requireInRange('freshL', freshL, { min: 1e-6, max: 1e4, unit: 'L', source: 'project-rule' })
  requireInRange('timesCount', timesCount, { min: 0, max: 1000, unit: 'count', source: 'project-rule' })
  return (clingingL / (clingingL + freshL)) ** timesCount
}

function requireAlpha(alpha: number): void {
  requireInRange('alpha', alpha, { min: 0.01, max: 1e4, unit: 'volumes', source: 'crank-1975' })
}
