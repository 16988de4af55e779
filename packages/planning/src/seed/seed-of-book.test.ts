/** What the book knows of a lot for its reserve and for growing it out. Every name and number is invented. */
import { applyEntries, NO_FACTS, type StoredEntry } from '@crib/journal'
import { shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { testKitchen } from '../../../journal/src/testing/invented.ts'
import { isSameCorn } from './corn-names.ts'
import { growOut } from './grow-out.ts'
import { offTypeCounts, offTypesOfCorn } from './off-types-of-corn.ts'
import { nextSowingOn, reserveFromBook } from './reserve-from-book.ts'
import { reservePlan } from './reserve-plan.ts'
import { storeFromDay } from './seed-lot-view.ts'

const words = createWords()
const { author: authorOf, kitchenId, newId, clock } = testKitchen()
clock.set('2026-10-01T12:00:00Z')
const author = authorOf()
const seedLotId = newId()
const factsOf = (...entries: StoredEntry[]) =>
  applyEntries(NO_FACTS, [
    author.write('kitchen-opened', { kitchenId, name: 'Kettlebrook Hollow', demo: true }),
    ...entries,
  ])
const lot = (more: { storeC?: number; kernelWetFraction?: number; kernelsCount?: number } = {}) =>
  author.write('seed-lot-recorded', {
    seedLotId,
    name: 'Heron Foot flint 2025',
    seasonYear: 2025,
    putByOn: '2025-11-01',
    source: 'own',
    containers: [],
    ...more,
  })
const tested = (testedOn: string, sproutedCount: number) =>
  author.write('germination-tested', { seedLotId, testedOn, sproutedCount, ofCount: 50 })
const only = (...entries: StoredEntry[]) => factsOf(...entries).seedLots[seedLotId]!

describe('a reserve from the book', () => {
  test('has no test to go by before there is one, and no ageing before the store is told', () => {
    const facts = factsOf(lot())
    expect(reserveFromBook(facts.seedLots[seedLotId]!, facts, '2027-05-10')).toBeNull()
    const known = factsOf(lot(), tested('2026-04-20', 46))
    const found = reserveFromBook(known.seedLots[seedLotId]!, known, '2027-05-10')!
    expect(found).toEqual({ isAged: false, input: { sproutedCount: 46, testedCount: 50 } })
  })

  test('ages the second planting by the store from the day of the test on, and asks more kernels for it', () => {
    const facts = factsOf(
      ...[lot({ storeC: 20, kernelWetFraction: 0.12 }), tested('2026-04-20', 46)],
      author.write('seed-store-noted', { seedLotId, notedOn: '2026-06-01', storeC: 10 }),
    )
    const { input, isAged } = reserveFromBook(facts.seedLots[seedLotId]!, facts, '2026-05-10')!
    expect(isAged).toBe(true)
    expect(input.daysToFirst).toBe(20)
    // 42 days of the first warmth were left on 20 April; the second holds on.
    expect(input.record?.map(({ days, temperatureC }) => [days, temperatureC]).at(0)).toEqual([42, 20])
    expect(input.record?.at(1)?.temperatureC).toBe(10)
    const plan = reservePlan({
      plantsAimCount: 240,
      plantingsCount: 3,
      maturityFraction: 0.8,
      testKernelsCount: 50,
      giftKernelsCount: 0,
      kernelsPerOz: 110,
      parentEarsCount: 60,
      line: 'on-average',
      ...input,
    })
    if (plan.kind !== 'planned') throw new Error(plan.refused)
    const [first, second, third] = plan.plantings.map(({ onAverageKernels }) => onAverageKernels)
    expect(second).toBeGreaterThan(first!)
    expect(third).toBeGreaterThan(second!)
    expect(plan.warnings.map(({ key }) => key)).not.toContain('seed:no-ageing-counted')
  })

  test('leaves the store out where it is off the equation, rather than stretch it', () => {
    expect(storeFromDay(only(lot({ storeC: 20, kernelWetFraction: 0.25 })), '2026-04-20')).toEqual({})
    expect(storeFromDay(only(lot()), '2026-04-20')).toEqual({})
  })

  test.each([
    ['2026-03-01', '2026-05-10'],
    ['2026-05-10', '2026-05-10'],
    ['2026-05-11', '2027-05-10'],
  ])('on %s the next sowing is taken as %s', (today, next) => expect(nextSowingOn(today)).toBe(next))
})

describe('growing a lot out', () => {
  const said = (told: ReturnType<typeof growOut>) => told.reasons.map((one) => words.sentence(one)).join(' ')

  test('waits while it sprouts well and is freshly tested', () => {
    const told = growOut(only(lot({ kernelsCount: 2000 }), tested('2026-04-20', 46)), '2026-05-01', 345)
    expect(told.kind).toBe('wait')
    expect(said(told)).toContain('It can wait. Test it again by 20 Apr 2027.')
  })

  // First 96 %: below 82 % it is grown anew (rao-2006: 85 % of the first).
  test('is asked for below 85 % of the first test, and when two sowings are no longer left', () => {
    const weak = growOut(
      only(lot({ kernelsCount: 2000 }), tested('2026-01-20', 48), tested('2026-04-20', 40)),
      '2026-05-01',
    )
    expect(weak.kind).toBe('grow-out')
    expect(said(weak)).toContain('below the 82 %')
    const few = growOut(only(lot({ kernelsCount: 700 }), tested('2026-04-20', 46)), '2026-05-01', 345)
    expect(few.kind).toBe('grow-out')
    expect(said(few)).toContain('650 kernels are left, and one sowing takes 345')
  })

  test('is not decided without a fresh test', () => {
    expect(growOut(only(lot()), '2026-05-01').kind).toBe('test-first')
    const old = growOut(only(lot(), tested('2025-11-20', 46)), '2027-03-01')
    expect(old.kind).toBe('test-first')
    expect(said(old)).toContain('another was due by')
  })
})

describe('off-types of a corn', () => {
  const counted = (countedOn: string, offTypesCount: number) =>
    author.write('off-types-counted', { seedLotId, countedOn, what: 'ears', offTypesCount, ofCount: 200 })

  test('are taken from every lot of its name, by year, and their trend is told', () => {
    const { seedLots } = factsOf(lot(), counted('2027-10-01', 9), counted('2026-10-01', 3), counted('2028-10-01', 30))
    expect(offTypeCounts(seedLots, 'heron foot flint', 'ears').map(({ year }) => year)).toEqual([2026, 2027, 2028])
    expect(offTypeCounts(seedLots, 'heron foot flint', 'plants')).toEqual([])
    expect(offTypesOfCorn(seedLots, 'Lantern flint', 'ears')).toBeNull()
    const told = offTypesOfCorn(seedLots, 'Heron Foot flint', 'ears')
    if (!told?.ok) throw new Error('told')
    const ratio = told.values.find(({ id }) => id === 'oddsRatioPerYear')!
    expect(ratio.low).toBeGreaterThan(1)
    expect(shownValue(told.values.find(({ id }) => id === 'shareFraction:2026')!)).toBe(0.015)
  })
})

test.each([
  ['Heron Foot flint 2026', 'heron  foot flint', true],
  ['Heron Foot flint (2026)', 'Heron Foot flint 2027', true],
  ['Heron Foot', 'Heron Foot flint', false],
  ['2026', '2027', false],
])('%s and %s are one corn: %s', (one, other, isSame) => expect(isSameCorn(one, other)).toBe(isSame))
