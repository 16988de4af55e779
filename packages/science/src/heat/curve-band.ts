/** The middle nine tenths of many curves at each of their readings, counted as they come: none of them is kept. */
import { requireInRange } from '../errors.ts'

export interface CurveBand {
  /** A twentieth of the curves lie below, and a twentieth above, to a few hundredths of a degree. [°C] */
  readonly lowC: Float64Array
  readonly highC: Float64Array
}

const LOWEST_C = -20
const BIN_C = 0.1
const BINS = 1700 // to 150 °C

/**
 * Counts curves into bins of 0.1 °C at each of `count` readings. Readings a shorter curve lacks are not counted there.
 *
 * @param count readings of the band. [count] Valid: 1 to 100 000.
 * @param every of a curve's own readings, only each so many is looked at. [count]
 * @throws {ValidRangeError} for a count out of range.
 * @source none: counting
 */
export function createCurveBand(
  count: number,
  every = 1,
): {
  /** @param temperaturesC Valid: -20 to 150; beyond, counted at the end. [°C] */
  readonly add: (temperaturesC: Float64Array) => void
  readonly band: () => CurveBand
} {
  requireInRange('count', count, { min: 1, max: 100_000, unit: 'readings', source: 'project-rule' })
  const bins = new Uint32Array(count * BINS)
  const seen = new Uint32Array(count)
  return {
    add: (temperaturesC) => {
      const last = Math.min(count, Math.ceil(temperaturesC.length / every))
      for (let i = 0; i < last; i += 1) {
        const bin = Math.min(BINS - 1, Math.max(0, Math.floor((temperaturesC[i * every]! - LOWEST_C) / BIN_C)))
        bins[i * BINS + bin]! += 1
        seen[i]! += 1
      }
    },
    band: () => {
      const at = (i: number, share: number) => {
        const wanted = share * seen[i]!
        let passed = 0
        let bin = 0
        while (bin < BINS - 1 && passed + bins[i * BINS + bin]! < wanted) {
          passed += bins[i * BINS + bin]!
          bin += 1
        }
        // Evenly through the bin.
        return LOWEST_C + (bin + (wanted - passed) / Math.max(1, bins[i * BINS + bin]!)) * BIN_C
      }
      return {
        lowC: Float64Array.from({ length: count }, (_, i) => at(i, 0.05)),
        highC: Float64Array.from({ length: count }, (_, i) => at(i, 0.95)),
      }
    },
  }
}
