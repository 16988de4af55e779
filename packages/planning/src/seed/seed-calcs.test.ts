/** The seed calculations as a door runs them: values, what is said, and what is refused. */
import { type CalcResult, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { SEED_CALCS } from './calcs.ts'
import { germinationRanges } from './germination.ts'
import { testBesideOthers } from './two-tests.ts'

const words = createWords()
const run = (id: string, input: object): CalcResult => {
  const calc = SEED_CALCS.find((one) => one.id === id)
  if (!calc) throw new Error(`no calculation ${id}`)
  return calc.run(input as never)
}
const done = (id: string, input: object) => {
  const result = run(id, input)
  if (!result.ok) throw new Error(result.refused)
  return result
}
const shown = (id: string, input: object) =>
  Object.fromEntries(done(id, input).values.map((value) => [value.id, shownValue(value)]))
const said = (id: string, input: object): string => {
  const { reasons, warnings } = done(id, input)
  return [...reasons, ...warnings].map((one) => words.sentence(one)).join('\n')
}

describe('what a sprouting test says', () => {
  test('46 of 50 leave 81 to 98 % open, and 240 plants ask for 327 kernels on average', () => {
    const input = { sproutedCount: 46, testedCount: 50, plantsAimCount: 240, maturityFraction: 0.8 }
    expect(shown('germination-interval', input)).toMatchObject({ germinationFraction: 0.92, sowOnAverageKernels: 327 })
    expect(said('germination-interval', input)).toContain('81 to 98 %')
    const [exact] = done('germination-interval', input).values
    expect(exact!.low).toBeCloseTo(0.8077, 4)
    expect(exact!.high).toBeCloseTo(0.9778, 4)
  })

  test('ten kernels are said to tell little, none sprouted to ask for another test', () => {
    expect(said('germination-interval', { sproutedCount: 10, testedCount: 10 })).toContain(
      '10 kernels leave a wide range',
    )
    expect(said('germination-interval', { sproutedCount: 0, testedCount: 20 })).toContain('None sprouted')
  })

  test('a test of 44 narrows the range to 20 points at 90 %', () => {
    const { testedCount } = shown('germination-sample-size', { likelyFraction: 0.9, widthFraction: 0.2 })
    expect(testedCount).toBe(44) // reference table of the statistics
  })

  // 10 of 10: 0.6915 to 1; 46 of 50: 0.808 to 0.978.
  test('the sheet by the towel says what each count would mean, all sprouted first', () => {
    const [all] = germinationRanges(10)
    expect(all).toMatchObject({ sproutedCount: 10, germination: { value: 1, high: 1 } })
    expect(all!.germination.low).toBeCloseTo(0.6915, 4)
    const rows = germinationRanges(50)
    expect(rows.map(({ sproutedCount }) => sproutedCount)).toEqual([50, 47, 44, 41, 38, 35, 32, 29, 26, 23, 20, 17])
    expect(germinationRanges(25)).toHaveLength(12)
  })

  // 94, 90, 88, 96 agree within 11; 96, 84, 93, 91 lie 12 apart and ask for another test.
  test('parts of a test agree or ask for another', () => {
    const parts = (...counts: number[]) => ({ replicates: counts.map((sproutedCount) => ({ sproutedCount })) })
    expect(shown('replicate-tolerance', parts(94, 90, 88, 96))).toEqual({
      meanPer100: 92,
      rangePer100: 8,
      allowedPer100: 11,
    })
    expect(said('replicate-tolerance', parts(94, 90, 88, 96))).toContain('Read them as one test')
    expect(said('replicate-tolerance', parts(96, 84, 93, 91))).toContain('Test again')
    expect(said('replicate-tolerance', parts(60, 60, 60, 60))).toContain('no limit is named')
  })
})

describe('one test beside another', () => {
  const two = (first: readonly [number, number], second: readonly [number, number]) => ({
    firstSproutedCount: first[0],
    firstTestedCount: first[1],
    secondSproutedCount: second[0],
    secondTestedCount: second[1],
  })

  // 95 and 92 %: mean 93.5, read at 94, 4 allowed; 96 and 91: the same row, 5 apart.
  test('of 400 is judged by the rules', () => {
    expect(shown('two-tests', two([380, 400], [368, 400]))).toEqual({ differenceFraction: 0.03, allowedPer100: 4 })
    expect(said('two-tests', two([380, 400], [368, 400]))).toContain('allow 4 at a mean of 94 %')
    expect(said('two-tests', two([384, 400], [364, 400]))).toContain('Test a third time')
  })

  // 56 of 70 and 48 of 80: 0.0524 to 0.3339, so not the same.
  test('of any other size is judged by the range of the difference, and the page says so', () => {
    expect(said('two-tests', two([56, 70], [48, 80]))).toContain('20 points apart, more than chance')
    expect(said('two-tests', two([46, 50], [40, 50]))).toContain('no more than chance alone may do')
    expect(said('two-tests', two([46, 50], [40, 50]))).toContain('only for two tests of 400')
    expect(said('two-tests', two([400, 400], [400, 400]))).toContain('only for two tests of 400') // no row for 100 %
  })

  // Flowchart: 29 or fewer of 40; 64 or fewer, more than 75 of 80.
  test('of 40, then 40 more, is kept, tested again or grown anew', () => {
    const step = (sproutedCount: number, testedCount: number) => said('sequential-test', { sproutedCount, testedCount })
    expect(step(29, 40)).toContain('grow the lot anew')
    expect(step(31, 40)).toContain('test another 40')
    expect(step(76, 80)).toContain('leave the lot in store')
    const beyond = run('sequential-test', { sproutedCount: 100, testedCount: 120 })
    expect(beyond).toMatchObject({ ok: false, refused: 'groups-of-forty', askWhom: [{ key: 'seed:ask-a-genebank' }] })
  })

  test('is set beside the newest one of about its time, and two groups of 40 count as 80', () => {
    const on = (testedOn: string, sproutedCount: number, testedCount: number) => ({
      testedOn,
      sproutedCount,
      testedCount,
    })
    const keys = (test: ReturnType<typeof on>, ...others: ReturnType<typeof on>[]) =>
      testBesideOthers(test, others).sentences.map(({ key }) => key)
    expect(keys(on('2027-04-20', 46, 50))).toEqual([])
    expect(keys(on('2027-04-20', 46, 50), on('2026-11-05', 30, 50))).toEqual([])
    expect(keys(on('2027-04-20', 46, 50), on('2027-04-05', 40, 50))).toEqual(['seed:two-agree'])
    expect(keys(on('2027-04-20', 46, 50), on('2027-04-05', 30, 50))).toEqual(['seed:two-differ'])
    expect(keys(on('2027-04-20', 39, 40), on('2027-04-05', 38, 40))).toEqual(['seed:two-agree', 'seed:sequence-keep'])
    expect(keys(on('2027-04-20', 31, 40))).toEqual(['seed:sequence-test-more'])
    expect(keys(on('2027-04-20', 51, 50), on('2027-04-05', 40, 50))).toEqual([])
  })
})

describe('is it alive', () => {
  const store = { wetFraction: 0.12, temperatureC: 20 }

  test('the equation stands beside the band: 98 % after a year at 12 % and 20 °C is 75.83 %', () => {
    const input = { ...store, startFraction: 0.98, storedDays: 0, yearsAheadCount: 2 }
    const values = done('seed-life', input).values
    const equation = values.find(({ id }) => id === 'equationFraction:1')!
    expect(Math.abs(equation.value - 0.7583)).toBeLessThan(0.0005) // 365 days in the table, 365.25 here
    const band = values.find(({ id }) => id === 'yearFraction:1')!
    expect(band.low!).toBeLessThan(0.5)
    expect(band.high!).toBeGreaterThan(0.9)
    expect(said('seed-life', input)).toContain('no one date can be named')
  })

  // 501.03 over 269.79 days a probit, each in its table of science: 1.86.
  test('the later constants are said beside it, where they were fitted', () => {
    const life = (temperatureC: number) => ({ wetFraction: 0.12, temperatureC, storedDays: 0, yearsAheadCount: 1 })
    expect(said('seed-life', life(20))).toContain('about 1.9 times the life. The shorter life is kept')
    expect(said('seed-life', life(-18))).not.toContain('printed in 2007')
  })

  test('its own tests move the answer, and one sentence says how', () => {
    const tests = (second: number) => [
      { afterDays: 0, sproutedCount: 98, testedCount: 100 },
      { afterDays: 365, sproutedCount: second, testedCount: 100 },
    ]
    const life = (second: number) => ({ ...store, storedDays: 365, yearsAheadCount: 1, tests: tests(second) })
    expect(said('seed-life', life(40))).toMatch(/times as fast as the equation/)
    expect(said('seed-life', life(97))).toMatch(/times as slowly as the equation/)
    const year = (second: number) => shown('seed-life', life(second))['yearFraction:1']!
    expect(year(97)).toBeGreaterThan(year(40))
  })

  test('a year of the store counts span by span, and a year of one warmth counts as that warmth', () => {
    const flat = { ...store, storedDays: 0, yearsAheadCount: 3 }
    const split = {
      record: [
        { days: 200, ...store },
        { days: 165, ...store },
      ],
      storedDays: 0,
      yearsAheadCount: 3,
    }
    expect(shown('seed-life', split)['yearFraction:2']).toBe(shown('seed-life', flat)['yearFraction:2'])
    const summer = {
      ...split,
      record: [
        { days: 275, wetFraction: 0.12, temperatureC: 5 },
        { days: 90, ...store },
      ],
    }
    expect(shown('seed-life', summer)['yearFraction:2']).toBeGreaterThan(shown('seed-life', flat)['yearFraction:2']!)
  })

  test('the next test falls due before the low end of the band, at the latest in a year', () => {
    const cold = { wetFraction: 0.08, temperatureC: -18, storedDays: 0, yearsAheadCount: 1 }
    expect(shown('seed-life', cold).retestDays).toBe(365)
    expect(shown('seed-life', { ...store, storedDays: 0, yearsAheadCount: 1 }).retestDays).toBeLessThan(60)
  })

  test('drier and colder each keep longer; the freezer asks for dry seed and a warm tin', () => {
    const ways = [
      { name: 'cupboard', wetFraction: 0.12, temperatureC: 20 },
      { name: 'cellar', wetFraction: 0.12, temperatureC: 10 },
      { name: 'cellar', wetFraction: 0.09, temperatureC: 10 },
      { name: 'freezer', wetFraction: 0.15, temperatureC: -18 },
    ]
    const years = shown('seed-what-if', { ways })
    expect(years['yearsAbove:cellar']).toBeGreaterThan(years['yearsAbove:cupboard']!)
    expect(years['yearsAbove:cellar 3']).toBeGreaterThan(years['yearsAbove:cellar']!)
    expect(said('seed-what-if', { ways })).toContain('ice forms in the kernel')
    expect(said('seed-what-if', { ways })).toContain('room warmth')
    const dry = [{ name: 'jar', wetFraction: 0.03, temperatureC: 20 }]
    expect(said('seed-what-if', { ways: dry })).toContain('4.6 % floor')
  })
})

describe('am I losing the line', () => {
  test('200 plants and 50 ears count as 133', () => {
    const values = shown('effective-size', { plantsCount: 200, earsCount: 50 })
    expect(values).toMatchObject({ effectiveCount: 133, effectiveEarsCount: 50 })
  })

  test('what would do: ears for a wanted number, in what equal share', () => {
    const input = { plantsCount: 240, earsCount: 60, wantedEffectiveCount: 200, kernelsWantedCount: 980 }
    const { earsForWantedCount, equalShareKernels } = shown('effective-size', input) as { [id: string]: number }
    // (4 x 240 - 2) / (240 / 86 + 2) is 199.97, with 87 it is 201.2.
    expect(earsForWantedCount).toBe(87)
    expect(equalShareKernels).toBe(12)
    expect(said('effective-size', input)).toContain('a smaller equal share from more ears')
    expect(said('effective-size', input)).not.toMatch(/fail|pure|safe/i)
  })

  test('uneven shares are told from even ones', () => {
    const shares = [
      { earsCount: 20, kernelsEach: 50 },
      { earsCount: 80, kernelsEach: 10 },
    ]
    expect(shown('effective-size', { plantsCount: 200, shares }).effectiveEarsCount).toBe(56)
    expect(said('effective-size', { plantsCount: 200, shares })).toContain('The same ears in equal shares')
  })

  test('a rare trait and how many parents hold it', () => {
    const values = shown('allele-loss', { alleleFraction: 0.05, plantsCount: 30, confidenceFraction: 0.9 })
    expect(values).toEqual({ missedFraction: 0.0461, plantsToKeepCount: 23, individualsPublishedCount: 89 })
  })

  test('off-types are told as more, fewer, or not yet to be told from chance', () => {
    const counts = (...rows: readonly (readonly [number, number, number])[]) => ({
      counts: rows.map(([year, offTypesCount, ofCount]) => ({ year, offTypesCount, ofCount })),
    })
    const more = counts([2020, 3, 200], [2021, 4, 200], [2022, 9, 240], [2023, 11, 220], [2024, 15, 200])
    expect(said('off-type-trend', more)).toContain('Off-types have grown')
    expect(said('off-type-trend', counts([2018, 12, 300], [2021, 6, 300], [2024, 2, 280]))).toContain('become fewer')
    expect(said('off-type-trend', counts([2023, 4, 100], [2024, 4, 100]))).toContain('cannot be told from chance')
    expect(said('off-type-trend', more)).not.toMatch(/pure/i)
  })
})

test.each([
  ['germination-interval', { sproutedCount: 0, testedCount: 0 }, '0 of 0 says nothing'],
  ['germination-interval', { sproutedCount: 51, testedCount: 50 }, 'more than there were'],
  ['replicate-tolerance', { replicates: [{ sproutedCount: 90 }] }, 'two or four parts'],
  ['sequential-test', { sproutedCount: 30, testedCount: 50 }, '40 kernels, then 80 in all'],
  ['sequential-test', { sproutedCount: 0, testedCount: 0 }, '0 of 0 says nothing'],
  [
    'two-tests',
    { firstSproutedCount: 46, firstTestedCount: 50, secondSproutedCount: 51, secondTestedCount: 50 },
    'more than there were',
  ],
  ['seed-life', { storedDays: 0, yearsAheadCount: 1 }, 'was not told'],
  ['seed-life', { wetFraction: 0.2, temperatureC: 10, storedDays: 0, yearsAheadCount: 1 }, 'Dry the seed first'],
  ['seed-life', { wetFraction: 0.01, temperatureC: 10, storedDays: 0, yearsAheadCount: 1 }, 'drier than a kernel gets'],
  ['seed-life', { wetFraction: 0.1, temperatureC: -40, storedDays: 0, yearsAheadCount: 1 }, 'outside the -20 to 40'],
  [
    'seed-life',
    {
      wetFraction: 0.1,
      temperatureC: 10,
      storedDays: 10,
      yearsAheadCount: 1,
      tests: [{ afterDays: 11, sproutedCount: 9, testedCount: 10 }],
    },
    'the test comes first',
  ],
  ['seed-what-if', { ways: [] }, 'Name a place'],
  ['effective-size', { plantsCount: 100, earsCount: 0 }, 'No ears were given'],
  ['effective-size', { plantsCount: 100, earsCount: 101 }, 'one ear from each plant'],
  ['off-type-trend', { counts: [{ year: 2024, offTypesCount: 1, ofCount: 10 }] }, 'two years or more'],
  [
    'off-type-trend',
    {
      counts: [
        { year: 2024, offTypesCount: 0, ofCount: 0 },
        { year: 2025, offTypesCount: 1, ofCount: 9 },
      ],
    },
    'nothing can be read',
  ],
])('%s refuses %j and says what to do', (id, input, phrase) => {
  const result = run(id, input)
  expect(result.ok).toBe(false)
  if (!result.ok) expect(result.why.map((one) => words.sentence(one)).join(' ')).toContain(phrase)
})

test.each(SEED_CALCS)('$id lists every value it gives, in its unit, with sources it names', (calc) => {
  const result = calc.run(calc.example as never)
  expect(result.ok).toBe(true)
  if (!result.ok) return
  for (const { id, unit, value, sourceKeys } of result.values) {
    expect([id, calc.outputs[id.split(':')[0]!]?.unit]).toEqual([id, unit])
    expect(Number.isFinite(value)).toBe(true)
    expect(sourceKeys.filter((key) => !calc.sourceKeys.includes(key))).toEqual([])
  }
})
