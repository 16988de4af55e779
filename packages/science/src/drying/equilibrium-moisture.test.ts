import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { fToC } from '../units/convert-named.ts'
import {
  dryToWetFraction,
  equilibriumHumidityFraction,
  equilibriumMoistureChungPfostDryFraction,
  equilibriumMoistureHendersonDryFraction,
  wetToDryFraction,
} from './equilibrium-moisture.ts'

const printed = readReferenceTable(new URL('./equilibrium-moisture.printed.csv', import.meta.url), [
  'temperatureF',
  'humidityPercent',
  'wetPercent',
])
const worked = readReferenceTable(new URL('./equilibrium-moisture.worked.csv', import.meta.url), [
  'temperatureC',
  'humidityFraction',
  'hendersonDryPercent',
  'chungPfostDryPercent',
])

describe('equilibrium moisture of shelled corn', () => {
  test.each(printed.rows)(
    'is $wetPercent % wet basis at $temperatureF °F and $humidityPercent %, as printed',
    (row) => {
      const air = { temperatureC: fToC(row.temperatureF), humidityFraction: row.humidityPercent / 100 }
      const wetPercent = 100 * dryToWetFraction(equilibriumMoistureHendersonDryFraction(air))
      // The dust lets a value that ends on the half itself go either way.
      expect(Math.abs(wetPercent - row.wetPercent)).toBeLessThan(0.05 + 1e-3)
    },
  )

  test.each(worked.rows)('is what the two equations give at $temperatureC °C and $humidityFraction', (row) => {
    expect(Math.abs(100 * equilibriumMoistureHendersonDryFraction(row) - row.hendersonDryPercent)).toBeLessThan(0.0005)
    expect(Math.abs(100 * equilibriumMoistureChungPfostDryFraction(row) - row.chungPfostDryPercent)).toBeLessThan(
      0.0005,
    )
  })

  // ndsu-drying-2019 (12.8), kentucky-emc-2012 (the mean of both equations): 70 °F.
  test('meets two extension services at 70 °F: 12.8 % at 60 %, and 11.3 % at 50 % as the mean of both equations', () => {
    const temperatureC = fToC(70)
    const at60 = equilibriumMoistureHendersonDryFraction({ temperatureC, humidityFraction: 0.6 })
    expect(100 * dryToWetFraction(at60)).toBeCloseTo(12.8, 1)
    const at50 = { temperatureC, humidityFraction: 0.5 }
    const both = [equilibriumMoistureHendersonDryFraction(at50), equilibriumMoistureChungPfostDryFraction(at50)]
    expect((100 * (dryToWetFraction(both[0]!) + dryToWetFraction(both[1]!))) / 2).toBeCloseTo(11.287, 2)
  })

  // asae-d245 worked separately: 20 °C, 13 % wet basis.
  test('gives back the humidity that holds a moisture', () => {
    expect(equilibriumHumidityFraction(0.13, 20)).toBeCloseTo(0.6064, 4)
    expect(equilibriumHumidityFraction(0.14, 25)).toBeCloseTo(0.6903, 4)
    expect(equilibriumHumidityFraction(0.13, 30)).toBeCloseTo(0.6556, 4)
  })

  test('comes back to the humidity it began with, rises with it and falls with warmth', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 59, noNaN: true }),
        fc.double({ min: 0.1, max: 0.89, noNaN: true }),
        (temperatureC, humidityFraction) => {
          const dry = equilibriumMoistureHendersonDryFraction({ temperatureC, humidityFraction })
          expect(equilibriumHumidityFraction(dryToWetFraction(dry), temperatureC)).toBeCloseTo(humidityFraction, 9)
          const damper = { temperatureC, humidityFraction: humidityFraction + 0.01 }
          const warmer = { temperatureC: temperatureC + 1, humidityFraction }
          expect(equilibriumMoistureHendersonDryFraction(damper)).toBeGreaterThan(dry)
          expect(equilibriumMoistureHendersonDryFraction(warmer)).toBeLessThan(dry)
        },
      ),
    )
  })

  test('keeps the two bases apart: 15.1 % dry is 13.1 % wet', () => {
    expect(dryToWetFraction(0.151)).toBeCloseTo(0.131, 3)
    expect(wetToDryFraction(0.13)).toBeCloseTo(0.14943, 5)
  })

  test.each([
    [-1, 0.5],
    [61, 0.5],
    [20, 0.05],
    [20, 0.95],
    [20, 65],
    [Number.NaN, 0.5],
  ])('refuses %s °C at humidity %s, off its range', (temperatureC, humidityFraction) => {
    expect(() => equilibriumMoistureHendersonDryFraction({ temperatureC, humidityFraction })).toThrow(ValidRangeError)
    expect(() => equilibriumMoistureChungPfostDryFraction({ temperatureC, humidityFraction })).toThrow(ValidRangeError)
  })

  test('refuses a moisture told in percent', () => {
    expect(() => equilibriumHumidityFraction(13, 20)).toThrow('wetFraction is 13')
  })
})
