/**
 * Lethality of a temperature record: minutes at the reference temperature that kill as much.
 * Quadrature rules do not agree on the same readings, so each has its own name. `lethalityMin` is the rule of this project:
 * exact when the temperature runs straight from one reading to the next, and never above the trapezoid.
 */
import { ValidRangeError } from '../errors.ts'
import { type LethalityModel, lethalRate } from './lethal-rate.ts'

export interface TemperatureSample {
  /** Minutes from any starting point. */
  readonly timeMin: number
  readonly temperatureC: number
}

/**
 * Lethality, exact for a temperature that is a straight line between readings. [min]
 *
 * Per interval dt (L2 - L1) / ln(L2/L1), or dt L where the two are equal. L is convex in T, so this never exceeds the
 * trapezoid: the conservative rule.
 *
 * @param curve two readings or more, times rising, 0 to 150 °C.
 * @throws {ValidRangeError} on fewer than two readings, times that do not rise, or a temperature out of range.
 * @source bigelow-1920, general method; the integral of 10^((T - T_ref)/z) over a straight line, in closed form
 */
export function lethalityMin(curve: readonly TemperatureSample[], model: LethalityModel): number {
  let sumMin = 0
  for (const [from, to] of intervals(curve)) {
    const x = (Math.LN10 * (to.temperatureC - from.temperatureC)) / model.zDeltaC
    // expm1 keeps the digits that L2 - L1 would lose when the two readings are close.
    const meanOverFirst = x === 0 ? 1 : Math.expm1(x) / x
    lethalRate(to.temperatureC, model) // range check of the last reading
    sumMin += (to.timeMin - from.timeMin) * lethalRate(from.temperatureC, model) * meanOverFirst
  }
  return sumMin
}

/**
 * Lethality by the trapezoid rule on L; any time steps. [min]
 *
 * @throws {ValidRangeError} as lethalityMin.
 * @source bigelow-1920, general method
 */
export function lethalityTrapezoidMin(curve: readonly TemperatureSample[], model: LethalityModel): number {
  let sumMin = 0
  for (const [from, to] of intervals(curve)) {
    const meanRate = (lethalRate(from.temperatureC, model) + lethalRate(to.temperatureC, model)) / 2
    sumMin += (to.timeMin - from.timeMin) * meanRate
  }
  return sumMin
}

/**
 * Lethality as the tabular sum of L times the time step; right when the first and last L are negligible. [min]
 *
 * @throws {ValidRangeError} as lethalityMin, or when the steps are not equal.
 * @source patashnik-1953
 */
export function lethalityRectangleMin(curve: readonly TemperatureSample[], model: LethalityModel): number {
  const stepMin = equalStepMin(curve)
  return stepMin * curve.reduce((sum, { temperatureC }) => sum + lethalRate(temperatureC, model), 0)
}

/**
 * Lethality by Simpson's rule on L; equal steps, three readings or more. [min]
 *
 * With an even number of readings the last interval is added by the parabola through the last three readings.
 *
 * @throws {ValidRangeError} as lethalityMin, when the steps are not equal, or on fewer than three readings.
 * @source cartwright-2017 for the last interval
 */
export function lethalitySimpsonMin(curve: readonly TemperatureSample[], model: LethalityModel): number {
  const stepMin = equalStepMin(curve)
  requireReadings(curve.length, 3)
  const L = curve.map(({ temperatureC }) => lethalRate(temperatureC, model))
  const lastOfPairs = L.length % 2 === 1 ? L.length - 1 : L.length - 2
  let sum = 0
  for (let i = 0; i < lastOfPairs; i += 2) sum += (L[i]! + 4 * L[i + 1]! + L[i + 2]!) / 3
  if (L.length % 2 === 0) sum += (5 * L.at(-1)! + 8 * L.at(-2)! - L.at(-3)!) / 12
  return sum * stepMin
}

/** Neighbouring readings, checked for rising times. */
function intervals(curve: readonly TemperatureSample[]) {
  requireReadings(curve.length, 2)
  return curve.slice(1).map((to, index) => {
    const from = curve[index]!
    if (!(to.timeMin > from.timeMin && Number.isFinite(to.timeMin - from.timeMin))) {
      const range = { min: from.timeMin, max: Number.POSITIVE_INFINITY, unit: 'min', source: 'project-rule' }
      throw new ValidRangeError(`timeMin of reading ${index + 2}`, to.timeMin, range)
    }
    return [from, to] as const
  })
}

function requireReadings(count: number, min: number): void {
  const range = { min, max: Number.POSITIVE_INFINITY, unit: 'readings', source: 'project-rule' }
  if (count < min) throw new ValidRangeError('curve', count, range)
}

/** Whether every step is the first one, to a millionth of it. The rectangle and Simpson rules need that. */
export function hasEqualSteps(curve: readonly TemperatureSample[]): boolean {
  const steps = intervals(curve).map(([from, to]) => to.timeMin - from.timeMin)
  return steps.every((step) => Math.abs(step - steps[0]!) <= 1e-6 * steps[0]!)
}

function equalStepMin(curve: readonly TemperatureSample[]): number {
  const stepsMin = intervals(curve).map(([from, to]) => to.timeMin - from.timeMin)
  const first = stepsMin[0]!
  if (!hasEqualSteps(curve)) {
    const range = { min: first, max: first, unit: 'min (equal steps)', source: 'patashnik-1953' }
    throw new ValidRangeError('longest time step', Math.max(...stepsMin), range)
  }
  return first
}
