import type { SeedLotFact } from '@crib/journal'
import { beliefMeanFraction, probitDaysEllisRoberts1980, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { daysBetween, reserveStanding, seedLotView, storeOfLot } from './seed-lot-view.ts'
import { probitsInDays } from './seed-store.ts'

const words = createWords()
const AT = {
  instant: '2026-10-20T15:00:00.000Z',
  zone: 'America/Toronto',
  entryId: 'e',
  personId: 'p',
  deviceId: 'd',
  visibility: 'keeper',
} as const
const tested = (testedOn: string, sproutedCount: number, ofCount: number) => ({
  seedLotId: 'lot',
  testedOn,
  sproutedCount,
  ofCount,
  at: AT,
})

/** Invented: the reserve of Kettlebrook Hollow. */
const LOT: SeedLotFact = {
  seedLotId: 'lot',
  name: 'Heron Foot flint',
  seasonYear: 2026,
  putByOn: '2026-10-20',
  source: 'own',
  parentEarsCount: 60,
  containers: [
    { container: 'tin 1', place: 'back room' },
    { container: 'tin 2', place: 'at the neighbour' },
  ],
  at: AT,
  tests: [tested('2026-11-05', 49, 50)],
  storeNotes: [],
  given: [],
  sown: [],
  offTypes: [],
  kernels: { putByCount: 1020, testedCount: 50, givenCount: 0, sownCount: 0, leftCount: 970 },
  kernelWetFraction: 0.12,
  storeC: 10,
}
const said = (sentences: readonly { key: string }[]) => sentences.map((one) => words.sentence(one)).join('\n')

describe('a seed lot on a day', () => {
  test('ages by its store from the day it was put by', () => {
    const spring = seedLotView(LOT, '2027-04-20')
    const later = seedLotView(LOT, '2030-04-20')
    expect(spring.storedDays).toBe(182)
    const [now, then] = [spring, later].map(({ germination }) => beliefMeanFraction(germination!)) as [number, number]
    expect(then).toBeLessThan(now)
    expect(shownValue(spring.values.find(({ id }) => id === 'kernelsLeft')!)).toBe(970)
  })

  test('a word on the store holds until the next', () => {
    const notes = [
      { seedLotId: 'lot', notedOn: '2027-06-01', storeC: 20, at: AT },
      { seedLotId: 'lot', notedOn: '2027-09-01', storeC: 10, kernelWetFraction: 0.1, at: AT },
    ]
    const store = storeOfLot({ ...LOT, storeNotes: notes })
    const days = (wetFraction: number, temperatureC: number) =>
      probitDaysEllisRoberts1980({ wetFraction, temperatureC })
    // 224 days at 10 °C, 92 at 20 °C, then 100 at 10 °C and 10 %.
    const expected = 224 / days(0.12, 10) + 92 / days(0.12, 20) + 100 / days(0.1, 10)
    expect(probitsInDays(store, 416)).toBeCloseTo(expected, 10)
  })

  test('without a store only its newest test speaks, and without either nothing is claimed', () => {
    const { storeC: _, kernelWetFraction: __, ...bare } = LOT
    const view = seedLotView(bare, '2027-04-20')
    expect(view.ageing).toBeNull()
    expect(beliefMeanFraction(view.germination!)).toBeCloseTo(49.5 / 51, 3)
    expect(said(view.reasons)).toContain('only its newest test')
    const untested = seedLotView({ ...bare, tests: [] }, '2027-04-20')
    expect(untested.germination).toBeNull()
    expect(untested.testAgainBy).toBe('2027-04-20')
  })

  test('is tested again within the year, sooner where it ages fast', () => {
    const cold = seedLotView({ ...LOT, storeC: -18, kernelWetFraction: 0.08 }, '2026-12-01')
    expect(cold.testAgainBy).toBe('2027-11-05')
    const warm = seedLotView({ ...LOT, storeC: 25, kernelWetFraction: 0.13 }, '2026-12-01')
    expect(daysBetween('2026-11-05', warm.testAgainBy)).toBeLessThan(60)
  })

  test('asks to be grown out once it lies below 85 % of its first test', () => {
    const old = seedLotView({ ...LOT, tests: [...LOT.tests, tested('2029-04-01', 35, 50)] }, '2029-04-02')
    expect(said(old.warnings)).toContain('grow it anew')
    expect(said(seedLotView(LOT, '2026-12-01').warnings)).not.toContain('grow it anew')
  })

  test('says what is out of order: a test before the seed was put by, a store outside the equation', () => {
    const early = seedLotView({ ...LOT, tests: [tested('2026-10-01', 9, 10)] }, '2026-12-01')
    expect(said(early.warnings)).toContain('before the seed was put by')
    const wet = seedLotView({ ...LOT, kernelWetFraction: 0.24 }, '2026-12-01')
    expect(said(wet.warnings)).toContain('Dry the seed first')
    expect(wet.ageing).toBeNull()
  })
})

describe('whether the reserve is met', () => {
  test('nothing is food until it is, and the shortfall is named', () => {
    expect(reserveStanding([LOT], 970).isMet).toBe(true)
    const short = reserveStanding([LOT], 1019)
    expect(short.isMet).toBe(false)
    expect(said(short.sentences)).toContain('so 49 short')
    expect(short.warnings).toEqual([])
  })

  test('one tin in one place asks for a second; a lot never counted holds nothing by this book', () => {
    const one = reserveStanding([{ ...LOT, containers: [LOT.containers[0]!], kernels: null }], 10)
    expect(one.isMet).toBe(false)
    expect(said(one.warnings)).toContain('two containers in two places')
    expect(said(one.warnings)).toContain('Heron Foot flint')
  })
})
