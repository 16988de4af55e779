/** A pan of the book on its way to cold: its two clock times, how it stands by its readings, and what to do next. */
import { coolingWindow } from '@crib/guidance'
import type { CoolingFact } from '@crib/journal'
import { convert, type Reckoned, type Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { coolingClock } from './cold.ts'

export type PanStanding = 'cooling' | 'read-now' | 'cold' | 'too-late'

export interface CoolingPan {
  readonly coolingId: string
  readonly standing: PanStanding
  /** When it must be at 70 °F and at 41 °F. [epoch ms] */
  readonly warmByMs: number
  readonly coldByMs: number
  /** The two clock times, and an estimate where two readings and the place allow one. */
  readonly values: readonly Reckoned[]
  readonly next: Sentence
  readonly reasons: readonly Sentence[]
}

const MS_PER_MIN = 60_000

/**
 * How a pan stands at `nowMs` (epoch ms): a function of what was written down and the clock, so that a reload or a flat
 * battery changes nothing. One reading too warm for its time stands, whatever is read later.
 *
 * @source food-code-cooling 3-501.14
 */
export function coolingPan({ coolingId, at, readings }: CoolingFact, nowMs: number): CoolingPan {
  const [warm, cold] = coolingWindow().steps
  const startMs = Date.parse(at.instant)
  const startClockMin = clockMinAt(startMs, at.zone)
  // A reading told as before the start is of another clock, and says nothing here.
  const sound = readings.filter((reading) => Date.parse(reading.at.instant) >= startMs)
  const told = sound.map((reading) => ({
    clockMin: startClockMin + (Date.parse(reading.at.instant) - startMs) / MS_PER_MIN,
    temperatureC: reading.temperatureC,
    aroundC: reading.aroundC,
  }))
  const last = told.at(-1)
  const before = told.at(-2)
  const aroundC = told.findLast((reading) => reading.aroundC !== undefined)?.aroundC
  const isCooling = last !== undefined && (before === undefined || last.temperatureC < before.temperatureC)
  const { values, reasons } = coolingClock({
    startClockMin,
    ...(last && { reading: last }),
    ...(before && isCooling && { before }),
    ...(aroundC !== undefined && { aroundC }),
  })
  const base = {
    coolingId,
    values,
    reasons,
    warmByMs: startMs + warm.withinMin * MS_PER_MIN,
    coldByMs: startMs + cold.withinMin * MS_PER_MIN,
  }
  const verdicts = told.map((reading) => coolingClock({ startClockMin, reading }).warnings[0]!)
  const firstEnd = verdicts.find(({ key }) => key !== 'keeping:cooling-in-time')
  if (firstEnd)
    return { ...base, standing: firstEnd.key === 'keeping:cooling-done' ? 'cold' : 'too-late', next: firstEnd }
  if (nowMs > base.coldByMs) return { ...base, standing: 'too-late', next: say('keeping:pan-never-read-cold') }
  const isWarmShown = told.some(({ temperatureC }) => convert(temperatureC, 'C', 'F') <= warm.toF)
  const goal = isWarmShown ? cold.toF : warm.toF
  const limit = { value: goal, unit: 'F' } as const
  if (!isWarmShown && nowMs > base.warmByMs)
    return { ...base, standing: 'read-now', next: say('keeping:pan-read-now', { limit }) }
  if (last && before && !isCooling) return { ...base, standing: 'cooling', next: say('keeping:not-cooling') }
  return { ...base, standing: 'cooling', next: say('keeping:pan-read-again', { limit }) }
}

/** Minutes after the midnight that began the day, on the clock of a place. */
export function clockMinAt(ms: number, zone: string): number {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    hour: 'numeric',
    minute: 'numeric',
  }).formatToParts(ms)
  const of = Object.fromEntries(parts.map(({ type, value }) => [type, Number(value)]))
  return of.hour! * 60 + of.minute!
}
