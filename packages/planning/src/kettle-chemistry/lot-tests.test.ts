import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { type LotTestFound, lotOverTime, readLotTest } from './lot-tests.ts'

const words = createWords()
const VINEGAR = {
  way: 'vinegar',
  sampleMl: 50,
  coldMl: 4.8,
  boiledMl: 5.41,
  acidityGPer100Ml: 5,
  steepedG: 100,
  steepWaterL: 1,
} as const satisfies LotTestFound
const said = (found: LotTestFound) => {
  const read = readLotTest(found)
  return (read.ok ? [...read.reasons, ...read.warnings] : read.why).map((each) => words.sentence(each)).join('\n')
}

test('a strip tells hydroxide to a factor of three, calls it corrosive, and reads nothing below 7', () => {
  const strip = { way: 'strip', stripPH: 12.5, liquorC: 25 } as const
  const read = readLotTest(strip)
  const [value] = read.ok ? read.values : []
  expect((value?.high ?? 0) / (value?.low ?? 1)).toBeGreaterThan(8)
  expect(said(strip)).toMatch(/factor of three/)
  expect(said(strip)).toMatch(/corrosive/)
  expect(said({ ...strip, stripPH: 6 })).toMatch(/outside 7 to 14/)
  expect(said({ ...strip, stripPH: 10 })).not.toMatch(/corrosive/)
})

test('a trial cup tells a share with its range and no equivalents', () => {
  const cup = { way: 'trial-cup', slippedCount: 12, ofCount: 20, boiledMin: 60 } as const
  const read = readLotTest(cup)
  const [value] = read.ok ? read.values : []
  expect(read.ok && read.values.map(({ unit }) => unit)).toEqual(['Fraction'])
  expect(value?.value).toBe(0.6)
  // Clopper and Pearson's 95 % limits of 12 in 20.
  expect(value?.low).toBeCloseTo(0.361, 3)
  expect(value?.high).toBeCloseTo(0.809, 3)
  expect(said({ ...cup, slippedCount: 21 })).toMatch(/more than there were/)
})

test('over time a lot has every test, and its strength only where a test tells it', () => {
  const at = (day: string) => ({ at: { instant: `2026-${day}T09:00:00.000Z`, zone: 'UTC', entryId: day } })
  const lot = {
    tests: [
      { ...at('01-10'), found: VINEGAR, gPerCup: 95 },
      { ...at('03-01'), found: { way: 'strip', stripPH: 12.5, liquorC: 25, steepedG: 100, steepWaterL: 1 } },
      { ...at('04-01'), found: { way: 'strip', stripPH: 12.5, liquorC: 25 } },
      { ...at('05-01'), found: { way: 'trial-cup', slippedCount: 3, ofCount: 20, boiledMin: 60 } },
    ],
  } as unknown as Parameters<typeof lotOverTime>[0]
  const tests = lotOverTime(lot)
  expect(tests.map(({ way }) => way)).toEqual(['vinegar', 'strip', 'strip', 'trial-cup'])
  // vinegar-titration-worked: 0.0901 eq/L and 0.0700 mol/L of hydroxide from 100 g to the litre.
  expect(tests[0]!.alkali?.value).toBeCloseTo(0.901, 2)
  expect(tests[0]!.hydroxide?.value).toBeCloseTo(0.7, 1)
  expect([tests[1]!.alkali, tests[1]!.hydroxide?.unit]).toEqual([undefined, 'EqPerKg'])
  expect(tests.slice(2).map(({ alkali, hydroxide }) => [alkali, hydroxide])).toEqual([
    [undefined, undefined],
    [undefined, undefined],
  ])
})

test('a titration whose boiled reading is below the cold one stays in sight, and says why it tells no strength', () => {
  const found = { ...VINEGAR, boiledMl: 4.7 }
  const lot = { tests: [{ at: { instant: '2026-01-10T09:00:00.000Z', entryId: 'x' }, found }] }
  const [odd] = lotOverTime(lot as unknown as Parameters<typeof lotOverTime>[0])
  expect(odd?.alkali).toBeUndefined()
  const text = odd?.notForStrength.map((each) => words.sentence(each)).join(' ')
  expect(text).toBe(
    'Cannot be used for strength. 4.7 mL boiled is less than 4.8 mL cold: the second volume is told from the beginning, not from the first end point.',
  )
})
