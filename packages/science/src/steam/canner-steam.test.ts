import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { LETHALITY_250F, lethalRate } from '../lethality/lethal-rate.ts'
import { cToF, fToC, ftToM } from '../units/convert-named.ts'
import { convert } from '../units/unit.ts'
import { boilingTemperatureC, steamPressureKPaGauge, steamTemperatureC } from './canner-steam.ts'

const boiling = readReferenceTable(new URL('./canner-steam.boiling.csv', import.meta.url), [
  'elevationFt',
  'temperatureC',
  'temperatureF',
])
const boilingPrinted = readReferenceTable(new URL('./canner-steam.boiling-printed.csv', import.meta.url), [
  'elevationFt',
  'temperatureF',
])
const pressure = readReferenceTable(new URL('./canner-steam.pressure.csv', import.meta.url), [
  'temperatureF',
  'elevationFt',
  'pressurePsiGauge',
])
const bands = readReferenceTable(new URL('./canner-steam.bands.csv', import.meta.url), [
  'pressurePsiGauge',
  'elevationFt',
  'temperatureF',
])
const bandsLethalRate = readReferenceTable(new URL('./canner-steam.bands-lethal-rate.csv', import.meta.url), [
  'pressurePsiGauge',
  'elevationFt',
  'lethalRate',
])

const atFt = (pressurePsiGauge: number, elevationFt: number) =>
  steamTemperatureC({
    pressureKPaGauge: convert(pressurePsiGauge, 'PsiGauge', 'KPaGauge'),
    elevationM: ftToM(elevationFt),
  })

describe('water in an open pot', () => {
  test.each(boiling.rows)('boils at $temperatureC °C, $temperatureF °F, at $elevationFt ft', (row) => {
    const temperatureC = boilingTemperatureC(ftToM(row.elevationFt))
    expect(Math.abs(temperatureC - row.temperatureC)).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(cToF(temperatureC) - row.temperatureF)).toBeLessThanOrEqual(0.005)
  })

  test.each(boilingPrinted.rows)('boils within 0.2 of the printed $temperatureF °F at $elevationFt ft', (row) => {
    expect(Math.abs(cToF(boilingTemperatureC(ftToM(row.elevationFt))) - row.temperatureF)).toBeLessThanOrEqual(0.2)
  })
})

describe('steam in a well vented canner', () => {
  test.each(pressure.rows)('reaches $temperatureF °F at $pressurePsiGauge psi and $elevationFt ft', (row) => {
    const kPaGauge = steamPressureKPaGauge(fToC(row.temperatureF), ftToM(row.elevationFt))
    expect(Math.abs(convert(kPaGauge, 'KPaGauge', 'PsiGauge') - row.pressurePsiGauge)).toBeLessThanOrEqual(0.0005)
  })

  test.each(bands.rows)('stands at $temperatureF °F at $pressurePsiGauge psi and $elevationFt ft', (row) => {
    const temperatureF = cToF(atFt(row.pressurePsiGauge, row.elevationFt))
    expect(Math.abs(temperatureF - row.temperatureF)).toBeLessThanOrEqual(0.005)
  })

  test.each(bandsLethalRate.rows)('has lethal rate $lethalRate at $pressurePsiGauge psi and $elevationFt ft', (row) => {
    const rate = lethalRate(atFt(row.pressurePsiGauge, row.elevationFt), LETHALITY_250F)
    expect(Math.abs(rate - row.lethalRate)).toBeLessThanOrEqual(0.0005)
  })

  test('is hotter at more pressure, cooler higher up, and cooler with air', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 150, noNaN: true }),
        fc.double({ min: -100, max: 4000, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (pressureKPaGauge, elevationM, airMoleFraction) => {
          const here = { pressureKPaGauge, elevationM, airMoleFraction }
          const temperatureC = steamTemperatureC(here)
          expect(steamTemperatureC({ ...here, pressureKPaGauge: pressureKPaGauge + 1 })).toBeGreaterThan(temperatureC)
          expect(steamTemperatureC({ ...here, elevationM: elevationM + 10 })).toBeLessThan(temperatureC)
          expect(steamTemperatureC({ ...here, airMoleFraction: airMoleFraction + 0.01 })).toBeLessThan(temperatureC)
        },
      ),
    )
  })

  test('at zero gauge pressure is as hot as an open pot', () => {
    expect(steamTemperatureC({ pressureKPaGauge: 0, elevationM: 700 })).toBe(boilingTemperatureC(700))
  })

  test.each([
    { pressureKPaGauge: Number.NaN, elevationM: 0 },
    { pressureKPaGauge: -200, elevationM: 0 },
    { pressureKPaGauge: 76, elevationM: 20_000 },
    { pressureKPaGauge: 76, elevationM: 0, airMoleFraction: 1 },
    { pressureKPaGauge: 76, elevationM: 0, airMoleFraction: -0.1 },
  ])('is refused for %o', (steam) => {
    expect(() => steamTemperatureC(steam)).toThrow(ValidRangeError)
  })
})
