/**
 * Heating curves by fh and j, as read from a semilog plot: T = Tr - j (Tr - Ti) 10^(-t/fh) once heating runs straight, with
 * a second line where it breaks. A description of measured jars, not a model of why.
 */
import { requireInRange, type ValidRange, ValidRangeError } from '../errors.ts'
import type { TemperatureSample } from '../lethality/lethality.ts'

export interface EmpiricalHeating {
  /** Tr. [°C] */
  readonly mediumC: number
  /** Ti. [°C] */
  readonly initialC: number
  /** [min] Valid: 0.1 to 1000. */
  readonly fhMin: number
  /** Valid: 0.1 to 5. */
  readonly jh: number
  /** Where the line breaks and what fh is from there. */
  readonly broken?: { readonly atMin: number; readonly fhMin: number }
}

const FH: ValidRange = { min: 0.1, max: 1000, unit: 'min', source: 'project-rule' }
const J: ValidRange = { min: 0.1, max: 5, unit: '', source: 'project-rule' }

/**
 * Temperature on an empirical heating curve. [°C]  Never beyond the food's first temperature, which the line itself passes
 * while it is not yet straight.
 *
 * @param timeMin from the start of heating. [min] Valid: 0 to 10 000.
 * @throws {ValidRangeError} for fh, j, a break or a time out of range.
 * @source ball-1923
 */
export function empiricalHeatingC({ mediumC, initialC, fhMin, jh, broken }: EmpiricalHeating, timeMin: number): number {
  requireInRange('fhMin', fhMin, FH)
  requireInRange('jh', jh, J)
  requireInRange('timeMin', timeMin, { min: 0, max: 10_000, unit: 'min', source: 'project-rule' })
  if (broken) requireInRange('broken.fhMin', broken.fhMin, FH)
  const beforeBreakMin = broken ? Math.min(timeMin, broken.atMin) : timeMin
  const cycles = beforeBreakMin / fhMin + (broken ? Math.max(0, timeMin - broken.atMin) / broken.fhMin : 0)
  const left = Math.min(1, jh * 10 ** -cycles)
  return mediumC - (mediumC - initialC) * left
}

export interface FittedHeating {
  readonly fhMin: number
  readonly jh: number
  /** Readings the line was drawn through. */
  readonly usedCount: number
  /** Root of the mean squared miss of those readings, in log10 of what is left. */
  readonly missLog10: number
}

/**
 * fh and j of a measured curve, by the best straight line through log10 (Tr - T) from a time on. A water or food trial;
 * it describes that jar and sets no process.
 *
 * @param readings times from the start of heating, at steady Tr.
 * @param options.straightFromMin readings before this are lag and left out. [min]
 * @throws {ValidRangeError} with fewer than three readings left, one at or above Tr, or a line that does not fall.
 * @source ball-1923
 */
export function fitHeating(
  readings: readonly TemperatureSample[],
  { mediumC, initialC, straightFromMin }: { mediumC: number; initialC: number; straightFromMin: number },
): FittedHeating {
  const used = readings.filter(({ timeMin }) => timeMin >= straightFromMin)
  requireInRange('readings', used.length, { min: 3, max: 1_000_000, unit: 'readings', source: 'project-rule' })
  const points = used.map(({ timeMin, temperatureC }) => {
    if (!(temperatureC < mediumC)) {
      throw new ValidRangeError('temperatureC', temperatureC, {
        min: -20,
        max: mediumC,
        unit: '°C',
        source: 'ball-1923',
      })
    }
    return { x: timeMin, y: Math.log10(mediumC - temperatureC) }
  })
  const mean = (of: 'x' | 'y') => points.reduce((sum, point) => sum + point[of], 0) / points.length
  const mx = mean('x')
  const my = mean('y')
  const slope =
    points.reduce((sum, { x, y }) => sum + (x - mx) * (y - my), 0) /
    points.reduce((sum, { x }) => sum + (x - mx) ** 2, 0)
  requireInRange('slope of the line', slope, { min: -10, max: -1e-3, unit: 'log10 per min', source: 'ball-1923' })
  const at0 = my - slope * mx
  const missSquares = points.reduce((sum, { x, y }) => sum + (y - at0 - slope * x) ** 2, 0)
  return {
    fhMin: -1 / slope,
    jh: 10 ** at0 / (mediumC - initialC),
    usedCount: points.length,
    missLog10: Math.sqrt(missSquares / points.length),
  }
}
