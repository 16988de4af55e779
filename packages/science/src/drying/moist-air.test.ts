import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import {
  dewPointC,
  humidityFromWetBulb,
  humidityOfRatio,
  humidityRatio,
  moistAirEnthalpyKJPerKg,
  moistAirVolumeM3PerKg,
  saturationVapourKPa,
  wetBulbC,
} from './moist-air.ts'

const saturation = readReferenceTable(new URL('./moist-air.saturation.csv', import.meta.url), [
  'temperatureC',
  'saturationPa',
])
const ratio = readReferenceTable(new URL('./moist-air.ratio.csv', import.meta.url), ['temperatureC', 'saturatedRatio'])
const library = readReferenceTable(new URL('./moist-air.psychrolib.csv', import.meta.url), [
  'temperatureC',
  'humidityFraction',
  'pressureKPaAbs',
  'humidityRatio',
  'wetBulbC',
  'dewPointC',
  'vapourKPa',
  'enthalpyKJPerKg',
  'volumeM3PerKg',
])

const off = (value: number, wanted: number): number => Math.abs(value / wanted - 1)
const sea = 101.325

test.each(saturation.rows)('air of $temperatureC °C is saturated at $saturationPa Pa', (row) => {
  expect(off(1000 * saturationVapourKPa(row.temperatureC), row.saturationPa)).toBeLessThan(3e-4)
})

test.each(ratio.rows)('saturated air of $temperatureC °C carries $saturatedRatio', (row) => {
  const air = { temperatureC: row.temperatureC, humidityFraction: 1, pressureKPaAbs: sea }
  expect(off(humidityRatio(air), row.saturatedRatio)).toBeLessThan(0.01)
})

test('reproduces the reference library over the whole grid', () => {
  expect(library.rows.length).toBe(140)
  for (const row of library.rows) {
    expect(off(humidityRatio(row), row.humidityRatio)).toBeLessThan(1e-6)
    expect(off(row.humidityFraction * saturationVapourKPa(row.temperatureC), row.vapourKPa)).toBeLessThan(1e-6)
    expect(Math.abs(moistAirEnthalpyKJPerKg(row) - row.enthalpyKJPerKg)).toBeLessThan(
      1e-6 * (1 + Math.abs(row.enthalpyKJPerKg)),
    )
    expect(off(moistAirVolumeM3PerKg(row), row.volumeM3PerKg)).toBeLessThan(1e-6)
    expect(Math.abs(wetBulbC(row) - row.wetBulbC)).toBeLessThan(0.002)
    // Drier than our range reaches: a dew point under -40 °C is refused, not guessed.
    if (row.dewPointC < -40) expect(() => dewPointC(row)).toThrow(ValidRangeError)
    else expect(Math.abs(dewPointC(row) - row.dewPointC)).toBeLessThan(0.002)
  }
})

// ashrae-fundamentals-2017-ch1 example 1.
test('works the handbook’s example: 40 °C dry, 20 °C wet', () => {
  const humidityFraction = humidityFromWetBulb(20, { temperatureC: 40, pressureKPaAbs: sea })
  const air = { temperatureC: 40, humidityFraction, pressureKPaAbs: sea }
  // Read off a chart: one unit in the last digit printed.
  const read = (value: number, printed: number, unit: number) =>
    expect(Math.abs(value - printed)).toBeLessThanOrEqual(unit)
  read(humidityFraction, 0.14, 0.01)
  read(humidityRatio(air), 0.0065, 0.0001)
  read(dewPointC(air), 7, 1)
  read(moistAirEnthalpyKJPerKg(air), 56.7, 0.1)
  read(moistAirVolumeM3PerKg(air), 0.896, 0.001)
})

// Worked separately with the reference library.
test('tells how dry outdoor air becomes when it is heated', () => {
  const W = humidityRatio({ temperatureC: 10, humidityFraction: 0.7, pressureKPaAbs: sea })
  const at = (temperatureC: number) => humidityOfRatio(W, { temperatureC, pressureKPaAbs: sea })
  expect([20, 35, 60].map((c) => Number(at(c).toFixed(3)))).toEqual([0.368, 0.153, 0.043])
})

describe('any air', () => {
  const air = fc.record({
    temperatureC: fc.double({ min: -10, max: 95, noNaN: true }),
    humidityFraction: fc.double({ min: 0.1, max: 1, noNaN: true }),
    pressureKPaAbs: fc.double({ min: 99, max: 104, noNaN: true }),
  })
  test('has its dew point at or below its wet bulb, and that at or below its dry bulb', () => {
    fc.assert(
      fc.property(air, (each) => {
        const dew = dewPointC(each)
        const wet = wetBulbC(each)
        // Below freezing the wet bulb is of ice; the two equations meet within a tenth of a degree.
        expect(dew).toBeLessThanOrEqual(wet + (wet < 0.1 ? 0.1 : 1e-3))
        expect(wet).toBeLessThanOrEqual(each.temperatureC + 1e-9)
      }),
    )
  })
  test('comes back from its ratio and from its wet bulb', () => {
    fc.assert(
      fc.property(air, (each) => {
        expect(humidityOfRatio(humidityRatio(each), each)).toBeCloseTo(each.humidityFraction, 9)
        expect(humidityFromWetBulb(wetBulbC(each), each)).toBeCloseTo(each.humidityFraction, 5)
      }),
    )
  })
})

test.each([
  [20, 65, sea],
  [20, 0, sea],
  [120, 0.5, sea],
  [20, 0.5, 1013],
  [Number.NaN, 0.5, sea],
])('refuses %s °C, humidity %s, %s kPa', (temperatureC, humidityFraction, pressureKPaAbs) => {
  expect(() => humidityRatio({ temperatureC, humidityFraction, pressureKPaAbs })).toThrow(ValidRangeError)
})

test('refuses a wet bulb above the dry one, and more water than air can carry', () => {
  expect(() => humidityFromWetBulb(21, { temperatureC: 20, pressureKPaAbs: sea })).toThrow(ValidRangeError)
  expect(() => humidityOfRatio(0.05, { temperatureC: 20, pressureKPaAbs: sea })).toThrow(ValidRangeError)
})
