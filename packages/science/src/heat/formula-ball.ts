/**
 * The formula method's table by Ball: log g by fh/U, for jc 1.41 and fc = fh alone, z 18 °F.
 * Never mixed with Stumbo's (formula-stumbo.ts).
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { interpolateLine } from '../numeric/interpolate.ts'

/** As printed in food-biochemistry-ch38 table 38.6, p. 737; 0.183 at 1.7 may be a misprint and is kept. */
const TABLE = [
  { fhPerU: 0.4, logG: -1.79 },
  { fhPerU: 0.5, logG: -1.29 },
  { fhPerU: 0.7, logG: -0.736 },
  { fhPerU: 0.8, logG: -0.544 },
  { fhPerU: 1, logG: -0.273 },
  { fhPerU: 1.2, logG: -0.09 },
  { fhPerU: 1.4, logG: 0.042 },
  { fhPerU: 1.5, logG: 0.097 },
  { fhPerU: 1.7, logG: 0.183 },
  { fhPerU: 1.8, logG: 0.229 },
  { fhPerU: 2, logG: 0.298 },
  { fhPerU: 3, logG: 0.525 },
  { fhPerU: 4, logG: 0.655 },
  { fhPerU: 6, logG: 0.805 },
  { fhPerU: 8, logG: 0.894 },
  { fhPerU: 10, logG: 0.955 },
  { fhPerU: 20, logG: 1.112 },
  { fhPerU: 40, logG: 1.235 },
  { fhPerU: 50, logG: 1.27 },
  { fhPerU: 70, logG: 1.318 },
  { fhPerU: 80, logG: 1.336 },
  { fhPerU: 100, logG: 1.365 },
  { fhPerU: 120, logG: 1.388 },
  { fhPerU: 160, logG: 1.422 },
  { fhPerU: 200, logG: 1.447 },
] as const

const SOURCE = 'food-biochemistry-ch38'
const FH_PER_U: ValidRange = { min: 0.4, max: 200, unit: '(fh/U)', source: SOURCE }
const LOG_G: ValidRange = { min: -1.79, max: 1.447, unit: '(log10 g)', source: SOURCE }

export interface BallRow {
  readonly fhPerU: number
  readonly logG: number
}

/** The table itself, for its checks. */
export const BALL_ROWS: readonly BallRow[] = TABLE

/**
 * g, temperature the cold spot is short of the retort when heating ends, jc 1.41. [°F difference]
 *
 * Straight lines in log g against log(fh/U); an entry comes back as printed. fh/U 10: log g 0.955, so 9.02.
 *
 * @param fhPerU fh/U. Valid: 0.4 to 200.
 * @throws {ValidRangeError} off the table.
 * @source ball-1923 as reprinted in food-biochemistry-ch38 table 38.6
 */
export function ballGDeltaF(fhPerU: number): number {
  requireInRange('fhPerU', fhPerU, FH_PER_U)
  return 10 ** ballLogGFromRows(TABLE, fhPerU)
}

/** log10 g by the same rule over any rows, for the leave-one-out check. */
export function ballLogGFromRows(rows: readonly BallRow[], fhPerU: number): number {
  const points = rows.map((row) => ({ x: Math.log(row.fhPerU), y: row.logG }))
  return interpolateLine(points, Math.log(fhPerU), { argument: 'log fh/U', unit: '', source: SOURCE })
}

/**
 * fh/U that leaves a given g, jc 1.41. [1]
 *
 * @param gDeltaF g. [°F difference] Valid: 0.0162 to 27.99.
 * @throws {ValidRangeError} off the table.
 * @source ball-1923 as reprinted in food-biochemistry-ch38 table 38.6
 */
export function ballFhPerU(gDeltaF: number): number {
  const logG = Math.log10(gDeltaF)
  requireInRange('log10 of gDeltaF', logG, LOG_G)
  const points = TABLE.map((row) => ({ x: row.logG, y: Math.log(row.fhPerU) }))
  return Math.exp(interpolateLine(points, logG, { argument: 'log10 of gDeltaF', unit: '', source: SOURCE }))
}
