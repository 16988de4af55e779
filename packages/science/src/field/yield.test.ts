import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { convert } from '../units/unit.ts'
import { thousandKernelsPerBushel, thousandthAcreRowFt, yieldByEarsBuPerAcre, yieldByWeightKgPerM2 } from './yield.ts'

const component = readReferenceTable(new URL('./yield.component.csv', import.meta.url), [
  'earsPerThousandthAcre',
  'kernelRows',
  'kernelsPerRow',
  'thousandKernelsPerBushel',
  'buPerAcre',
])
const rowLength = readReferenceTable(new URL('./yield.row-length.csv', import.meta.url), ['rowWidthIn', 'rowIn'])
const missouri = readReferenceTable(new URL('./yield.ear-corn-missouri.csv', import.meta.url), [
  'kernelWetPercent',
  'earLb',
])

describe('yield by counting ears', () => {
  test.each(component.rows)('gives the printed $buPerAcre bu/acre', (row) => {
    expect(yieldByEarsBuPerAcre(row)).toBe(row.buPerAcre)
  })

  test.each(rowLength.rows)('counts $rowIn in of row at $rowWidthIn in', ({ rowWidthIn, rowIn }) => {
    expect(Math.abs(12 * thousandthAcreRowFt(rowWidthIn / 12) - rowIn)).toBeLessThan(0.5)
  })

  test('counts 14.52 ft of row at 36 in', () => {
    expect(thousandthAcreRowFt(3)).toBeCloseTo(14.52, 9)
  })

  // Worked from 56 lb: 25,401 g over the weight of a thousand kernels.
  test.each([
    [254.0, 100],
    [282.2, 90],
    [298.8, 85],
  ])('takes %s g a thousand as %s thousand to the bushel', (g, thousand) => {
    expect(thousandKernelsPerBushel(g)).toBeCloseTo(thousand, 1)
  })

  test.each([
    { earsPerThousandthAcre: -1 },
    { kernelRows: 2 },
    { kernelsPerRow: 0 },
    { thousandKernelsPerBushel: 90_000 },
    { kernelRows: Number.NaN },
  ])('refuses %j', (wrong) => {
    expect(() => yieldByEarsBuPerAcre({ ...component.rows[0]!, ...wrong })).toThrow(ValidRangeError)
  })
})

describe('yield by weighing a part', () => {
  const thousandthAcreM2 = convert(43.56, 'Ft2', 'M2')

  test.each(missouri.rows)('$earLb lb of ears at $kernelWetPercent % are a market bushel', (row) => {
    const part = { earCornKg: convert(row.earLb, 'Lb', 'Kg'), kernelWetFraction: row.kernelWetPercent / 100 }
    const lb = convert(yieldByWeightKgPerM2({ ...part, areaM2: thousandthAcreM2 }) * thousandthAcreM2, 'Kg', 'Lb')
    // Half a unit of the ears' last digit, as shelled corn; at 20 % the table in use has no row.
    const toleranceLb = row.kernelWetPercent === 20 ? 0.35 : 0.005
    expect(Math.abs(lb - 56)).toBeLessThan(toleranceLb * (56 / row.earLb) + 0.004)
  })

  test('of 56 lb from a thousandth of an acre is 1000 bu/acre', () => {
    const part = { earCornKg: convert(68.4, 'Lb', 'Kg'), kernelWetFraction: 0.155, areaM2: thousandthAcreM2 }
    expect(convert(yieldByWeightKgPerM2(part) * 10_000, 'KgPerHa', 'BuPerAcre')).toBeCloseTo(1000, 0)
  })

  test('is the same whatever part of the same ground is weighed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 0.28, noNaN: true }),
        (share, kernelWetFraction) => {
          const whole = yieldByWeightKgPerM2({ earCornKg: 100, kernelWetFraction, areaM2: 100 })
          const part = { earCornKg: share * 100, kernelWetFraction, areaM2: share * 100 }
          expect(yieldByWeightKgPerM2(part)).toBeCloseTo(whole, 9)
        },
      ),
    )
  })

  test.each([{ earCornKg: -1 }, { areaM2: 0 }, { kernelWetFraction: 0.3 }, { kernelWetFraction: 15 }])(
    'refuses %j',
    (wrong) => {
      const part = { earCornKg: 10, kernelWetFraction: 0.15, areaM2: 10 }
      expect(() => yieldByWeightKgPerM2({ ...part, ...wrong })).toThrow(ValidRangeError)
    },
  )
})
