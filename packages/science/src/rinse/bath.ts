/**
 * Kernels through a sequence of rinses, boils and stands: what alkali stays in the kernel, what clings, what was poured
 * away. Nothing is eaten up by the kernel, so real kernels end lower than this. Finite volumes in a sphere, exact in time:
 * each kind of bath is one matrix, worked out once.
 */
import { requireInRange } from '../errors.ts'

/** Shells of a kernel, thinner toward the surface, where it matters. */
const SHELLS = 28

export interface Kernels {
  /** Radius of a sphere as large as a kernel. [m] Valid: 0.001 to 0.02. */
  readonly radiusM: number
  /** Water inside the kernels. [L] Valid: 0.001 to 1e4. */
  readonly kernelWaterL: number
  /** Liquor that clings after draining. [L] Valid: 0 to 1e4. */
  readonly clingingL: number
}

export interface Bath {
  /** Fresh water poured on. [L] Valid: 0.001 to 1e5. */
  readonly freshL: number
  /** [min] Valid: 0.01 to 10 080. */
  readonly minutes: number
  /** Diffusion in the kernel at the temperature of the bath. [m2/s] Valid: 1e-12 to 1e-8. */
  readonly diffusivityM2PerS: number
}

/** Alkali, as shares of the strength the cook left in kernel and liquor. */
export interface RinseState {
  /** By shell from the middle out, strength of the water in it. [share of the first] */
  readonly shells: Float64Array
  /** Strength of the liquor that clings. [share of the first] */
  readonly clinging: number
}

export interface AfterBath {
  readonly state: RinseState
  /** Mean in the kernel. [share of the first] */
  readonly kernelMean: number
  /** Bath at its end, as it is poured away. [share of the first] */
  readonly bath: number
}

/** Outer radii of the shells, of 1. */
const EDGES = Array.from({ length: SHELLS + 1 }, (_, i) => 1 - (1 - i / SHELLS) ** 1.6)
/** Share of the sphere's volume in each shell. */
const VOLUMES = Float64Array.from({ length: SHELLS }, (_, i) => EDGES[i + 1]! ** 3 - EDGES[i]! ** 3)
/** Middle of each shell by radius. */
const MIDDLES = Array.from({ length: SHELLS }, (_, i) => (EDGES[i]! + EDGES[i + 1]!) / 2)

/** Mean strength in the kernel. [share of the first]  @source none: mass balance */
export function kernelMean({ shells }: RinseState): number {
  let sum = 0
  for (let i = 0; i < SHELLS; i++) sum += VOLUMES[i]! * shells[i]!
  return sum
}

/** Kernels as the cook leaves them: the same strength inside and clinging.  @source none: where counting begins */
export function drainedKernels(): RinseState {
  return { shells: new Float64Array(SHELLS).fill(1), clinging: 1 }
}

export interface BathStep {
  readonly apply: (state: RinseState) => AfterBath
  /** The same mean in the kernel, at a thirtieth of the work. [share of the first] */
  readonly kernelMeanAfter: (state: RinseState) => number
}

/**
 * One kind of bath as a step that can be taken again and again.
 *
 * Cold rinse of 5 min, D 3e-10 m2/s, kernel water 1, clinging 0.2, fresh 3: kernel mean 0.822, bath 0.118.
 *
 * @throws {ValidRangeError} outside the ranges named at Kernels and Bath.
 * @source crank-1975 (diffusion in a sphere, limited bath)
 */
