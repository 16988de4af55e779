/**
 * Bessel functions of the first kind, orders 0 and 1, and the zeros of J0: what a cylinder's heat series is made of.
 * By Bessel's integral and the trapezoid rule, which converges faster than any power for a periodic integrand.
 */
import { requireInRange, type ValidRange } from '../errors.ts'

/** The integrals below are taken with a fixed number of points, enough for this range. */
const ARGUMENT: ValidRange = { min: 0, max: 1000, unit: '', source: 'nist-dlmf-10' }
const ZERO_COUNT: ValidRange = { min: 1, max: 300, unit: 'zeros', source: 'nist-dlmf-10' }

/** J0(x) and J1(x).  Valid: 0 to 1000; absolute error below 1e-13. */
export function besselJ(x: number): { readonly J0: number; readonly J1: number } {
  requireInRange('x', x, ARGUMENT)
  const points = Math.ceil(x / 2 + 4 * Math.cbrt(x)) + 24 // the error is of the size of J of order 2 points
  let J0 = 0
  let J1 = 0
  for (let i = 0; i < points; i += 1) {
    const theta = ((i + 0.5) * Math.PI) / points
    const phase = x * Math.sin(theta)
    J0 += Math.cos(phase) // 10.9.1
    J1 += Math.cos(theta - phase) // 10.9.2 with n = 1
  }
  return { J0: J0 / points, J1: J1 / points }
}

/** Zeros found so far; they never change. */
const found: number[] = []

/** The first `count` zeros of J0: 2.404826, 5.520078, 8.653728 and so on.  Valid: 1 to 300. */
export function zerosOfJ0(count: number): readonly number[] {
  requireInRange('count', count, ZERO_COUNT)
  for (let index = found.length; index < count; index += 1) {
    const beta = (index + 0.75) * Math.PI
    let b = beta + 1 / (8 * beta) // McMahon, 10.21.19
    for (let step = 0; step < 4; step += 1) {
      const { J0, J1 } = besselJ(b)
      b += J0 / J1 // J0' = -J1
    }
    found.push(b)
  }
  return found.slice(0, count)
}

/** I0(x) exp(-x), by the power series: every term is positive, so no digits are lost.  Valid: 0 to 1000. */
export function besselI0Scaled(x: number): number {
  requireInRange('x', x, ARGUMENT)
  let term = Math.exp(-x)
  if (term < 1e-280) return besselI0ScaledFar(x)
  let sum = term
  for (let k = 1; term > sum * 1e-17 || k < x / 2; k += 1) {
    term *= (x / (2 * k)) ** 2
    sum += term
  }
  return sum
}

/** The large-argument form, 10.40.1; used where exp(-x) would be lost. */
function besselI0ScaledFar(x: number): number {
  let term = 1
  let sum = 1
  for (let k = 1; k < 12; k += 1) {
    term *= (2 * k - 1) ** 2 / (8 * k * x)
    sum += term
  }
  return sum / Math.sqrt(2 * Math.PI * x)
}
