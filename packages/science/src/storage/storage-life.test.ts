import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { fToC } from '../units/convert-named.ts'
import { allowableStorage, storageUsed } from './allowable-storage.ts'
import {
  dryMatterLossFraction,
  storageDaysAdamsRosentrater,
  storageDaysNdsu2019,
  storageDaysThompson1972,
} from './storage-life.ts'

const printed = readReferenceTable(new URL('./storage-life.printed.csv', import.meta.url), [
  'wetPercent',
  'temperatureF',
  'days',
])
const worked = readReferenceTable(new URL('./storage-life.worked.csv', import.meta.url), [
  'wetPercent',
  'temperatureF',
  'days',
])
const bern = readReferenceTable(new URL('./storage-life.bern.csv', import.meta.url), [
  'wetPercent',
  'temperatureC',
  'days',
])

/** Even over the range; random doubles crowd towards nought. */
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 10_000 }).map((n) => min + ((max - min) * n) / 10_000)

const corn = (wetPercent: number, temperatureF: number) => ({
  wetFraction: wetPercent / 100,
  temperatureC: fToC(temperatureF),
})

test.each(printed.rows)('$wetPercent % at $temperatureF °F keeps $days days, as printed', (row) => {
  const days = storageDaysThompson1972(corn(row.wetPercent, row.temperatureF))
  expect(Math.abs(days - row.days)).toBeLessThan(Math.max(0.5, 0.015 * row.days))
})

test.each(worked.rows)('the equations give $days days at $wetPercent % and $temperatureF °F', (row) => {
  const days = storageDaysThompson1972(corn(row.wetPercent, row.temperatureF))
  const unit = row.days > 1000 ? 1 : row.days === 57.99 ? 0.01 : Number.isInteger(row.days) ? 1 : 0.1
  expect(Math.abs(days - row.days)).toBeLessThan(unit / 2 + 1e-3)
})

test.each(bern.rows)('$wetPercent % at $temperatureC °C keeps $days days by another edition', (row) => {
  const days = storageDaysThompson1972({ wetFraction: row.wetPercent / 100, temperatureC: row.temperatureC })
  expect(Math.abs(days / row.days - 1)).toBeLessThan(0.02)
})

// thompson-1972, worked separately.
test.each([
  [60.28, 0.001],
  [135.9, 0.0025],
  [230.77, 0.005],
  [351.77, 0.01],
])('%s equivalent hours take %s of the dry matter', (hours, loss) => {
  expect(dryMatterLossFraction(hours)).toBeCloseTo(loss, 6)
})

test('sound hand-shelled corn keeps nearly twice as long: 296.6 days against 151.9', () => {
  expect(storageDaysThompson1972(corn(16, 60), 0.02)).toBeCloseTo(296.6, 1)
})

// ndsu-drying-2019.
test('the printed table is read at its cells and at the next shorter one between them', () => {
  expect(storageDaysNdsu2019(corn(18, 60))).toBe(50)
  expect(storageDaysNdsu2019(corn(17, 55))).toBe(50)
  expect(storageDaysNdsu2019(corn(24, 30))).toBe(130)
  expect(storageDaysNdsu2019(corn(14, 60))).toBeNull()
  expect(storageDaysNdsu2019(corn(28, 80))).toBe(2)
  expect(() => storageDaysNdsu2019(corn(29, 60))).toThrow(ValidRangeError)
  expect(() => storageDaysNdsu2019(corn(18, 81))).toThrow(ValidRangeError)
})

// adams-rosentrater-ast: exp(2.64661 - 0.14096 * 15 + 1183.71996/256) by hand: exp(5.15607) = 173.5.
test('the later fit stands beside', () => {
  expect(storageDaysAdamsRosentrater({ temperatureC: 15, wetFraction: 0.16 })).toBeCloseTo(173.5, 0)
  expect(() => storageDaysAdamsRosentrater({ temperatureC: 15, wetFraction: 0.13 })).toThrow(ValidRangeError)
})

describe('the time shown', () => {
  test('is the shorter figure, named', () => {
    expect(allowableStorage(corn(18, 60))).toEqual({ days: 50, figure: 'ndsu-drying-2019', countedAs: [] })
    expect(allowableStorage(corn(14, 50)).figure).toBe('asae-d535')
  })

  test('is never stretched: drier counts as 13 %, colder as 35 °F, and that is said', () => {
    const edge = allowableStorage(corn(13, 35)).days
    expect(allowableStorage(corn(11, 10))).toMatchObject({ countedAs: ['drier-as-13-percent', 'colder-as-35-f'] })
    expect(allowableStorage(corn(11, 10)).days).toBeCloseTo(edge, 6)
    expect(() => allowableStorage(corn(29, 60))).toThrow(ValidRangeError)
    expect(() => allowableStorage(corn(15, 110))).toThrow(ValidRangeError)
    expect(() => allowableStorage({ wetFraction: 15, temperatureC: 10 })).toThrow(ValidRangeError)
  })

  test('falls, or at least never rises, with moisture and with warmth', () => {
    fc.assert(
      fc.property(
        between(-20, 37),
        between(0.1, 0.279),
        between(0, 0.4),
        between(0, 8),
        (temperatureC, wetFraction, damage, more) => {
          const { days } = allowableStorage({ temperatureC, wetFraction }, damage)
          const warmer = Math.min(37.8, temperatureC + more)
          const wetter = Math.min(0.28, wetFraction + more / 100)
          expect(allowableStorage({ temperatureC: warmer, wetFraction }, damage).days).toBeLessThanOrEqual(days + 1e-9)
          expect(allowableStorage({ temperatureC, wetFraction: wetter }, damage).days).toBeLessThanOrEqual(days + 1e-9)
        },
      ),
      { numRuns: 2000 },
    )
  })
})

describe('a history', () => {
  // Half of the printed 50 days at 18 % and 60 °F; then the equations' 341.4 days at 16 % and 50 °F against the printed 230.
  test('uses up its share and leaves the rest of what the next place allows', () => {
    const used = storageUsed([{ days: 25, ...corn(18, 60) }], corn(16, 50))
    expect(used.usedFraction).toBeCloseTo(0.5, 12)
    expect(used.leftDays).toBeCloseTo(115, 9)
  })

  test('is the same in any order and however it is cut', () => {
    const [a, b] = [
      { days: 20, ...corn(18, 60) },
      { days: 60, ...corn(16, 50) },
    ] as const
    const whole = storageUsed([a, b], corn(15, 40)).usedFraction
    expect(storageUsed([b, { ...a, days: 5 }, { ...a, days: 15 }], corn(15, 40)).usedFraction).toBeCloseTo(whole, 12)
  })

  test('once over leaves nothing, and days below nought are refused', () => {
    expect(storageUsed([{ days: 60, ...corn(18, 60) }], corn(16, 50))).toMatchObject({ leftDays: 0 })
    expect(() => storageUsed([{ days: -1, ...corn(18, 60) }], corn(16, 50))).toThrow(ValidRangeError)
  })
})
