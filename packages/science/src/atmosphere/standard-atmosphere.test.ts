import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { standardElevationM, standardPressureKPaAbs } from './standard-atmosphere.ts'

const PSI_KPA = 6.894757293
const worked = readReferenceTable(new URL('./standard-atmosphere.worked.csv', import.meta.url), [
  'elevationM',
  'pressurePaAbs',
])
const printed = readReferenceTable(new URL('./standard-atmosphere.printed-psia.csv', import.meta.url), [
  'elevationFt',
  'pressurePsiAbs',
])
const pressurePsiAbs = (elevationFt: number) => standardPressureKPaAbs(elevationFt * 0.3048) / PSI_KPA

describe('pressure of the standard atmosphere', () => {
  test.each(worked.rows)('is $pressurePaAbs Pa at $elevationM m', ({ elevationM, pressurePaAbs }) => {
    // Half a unit in the last digit given, well inside the 0.1 Pa asked.
    expect(Math.abs(standardPressureKPaAbs(elevationM) * 1000 - pressurePaAbs)).toBeLessThanOrEqual(0.05)
  })

  test.each(printed.rows.filter(({ elevationFt }) => elevationFt !== 4000))(
    'is within 0.003 of the printed $pressurePsiAbs psi at $elevationFt ft',
    ({ elevationFt, pressurePsiAbs: printedPsiAbs }) => {
      expect(Math.abs(pressurePsiAbs(elevationFt) - printedPsiAbs)).toBeLessThanOrEqual(0.003)
    },
  )

  test('lies 0.010 psi above the printed 4,000 ft row, which is thought misprinted', () => {
    const row = printed.rows.find(({ elevationFt }) => elevationFt === 4000)!
    expect(pressurePsiAbs(4000) - row.pressurePsiAbs).toBeCloseTo(0.0103, 4)
  })

  test('falls with elevation', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 10_999, noNaN: true }), (elevationM) => {
        expect(standardPressureKPaAbs(elevationM + 1)).toBeLessThan(standardPressureKPaAbs(elevationM))
      }),
    )
  })

  test('gives the elevation back', () => {
    fc.assert(
      fc.property(fc.double({ min: -4999, max: 10_999, noNaN: true }), (elevationM) => {
        expect(Math.abs(standardElevationM(standardPressureKPaAbs(elevationM)) - elevationM)).toBeLessThan(1e-6)
      }),
    )
  })

  test.each([-5001, 11_001, Number.NaN, Number.POSITIVE_INFINITY])('refuses %s m', (elevationM) => {
    expect(() => standardPressureKPaAbs(elevationM)).toThrow(ValidRangeError)
  })

  test.each([22, 178, 0, Number.NaN])('refuses to name an elevation for %s kPa', (atmosphereKPaAbs) => {
    expect(() => standardElevationM(atmosphereKPaAbs)).toThrow(ValidRangeError)
  })
})
