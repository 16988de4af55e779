/**
 * What surrounds a jar in a canner over a run: heating up, venting, coming up, holding and cooling by itself, as a surface
 * history for the heat models. Air left in shares the pressure and costs heat. It explains a run and never sets one.
 */
import { airLeftTemperatureC } from '../air/trapped-air.ts'
import { requireInRange, type ValidRange, ValidRangeError } from '../errors.ts'
import type { TemperatureSample } from '../lethality/lethality.ts'
import { saturationTemperatureC } from '../steam/saturation.ts'
import type { LowMidHigh } from './jar-materials.ts'
import type { SurfaceHistory } from './surface-history.ts'

/**
 * Minutes of steady steam in which the air left falls to 1/e, the canner being well mixed. Common practice, no source: a
 * guess wide enough to hold a brisk and a lazy burner. One study of three canners found venting to matter little.
 */
export const PURGE_MIN: LowMidHigh = { low: 1, mid: 2, high: 3 }

const MINUTES: ValidRange = { min: 0, max: 600, unit: 'min', source: 'project-rule' }
const ROOM_C = 20

/**
 * Share of the first air still in a canner after steady steam. [fraction]
 *
 * f = exp(-vent / purge): 10 min at a purge time of 2 min leaves 0.7 %.
 *
 * @param ventMin steady steam from an open vent. [min] Valid: 0 to 600.
 * @param purgeMin Valid: 0.1 to 60.
 * @throws {ValidRangeError} outside those ranges.
 * @source none: a well-mixed vessel, common practice
 */
export function airLeftAfterVentFraction(ventMin: number, purgeMin: number): number {
  requireInRange('ventMin', ventMin, MINUTES)
  requireInRange('purgeMin', purgeMin, { min: 0.1, max: 60, unit: 'min', source: 'project-rule' })
  return Math.exp(-ventMin / purgeMin)
}

export interface CannerSchedule {
  /** [kPa absolute] Weather included. */
  readonly atmosphereKPaAbs: number
  /** True pressure while the process runs, the gauge's error taken off. [kPa gauge] Valid: 1 to 200. */
  readonly pressureKPaGauge: number
  /** Air left when the vent closes, of the air there was. [fraction] Valid: 0 to 1. */
  readonly airLeftFraction: number
  /** Water in the canner when the jars go in. [°C] Valid: 20 to 95. */
  readonly startC: number
  /** Until steam stands, and the vent open after that. [min] */
  readonly heatUpMin: number
  readonly ventMin: number
  readonly comeUpMin: number
  readonly holdMin: number
  /** From heat off to zero, by itself. [min] Valid: 1 to 600. */
  readonly coolDownMin: number
}

/** Jars stand on in the canner after zero, and then in the room. [min] */
const WAIT_MIN = 10
const ROOM_MIN = 30
const COME_UP_POINTS = 3
const COOL_DOWN_POINTS = 4

/**
 * The surface of a jar through a run.
 *
 * The canner never gets cooler than it was before heat off; come-up is even in pressure; cooling is Newton's, through the
 * boiling point at zero; the jars leave ten minutes after zero.
 *
 * @throws {ValidRangeError} for a schedule out of range.
 * @source iapws-r7-97 eq. 31, with autoclave-handbook-air-table for the air
 */
