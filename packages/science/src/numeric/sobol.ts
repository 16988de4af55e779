/**
 * Sobol's points: they fill a box far more evenly than random ones, so a study needs fewer of them, and the same study gives
 * the same answer. Not shuffled.
 */
import { requireInRange, type ValidRange } from '../errors.ts'

/** Degree, coefficients and first numbers of the primitive polynomial of each further dimension (new-joe-kuo-6). */
const POLYNOMIALS = [
  { s: 1, a: 0, m: [1] },
  { s: 2, a: 1, m: [1, 3] },
  { s: 3, a: 1, m: [1, 3, 1] },
  { s: 3, a: 2, m: [1, 1, 1] },
  { s: 4, a: 1, m: [1, 1, 3, 3] },
  { s: 4, a: 4, m: [1, 3, 5, 13] },
  { s: 5, a: 2, m: [1, 1, 5, 5, 17] },
  { s: 5, a: 4, m: [1, 1, 5, 5, 5] },
  { s: 5, a: 7, m: [1, 1, 7, 11, 19] },
] as const

const BITS = 30
const DIMENSIONS: ValidRange = { min: 1, max: POLYNOMIALS.length + 1, unit: 'dimensions', source: 'joe-kuo-2008' }

/** A generator of Sobol's points, 1 to 10 dimensions, each coordinate from 0 up to but not 1. The first is the origin. */
export function createSobol(dimensions: number): () => Float64Array {
  requireInRange('dimensions', dimensions, DIMENSIONS)
  const directions = Array.from({ length: dimensions }, (_, d) => directionNumbers(d))
  const state = new Int32Array(dimensions)
  const point = new Float64Array(dimensions)
  let index = 0
  return () => {
    if (index > 0) {
      // Gray code: only the bit that changes is turned.
      const bit = 31 - Math.clz32(index & -index)
      for (let d = 0; d < dimensions; d += 1) state[d] = state[d]! ^ directions[d]![bit]!
    }
    index += 1
    for (let d = 0; d < dimensions; d += 1) point[d] = state[d]! / 2 ** BITS
    return point
  }
}

function directionNumbers(dimension: number): Int32Array {
  const v = new Int32Array(BITS)
  const polynomial = POLYNOMIALS[dimension - 1]
  for (let k = 0; k < BITS; k += 1) {
    if (!polynomial) v[k] = 1 << (BITS - 1 - k)
    else if (k < polynomial.s) v[k] = polynomial.m[k]! << (BITS - 1 - k)
    else {
      const { s, a } = polynomial
      let next = v[k - s]! ^ (v[k - s]! >> s)
      for (let j = 1; j < s; j += 1) if ((a >> (s - 1 - j)) & 1) next ^= v[k - j]!
      v[k] = next
    }
  }
  return v
}