export function bathStep({ radiusM, kernelWaterL, clingingL }: Kernels, bath: Bath): BathStep {
  const rule = (min: number, max: number, unit: string) => ({ min, max, unit, source: 'project-rule' })
  requireInRange('radiusM', radiusM, rule(0.001, 0.02, 'm'))
  requireInRange('kernelWaterL', kernelWaterL, rule(0.001, 1e4, 'L'))
  requireInRange('clingingL', clingingL, rule(0, 1e4, 'L'))
  requireInRange('freshL', bath.freshL, rule(0.001, 1e5, 'L'))
  requireInRange('minutes', bath.minutes, rule(0.01, 10_080, 'min'))
  requireInRange('diffusivityM2PerS', bath.diffusivityM2PerS, rule(1e-12, 1e-8, 'm2/s'))
  const bathL = bath.freshL + clingingL
  const propagator = exponential(
    rates(bathL / kernelWaterL),
    (bath.diffusivityM2PerS * bath.minutes * 60) / radiusM ** 2,
  )
  const size = SHELLS + 1
  const meanRow = new Float64Array(size)
  for (let row = 0; row < SHELLS; row++) {
    for (let column = 0; column < size; column++) meanRow[column]! += VOLUMES[row]! * propagator[row * size + column]!
  }
  return {
    kernelMeanAfter: ({ shells, clinging }) => {
      let sum = (meanRow[SHELLS]! * clinging * clingingL) / bathL
      for (let column = 0; column < SHELLS; column++) sum += meanRow[column]! * shells[column]!
      return sum
    },
    apply: ({ shells, clinging }) => {
      const before = new Float64Array(size)
      before.set(shells)
      before[SHELLS] = (clinging * clingingL) / bathL
      const after = new Float64Array(size)
      for (let row = 0; row < size; row++) {
        let sum = 0
        const at = row * size
        for (let column = 0; column < size; column++) sum += propagator[at + column]! * before[column]!
        after[row] = sum
      }
      const strength = after[SHELLS]!
      const state = { shells: after.slice(0, SHELLS), clinging: strength }
      return { state, kernelMean: kernelMean(state), bath: strength }
    },
  }
}

/** Rates of exchange between shells and bath for a sphere of radius 1 and D 1: d c / d Fo = rates c. */
function rates(bathPerKernel: number): Float64Array {
  const size = SHELLS + 1
  const matrix = new Float64Array(size * size)
  const exchange = (a: number, b: number, volumeA: number, volumeB: number, conductance: number) => {
    matrix[a * size + a]! -= conductance / volumeA
    matrix[a * size + b]! += conductance / volumeA
    matrix[b * size + b]! -= conductance / volumeB
    matrix[b * size + a]! += conductance / volumeB
  }
  // Area over distance, with the sphere's volume 4/3 pi as the unit of volume.
  for (let i = 0; i + 1 < SHELLS; i++) {
    const conductance = (3 * EDGES[i + 1]! ** 2) / (MIDDLES[i + 1]! - MIDDLES[i]!)
    exchange(i, i + 1, VOLUMES[i]!, VOLUMES[i + 1]!, conductance)
  }
  exchange(SHELLS - 1, SHELLS, VOLUMES[SHELLS - 1]!, bathPerKernel, 3 / (1 - MIDDLES[SHELLS - 1]!))
  return matrix
}

/** exp(matrix * by), by scaling, a series and squaring; bounded by the size of the rates. */
function exponential(matrix: Float64Array, by: number): Float64Array {
  const size = SHELLS + 1
  let norm = 0
  for (let row = 0; row < size; row++) {
    let sum = 0
    for (let column = 0; column < size; column++) sum += Math.abs(matrix[row * size + column]! * by)
    norm = Math.max(norm, sum)
  }
  const halvings = Math.max(0, Math.ceil(Math.log2(norm / 0.25)))
  const scale = by / 2 ** halvings
  const small = matrix.map((rate) => rate * scale)
  // Horner: I + X (I + X/2 (I + X/3 ...)); at a norm of 1/4 ten terms are exact to 1e-13.
  let result = identity(size)
  for (let n = 10; n >= 1; n--) {
    result = multiply(small, result, size)
    for (let i = 0; i < result.length; i++) result[i]! /= n
    for (let i = 0; i < size; i++) result[i * size + i]! += 1
  }
  for (let step = 0; step < halvings; step++) result = multiply(result, result, size)
  return result
}

function identity(size: number): Float64Array {
  const matrix = new Float64Array(size * size)
  for (let i = 0; i < size; i++) matrix[i * size + i] = 1
  return matrix
}

function multiply(a: Float64Array, b: Float64Array, size: number): Float64Array {
  const product = new Float64Array(size * size)
  for (let row = 0; row < size; row++) {
    for (let k = 0; k < size; k++) {
      const factor = a[row * size + k]!
      if (factor === 0) continue
      for (let column = 0; column < size; column++) product[row * size + column]! += factor * b[k * size + column]!
    }
  }
  return product
}
