import fc from 'fast-check'
import { expect, test } from 'vitest'
import { columnWidths } from './column-widths.ts'

test('shares alone decide while every word has room', () => {
  expect(columnWidths([1, 3], [10, 10], 100)).toEqual([25, 75])
})

test('a column too narrow for its longest word takes from those with room', () => {
  const [first, second] = columnWidths([1, 3], [40, 10], 100)
  expect(first).toBe(40)
  expect(second).toBeCloseTo(60, 9)
})

test('the widths always fill the table, and no column is below its least width when they all fit', () => {
  const column = fc.record({ share: fc.integer({ min: 1, max: 9 }), least: fc.integer({ min: 1, max: 80 }) })
  fc.assert(
    fc.property(fc.array(column, { minLength: 1, maxLength: 9 }), (columns) => {
      const leasts = columns.map(({ least }) => least)
      const widths = columnWidths(
        columns.map(({ share }) => share),
        leasts,
        300,
      )
      expect(widths.reduce((sum, wide) => sum + wide, 0)).toBeCloseTo(300, 6)
      if (leasts.reduce((sum, one) => sum + one, 0) > 300) return
      for (const [index, wide] of widths.entries()) expect(wide).toBeGreaterThanOrEqual((leasts[index] ?? 0) - 1e-9)
    }),
  )
})
