/**
 * When a pan of food will be cold, from two readings of a thermometer. An estimate to plan by; only the thermometer tells.
 * Leaves out: pans that are stirred or moved between the readings.
 */
import { requireInRange } from '../errors.ts'

export interface CoolingReadings {
  readonly firstC: number
  readonly secondC: number
  /** Between the readings. [min] Valid: 1 to 1440. */
  readonly minutesBetween: number
  /** What the pan stands in: the fridge's air, ice water, the room. [°C] */
  readonly aroundC: number
}

/**
 * Minutes from the second reading until a temperature, by Newton's law of cooling. [min]  Null where it never gets so cold.
 *
 * (T - Ta) falls by the same share in the same time. 80 then 50 °C after 30 min in air of 20 °C: 30 more to 35 °C.
 *
 * @throws {ValidRangeError} where the food did not cool, or was no warmer than its surroundings.
 * @source newton-cooling
 */
export function coolingMinutes(readings: CoolingReadings, toC: number): number | null {
  const { firstC, secondC, minutesBetween, aroundC } = readings
  const source = 'newton-cooling'
  requireInRange('minutesBetween', minutesBetween, { min: 1, max: 1440, unit: 'min', source })
  requireInRange('aroundC', aroundC, { min: -40, max: 50, unit: '°C', source })
  requireInRange('firstC', firstC, { min: aroundC + 0.1, max: 110, unit: '°C', source })
  requireInRange('secondC', secondC, { min: aroundC + 0.05, max: firstC - 0.05, unit: '°C', source })
  if (toC >= secondC) return 0
  if (toC <= aroundC) return null
  const perMinute = Math.log((firstC - aroundC) / (secondC - aroundC)) / minutesBetween
  return Math.log((secondC - aroundC) / (toC - aroundC)) / perMinute
}
