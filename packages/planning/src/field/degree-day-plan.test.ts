import { shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dayNumber, dayText, isoDayOf } from './days.ts'
import { degreeDaysCalc } from './degree-days.calc.ts'
import { readPasted, readRows } from './temperatures.ts'

const words = createWords()
const run = (input: object) => degreeDaysCalc.run({ plantedOn: '2026-05-14', group: 'early', ...input } as never)
const told = (input: object) => {
  const result = run(input)
  if (!result.ok) throw new Error(result.refused)
  const said = [...result.reasons, ...result.warnings].map((one) => words.sentence(one)).join(' ')
  return { said, values: Object.fromEntries(result.values.map((one) => [one.id, shownValue(one)])) }
}
const why = (input: object) => {
  const result = run(input)
  return result.ok ? 'not refused' : `${result.refused}: ${result.why.map((one) => words.sentence(one)).join(' ')}`
}
/** So many like days from the sowing on, 87 and 63 °F: 24.5 degree-days each (ohio-gdd-2023). */
const likeDays = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ date: isoDayOf(dayNumber('2026-05-14')! + i), high: 87, low: 63 }))

describe('the calendar by degree-days', () => {
  // 1143.6 / 24.5 = 46.7: the 47th day, 46 days after the sowing; 2061.7 / 24.5 = 84.2: the 85th. hprcc-corn-stages.
  test('tells silk and ripe of the early group on like days', () => {
    const { values, said } = told({ days: likeDays(100) })
    expect(values).toMatchObject({ degreeDaysSoFar: 2450, degreeDaysLately: 24.5, daysToSilk: 46, daysToRipe: 84 })
    expect(values).toMatchObject({ degreeDaysToSilk: 1144, degreeDaysToRipe: 2062 })
    expect(said).toContain('Silk by these temperatures: 29 Jun 2026')
    expect(said).toContain('Ripe (black layer) by these temperatures: 6 Aug 2026')
    expect(said).toContain('Early flints need less')
  })

  // 40 days are 980; (1143.6 - 980) / 24.5 = 6.7 days left to silk.
  test('says how far silk is when the temperatures end before it', () => {
    const { values, said } = told({ days: likeDays(40) })
    expect(values).not.toHaveProperty('daysToSilk')
    expect(said).toContain('Silk is 164 degree-days °F')
    expect(said).toContain('about 7 days, if days go on as the last fourteen did')
  })

  test('own totals take the place of the table', () => {
    const { values, said } = told({ days: likeDays(60), ownToSilkF: 980, ownToRipeF: 1225 })
    expect(values).toMatchObject({ daysToSilk: 39, daysToRipe: 49 })
    expect(said).not.toContain('dent')
  })

  test('what is pasted is read whatever parts its columns', () => {
    const days = [
      { day: dayNumber('2026-05-14')!, highC: 20, lowC: 5 },
      { day: dayNumber('2026-05-15')!, highC: 21.5, lowC: -1 },
    ]
    for (const part of [', ', ';', '\t', ' ']) {
      const text = `date${part}high${part}low\r\n# a note\n2026-05-14${part}20${part}5\n\n2026-05-15${part}21.5${part}-1\n`
      expect(readPasted(text, 'C')).toEqual({ ok: true, days, missingDays: 0 })
    }
    expect(told({ pasted: '2026-05-14, 87, 63' }).values.degreeDaysSoFar).toBe(24.5)
    expect(told({ pasted: '2026-05-14, 30.555556, 17.222222', pastedIn: 'C' }).values.degreeDaysLately).toBe(24.5)
  })

  test('a day left out is counted as missing, not made up', () => {
    const days = likeDays(10).filter((_, i) => i !== 4)
    const { values, said } = told({ days })
    expect(values.degreeDaysSoFar).toBe(220.5)
    expect(said).toContain('1 day is missing')
  })

  test.each([
    ['2026-05-15, 70, 50\n2026-05-14, 70, 50', 'Line 2: 2026-05-14 does not come after 15 May 2026'],
    ['2026-05-14, 70, 50\n2026-05-14, 70, 50', 'Line 2: 2026-05-14 does not come after'],
    ['2026-05-14, 50, 70', 'the low is above the high'],
    ['2026-13-40, 70, 50', 'Line 1: "2026-13-40" is no day of the calendar'],
    ['2026-05-14, warm, 50', 'Line 1, "2026-05-14, warm, 50": needs a date, a high and a low'],
    ['2026-05-14, 70', 'needs a date, a high and a low'],
    ['2026-05-14, 700, 50', 'no weather is so hot or cold in °F'],
    ['', 'No temperatures were given'],
    ['2026-05-20, 70, 50', 'but the temperatures begin on 20 May 2026'],
    ['2026-05-10, 70, 50', 'The temperatures end before the sowing on 14 May 2026'],
  ])('%j is refused: %s', (pasted, phrase) => {
    expect(why({ pasted })).toContain(phrase)
  })

  test('totals and dates that contradict each other are refused', () => {
    expect(why({ days: likeDays(3), ownToSilkF: 1200, ownToRipeF: 1100 })).toContain('ripe-before-silk')
    expect(why({ plantedOn: 'May', days: likeDays(3) })).toContain('"May" is no day of the calendar')
    expect(why({ days: likeDays(3), pasted: '2026-05-14, 70, 50' })).toContain('Give them once')
  })
})

describe('days', () => {
  test('come back as they were written', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 80_000 }), (number) => {
        expect(dayNumber(isoDayOf(number))).toBe(number)
      }),
    )
    expect(dayText(dayNumber('2026-05-14')!)).toBe('14 May 2026')
    expect(dayNumber('2026-02-29')).toBeNull()
    expect(dayNumber('2028-02-29')).not.toBeNull()
  })

  test('rows typed in °C are the rows typed in °F', () => {
    const f = readRows([{ date: '2026-05-14', high: 86, low: 50 }], 'F')
    expect(f.ok && f.days[0]?.highC).toBeCloseTo(30, 9)
    expect(f.ok && f.days[0]?.lowC).toBeCloseTo(10, 9)
  })
})
