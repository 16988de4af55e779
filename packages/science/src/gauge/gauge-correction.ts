/**
 * A dial gauge against its bench test, in the gauge's own printed psi.
 * Sign: error = reads - true. A needle that reads HIGH is the dangerous one: the steam is weaker than it says.
 * Leaves out whether a gauge may still be used at all (package guidance).
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { interpolateLine, type LineNames } from '../numeric/interpolate.ts'

export interface GaugePoint {
  /** Pressure of the tester. [psi gauge] */
  readonly truePsi: number
  /** What the needle showed. [psi gauge] */
  readonly readsPsi: number
}

const SOURCE = 'iowa-state-gauge-2024'
const PSI_GAUGE: ValidRange = { min: 0, max: 30, unit: 'psi', source: 'project-rule' }
const TRUE_LINE: LineNames = { argument: 'truePsi', unit: 'psi (pressures tested)', source: SOURCE }
const READS_LINE: LineNames = { argument: 'readsPsi', unit: 'psi (readings tested)', source: SOURCE }

/**
 * How far the needle is off at a true pressure: above 0 it reads high. [psi difference]
 *
 * A straight line between tested points. A gauge that showed 12.5 at a true 11: +1.5.
 *
 * @param test one point or more.
 * @param truePsi [psi gauge] Valid: between the lowest and the highest pressure tested.
 * @throws {ValidRangeError} outside the tested pressures, or for a test that names a pressure twice.
 * @source iowa-state-gauge-2024 for the correction; the straight line between points is a project rule
 */
export function gaugeErrorPsi(test: readonly GaugePoint[], truePsi: number): number {
  const points = byTruePressure(test).map((point) => ({ x: point.truePsi, y: point.readsPsi - point.truePsi }))
  return interpolateLine(points, truePsi, TRUE_LINE)
}

/**
 * What the needle must show, at least, for a true pressure. [psi gauge]
 *
 * True 11 on a gauge that reads 1.5 high: 12.5. A reading below that is a dip.
 *
 * @param truePsi [psi gauge] Valid: between the lowest and the highest pressure tested.
 * @throws {ValidRangeError} as gaugeErrorPsi.
 * @source iowa-state-gauge-2024
 */
export function requiredReadingPsi(test: readonly GaugePoint[], truePsi: number): number {
  return truePsi + gaugeErrorPsi(test, truePsi)
}

/**
 * True pressure behind a reading. [psi gauge]
 *
 * @param readsPsi what the needle shows. Valid: between the lowest and the highest reading of the test.
 * @throws {ValidRangeError} outside the tested readings, or when the needle did not rise with the pressure.
 * @source iowa-state-gauge-2024
 */
export function truePsiAtReading(test: readonly GaugePoint[], readsPsi: number): number {
  const points = byTruePressure(test).map((point) => ({ x: point.readsPsi, y: point.truePsi }))
  return interpolateLine(points, readsPsi, READS_LINE)
}

/**
 * The mark on the face to hold the needle at: the first one at or above a reading. [psi gauge]
 *
 * 12.5 on a face marked every 1 psi: 13. Rounds up, never down: lower is weaker.
 *
 * @param readingPsi least reading allowed. [psi gauge] Valid: 0 to 30.
 * @param marksEveryPsi distance between marks. [psi] Valid: 0.1 to 15.
 * @throws {ValidRangeError} outside those ranges.
 * @source project-rule
 */
export function nextFaceMarkPsi(readingPsi: number, marksEveryPsi: number): number {
  requireInRange('readingPsi', readingPsi, PSI_GAUGE)
  requireInRange('marksEveryPsi', marksEveryPsi, { min: 0.1, max: 15, unit: 'psi', source: 'project-rule' })
  const marks = Math.ceil(readingPsi / marksEveryPsi - 1e-9) // absorbs binary dust
  return Number((marks * marksEveryPsi).toPrecision(12))
}

function byTruePressure(test: readonly GaugePoint[]): readonly GaugePoint[] {
  requireInRange('test', test.length, { min: 1, max: 50, unit: 'points tested', source: 'project-rule' })
  for (const { truePsi, readsPsi } of test) {
    requireInRange('truePsi', truePsi, PSI_GAUGE)
    requireInRange('readsPsi', readsPsi, PSI_GAUGE)
  }
  return test.toSorted((a, b) => a.truePsi - b.truePsi)
}
