/** Water uptake of kernels as a curve of two constants, fitted to one's own weighings. Explains; predicts no other corn. */
import { requireInRange } from '../errors.ts'

export interface PelegFit {
  /** Inverse of the first rate of uptake. [h/g] */
  readonly k1: number
  /** Inverse of the whole uptake. [1/g] */
  readonly k2: number
  /** Weight it tends to. [g] */
  readonly plateauG: number
  /** Root mean square of what the curve misses. [g] */
  readonly rmsG: number
}

export interface Weighing {
  readonly hours: number
  readonly massG: number
}

/**
 * Weight of soaked kernels after a time: M0 + t / (k1 + k2 t). [g]
 *
 * @param hours [h] Valid: 0 to 1000.
 * @throws {ValidRangeError} outside that range.
 * @source peleg-1988
 */
export function pelegMassG(startG: number, { k1, k2 }: Pick<PelegFit, 'k1' | 'k2'>, hours: number): number {
  requireInRange('hours', hours, { min: 0, max: 1000, unit: 'h', source: 'peleg-1988' })
  return hours === 0 ? startG : startG + hours / (k1 + k2 * hours)
}

/**
 * The two constants by least squares on the weights themselves. [h/g, 1/g, g]
 *
 * Newton on k1 and k2 from a straight-line fit, at most 100 steps; the start weight is taken as weighed.
 *
 * @param weighings the first at 0 h. Valid: 3 to 500, at least two of them later and heavier than the start.
 * @returns null when the weights do not rise to a plateau.
 * @throws {ValidRangeError} when there are fewer.
 * @source peleg-1988
 */
export function fitPeleg(weighings: readonly Weighing[]): PelegFit | null {
  requireInRange('weighings', weighings.length, { min: 3, max: 500, unit: 'weighings', source: 'project-rule' })
  const startG = weighings.find(({ hours }) => hours === 0)?.massG ?? weighings[0]!.massG
  const later = weighings.filter(({ hours, massG }) => hours > 0 && massG > startG)
  requireInRange('laterWeighings', later.length, { min: 2, max: 500, unit: 'weighings', source: 'project-rule' })
  let [k1, k2] = straightLine(later.map(({ hours, massG }) => [hours, hours / (massG - startG)] as const))
  for (let step = 0; step < 100; step++) {
    let a11 = 0
    let a12 = 0
    let a22 = 0
    let b1 = 0
    let b2 = 0
    for (const { hours, massG } of later) {
      const under = k1 + k2 * hours
      const miss = massG - startG - hours / under
      const d1 = -hours / under ** 2
      const d2 = -(hours ** 2) / under ** 2
      a11 += d1 * d1
      a12 += d1 * d2
      a22 += d2 * d2
      b1 += d1 * miss
      b2 += d2 * miss
    }
    const det = a11 * a22 - a12 * a12
    if (!(Math.abs(det) > 0)) return null
    const move1 = (b1 * a22 - b2 * a12) / det
    const move2 = (a11 * b2 - a12 * b1) / det
    k1 += move1
    k2 += move2
    if (Math.abs(move1) < 1e-12 * Math.abs(k1) + 1e-15 && Math.abs(move2) < 1e-12 * Math.abs(k2) + 1e-15) break
  }
  if (!(k1 > 0 && k2 > 0)) return null
  // The start weight is met by the form itself, so only the later weighings can miss.
  const misses = later.map(({ hours, massG }) => massG - pelegMassG(startG, { k1, k2 }, hours))
  const rmsG = Math.sqrt(misses.reduce((sum, miss) => sum + miss * miss, 0) / misses.length)
  return { k1, k2, plateauG: startG + 1 / k2, rmsG }
}

/** Least-squares line: intercept and slope. */
function straightLine(points: readonly (readonly [number, number])[]): [number, number] {
  const n = points.length
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / n
  const meanY = points.reduce((sum, [, y]) => sum + y, 0) / n
  const sxx = points.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0)
  const sxy = points.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0)
  const slope = sxx > 0 ? sxy / sxx : 0
  return [meanY - slope * meanX, slope]
}
