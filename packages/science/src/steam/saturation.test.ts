import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import {
  saturationPressureKPaAbs,
  saturationPressureWagnerPruss1992KPaAbs,
  saturationTemperatureC,
} from './saturation.ts'

const table35 = readReferenceTable(new URL('./saturation.table35.csv', import.meta.url), [
  'temperatureK',
  'pressureMPa',
])
const table36 = readReferenceTable(new URL('./saturation.table36.csv', import.meta.url), [
  'pressureMPa',
  'temperatureK',
])
const canning = readReferenceTable(new URL('./saturation.canning-range.csv', import.meta.url), [
  'temperatureC',
  'pressureKPaAbs',
])
const fixedPoints = readReferenceTable(new URL('./saturation.fixed-points.csv', import.meta.url), [
  'temperatureC',
  'pressureKPaAbs',
])

/** Half a unit in the last of nine significant digits. */
const halfUnit = (value: number) => 0.5 * 10 ** (Math.floor(Math.log10(value)) - 8)

describe('saturation line of water', () => {
  test.each(table35.rows)('gives the printed pressure of IF97 table 35 at $temperatureK K', (row) => {
    const pressureMPa = saturationPressureKPaAbs(row.temperatureK - 273.15) / 1000
    expect(Math.abs(pressureMPa - row.pressureMPa)).toBeLessThanOrEqual(halfUnit(row.pressureMPa))
  })

  test.each(table36.rows)('gives the printed temperature of IF97 table 36 at $pressureMPa MPa', (row) => {
    const temperatureK = saturationTemperatureC(row.pressureMPa * 1000) + 273.15
    expect(Math.abs(temperatureK - row.temperatureK)).toBeLessThanOrEqual(halfUnit(row.temperatureK))
  })

  // Nine digits cannot tell n5 from the misprint ...550323333e7 of a public copy; it moves these points by 3e-10.
  test.each(fixedPoints.rows)('meets its fixed point at $temperatureC °C', ({ temperatureC, pressureKPaAbs }) => {
    expect(Math.abs(saturationPressureKPaAbs(temperatureC) / pressureKPaAbs - 1)).toBeLessThan(1e-10)
  })

  test.each(canning.rows)('is $pressureKPaAbs kPa at $temperatureC °C', ({ temperatureC, pressureKPaAbs }) => {
    expect(Math.abs(saturationPressureKPaAbs(temperatureC) - pressureKPaAbs)).toBeLessThanOrEqual(0.0001)
  })

  test('puts the boiling point at 101.325 kPa at 99.974 °C, not at 100', () => {
    expect(saturationTemperatureC(101.325)).toBeCloseTo(99.974, 3)
  })

  test('gives back the temperature it was asked at, from ice point to critical point', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 373.9, noNaN: true }), (temperatureC) => {
        // The release states the two directions agree to numerical precision; near the critical point the slope is steep.
        expect(Math.abs(saturationTemperatureC(saturationPressureKPaAbs(temperatureC)) - temperatureC)).toBeLessThan(
          1e-6,
        )
      }),
    )
  })

  // The two fits agree within 4e-5 where canners work. Lower down they part a little more: 9.9e-5 at 47 °C, measured here.
  test.each([
    { fromC: 74, toC: 121, relative: 4e-5 },
    { fromC: 0, toC: 121, relative: 1e-4 },
  ])('agrees with Wagner and Pruss within $relative from $fromC to $toC °C', ({ fromC, toC, relative }) => {
    for (let temperatureC = fromC; temperatureC <= toC; temperatureC += 0.25) {
      const ratio = saturationPressureWagnerPruss1992KPaAbs(temperatureC) / saturationPressureKPaAbs(temperatureC)
      expect(Math.abs(ratio - 1), `at ${temperatureC} °C`).toBeLessThan(relative)
    }
  })

  test('differs from Wagner and Pruss by about 1.2e-4 at 500 K, so the two are not one formula twice', () => {
    const ratio = saturationPressureWagnerPruss1992KPaAbs(226.85) / saturationPressureKPaAbs(226.85)
    expect(Math.abs(ratio - 1)).toBeGreaterThan(1e-4)
    expect(Math.abs(ratio - 1)).toBeLessThan(1.5e-4)
  })

  // Verification values of iapws-sr1-86 table 1, from memory, not re-read: 0.000611657 and 0.101325 MPa.
  test('gives Wagner and Pruss their own printed pressures at the triple point and at normal boiling', () => {
    expect(Math.abs(saturationPressureWagnerPruss1992KPaAbs(273.16 - 273.15) - 0.611657)).toBeLessThan(0.5e-6)
    expect(Math.abs(saturationPressureWagnerPruss1992KPaAbs(373.1243 - 273.15) - 101.325)).toBeLessThan(0.5e-3)
  })

  test.each([0, 0.6, 22_065, Number.NaN])('refuses %s kPa, off the saturation line', (pressureKPaAbs) => {
    expect(() => saturationTemperatureC(pressureKPaAbs)).toThrow(ValidRangeError)
  })

  test.each([-0.1, 374, Number.NaN])('refuses %s °C, off the saturation line', (temperatureC) => {
    expect(() => saturationPressureKPaAbs(temperatureC)).toThrow(ValidRangeError)
    expect(() => saturationPressureWagnerPruss1992KPaAbs(temperatureC)).toThrow(ValidRangeError)
  })
})
