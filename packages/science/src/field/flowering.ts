/**
 * When corn sheds and when silks take pollen, and how far another corn's shedding meets it. Days are whole numbers on
 * any one calendar. Sowing dates are a plan, not proof: these are days seen. Leaves out late tillers and odd plants.
 */
import { requireInRange } from '../errors.ts'

export interface DayWindow {
  readonly fromDay: number
  readonly toDay: number
}

/** Tassels open over about six days round the day half of them do; one sheds up to eight days: 14 in all. [days] */
const TASSELS_OPEN_DAYS = 3
const SHEDS_DAYS = 8
/** Silks all come out in 3 to 6 days and take pollen for up to ten. [days] */
const SILKS_OUT_DAYS = 3
const SILK_TAKES_DAYS = 10
/** Shedding begins 2 to 3 days before silk. [days] */
const SHED_BEFORE_SILK_DAYS = 2.5
/** Half the windows' lengths taken as two standard deviations. [days]  Project rule, from the lengths above. */
const SHED_SD_DAYS = 3.5
const SILK_SD_DAYS = 4
const SOURCE = 'extension-corn-flowering'

/**
 * Days on which a stand sheds pollen, from the day half its tassels had opened. [days]  Fourteen days.
 *
 * @throws {ValidRangeError} when the day is no finite number.
 * @source extension-corn-flowering: a tassel 5-8 days, a field 10-14
 */
export function shedWindow(halfTasselDay: number): DayWindow {
  requireDay('halfTasselDay', halfTasselDay)
  return { fromDay: halfTasselDay - TASSELS_OPEN_DAYS, toDay: halfTasselDay + TASSELS_OPEN_DAYS + SHEDS_DAYS }
}

/**
 * Days on which a stand's silks take pollen, from the day half of the plants showed silk. [days]  Sixteen days.
 *
 * @throws {ValidRangeError} when the day is no finite number.
 * @source extension-corn-flowering: silks all out in 3-6 days, growing up to 10
 */
export function silkWindow(halfSilkDay: number): DayWindow {
  requireDay('halfSilkDay', halfSilkDay)
  return { fromDay: halfSilkDay - SILKS_OUT_DAYS, toDay: halfSilkDay + SILKS_OUT_DAYS + SILK_TAKES_DAYS }
}

/**
 * Length of what two windows share; 0 when they do not meet. [days]
 *
 * @source none: the shorter end less the later beginning
 */
export function overlapDays(a: DayWindow, b: DayWindow): number {
  return Math.max(0, Math.min(a.toDay, b.toDay) - Math.max(a.fromDay, b.fromDay))
}

/**
 * How many days another corn sheds later (positive) or earlier than this corn's own pollen would. [days]
 *
 * @source extension-corn-flowering: own shedding begins 2-3 days before silk
 */
export function shedLagDays({
  neighbourHalfTasselDay,
  ownHalfSilkDay,
}: {
  readonly neighbourHalfTasselDay: number
  readonly ownHalfSilkDay: number
}): number {
  requireDay('neighbourHalfTasselDay', neighbourHalfTasselDay)
  requireDay('ownHalfSilkDay', ownHalfSilkDay)
  return neighbourHalfTasselDay - (ownHalfSilkDay - SHED_BEFORE_SILK_DAYS)
}

/**
 * Share of the crossing that is left when another corn sheds so many days apart; 1 at the same time. [fraction]
 *
 * exp(-lag^2 / (2 (3.5^2 + 4^2))): two bell-shaped windows sliding past each other. At 14 days 0.031, at 19 days 0.0017.
 * Real stands have longer tails: crossing was still seen in corn sown 19 days apart (iowa-allee-2003).
 *
 * @throws {ValidRangeError} beyond 365 days either way.
 * @source extension-corn-flowering for the windows' lengths; their shape is a project rule
 */
export function shedMeetingFraction(lagDays: number): number {
  requireInRange('lagDays', lagDays, { min: -365, max: 365, unit: 'days', source: SOURCE })
  return Math.exp(-(lagDays ** 2) / (2 * (SHED_SD_DAYS ** 2 + SILK_SD_DAYS ** 2)))
}

function requireDay(argument: string, day: number): void {
  requireInRange(argument, day, { min: -1e6, max: 1e6, unit: 'days', source: SOURCE })
}
