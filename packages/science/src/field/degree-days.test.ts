import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { fToC } from '../units/convert-named.ts'
import { degreeDaysC, degreeDaysRunningC, degreeDaysToStageC } from './degree-days.ts'

const printed = readReferenceTable(new URL('./degree-days.printed.csv', import.meta.url), [
  'highF',
  'lowF',
  'degreeDaysF',
])
const inF = (highF: number, lowF: number) => 1.8 * degreeDaysC({ highC: fToC(highF), lowC: fToC(lowF) })

describe('growing degree-days', () => {
  test.each(printed.rows)('of a day of $highF and $lowF °F are $degreeDaysF, as printed', (row) => {
    expect(inF(row.highF, row.lowF)).toBeCloseTo(row.degreeDaysF, 9)
  })

  // Worked by hand from iowa-agron-541: (86 + 50)/2 - 50; (86 + 86)/2 - 50; a frosty day gives nothing.
  test.each([
    [90, 48, 18],
    [100, 90, 36],
    [45, 20, 0],
  ])('of a day of %s and %s °F are %s: both ends are brought in first', (highF, lowF, expected) => {
    expect(inF(highF, lowF)).toBeCloseTo(expected, 9)
  })

  test('lie between 0 and 20 a day in °C, and warmer is never less', () => {
    const temperature = fc.double({ min: -50, max: 55, noNaN: true })
    fc.assert(
      fc.property(temperature, temperature, fc.double({ min: 0, max: 5, noNaN: true }), (a, b, more) => {
        const lowC = Math.min(a, b)
        const highC = Math.max(a, b)
        const days = degreeDaysC({ highC, lowC })
        expect(days).toBeGreaterThanOrEqual(0)
        expect(days).toBeLessThanOrEqual(20)
        expect(degreeDaysC({ highC: highC + more, lowC })).toBeGreaterThanOrEqual(days)
      }),
    )
  })

  test('add up day by day', () => {
    const day = { highC: fToC(87), lowC: fToC(63) }
    const running = degreeDaysRunningC([day, day, { highC: 5, lowC: 0 }]).map((total) => total * 1.8)
    expect(running.map((total) => Number(total.toFixed(6)))).toEqual([24.5, 49, 49])
    expect(degreeDaysRunningC([])).toEqual([])
  })

  // hprcc-corn-stages, middle group: 1200 to silk and 2400 to black layer, °F.
  test('to silk and to black layer are those of the table', () => {
    expect(degreeDaysToStageC('middle').silk * 1.8).toBeCloseTo(1200, 9)
    expect(degreeDaysToStageC('middle').blackLayer * 1.8).toBeCloseTo(2400, 9)
    expect(degreeDaysToStageC('early').silk * 1.8).toBeCloseTo(1143.6, 9)
    expect(degreeDaysToStageC('late').blackLayer * 1.8).toBeCloseTo(2834.9, 9)
  })

  test.each([
    [10, 20],
    [Number.NaN, 5],
    [80, 20],
    [20, -70],
  ])('a day of %s high and %s low is refused', (highC, lowC) => {
    expect(() => degreeDaysC({ highC, lowC })).toThrow(ValidRangeError)
  })
})
