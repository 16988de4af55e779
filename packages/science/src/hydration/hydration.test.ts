import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { ftToM } from '../units/convert-named.ts'
import { cookTimeFactor, SOFTENING_Z_C } from './cook-altitude.ts'
import { fitPeleg, pelegMassG } from './peleg.ts'
import { soakedFractionRange, starchState } from './soaking.ts'

const soaking = readReferenceTable(new URL('./peleg.soaking.csv', import.meta.url), ['hours', 'massG'])
const factors = readReferenceTable(new URL('./cook-altitude.factors.csv', import.meta.url), [
  'elevationFt',
  'beans',
  'corn',
])

describe('kernels that soak', () => {
  // Worked separately on this series: k1 0.0513 h/g, k2 0.02386 1/g, plateau 141.9 g, rms 1.6 g.
  test('follow the two constants fitted to the bench record', () => {
    const fit = fitPeleg(soaking.rows)!
    expect(fit.k1).toBeCloseTo(0.0513, 4)
    expect(fit.k2).toBeCloseTo(0.02386, 5)
    expect(fit.plateauG).toBeCloseTo(141.9, 1)
    expect(fit.rmsG).toBeCloseTo(1.6, 1)
  })

  test('give back the constants that made a curve', () => {
    const made = { k1: 0.08, k2: 0.02 }
    const fit = fitPeleg([0, 1, 2, 4, 8, 16].map((hours) => ({ hours, massG: pelegMassG(50, made, hours) })))!
    expect(fit.k1).toBeCloseTo(0.08, 9)
    expect(fit.k2).toBeCloseTo(0.02, 9)
  })

  test('that do not come to a plateau, or were weighed too seldom, get no curve', () => {
    expect(fitPeleg([1, 2, 3, 4].map((n) => ({ hours: n - 1, massG: 100 + (n - 1) ** 3 })))).toBeNull()
    expect(() => fitPeleg([{ hours: 0, massG: 100 }])).toThrow(ValidRangeError)
  })

  test('take up over a wide published spread, and never at the boil', () => {
    const { low, high } = soakedFractionRange(4, 45, 0.0042)
    expect(high / low).toBeGreaterThan(2)
    expect(soakedFractionRange(8, 45, 0.0042).low).toBeGreaterThan(low)
    expect(() => soakedFractionRange(4, 95, 0.0042)).toThrow(ValidRangeError)
  })

  test('have starch that opens between 62 and 80 °C', () => {
    expect([55, 65, 75, 95].map(starchState)).toEqual(['below', 'beginning', 'under-way', 'past'])
  })
})

describe('a cook at the boil', () => {
  test.each(factors.rows)('at $elevationFt ft takes $corn to $beans times as long', ({ elevationFt, beans, corn }) => {
    expect(Math.abs(cookTimeFactor(ftToM(elevationFt), SOFTENING_Z_C.beans) - beans)).toBeLessThanOrEqual(0.02)
    expect(Math.abs(cookTimeFactor(ftToM(elevationFt), SOFTENING_Z_C.corn) - corn)).toBeLessThanOrEqual(0.02)
  })
})
