/** Cooling, chilling and freezing: the clock of the cooling window, a bag's freezing time, a freezer's load for a day. */
import { coolingWindow, ruleFor } from '@crib/guidance'
import {
  type CoolingReadings,
  convert,
  coolingMinutes,
  freezingHoursPham1986,
  hominyHeats,
  type Reckoned,
  type Sentence,
} from '@crib/science'
import { down, nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface CoolingInput {
  /** When it was at 135 °F, or came off the heat. [ClockMin] */
  readonly startClockMin: number
  /** Now, and how warm the middle is. */
  readonly reading?: { readonly clockMin: number; readonly temperatureC: number }
  /** An earlier reading, to estimate by. */
  readonly before?: { readonly clockMin: number; readonly temperatureC: number }
  /** What it stands in. [°C] */
  readonly aroundC?: number
}

export interface ColdAnswer {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/**
 * The two clock times by which cooked hominy must be cold, where it stands now, and an estimate from two readings.
 *
 * Off the heat at 10:00: 70 °F by 12:00, 41 °F by 16:00.
 *
 * @throws {RangeError} for a reading before the start.
 * @source food-code-cooling 3-501.14; the estimate by newton-cooling
 */
export function coolingClock(input: CoolingInput): ColdAnswer {
  const { startClockMin, reading } = input
  if (reading && reading.clockMin < startClockMin)
    throw new RangeError('the reading lies before the start; look at the clock')
  const window = coolingWindow()
  const [warm, cold] = window.steps
  const due = (id: string, withinMin: number): Reckoned =>
    reckon({
      id,
      value: startClockMin + withinMin,
      unit: 'ClockMin',
      rounding: down(1),
      basis: 'published',
      sourceKeys: window.sourceKeys,
      inputs: { startClockMin },
    })
  const estimates = estimate(input, convert(warm.toF, 'F', 'C'), convert(cold.toF, 'F', 'C'))
  return {
    values: [due('warmByClockMin', warm.withinMin), due('coldByClockMin', cold.withinMin), ...estimates],
    reasons: [window.say],
    warnings: reading ? [standing(reading, startClockMin)] : [],
  }
}

function standing({ clockMin, temperatureC }: NonNullable<CoolingInput['reading']>, startClockMin: number): Sentence {
  const [warm, cold] = coolingWindow().steps
  const minutes = clockMin - startClockMin
  const readsF = convert(temperatureC, 'C', 'F')
  if (readsF <= cold.toF) return say(minutes <= cold.withinMin ? 'keeping:cooling-done' : 'keeping:cooling-too-late')
  if (minutes > cold.withinMin) return say('keeping:cooling-too-late')
  if (readsF <= warm.toF || minutes <= warm.withinMin) return say('keeping:cooling-in-time')
  return say('keeping:cooling-too-late')
}

function estimate(
  { reading, before, aroundC }: Pick<CoolingInput, 'reading' | 'before' | 'aroundC'>,
  warmC: number,
  coldC: number,
): Reckoned[] {
  if (!reading || !before || aroundC === undefined) return []
  const readings: CoolingReadings = {
    firstC: before.temperatureC,
    secondC: reading.temperatureC,
    minutesBetween: reading.clockMin - before.clockMin,
    aroundC,
  }
  return (
    [
      ['warmAboutClockMin', warmC],
      ['coldAboutClockMin', coldC],
    ] as const
  ).flatMap(([id, toC]) => {
    const minutes = coolingMinutes(readings, toC)
    if (minutes === null) return []
    const value = reading.clockMin + minutes
    const sourceKeys = ['newton-cooling']
    return [
      reckon({ id, value, unit: 'ClockMin', rounding: up(5), basis: 'computed', sourceKeys, inputs: { aroundC } }),
    ]
  })
}

export interface FreezingInput {
  readonly bagThicknessM: number
  /** Of the drained hominy. [fraction] */
  readonly wetFraction: number
  readonly startC: number
  readonly freezerC: number
  readonly freezerFt3?: number
}

/** Heat through a bag: still air on one side and a shelf on the other, to moving air. [W/(m2 K)]  common practice, no source */
const SURFACE = { still: 6, middle: 10, moving: 18 } as const
/** Frozen hominy, as sweet corn. [W/(m K)]  common practice, no source */
const CONDUCTIVITY = 1.2

/**
 * Hours for the middle of a flat bag to come within 3 °C of the freezer, and how much a freezer takes in a day.
 *
 * @throws {ValidRangeError} for a bag, food or freezer out of range.
 * @source pham-1986; usda-garden-produce for the load
 */
export function freezingPlan({ bagThicknessM, wetFraction, startC, freezerC, freezerFt3 }: FreezingInput): ColdAnswer {
  const hours = (surfaceWPerM2K: number): number =>
    freezingHoursPham1986({
      shape: 'slab',
      thicknessM: bagThicknessM,
      densityKgPerM3: 1000,
      conductivityWPerMK: CONDUCTIVITY,
      surfaceWPerM2K,
      mediumC: freezerC,
      startC,
      centreC: freezerC + 3,
      ...hominyHeats(wetFraction),
    })
  const load = ruleFor('freezer-load', 'per-cubic-foot').figure
  return {
    values: [
      reckon({
        id: 'freezingH',
        value: hours(SURFACE.middle),
        low: hours(SURFACE.moving),
        high: hours(SURFACE.still),
        unit: 'H',
        rounding: up(0.5),
        basis: 'computed',
        sourceKeys: ['pham-1986', 'ashrae-refrigeration-2006-ch9'],
        inputs: { bagThicknessM, wetFraction, startC, freezerC },
      }),
      ...(freezerFt3 === undefined
        ? []
        : [
            reckon({
              id: 'loadPerDayLb',
              value: load.value * freezerFt3,
              low: load.low! * freezerFt3,
              high: load.high! * freezerFt3,
              unit: 'Lb',
              rounding: nearest(1),
              basis: 'published',
              sourceKeys: load.sourceKeys,
              inputs: { freezerFt3 },
            }),
          ]),
    ],
    reasons: [say('keeping:freeze-flat')],
    warnings: [say('keeping:freeze-cold-first')],
  }
}
