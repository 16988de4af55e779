import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { regrowBelowFraction, replicateSpread } from './replicate-tolerance.ts'

const printed = readReferenceTable(new URL('./replicate-tolerance.printed.csv', import.meta.url), [
  'meanPercent',
  'four',
  'two',
]).rows

describe('the parts of a test', () => {
  test.each(printed)('of mean $meanPercent may lie $four apart, or $two', ({ meanPercent, four, two }) => {
    const parts = (count: number) => replicateSpread(Array.from({ length: count }, () => meanPercent))
    expect(parts(4).limitPercent).toBe(four)
    expect(parts(2).limitPercent).toBe(two === 0 ? null : two)
    // The table is printed for both ends: 100 less the germination, plus one.
    const mirrored = replicateSpread([1, 1, 1, 1].map(() => 101 - meanPercent))
    expect(mirrored.limitPercent).toBe(four)
  })

  // Worked from the printed rows: means 92 and 91, ranges 8 and 12, allowed 11 and 11.
  test('agree, or ask for another test', () => {
    expect(replicateSpread([94, 90, 88, 96])).toEqual({ meanPercent: 92, rangePercent: 8, limitPercent: 11 })
    expect(replicateSpread([96, 84, 93, 91])).toEqual({ meanPercent: 91, rangePercent: 12, limitPercent: 11 })
  })

  test('have no limit where the table has no row', () => {
    expect(replicateSpread([100, 100, 100, 100]).limitPercent).toBeNull()
    expect(replicateSpread([60, 60, 60, 60]).limitPercent).toBeNull()
  })

  test.each([[[90]], [[90, 91, 92]], [[90, 101]], [[90, -1]], [[90, 90.5]]])('%j are refused', (parts) => {
    expect(() => replicateSpread(parts)).toThrow(ValidRangeError)
  })
})

test.each(readReferenceTable(new URL('./regrow.printed.csv', import.meta.url), ['firstPercent', 'regrowPercent']).rows)(
  'a first test of $firstPercent % asks for a grow-out below $regrowPercent %',
  ({ firstPercent, regrowPercent }) => {
    expect(regrowBelowFraction(firstPercent / 100)).toBe(regrowPercent / 100)
  },
)
