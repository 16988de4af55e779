/** One day, or two where one is too long: hull today, chill within the cooling window, can tomorrow. True length first. */
import type { Reckoned, Sentence } from '@crib/science'
import { formatDuration } from '@crib/wording'
import { reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import type { DayInput, DayPotLoad, DayStage } from './day-input.ts'
import { type Day, dayTimeline } from './timeline.ts'

/** Longer than this is offered as two days. [min]  project rule: ten hours on one's feet */
export const DAY_LIMIT_MIN = 600
/** Spreading a pot-load to cool, hands on. [min]  common practice, no source */
const SPREAD_TO_CHILL_MIN = 10

export interface DayPlan {
  readonly day: Day
  readonly isTooLong: boolean
  /** Offered whenever hulling and canning share the day. */
  readonly twoDays: { readonly hull: Day; readonly can: Day } | null
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

export interface DayPlanInput {
  readonly middle: DayInput
  /** The same day with every stage at its shortest and longest. */
  readonly low?: DayInput
  readonly high?: DayInput
  readonly dayLimitMin?: number
}

/** Lays out the day, and the two-day way where hulling and canning share it. */
export function dayPlan({ middle, low, high, dayLimitMin = DAY_LIMIT_MIN }: DayPlanInput): DayPlan {
  const day = dayTimeline(middle)
  const length = (input: DayInput | undefined) => (input ? dayTimeline(input).doorToDoorMin : undefined)
  const isTooLong = day.doorToDoorMin > dayLimitMin
  const loads = middle.rounds.flat()
  const twoDays = middle.potLoads.length > 0 && loads.length > 0 ? splitInTwo(middle) : null
  const longerHalf = twoDays ? Math.max(twoDays.hull.doorToDoorMin, twoDays.can.doorToDoorMin) : 0
  const stillLong = longerHalf > dayLimitMin ? longerHalf : null
  const inputs = {
    potLoads: middle.potLoads.length,
    loads: loads.length,
    rounds: middle.rounds.length,
    people: middle.peopleCount ?? null,
    setUpMin: middle.setUpMin,
    cleanUpMin: middle.cleanUpMin,
  }
  const value = (id: string, of: number, unit: 'Min' | 'ClockMin', range: { low?: number; high?: number } = {}) =>
    reckon({ id, value: of, unit, rounding: up(1), ...range, basis: 'project-rule', inputs })
  const shortest = length(low)
  const longest = length(high)
  const pots = new Set(middle.potLoads.map(({ potName }) => potName)).size
  const waitMin = day.waits.reduce((sum, { fromMin, toMin }) => sum + (toMin - fromMin), 0)
  return {
    day,
    isTooLong,
    twoDays,
    values: [
      value('doorToDoorMin', day.doorToDoorMin, 'Min', {
        ...(shortest !== undefined && { low: Math.min(shortest, day.doorToDoorMin) }),
        ...(longest !== undefined && { high: Math.max(longest, day.doorToDoorMin) }),
      }),
      value('startClockMin', day.startMin, 'ClockMin'),
      value('finishClockMin', day.finishMin, 'ClockMin'),
      ...(middle.potLoads.length > 0 && loads.length > 0 ? [value('hominyWaitsMin', waitMin, 'Min')] : []),
      ...(twoDays
        ? [value('hullDayMin', twoDays.hull.doorToDoorMin, 'Min'), value('canDayMin', twoDays.can.doorToDoorMin, 'Min')]
        : []),
    ],
    reasons: [
      say('season:door-to-door', { length: formatDuration(day.doorToDoorMin) }),
      ...(middle.potLoads.length > 0 && loads.length > 0
        ? [say('season:true-length', { potLoads: middle.potLoads.length, count: pots, loads: loads.length })]
        : []),
      ...(loads.length > 0 ? [say('season:waits-hot-or-chilled')] : []),
      ...(twoDays ? [say('season:hull-today'), say('season:cooling-window')] : []),
    ],
    warnings: isTooLong
      ? [
          middle.peopleCount === 1 ? say('season:two-days-one-person') : say('season:two-days'),
          ...(stillLong === null ? [] : [say('season:still-long', { length: formatDuration(stillLong) })]),
        ]
      : [],
  }
}

/** Today without the last cook and with chilling; tomorrow the last cook, as a reheat in fresh water, and the canner. */
function splitInTwo(input: DayInput): { readonly hull: Day; readonly can: Day } {
  const chill: DayStage = {
    id: 'chill',
    title: say('season:step-chill'),
    minutes: SPREAD_TO_CHILL_MIN,
    needsHands: true,
    canWaitAfter: true,
    usesPot: true,
    isHotPack: false,
  }
  const part = (change: (potLoad: DayPotLoad) => readonly DayStage[]) =>
    input.potLoads.map((potLoad) => ({ ...potLoad, stages: change(potLoad) }))
  return {
    hull: dayTimeline({
      ...input,
      rounds: [],
      potLoads: part(({ stages }) => [...stages.filter(({ isHotPack }) => !isHotPack), chill]),
    }),
    can: dayTimeline({
      ...input,
      potLoads: part(({ stages }) =>
        stages.filter(({ isHotPack }) => isHotPack).map((stage) => ({ ...stage, title: say('season:step-reheat') })),
      ),
    }),
  }
}