export function cannerHistory(schedule: CannerSchedule): SurfaceHistory {
  const { atmosphereKPaAbs, pressureKPaGauge, airLeftFraction, startC, comeUpMin, holdMin, coolDownMin } = schedule
  requireInRange('startC', startC, { min: 20, max: 95, unit: '°C', source: 'project-rule' })
  requireInRange('pressureKPaGauge', pressureKPaGauge, { min: 1, max: 200, unit: 'kPa', source: 'project-rule' })
  requireInRange('airLeftFraction', airLeftFraction, { min: 0, max: 1, unit: '', source: 'project-rule' })
  for (const name of ['heatUpMin', 'ventMin', 'comeUpMin', 'holdMin'] as const) {
    requireInRange(name, schedule[name], MINUTES)
  }
  requireInRange('coolDownMin', coolDownMin, { ...MINUTES, min: 1 })

  const atC = (kPaGauge: number) => mixtureC(kPaGauge, atmosphereKPaAbs, airLeftFraction, startC)
  const boilingC = saturationTemperatureC(atmosphereKPaAbs)
  const points: TemperatureSample[] = [{ timeMin: 0, temperatureC: startC }]
  let timeMin = 0
  const add = (afterMin: number, temperatureC: number) => {
    if (afterMin <= 0) return
    timeMin += afterMin
    points.push({ timeMin, temperatureC })
  }
  const ventedC = atC(0)
  add(schedule.heatUpMin, ventedC)
  add(schedule.ventMin, ventedC)
  for (let k = 1; k <= COME_UP_POINTS; k += 1) {
    add(comeUpMin / COME_UP_POINTS, atC((pressureKPaGauge * k) / COME_UP_POINTS))
  }
  const holdC = atC(pressureKPaGauge)
  if (comeUpMin <= 0) add(0.1, holdC)
  add(holdMin, holdC)
  // Newton's cooling that passes the boiling point, or where the air left has it, at zero.
  const zeroC = Math.min(boilingC, holdC - 0.1)
  const perMin = Math.log((holdC - ROOM_C) / (zeroC - ROOM_C)) / coolDownMin
  const coolingC = (min: number) => ROOM_C + (holdC - ROOM_C) * Math.exp(-perMin * min)
  for (let k = 1; k <= COOL_DOWN_POINTS; k += 1) {
    add(coolDownMin / COOL_DOWN_POINTS, coolingC((coolDownMin * k) / COOL_DOWN_POINTS))
  }
  add(WAIT_MIN, coolingC(coolDownMin + WAIT_MIN))
  add(ROOM_MIN, ROOM_C + 20)
  return points
}

/** Air at its share of the pressure; never below the water the jars stand in. */
function mixtureC(kPaGauge: number, atmosphereKPaAbs: number, airLeftFraction: number, floorC: number): number {
  const steamKPa = kPaGauge + atmosphereKPaAbs * (1 - airLeftFraction)
  if (steamKPa < 2) return floorC // below 17 °C: off any canner, and near the end of the saturation line
  return Math.max(floorC, airLeftTemperatureC({ pressureKPaGauge: kPaGauge, atmosphereKPaAbs, airLeftFraction }))
}

export interface PressureSample {
  readonly timeMin: number
  /** [kPa gauge] */
  readonly pressureKPaGauge: number
}

/** Longest piece of a straight line of pressure turned into one of temperature. [kPa] Keeps within 0.05 °C. */
const PIECE_KPA = 10

/**
 * The surface of a jar from a log of pressure, dips and all: steam of that pressure, with the air left.
 *
 * Straight lines of pressure are cut where the temperature would bend away from them.
 *
 * @param log two points or more, times rising; pressures 0 to 200 kPa.
 * @throws {ValidRangeError} for fewer than two points, times that do not rise or a pressure out of range.
 * @source iapws-r7-97 eq. 31, with autoclave-handbook-air-table for the air
 */
export function historyFromPressure(
  log: readonly PressureSample[],
  { atmosphereKPaAbs, airLeftFraction, floorC }: { atmosphereKPaAbs: number; airLeftFraction: number; floorC: number },
): SurfaceHistory {
  requireInRange('log', log.length, { min: 2, max: 10_000_000, unit: 'points', source: 'project-rule' })
  const points: TemperatureSample[] = []
  log.forEach((to, index) => {
    requireInRange('pressureKPaGauge', to.pressureKPaGauge, { min: 0, max: 200, unit: 'kPa', source: 'project-rule' })
    const from = log[index - 1] ?? to
    if (index > 0 && !(to.timeMin > from.timeMin)) {
      const range = { min: from.timeMin, max: Number.POSITIVE_INFINITY, unit: 'min', source: 'project-rule' }
      throw new ValidRangeError(`timeMin of point ${index + 1}`, to.timeMin, range)
    }
    const pieces = Math.max(1, Math.ceil(Math.abs(to.pressureKPaGauge - from.pressureKPaGauge) / PIECE_KPA))
    for (let k = index === 0 ? pieces : 1; k <= pieces; k += 1) {
      const share = k / pieces
      const kPaGauge = from.pressureKPaGauge + share * (to.pressureKPaGauge - from.pressureKPaGauge)
      const timeMin = from.timeMin + share * (to.timeMin - from.timeMin)
      points.push({ timeMin, temperatureC: mixtureC(kPaGauge, atmosphereKPaAbs, airLeftFraction, floorC) })
    }
  })
  return points
}
