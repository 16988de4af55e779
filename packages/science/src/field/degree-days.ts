/**
 * Growing degree-days of corn by the 86/50 method, worked in °C: 86 and 50 °F are 30 and 10 °C exactly, so one
 * degree-day in °C is 1.8 in °F and nothing else changes. Leaves out soil temperature and frost.
 */
import { requireInRange } from '../errors.ts'

export interface DayTemperatures {
  /** Warmest of the day. [°C] Valid: -60 to 60. */
  readonly highC: number
  /** Coldest of the day. [°C] Valid: -60 to 60, not above the warmest. */
  readonly lowC: number
}

const UPPER_C = 30 // 86 °F
const BASE_C = 10 // 50 °F
const SOURCE = 'iowa-agron-541'

/**
 * Degree-days of one day. [°C·day]
 *
 * (high' + low')/2 - 10 °C with both brought into 10 to 30 °C first, the low as well as the high. 87 and 63 °F: 24.5 in
 * °F, 13.61 in °C. No day gives more than 20 (36 in °F).
 *
 * @throws {ValidRangeError} outside -60 to 60 °C, or when the low is above the high.
 * @source iowa-agron-541 modified growing degree-days, 86/50
 */
export function degreeDaysC({ highC, lowC }: DayTemperatures): number {
  requireInRange('highC', highC, { min: -60, max: 60, unit: '°C', source: SOURCE })
  requireInRange('lowC', lowC, { min: -60, max: highC, unit: '°C, the high of the day', source: SOURCE })
  const within = (c: number): number => Math.min(Math.max(c, BASE_C), UPPER_C)
  return (within(highC) + within(lowC)) / 2 - BASE_C
}

/**
 * Running total of degree-days, one for each day handed in, from the first on. [°C·day]
 *
 * @throws {ValidRangeError} as degreeDaysC.
 * @source iowa-agron-541 modified growing degree-days, 86/50
 */
export function degreeDaysRunningC(days: readonly DayTemperatures[]): readonly number[] {
  let total = 0
  return days.map((day) => {
    total += degreeDaysC(day)
    return total
  })
}

/** Totals from sowing that a table prints for dent corn. [°F·day]  Early flints need less: own totals replace them. */
export const DEGREE_DAYS_TO_STAGE_F = {
  early: { silk: 1143.6, dough: 1510.9, blackLayer: 2061.7 },
  middle: { silk: 1200, dough: 1680, blackLayer: 2400 },
  late: { silk: 1272.5, dough: 1897.4, blackLayer: 2834.9 },
} as const

export type MaturityGroup = keyof typeof DEGREE_DAYS_TO_STAGE_F

/**
 * Printed totals of one maturity group, from sowing. [°C·day]  The middle group silks at 666.7 (1200 in °F).
 *
 * @source hprcc-corn-stages
 */
export function degreeDaysToStageC(group: MaturityGroup): { readonly silk: number; readonly blackLayer: number } {
  const { silk, blackLayer } = DEGREE_DAYS_TO_STAGE_F[group]
  return { silk: silk / 1.8, blackLayer: blackLayer / 1.8 }
}
