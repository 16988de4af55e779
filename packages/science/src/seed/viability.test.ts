import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { normalQuantile } from '../statistics/normal.ts'
import { MAIZE_LONGEVITY_2007 } from './maize-longevity.ts'
import {
  daysToViability,
  moistureFloorWetFraction,
  probitDaysEllisHong2007,
  probitDaysEllisRoberts1980,
  probitsLost,
  viabilityEllisRoberts1980,
  warmestForLifeC,
  wettestForLifeWetFraction,
} from './viability.ts'

const table = <const C extends string>(name: string, columns: readonly C[]) =>
  readReferenceTable(new URL(`./${name}`, import.meta.url), columns).rows

/** Half a unit in the last of so many digits. */
const halfUnit = (value: number, digits: number) => 0.5001 * 10 ** (Math.floor(Math.log10(value)) - digits + 1)

describe('life of maize in store', () => {
  const columns = ['wetPercent', 'temperatureC', 'probitDays', 'yearsTo85', 'yearsTo50'] as const
  test.each(table('viability.days.csv', columns))('at $wetPercent % and $temperatureC °C', (row) => {
    const store = { wetFraction: row.wetPercent / 100, temperatureC: row.temperatureC }
    const years = (endFraction: number) => daysToViability({ startFraction: 0.98, endFraction }, store) / 365.25
    const days = probitDaysEllisRoberts1980(store)
    expect(Math.abs(days - row.probitDays)).toBeLessThan(row.probitDays < 100 ? 0.005 : halfUnit(row.probitDays, 5))
    expect(Math.abs(years(0.85) - row.yearsTo85)).toBeLessThan(row.yearsTo85 < 10 ? 0.005 : halfUnit(row.yearsTo85, 3))
    expect(Math.abs(years(0.5) - row.yearsTo50)).toBeLessThan(row.yearsTo50 < 10 ? 0.005 : halfUnit(row.yearsTo50, 3))
  })

  const after = ['startPercent', 'days', 'wetPercent', 'temperatureC', 'endPercent'] as const
  test.each(table('viability.after.csv', after))('$startPercent % after $days days', (row) => {
    const period = { days: row.days, wetFraction: row.wetPercent / 100, temperatureC: row.temperatureC }
    const percent = 100 * viabilityEllisRoberts1980(row.startPercent / 100, [period])
    expect(Math.abs(percent - row.endPercent)).toBeLessThan(row.days === 17532 ? 0.05 : 0.02)
  })

  test.each(table('viability.probits.csv', ['percent', 'deviate']))('$percent % is $deviate probits', (row) => {
    expect(Math.abs(normalQuantile(row.percent / 100) - row.deviate)).toBeLessThan(0.000051)
  })

  const constants = ['KE', 'CW', 'CH', 'CQ', 'standardErrorKE', 'standardErrorCW'] as const
  test('by the later constants, as they are printed', () => {
    expect(table('viability.constants-2007.csv', constants)).toEqual([MAIZE_LONGEVITY_2007])
  })

  const later = ['wetPercent', 'temperatureC', 'probitDays'] as const
  test.each(table('viability.days-2007.csv', later))('by them, at $wetPercent % and $temperatureC °C', (row) => {
    const days = probitDaysEllisHong2007({ wetFraction: row.wetPercent / 100, temperatureC: row.temperatureC })
    expect(Math.abs(days - row.probitDays)).toBeLessThan(halfUnit(row.probitDays, 5))
  })

  test('is longer by the later constants wherever they were fitted, so the shorter life is the one that stands', () => {
    for (let percent = 2; percent <= 18; percent += 0.5) {
      for (let temperatureC = 0; temperatureC <= 40; temperatureC += 2) {
        const store = { wetFraction: percent / 100, temperatureC }
        expect(probitDaysEllisHong2007(store)).toBeGreaterThan(probitDaysEllisRoberts1980(store))
      }
    }
    const cold = { wetFraction: 0.08, temperatureC: -1 }
    expect(() => probitDaysEllisHong2007(cold)).toThrow(/temperatureC/)
  })

  // Worked out separately from the equation, as the rows above.
  test('solved for moisture and for temperature', () => {
    const life = { startFraction: 0.98, endFraction: 0.85 }
    expect(wettestForLifeWetFraction(life, 730.5, 20)).toBeCloseTo(0.0983, 4)
    expect(warmestForLifeC(life, 1095.75, 0.12)).toBeCloseTo(6.85, 2)
  })

  // About 4.6 % at 20 °C, 5.0 % at 10, 5.4 % at 0, from 10.6 % humidity and the modified Henderson isotherm.
  test.each([
    [20, 4.6],
    [10, 5.0],
    [0, 5.4],
  ])('drying below the floor at %s °C, %s %%, buys nothing', (temperatureC, percent) => {
    const floor = moistureFloorWetFraction(temperatureC)
    expect(Math.abs(100 * floor - percent)).toBeLessThan(0.051)
    const days = (wetFraction: number) => probitDaysEllisRoberts1980({ wetFraction, temperatureC })
    expect(days(0.03)).toBe(days(floor))
    expect(days(floor + 0.001)).toBeLessThan(days(floor))
  })

  test('a history counts as its parts, in any order and any cutting', () => {
    const period = fc.record({
      days: fc.double({ min: 0, max: 2000, noNaN: true }),
      wetFraction: fc.double({ min: 0.05, max: 0.18, noNaN: true }),
      temperatureC: fc.double({ min: -20, max: 40, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.array(period, { minLength: 1, maxLength: 12 }), (periods) => {
        const whole = probitsLost(periods)
        const halves = periods.flatMap((one) => [
          { ...one, days: one.days / 2 },
          { ...one, days: one.days / 2 },
        ])
        expect(probitsLost(halves.reverse())).toBeCloseTo(whole, 8)
        // Warmer or wetter never keeps better.
        const warmer = periods.map((one) => ({ ...one, temperatureC: Math.min(40, one.temperatureC + 1) }))
        expect(probitsLost(warmer)).toBeGreaterThanOrEqual(whole)
      }),
    )
  })

  test.each([
    [{ days: 1, wetFraction: 0.19, temperatureC: 10 }],
    [{ days: 1, wetFraction: 0.1, temperatureC: 41 }],
    [{ days: 1, wetFraction: 0.1, temperatureC: -21 }],
    [{ days: -1, wetFraction: 0.1, temperatureC: 10 }],
    [{ days: Number.NaN, wetFraction: 0.1, temperatureC: 10 }],
  ])('refuses %j', (period) => {
    expect(() => viabilityEllisRoberts1980(0.98, [period])).toThrow(ValidRangeError)
  })

  test.each([0, 1])('refuses a start of %s, which has no probit', (start) => {
    expect(() => viabilityEllisRoberts1980(start, [])).toThrow(ValidRangeError)
  })

  test('refuses an end above the start, and a life no dryness gives', () => {
    const store = { wetFraction: 0.1, temperatureC: 10 }
    expect(() => daysToViability({ startFraction: 0.85, endFraction: 0.9 }, store)).toThrow(ValidRangeError)
    expect(() => wettestForLifeWetFraction({ startFraction: 0.98, endFraction: 0.97 }, 36_525, 40)).toThrow(
      ValidRangeError,
    )
  })
})
