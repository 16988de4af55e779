/** What of the kitchen runs by the clock while nobody looks: pans that cool, trays to be weighed. For the first page. */
import type { CoolingFact, DryingFact, Facts } from '@crib/journal'
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { clockMinAt, coolingPan } from './cooling-pan.ts'
import { dryingTray } from './drying-tray.ts'

export interface OnTheClock {
  readonly id: string
  readonly what: 'pan' | 'tray'
  /** True when it should be done now. */
  readonly isDue: boolean
  /** When its next clock time falls. [epoch ms] */
  readonly dueMs: number
  readonly say: Sentence
}

const MS_PER_MIN = 60_000
const MS_PER_H = 60 * MS_PER_MIN
/** The shortest printed time for one layer at 140 °F. [h]  @source msu-01600519 */
const HOMINY_FIRST_H = 6
/** Whatever dries is looked at once a day. [h]  common practice, no source */
const LOOK_EVERY_H = 24

/** Open pans and trays at `nowMs` (epoch ms): what is due first, then by their time. `zone` is the clock on the wall. */
export function onTheClock(
  { coolings, dryings }: Pick<Facts, 'coolings' | 'dryings'>,
  nowMs: number,
  zone: string,
): readonly OnTheClock[] {
  const pans = Object.values(coolings).flatMap((pan) => (pan.ended === null ? panOnTheClock(pan, nowMs) : []))
  const trays = Object.values(dryings).flatMap((tray) => (tray.ended === null ? trayOnTheClock(tray, nowMs, zone) : []))
  return [...pans, ...trays].sort((a, b) => Number(b.isDue) - Number(a.isDue) || a.dueMs - b.dueMs)
}

/** A pan that is already cold waits for nothing. */
function panOnTheClock(pan: CoolingFact, nowMs: number): OnTheClock[] {
  const { standing, warmByMs, coldByMs, values } = coolingPan(pan, nowMs)
  if (standing === 'cold') return []
  const base = { id: pan.coolingId, what: 'pan' } as const
  const [warmBy, coldBy] = values
  if (standing === 'too-late')
    return [{ ...base, isDue: true, dueMs: coldByMs, say: say('keeping:clock-pan-too-late', { what: pan.what }) }]
  if (standing === 'read-now')
    return [{ ...base, isDue: true, dueMs: warmByMs, say: say('keeping:clock-pan-read-now', { what: pan.what }) }]
  const by = { warmBy: clockOf(warmBy!.value), coldBy: clockOf(coldBy!.value) }
  return nowMs <= warmByMs
    ? [{ ...base, isDue: false, dueMs: warmByMs, say: say('keeping:clock-pan', { what: pan.what, ...by }) }]
    : [
        {
          ...base,
          isDue: false,
          dueMs: coldByMs,
          say: say('keeping:clock-pan-cold', { what: pan.what, coldBy: by.coldBy }),
        },
      ]
}

function trayOnTheClock(tray: DryingFact, nowMs: number, zone: string): OnTheClock[] {
  const base = { id: tray.dryingId, what: 'tray' } as const
  const { isReady, values } = dryingTray(tray)
  const stopAt = values.find(({ id }) => id === 'stopAtKg')
  if (!stopAt) return []
  if (isReady) {
    const lastMs = Date.parse(tray.weights.at(-1)!.at.instant)
    return [{ ...base, isDue: true, dueMs: lastMs, say: say('keeping:clock-tray-ready', { name: tray.name }) }]
  }
  const dueMs = trayDueMs(tray, stopAt.value)
  const weight = { value: Math.floor(stopAt.value * 100) / 100, unit: 'Kg' } as const
  if (nowMs >= dueMs)
    return [{ ...base, isDue: true, dueMs, say: say('keeping:clock-tray-now', { name: tray.name, weight }) }]
  const at = clockOf(clockMinAt(nowMs, zone) + (dueMs - nowMs) / MS_PER_MIN)
  return [{ ...base, isDue: false, dueMs, say: say('keeping:clock-tray', { name: tray.name, weight, at }) }]
}

/**
 * When a tray is to be weighed next. [epoch ms]
 *
 * Never weighed: hominy after the shortest printed time, else after a day. Weighed: when the straight line through its
 * last two weights meets the weight to stop at, since drying slows down and it is not there before in like air; a day
 * after the last weighing at the latest, and an hour at the soonest.
 *
 * 5 kg at 08:00, 3 kg at 12:00, stop at 1.35 kg: 0.5 kg/h, 3.3 h, so 15:18.
 *
 * @source msu-01600519 for hominy; common practice, no source, for the rest
 */
export function trayDueMs({ what, massKg, at, weights }: DryingFact, stopAtKg: number): number {
  const told = [{ massKg, at }, ...weights].map((one) => ({ massKg: one.massKg, ms: Date.parse(one.at.instant) }))
  const last = told.at(-1)!
  const before = told.at(-2)
  if (!before) return last.ms + (what === 'hominy' ? HOMINY_FIRST_H : LOOK_EVERY_H) * MS_PER_H
  const kgPerMs = (before.massKg - last.massKg) / (last.ms - before.ms)
  const leftMs = kgPerMs > 0 ? (last.massKg - stopAtKg) / kgPerMs : Number.POSITIVE_INFINITY
  return last.ms + Math.min(LOOK_EVERY_H * MS_PER_H, Math.max(MS_PER_H, leftMs))
}

const clockOf = (value: number) => ({ value, unit: 'ClockMin' }) as const
