/** The temperature around a jar over time, as straight lines between points. */
import { requireInRange, type ValidRange, ValidRangeError } from '../errors.ts'
import type { TemperatureSample } from '../lethality/lethality.ts'

/** Two points or more, times rising. The jar starts at its own temperature at the first point. */
export type SurfaceHistory = readonly TemperatureSample[]

export const HISTORY_TEMPERATURE_C: ValidRange = { min: -20, max: 150, unit: '°C', source: 'project-rule' }

/** @throws {ValidRangeError} on fewer than two points, times that do not rise, or a temperature outside -20 to 150 °C. */
export function requireHistory(history: SurfaceHistory): void {
  requireInRange('history', history.length, {
    min: 2,
    max: Number.MAX_SAFE_INTEGER,
    unit: 'points',
    source: 'project-rule',
  })
  for (let i = 0; i < history.length; i += 1) {
    const { timeMin, temperatureC } = history[i]!
    requireInRange('temperatureC', temperatureC, HISTORY_TEMPERATURE_C)
    const before = i === 0 ? Number.NEGATIVE_INFINITY : history[i - 1]!.timeMin
    if (!(timeMin > before && Number.isFinite(timeMin))) {
      const range = { min: before, max: Number.POSITIVE_INFINITY, unit: 'min', source: 'project-rule' }
      throw new ValidRangeError(`timeMin of point ${i + 1}`, timeMin, range)
    }
  }
}

/** Temperature of a history at rising times, held flat outside it. [°C]  The caller asks in order; cost is one pass. */
export function walkHistory(history: SurfaceHistory): (timeMin: number) => number {
  let next = 1
  return (timeMin) => {
    while (next < history.length - 1 && history[next]!.timeMin < timeMin) next += 1
    const from = history[next - 1]!
    const to = history[next]!
    if (timeMin <= from.timeMin) return from.temperatureC
    if (timeMin >= to.timeMin) return to.temperatureC
    return (
      from.temperatureC +
      ((to.temperatureC - from.temperatureC) * (timeMin - from.timeMin)) / (to.timeMin - from.timeMin)
    )
  }
}
