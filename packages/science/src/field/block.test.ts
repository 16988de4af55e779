import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ValidRangeError } from '../errors.ts'
import { convert } from '../units/unit.ts'
import { placesPerM2, squarestBlock } from './block.ts'

const perAcre = (rowIn: number, inRowIn: number) =>
  placesPerM2({ rowSpacingM: convert(rowIn, 'In', 'M'), inRowSpacingM: convert(inRowIn, 'In', 'M') }) *
  convert(1, 'Acre', 'M2')

describe('plants on ground', () => {
  // Worked from 43,560 square feet to the acre; the last is printed in an old field book (cyclopedia-farm-crops).
  test.each([
    [42, 42, 3556],
    [48, 48, 2722],
    [48, 36, 3630],
  ])('at %s by %s in are %s to the acre', (rowIn, inRowIn, places) => {
    // 3 x 3556 = 10,668 kernels at three a hill, as printed from the rounded hills.
    expect(Math.abs(perAcre(rowIn, inRowIn) - places)).toBeLessThan(0.51)
  })

  test('240 plants make 8 rows of 30', () => {
    expect(squarestBlock(240, { rowSpacingM: 0.9, inRowSpacingM: 0.25 })).toMatchObject({
      rowsCount: 8,
      perRowCount: 30,
      placesCount: 240,
      lengthM: 7.5,
    })
  })

  test('of a few plants still stand in four rows', () => {
    expect(squarestBlock(12, { rowSpacingM: 0.9, inRowSpacingM: 0.2 })).toMatchObject({ rowsCount: 4, perRowCount: 3 })
    expect(squarestBlock(2, { rowSpacingM: 0.9, inRowSpacingM: 0.2 })).toMatchObject({ rowsCount: 2, perRowCount: 1 })
  })

  test('always hold what was asked for, in at least four rows, and no other number of rows is squarer', () => {
    const spacing = fc.record({
      rowSpacingM: fc.double({ min: 0.3, max: 2, noNaN: true }),
      inRowSpacingM: fc.double({ min: 0.1, max: 2, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 3000 }), spacing, (wanted, at) => {
        const block = squarestBlock(wanted, at)
        expect(block.placesCount).toBeGreaterThanOrEqual(wanted)
        expect(block.rowsCount).toBeGreaterThanOrEqual(4)
        expect(block.areaM2).toBeCloseTo(block.rowsCount * block.perRowCount * at.rowSpacingM * at.inRowSpacingM, 6)
        const unlike = (rows: number) =>
          Math.abs(Math.log((Math.ceil(wanted / rows) * at.inRowSpacingM) / (rows * at.rowSpacingM)))
        for (const rows of [block.rowsCount - 2, block.rowsCount + 2]) {
          if (rows >= 4) expect(unlike(rows)).toBeGreaterThanOrEqual(unlike(block.rowsCount) - 1e-9)
        }
      }),
    )
  })

  test('a spacing of nothing and a block of nothing are refused', () => {
    expect(() => placesPerM2({ rowSpacingM: 0, inRowSpacingM: 0.2 })).toThrow(ValidRangeError)
    expect(() => squarestBlock(0, { rowSpacingM: 0.9, inRowSpacingM: 0.2 })).toThrow(ValidRangeError)
    expect(() => squarestBlock(-5, { rowSpacingM: 0.9, inRowSpacingM: 0.2 })).toThrow(ValidRangeError)
  })
})
