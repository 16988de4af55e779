import { expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import {
  equilibriumMoistureGabDryFraction,
  equilibriumMoistureHalseyDryFraction,
  equilibriumMoistureOswinDryFraction,
} from './isotherms.ts'

const oswin = readReferenceTable(new URL('./isotherms.oswin.csv', import.meta.url), [
  'temperatureC',
  'humidityFraction',
  'dryPercent',
])

test.each(oswin.rows)('Oswin gives $dryPercent % dry basis at $temperatureC °C and $humidityFraction', (row) => {
  expect(Math.abs(100 * equilibriumMoistureOswinDryFraction(row) - row.dryPercent)).toBeLessThan(0.0005)
})

test('GAB with k = 1 is BET: one layer at half a layer’s humidity by hand', () => {
  // Mm 0.07, C 10, RH 0.5: 0.07 * 10 * 0.5 / (0.5 * (0.5 + 5)) = 0.35 / 2.75 = 0.127273
  expect(equilibriumMoistureGabDryFraction(0.5, { monolayerDryFraction: 0.07, C: 10, k: 1 })).toBeCloseTo(0.127273, 6)
})

test('Halsey by hand: A = 4, B = 0, C = 2, humidity e^-1 gives e^2 percent', () => {
  const air = { temperatureC: 20, humidityFraction: Math.exp(-1) }
  expect(100 * equilibriumMoistureHalseyDryFraction(air, { A: 4, B: 0, C: 2 })).toBeCloseTo(Math.E ** 2, 9)
})

test('all refuse air out of range', () => {
  const constants = { monolayerDryFraction: 0.07, C: 10, k: 1.2 }
  expect(() => equilibriumMoistureOswinDryFraction({ temperatureC: 20, humidityFraction: 65 })).toThrow(ValidRangeError)
  expect(() => equilibriumMoistureGabDryFraction(0.9, constants)).toThrow(ValidRangeError)
  expect(() =>
    equilibriumMoistureHalseyDryFraction({ temperatureC: 20, humidityFraction: 0.5 }, { A: 1, B: 0, C: 0 }),
  ).toThrow(ValidRangeError)
})
