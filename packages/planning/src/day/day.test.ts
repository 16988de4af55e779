import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cannerLoads } from '../shared/canner-loads.ts'
import { say } from '../shared/say.ts'
import type { DayInput, DayStage, LoadTimings } from './day-input.ts'
import { dayPlan } from './day-plan.ts'
import { type Block, schedule } from './schedule.ts'
import { type Day, dayTimeline } from './timeline.ts'

/** Their own timings per load, scenario S6: heat 20, vent 10, come-up 8, process 60, cool 40, wait 10, unload 5; reload 10. */
const S6_TIMINGS: LoadTimings = {
  fill: 0,
  heat: 20,
  vent: 10,
  comeUp: 8,
  process: 60,
  coolToZero: 40,
  lidWait: 10,
  unload: 5,
  reload: 10,
}

const S6: DayInput = {
  clock: { from: 'start', clockMin: 510 },
  setUpMin: 0,
  cleanUpMin: 0,
  potLoads: [],
  canners: ['A', 'B', 'C'].map((name) => ({ name, timings: S6_TIMINGS })),
  rounds: cannerLoads(96, [
    { name: 'A', capacity: 16 },
    { name: 'B', capacity: 9 },
    { name: 'C', capacity: 9 },
  ]),
}

function stage(id: string, minutes: number, parts: Partial<DayStage> = {}): DayStage {
  return {
    id,
    title: say('kettle:stage-own', { title: id }),
    minutes,
    needsHands: false,
    canWaitAfter: true,
    usesPot: true,
    isHotPack: false,
    ...parts,
  }
}

/** Work of two days: three pot-loads in one pot, three loads in one canner, one person. */
const ONE_POT: DayInput = {
  clock: { from: 'start', clockMin: 480 },
  setUpMin: 30,
  cleanUpMin: 30,
  potLoads: [1, 2, 3].map((number) => ({
    number,
    potName: 'big pot',
    jarCount: 6,
    stages: [
      stage('sort', 15, { needsHands: true, usesPot: false }),
      stage('boil', 85, { canWaitAfter: false }),
      stage('wash', 40, { needsHands: true }),
      stage('last-cook', 45, { isHotPack: true }),
    ],
  })),
  canners: [{ name: 'yard canner', timings: { ...S6_TIMINGS, fill: 15, process: 70 } }],
  rounds: cannerLoads(18, [{ name: 'yard canner', capacity: 7 }]),
  peopleCount: 1,
}

describe('S6 by the clock', () => {
  test('three rounds of 153 min and two reloads are 479 min: 08:30 to 16:29', () => {
    const day = dayTimeline(S6)
    expect(day.doorToDoorMin).toBe(479)
    expect(day.finishMin).toBe(989)
  })

  test('laid out back from 16:29 it begins at 08:30', () => {
    expect(dayTimeline({ ...S6, clock: { from: 'finish', clockMin: 989 } }).startMin).toBe(510)
  })

  test('three people at three canners are enough, two make it longer', () => {
    expect(dayTimeline({ ...S6, peopleCount: 3 }).doorToDoorMin).toBe(479)
    expect(dayTimeline({ ...S6, peopleCount: 2 }).doorToDoorMin).toBeGreaterThan(479)
  })
})

describe('one pot, one canner, one person', () => {
  const plan = dayPlan({ middle: ONE_POT })

  test('is longer than a day, and two days are laid out beside it', () => {
    expect(plan.isTooLong).toBe(true)
    expect(plan.warnings.map(({ key }) => key)).toContain('season:two-days-one-person')
    expect(plan.twoDays!.hull.doorToDoorMin).toBeLessThan(plan.day.doorToDoorMin)
    expect(plan.twoDays!.can.doorToDoorMin).toBeLessThan(plan.day.doorToDoorMin)
  })

  test('tomorrow begins with a reheat in fresh water before every load', () => {
    const { can } = plan.twoDays!
    const reheats = can.steps.filter(({ title }) => title.key === 'season:step-reheat')
    expect(reheats).toHaveLength(3)
    for (const load of [1, 2, 3]) {
      const fill = can.steps.find(({ id }) => id === `load-${load}:fill`)!
      expect(reheats[load - 1]!.endMin).toBeLessThanOrEqual(fill.startMin)
    }
  })

  test('today ends with chilling, and nothing is canned', () => {
    const { hull } = plan.twoDays!
    expect(hull.steps.filter(({ title }) => title.key === 'season:step-chill')).toHaveLength(3)
    expect(hull.steps.some(({ load }) => load !== undefined)).toBe(false)
  })

  test('every wait of hominy is named, from its pot to its load', () => {
    const slowCanner = dayTimeline({
      ...ONE_POT,
      canners: [{ name: 'yard canner', timings: { ...S6_TIMINGS, fill: 15, process: 240 } }],
    })
    expect(slowCanner.waits.map(({ potLoad }) => potLoad)).toContain(2)
    for (const wait of slowCanner.waits) expect(wait.toMin).toBeGreaterThan(wait.fromMin)
  })

  test('a second pot shortens the hulling', () => {
    const hulling = { ...ONE_POT, rounds: [], peopleCount: 2 }
    const potLoads = ONE_POT.potLoads.map((load) => ({ ...load, potName: `pot ${load.number % 2}` }))
    expect(dayTimeline({ ...hulling, potLoads }).doorToDoorMin).toBeLessThan(dayTimeline(hulling).doorToDoorMin)
  })
})

