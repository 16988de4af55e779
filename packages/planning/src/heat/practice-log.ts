/** An invented logger's file to try the replay with: a run with one dip, and the small faults such files have. */
import { boilingTemperatureC, historyFromPressure, type JAR_SIZES, standardPressureKPaAbs } from '@crib/science'
import { looseJarC } from './jar-models.ts'

export interface PracticeRun {
  readonly elevationM: number
  /** What had to be held, and for how long. [psi], [min] */
  readonly requiredPsi: number
  readonly processMin: number
  readonly jar: keyof typeof JAR_SIZES
  /** Clock of the first reading, in minutes after midnight; absent: the file counts its minutes from 0. */
  readonly fromClockMin?: number
}

const KPA_PER_PSI = 6.894757293168
const STEP_MIN = 0.5
const STEAM_MIN = 15
const CLOSED_MIN = 25
/** The needle stands this much above the line, and falls this far below it once. [psi] */
const ABOVE_PSI = 0.4
const BELOW_PSI = 2.5
/** The full time starts again just before this. [min] */
const REGAINED_MIN = 67.4
/** A little longer than it must be. [min] */
const OVER_MIN = 0.6
const TO_ZERO_MIN = { pint: 32, quart: 44 } as const
const AFTER_MIN = 25

/** Minutes and psi: vent closed at 25, the line from 32, a dip at 62, the full time from 67. */
function pressureOf({ requiredPsi, processMin, jar }: PracticeRun): readonly (readonly [atMin: number, psi: number])[] {
  const held = requiredPsi + ABOVE_PSI
  const offMin = Math.round(REGAINED_MIN + processMin + OVER_MIN)
  const zeroMin = offMin + TO_ZERO_MIN[jar]
  return [
    ...([
      [0, 0],
      [CLOSED_MIN, 0],
      [32, held],
      [60, held],
      [63, requiredPsi - BELOW_PSI],
    ] as const),
    ...([
      [REGAINED_MIN, held],
      [offMin, held],
      [zeroMin, 0],
      [zeroMin + AFTER_MIN, 0],
    ] as const),
  ]
}

/** CSV with a head: canner and the middle of a jar in °C, and the gauge in psi. Always the same for the same run. */
export function practiceLog(run: PracticeRun): string {
  const { elevationM, jar } = run
  const pressure = pressureOf(run)
  const zeroMin = pressure.at(-2)![0]
  const lastMin = pressure.at(-1)![0]
  const steam = historyFromPressure(
    pressure.map(([timeMin, psi]) => ({ timeMin, pressureKPaGauge: psi * KPA_PER_PSI })),
    { atmosphereKPaAbs: standardPressureKPaAbs(elevationM), airLeftFraction: 0, floorC: 20 },
  )
  const surface = [
    { timeMin: 0, temperatureC: 70 },
    { timeMin: STEAM_MIN, temperatureC: boilingTemperatureC(elevationM) },
    ...steam.filter(({ timeMin }) => timeMin >= CLOSED_MIN && timeMin <= zeroMin),
    { timeMin: lastMin, temperatureC: 78 },
  ]
  const jarC = looseJarC({ jar, foodC: 80 }, surface, STEP_MIN * 60)
  const rows = Array.from(jarC, (celsius, i) => {
    const atMin = i * STEP_MIN
    const canner = along(
      surface.map(({ timeMin, temperatureC }) => [timeMin, temperatureC]),
      atMin,
    )
    // A probe that came loose for a moment.
    const inJar = atMin === 41 ? '' : celsius.toFixed(1)
    return `${timeText(run, atMin)},${canner.toFixed(1)},${inJar},${along(pressure, atMin).toFixed(1)}`
  })
  // A row written twice.
  rows.splice(11, 0, rows[10]!)
  const time = run.fromClockMin === undefined ? 'time (min)' : 'clock'
  return `${time},canner (°C),jar (°C),gauge (psi)\n${rows.join('\n')}\n`
}

function timeText({ fromClockMin }: PracticeRun, atMin: number): string {
  if (fromClockMin === undefined) return String(atMin)
  const seconds = Math.round((fromClockMin + atMin) * 60)
  return [seconds / 3600, (seconds / 60) % 60, seconds % 60]
    .map((part) => String(Math.floor(part)).padStart(2, '0'))
    .join(':')
}

function along(points: readonly (readonly [number, number])[], atMin: number): number {
  const next = Math.max(
    1,
    points.findIndex(([min]) => min >= atMin),
  )
  const [[fromMin, from], [toMin, to]] = [points[next - 1]!, points[next]!]
  return from + ((to - from) * (atMin - fromMin)) / (toMin - fromMin)
}
