import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { borderRows } from './border-rows.ts'

const table = readReferenceTable(new URL('./border-rows.wac.csv', import.meta.url), ['distanceFt', 'rowsCount'])

describe('border rows in place of distance', () => {
  test.each(table.rows)(
    'are $rowsCount at $distanceFt ft, and one more just inside it',
    ({ distanceFt, rowsCount }) => {
      expect(borderRows(distanceFt, 5)).toEqual({ kind: 'found', rowsCount })
      const inside = borderRows(distanceFt - 0.1, 5)
      if (rowsCount < 16) expect(inside).toEqual({ kind: 'found', rowsCount: rowsCount + 1 })
      else expect(inside).toEqual({ kind: 'nearer-than-table', nearestFt: 85 })
    },
  )

  // wac-16-302-295, fields of 21 acres and more.
  test.each([
    [415, 0],
    [300, 3],
    [85, 8],
    [45, 9],
    [44, 10],
  ])('of a large field at %s ft are %s', (distanceFt, rowsCount) => {
    expect(borderRows(distanceFt, 40)).toEqual({ kind: 'found', rowsCount })
  })

  test('for a garden the rules say nothing, and neither does this', () => {
    expect(borderRows(250, 0.25)).toEqual({ kind: 'field-not-in-table', smallestAcres: 1 })
    expect(borderRows(250, 20.5).kind).toBe('field-not-in-table')
  })

  test.each([0, -1, Number.NaN])('a distance of %s ft is refused', (distanceFt) => {
    expect(() => borderRows(distanceFt, 5)).toThrow(ValidRangeError)
  })
})