/** Any day: pot-loads over pots, jars over canners, some people. */
const anyDay = fc
  .record({
    pots: fc.integer({ min: 1, max: 3 }),
    potLoads: fc.integer({ min: 0, max: 5 }),
    stages: fc.array(
      fc.record({ minutes: fc.integer({ min: 0, max: 90 }), needsHands: fc.boolean(), canWaitAfter: fc.boolean() }),
      { minLength: 1, maxLength: 5 },
    ),
    capacities: fc.array(fc.integer({ min: 1, max: 16 }), { minLength: 1, maxLength: 3 }),
    jars: fc.integer({ min: 1, max: 60 }),
    people: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ pots, potLoads, stages, capacities, jars, people }): DayInput => {
    const canners = capacities.map((capacity, index) => ({ name: `canner ${index}`, capacity }))
    return {
      clock: { from: 'start', clockMin: 480 },
      setUpMin: 10,
      cleanUpMin: 10,
      potLoads: Array.from({ length: potLoads }, (_, index) => ({
        number: index + 1,
        potName: `pot ${index % pots}`,
        jarCount: jars / potLoads,
        stages: stages.map((each, at) => stage(`s${at}`, each.minutes, each)),
      })),
      canners: canners.map(({ name }) => ({ name, timings: { ...S6_TIMINGS, fill: 15 } })),
      rounds: cannerLoads(jars, canners),
      peopleCount: people,
    }
  })

/** How many of these intervals hold at once, at most. */
function mostAtOnce(intervals: readonly { startMin: number; endMin: number }[]): number {
  return Math.max(
    0,
    ...intervals.map(
      ({ startMin }) => intervals.filter((other) => other.startMin <= startMin && other.endMin > startMin).length,
    ),
  )
}

describe('any day', () => {
  test('no pot, canner or pair of hands is used twice at once', () => {
    fc.assert(
      fc.property(anyDay, (input) => {
        const day: Day = dayTimeline(input)
        for (const where of new Set(day.steps.flatMap((step) => step.where ?? []))) {
          expect(mostAtOnce(day.steps.filter((step) => step.where === where))).toBeLessThanOrEqual(1)
        }
        expect(mostAtOnce(day.steps.filter((step) => step.needsHands))).toBeLessThanOrEqual(input.peopleCount!)
      }),
    )
  })

  test('a canner load never pauses between heating and the lid', () => {
    fc.assert(
      fc.property(anyDay, (input) => {
        const { steps } = dayTimeline(input)
        for (const load of input.rounds.flat()) {
          const own = steps.filter((step) => step.load === load.number).sort((a, b) => a.startMin - b.startMin)
          for (let at = 1; at < own.length; at++) expect(own[at]!.startMin).toBe(own[at - 1]!.endMin)
        }
      }),
    )
  })

  test('no load is filled before its hominy is ready', () => {
    fc.assert(
      fc.property(anyDay, (input) => {
        const { steps } = dayTimeline(input)
        const readyAt = (potLoad: number) =>
          Math.max(0, ...steps.filter((step) => step.potLoad === potLoad).map((step) => step.endMin))
        let filled = 0
        for (const load of input.rounds.flat()) {
          filled += load.jarCount
          const starts = Math.min(...steps.filter((step) => step.load === load.number).map((step) => step.startMin))
          let jars = 0
          for (const potLoad of input.potLoads) {
            if (jars < filled - 1e-9) expect(starts).toBeGreaterThanOrEqual(readyAt(potLoad.number))
            jars += potLoad.jarCount
          }
        }
      }),
    )
  })

  test('the same input gives the same day', () => {
    fc.assert(
      fc.property(anyDay, (input) => {
        expect(dayTimeline(input)).toEqual(dayTimeline(input))
      }),
    )
  })
})

describe('the scheduler', () => {
  const block = (id: string, after: string[]): Block => ({
    id,
    after,
    segments: [{ id, minutes: 5, needsHands: true }],
  })

  test('refuses work that waits for itself', () => {
    expect(() => schedule([block('a', ['b']), block('b', ['a'])], 1)).toThrow(RangeError)
  })

  test('gives one pair of hands one thing at a time', () => {
    expect(schedule([block('a', []), block('b', [])], 1).map(({ startMin }) => startMin)).toEqual([0, 5])
    expect(schedule([block('a', []), block('b', [])], 2).map(({ startMin }) => startMin)).toEqual([0, 0])
  })
})
