/** An invented logger's file to try the replay with: a run at 12 psi with one dip, and the small faults such files have. */
import { boilingTemperatureC, historyFromPressure, standardPressureKPaAbs } from '@crib/science'
import { looseJarC } from './jar-models.ts'

const KPA_PER_PSI = 6.894757293168
const STEP_MIN = 0.5
/** Minutes and psi: steam at 15, vent closed at 25, 12 psi from 32, a dip at 62, the full hour from 67. */
const PRESSURE = [
  [0, 0],
  [25, 0],
  [32, 12.4],
  [60, 12.4],
  [63, 9.5],
  [67.4, 12.4],
  [128, 12.4],
  [160, 0],
  [185, 0],
] as const

/** CSV with a head, times in minutes: canner and middle of a pint in °C, and the gauge in psi. Always the same. */
export function practiceLog(elevationM: number): string {
  const boilingC = boilingTemperatureC(elevationM)
  const steam = historyFromPressure(
    PRESSURE.map(([timeMin, psi]) => ({ timeMin, pressureKPaGauge: psi * KPA_PER_PSI })),
    { atmosphereKPaAbs: standardPressureKPaAbs(elevationM), airLeftFraction: 0, floorC: 20 },
  )
  const surface = [
    { timeMin: 0, temperatureC: 70 },
    { timeMin: 15, temperatureC: boilingC },
    ...steam.filter(({ timeMin }) => timeMin >= 25 && timeMin <= 160),
    { timeMin: 185, temperatureC: 78 },
  ]
  const stepS = STEP_MIN * 60
  const jarC = looseJarC({ jar: 'pint', foodC: 80 }, surface, stepS)
  const rows = Array.from(jarC, (celsius, i) => {
    const atMin = i * STEP_MIN
    const canner = along(
      surface.map(({ timeMin, temperatureC }) => [timeMin, temperatureC]),
      atMin,
    )
    // A probe that came loose for a moment.
    const jar = atMin === 41 ? '' : celsius.toFixed(1)
    return `${atMin},${canner.toFixed(1)},${jar},${along(PRESSURE, atMin).toFixed(1)}`
  })
  // A row written twice.
  rows.splice(11, 0, rows[10]!)
  return `time (min),canner (°C),jar (°C),gauge (psi)\n${rows.join('\n')}\n`
}

function along(points: readonly (readonly [number, number])[], atMin: number): number {
  const next = Math.max(
    1,
    points.findIndex(([min]) => min >= atMin),
  )
  const [[fromMin, from], [toMin, to]] = [points[next - 1]!, points[next]!]
  return from + ((to - from) * (atMin - fromMin)) / (toMin - fromMin)
}
