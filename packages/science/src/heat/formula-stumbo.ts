/**
 * The formula method's table by Stumbo: g, what the cold spot still lacks when heating ends, by fh/U and jc.
 * One published table for z 18 °F. Never mixed with Ball's (formula-ball.ts): at fh/U 10 they differ by 0.84 °F.
 */
import { requireInRange, type ValidRange, ValidRangeError } from '../errors.ts'
import { interpolateLine } from '../numeric/interpolate.ts'

export const STUMBO_JC = [0.4, 0.6, 0.8, 1, 1.2, 1.4, 1.6, 1.8, 2] as const

interface StumboRow {
  readonly fhPerU: number
  /** g for each jc. [°F] */
  readonly gF: readonly number[]
}

/** As printed in food-biochemistry-ch38 table 38.9, p. 739. */
const TABLE: readonly StumboRow[] = [
  { fhPerU: 0.2, gF: [4.09e-5, 4.42e-5, 4.76e-5, 5.09e-5, 5.43e-5, 5.76e-5, 6.1e-5, 6.44e-5, 6.77e-5] },
  { fhPerU: 0.3, gF: [2.01e-3, 2.14e-3, 2.27e-3, 2.4e-3, 2.53e-3, 2.66e-3, 2.79e-3, 2.93e-3, 3.06e-3] },
  { fhPerU: 0.4, gF: [1.33e-2, 1.43e-2, 1.52e-2, 1.62e-2, 1.71e-2, 1.8e-2, 1.9e-2, 1.99e-2, 2.09e-2] },
  { fhPerU: 0.6, gF: [8.7e-2, 9.43e-2, 0.102, 0.109, 0.116, 0.123, 0.131, 0.138, 0.145] },
  { fhPerU: 0.7, gF: [0.15, 0.163, 0.176, 0.189, 0.202, 0.215, 0.228, 0.241, 0.255] },
  { fhPerU: 0.9, gF: [0.313, 0.342, 0.371, 0.4, 0.429, 0.458, 0.487, 0.516, 0.545] },
  { fhPerU: 1, gF: [0.408, 0.447, 0.485, 0.523, 0.561, 0.6, 0.638, 0.676, 0.715] },
  { fhPerU: 2, gF: [1.53, 1.66, 1.8, 1.93, 2.07, 2.21, 2.34, 2.48, 2.61] },
  { fhPerU: 3, gF: [2.63, 2.84, 3.05, 3.26, 3.47, 3.68, 3.89, 4.1, 4.31] },
  { fhPerU: 5, gF: [4.44, 4.76, 5.08, 5.4, 5.71, 6.03, 6.35, 6.67, 6.99] },
  { fhPerU: 6, gF: [5.15, 5.52, 5.88, 6.25, 6.61, 6.98, 7.34, 7.71, 8.07] },
  { fhPerU: 8, gF: [6.29, 6.75, 7.2, 7.66, 8.11, 8.56, 9.02, 9.47, 9.93] },
  { fhPerU: 10, gF: [7.17, 7.71, 8.24, 8.78, 9.32, 9.86, 10.39, 10.93, 11.47] },
  { fhPerU: 15, gF: [8.73, 9.44, 10.16, 10.88, 11.59, 12.31, 13.02, 13.74, 14.45] },
  { fhPerU: 20, gF: [9.83, 10.69, 11.55, 12.4, 13.26, 14.11, 14.97, 15.82, 16.68] },
  { fhPerU: 30, gF: [11.5, 12.5, 13.6, 14.6, 15.7, 16.8, 17.8, 18.9, 19.9] },
  { fhPerU: 40, gF: [12.8, 13.9, 15.1, 16.3, 17.5, 18.7, 19.9, 21.1, 22.3] },
  { fhPerU: 50, gF: [13.8, 15.1, 16.4, 17.7, 19, 20.3, 21.6, 22.8, 24.1] },
]

const SOURCE = 'food-biochemistry-ch38'
const FH_PER_U: ValidRange = { min: 0.2, max: 50, unit: '(fh/U)', source: SOURCE }
const JC: ValidRange = { min: 0.4, max: 2, unit: '(jc)', source: SOURCE }

/**
 * g, temperature the cold spot is short of the retort when heating ends. [°F difference]
 *
 * Straight lines in jc within a row, then in log g against log(fh/U) between rows; an entry comes back as printed.
 * fh/U 2, jc 1.4: 2.21.
 *
 * @param fhPerU fh/U. Valid: 0.2 to 50.
 * @param jc lag factor of cooling. Valid: 0.4 to 2.
 * @throws {ValidRangeError} off the table; there is no line past its rows.
 * @source stumbo-1973 as reprinted in food-biochemistry-ch38 table 38.9
 */
export function stumboGDeltaF(fhPerU: number, jc: number): number {
  requireInRange('fhPerU', fhPerU, FH_PER_U)
  requireInRange('jc', jc, JC)
  return gFromRows(TABLE, fhPerU, jc)
}

/** For the leave-one-out check: the same rule over other rows. */
export function gFromRows(rows: readonly StumboRow[], fhPerU: number, jc: number): number {
  const next = rows.findIndex((row) => row.fhPerU >= fhPerU)
  const row = rows[next]!
  if (row.fhPerU === fhPerU) return gOfRow(row, jc)
  const pair = [rows[next - 1]!, row] as const
  const points = pair.map((one) => ({ x: Math.log(one.fhPerU), y: Math.log(gOfRow(one, jc)) }))
  return Math.exp(interpolateLine(points, Math.log(fhPerU), { argument: 'log fh/U', unit: '', source: SOURCE }))
}

function gOfRow({ gF }: StumboRow, jc: number): number {
  const points = STUMBO_JC.map((x, i) => ({ x, y: gF[i]! }))
  return interpolateLine(points, jc, { argument: 'jc', unit: '', source: SOURCE })
}

/** The table itself, for its checks. */
export const STUMBO_ROWS = TABLE

/**
 * fh/U that leaves a given g, the table read the other way. [1]
 *
 * g 2.21, jc 1.4: 2.
 *
 * @param gDeltaF g. [°F difference] Valid: between the first and last row at that jc.
 * @param jc Valid: 0.4 to 2.
 * @throws {ValidRangeError} off the table.
 * @source stumbo-1973 as reprinted in food-biochemistry-ch38 table 38.9
 */
export function stumboFhPerU(gDeltaF: number, jc: number): number {
  requireInRange('jc', jc, JC)
  const points = TABLE.map((row) => ({ g: gOfRow(row, jc), fhPerU: row.fhPerU }))
  const first = points[0]!
  const last = points.at(-1)!
  const range = { min: first.g, max: last.g, unit: '°F', source: SOURCE }
  if (!(gDeltaF >= first.g && gDeltaF <= last.g)) throw new ValidRangeError('gDeltaF', gDeltaF, range)
  const exact = points.find(({ g }) => g === gDeltaF)
  if (exact) return exact.fhPerU
  const line = points.map(({ g, fhPerU }) => ({ x: Math.log(g), y: Math.log(fhPerU) }))
  return Math.exp(interpolateLine(line, Math.log(gDeltaF), { argument: 'log g', unit: '', source: SOURCE }))
}
