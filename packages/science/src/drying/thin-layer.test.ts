import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { fToC } from '../units/convert-named.ts'
import {
  FLINT_KERNEL_RADIUS_M,
  flintDiffusivityM2PerS,
  hoursPage,
  hoursThompson1968,
  moistureRatioLewis,
  moistureRatioPage,
  moistureRatioSphere,
  pageCurveMisraBrooker1980,
} from './thin-layer.ts'

const page = readReferenceTable(new URL('./thin-layer.worked.csv', import.meta.url), [
  'temperatureC',
  'humidityFraction',
  'startDryFraction',
  'airMPerS',
  'hours',
  'k',
  'n',
  'moistureRatio',
])
const sphere = readReferenceTable(new URL('./thin-layer.sphere.csv', import.meta.url), [
  'temperatureC',
  'hours',
  'moistureRatio',
])

test.each(page.rows)('dent at $temperatureC °C keeps $moistureRatio after $hours h', (row) => {
  const curve = pageCurveMisraBrooker1980(row)
  expect(Math.abs(curve.k - row.k)).toBeLessThan(0.5e-4 + 1e-9)
  expect(Math.abs(curve.n - row.n)).toBeLessThan(0.5e-4 + 1e-9)
  expect(Math.abs(moistureRatioPage(curve, row.hours) - row.moistureRatio)).toBeLessThan(0.5e-4 + 1e-9)
})

test.each(sphere.rows)('flint at $temperatureC °C keeps $moistureRatio after $hours h', (row) => {
  const fourier = (flintDiffusivityM2PerS(row.temperatureC) * row.hours * 3600) / FLINT_KERNEL_RADIUS_M ** 2
  expect(Math.abs(moistureRatioSphere(fourier) - row.moistureRatio)).toBeLessThan(0.5e-4 + 1e-9)
})

// thompson-1968 worked separately: 140 °F.
test('Thompson gives 2.837 h to half and 12.789 h to a fifth at 140 °F', () => {
  expect(hoursThompson1968(fToC(140), 0.5)).toBeCloseTo(2.837, 3)
  expect(hoursThompson1968(fToC(140), 0.2)).toBeCloseTo(12.789, 3)
})

// owusu-sekyere-2021: 17.5 % to 11.5 % wet basis in 3 h at 50 °C; with 3.8 % dry basis at the end, k is 0.213 per hour.
test('Lewis with the rate of the Ghana trial brings 17.5 % to 11.5 % in three hours', () => {
  const start = 17.5 / 82.5
  const end = 11.5 / 88.5
  const settled = 0.038
  expect(moistureRatioLewis(0.213, 3)).toBeCloseTo((end - settled) / (start - settled), 2)
})

test('the two forms of the sphere meet where they change over', () => {
  expect(Math.abs(moistureRatioSphere(0.02 - 1e-13) - moistureRatioSphere(0.02 + 1e-13))).toBeLessThan(1e-10)
})

test('every curve falls with time, and Page comes back to its hour', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (hours) => {
      const curve = pageCurveMisraBrooker1980({
        temperatureC: 45,
        humidityFraction: 0.2,
        startDryFraction: 0.3,
        airMPerS: 0.5,
      })
      const ratio = moistureRatioPage(curve, hours)
      expect(hoursPage(curve, ratio)).toBeCloseTo(hours, 6)
      expect(moistureRatioPage(curve, hours * 1.01)).toBeLessThan(ratio)
      expect(moistureRatioSphere(hours / 100)).toBeGreaterThan(moistureRatioSphere(hours / 99))
    }),
  )
})

test('air and corn outside what was measured are refused', () => {
  const layer = { temperatureC: 45, humidityFraction: 0.2, startDryFraction: 0.3, airMPerS: 0.5 }
  for (const off of [{ temperatureC: 80 }, { humidityFraction: 0.9 }, { startDryFraction: 2 }, { airMPerS: 0 }])
    expect(() => pageCurveMisraBrooker1980({ ...layer, ...off })).toThrow(ValidRangeError)
  expect(() => flintDiffusivityM2PerS(20)).toThrow(ValidRangeError)
  expect(() => hoursThompson1968(50, 0.5)).toThrow(ValidRangeError)
  expect(() => hoursThompson1968(70, 0)).toThrow(ValidRangeError)
  expect(() => moistureRatioLewis(0.2, -1)).toThrow(ValidRangeError)
})
