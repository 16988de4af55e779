/**
 * The formula method: lethality of a heating line, or the heating time for a lethality, from fh, jh and a table of g.
 * It holds for one straight heating line, cooling as fast as heating (fc = fh) and cooling in water. Starch that gels breaks
 * the line and a jar cooling in its canner breaks the rest, so for home jars it is a teaching figure and never a process.
 */
import { requireInRange, type ValidRange, ValidRangeError } from '../errors.ts'
import { exponentialIntegralE1 } from '../numeric/exponential-integral.ts'
import { ballFhPerU, ballGDeltaF } from './formula-ball.ts'
import { stumboFhPerU, stumboGDeltaF } from './formula-stumbo.ts'

export interface HeatingLine {
  /** Tr, the heating medium. [°F] Valid: 200 to 280. */
  readonly retortF: number
  /** Ti, the food when heating begins. [°F] Valid: 32 to below Tr. */
  readonly initialF: number
  /** fh. [min] Valid: 0.1 to 1000. */
  readonly fhMin: number
  /** jh. Valid: 0.1 to 5. */
  readonly jh: number
}

export interface FormulaResult {
  /** F0, z 18 °F, reference 250 °F. [min] */
  readonly lethalityMin: number
  /** B, heating time counted from the corrected start. [min] */
  readonly heatingMin: number
  /** g. [°F difference] */
  readonly gDeltaF: number
  /** U, minutes at the retort temperature worth F0. [min] */
  readonly uMin: number
  readonly fhPerU: number
}

const Z_F = 18
const RANGES = {
  retortF: { min: 200, max: 280, unit: '°F', source: 'project-rule' },
  fhMin: { min: 0.1, max: 1000, unit: 'min', source: 'project-rule' },
  jh: { min: 0.1, max: 5, unit: '', source: 'project-rule' },
  minutes: { min: 0.1, max: 10_000, unit: 'min', source: 'project-rule' },
} as const satisfies { readonly [name: string]: ValidRange }

/**
 * Fi, minutes at the retort temperature worth one at 250 °F. [1]  240 °F: 3.5938.
 *
 * @param retortF Valid: 200 to 280.
 * @throws {ValidRangeError} outside that range.
 * @source bigelow-1920, general method
 */
export function minutesPerReferenceMinute(retortF: number): number {
  requireInRange('retortF', retortF, RANGES.retortF)
  return 10 ** ((250 - retortF) / Z_F)
}

/**
 * Heating time for a lethality, by Stumbo's table: B = fh log10(jh Ih / g).
 *
 * 240 °F from 140 °F, fh 30 min, jh 1.4, jc 1.4, F0 4.174 min: g 2.21 °F, B 54.05 min.
 *
 * @param jc lag factor of cooling. Valid: 0.4 to 2.
 * @throws {ValidRangeError} off the table or out of range.
 * @source stumbo-1973 as reprinted in food-biochemistry-ch38 table 38.9
 */
export function heatingTimeStumbo1973(line: HeatingLine, jc: number, lethalityMin: number): FormulaResult {
  return forward(line, lethalityMin, (fhPerU) => stumboGDeltaF(fhPerU, jc))
}

/**
 * Lethality of a heating time, by Stumbo's table read the other way.
 *
 * @throws {ValidRangeError} off the table or out of range.
 * @source stumbo-1973 as reprinted in food-biochemistry-ch38 table 38.9
 */
export function lethalityStumbo1973(line: HeatingLine, jc: number, heatingMin: number): FormulaResult {
  return backward(line, heatingMin, (gDeltaF) => stumboFhPerU(gDeltaF, jc))
}

/**
 * Heating time for a lethality, by Ball's table, which is for jc 1.41 alone.
 *
 * @throws {ValidRangeError} off the table or out of range.
 * @source ball-1923 as reprinted in food-biochemistry-ch38 table 38.6
 */
export function heatingTimeBall1923(line: HeatingLine, lethalityMin: number): FormulaResult {
  return forward(line, lethalityMin, ballGDeltaF)
}

/**
 * Lethality of a heating time, by Ball's table read the other way.
 *
 * @throws {ValidRangeError} off the table or out of range.
 * @source ball-1923 as reprinted in food-biochemistry-ch38 table 38.6
 */
export function lethalityBall1923(line: HeatingLine, heatingMin: number): FormulaResult {
  return backward(line, heatingMin, ballFhPerU)
}

/**
 * fh/U of the heating alone, in closed form: ln 10 / E1(ln 10 g / z), z 18 °F. [1]  A table's fh/U is smaller, since it
 * counts cooling; Stumbo's entries below jc 1 are not, by up to 27 %. g 1: 1.4364.
 *
 * @param gDeltaF g. [°F difference] Valid: 1e-6 to 100.
 * @throws {ValidRangeError} outside that range.
 * @source ball-1923 formula method, with the straight line carried back to minus infinity
 */
export function heatingOnlyFhPerU(gDeltaF: number): number {
  requireInRange('gDeltaF', gDeltaF, { min: 1e-6, max: 100, unit: '°F', source: 'project-rule' })
  return Math.LN10 / exponentialIntegralE1((Math.LN10 * gDeltaF) / Z_F)
}

function forward(line: HeatingLine, lethalityMin: number, gOf: (fhPerU: number) => number): FormulaResult {
  requireLine(line)
  requireInRange('lethalityMin', lethalityMin, { min: 0.01, max: 1000, unit: 'min', source: 'project-rule' })
  const uMin = lethalityMin * minutesPerReferenceMinute(line.retortF)
  const fhPerU = line.fhMin / uMin
  const gDeltaF = gOf(fhPerU)
  const heatingMin = line.fhMin * Math.log10((line.jh * (line.retortF - line.initialF)) / gDeltaF)
  return { lethalityMin, heatingMin, gDeltaF, uMin, fhPerU }
}

function backward(line: HeatingLine, heatingMin: number, fhPerUOf: (gDeltaF: number) => number): FormulaResult {
  requireLine(line)
  requireInRange('heatingMin', heatingMin, RANGES.minutes)
  const gDeltaF = line.jh * (line.retortF - line.initialF) * 10 ** (-heatingMin / line.fhMin)
  const fhPerU = fhPerUOf(gDeltaF)
  const uMin = line.fhMin / fhPerU
  return { lethalityMin: uMin / minutesPerReferenceMinute(line.retortF), heatingMin, gDeltaF, uMin, fhPerU }
}

function requireLine({ retortF, initialF, fhMin, jh }: HeatingLine): void {
  requireInRange('retortF', retortF, RANGES.retortF)
  requireInRange('fhMin', fhMin, RANGES.fhMin)
  requireInRange('jh', jh, RANGES.jh)
  if (!(initialF >= 32 && initialF < retortF)) {
    throw new ValidRangeError('initialF', initialF, { min: 32, max: retortF, unit: '°F', source: 'project-rule' })
  }
}
