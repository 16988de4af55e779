import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { LETHALITY_250F, lethalRate } from '../lethality/lethal-rate.ts'
import { boilingTemperatureC, steamTemperatureC } from '../steam/canner-steam.ts'
import { cToF } from '../units/convert-named.ts'
import { convert } from '../units/unit.ts'
import { airLeftTemperatureC, steamPartialPressureKPaAbs } from './trapped-air.ts'

const dalton = readReferenceTable(new URL('./trapped-air.mole-fraction.csv', import.meta.url), [
  'pressurePsiGauge',
  'airMoleFraction',
  'temperatureF',
  'lethalRate',
])
const columns = ['pressurePsiGauge', 'airLeftFraction', 'temperatureC'] as const
const remembered = readReferenceTable(new URL('./trapped-air.steriliser.csv', import.meta.url), columns)
const worked = readReferenceTable(new URL('./trapped-air.steriliser-worked.csv', import.meta.url), columns)
const airLeftC = ({ pressurePsiGauge, airLeftFraction }: (typeof worked.rows)[number]) =>
  airLeftTemperatureC({
    pressureKPaGauge: convert(pressurePsiGauge, 'PsiGauge', 'KPaGauge'),
    atmosphereKPaAbs: 101.325,
    airLeftFraction,
  })

describe('air mixed with the steam', () => {
  test.each(dalton.rows)('at a share of $airMoleFraction leaves $temperatureF °F at $pressurePsiGauge psi', (row) => {
    const temperatureC = steamTemperatureC({
      pressureKPaGauge: convert(row.pressurePsiGauge, 'PsiGauge', 'KPaGauge'),
      elevationM: 0,
      airMoleFraction: row.airMoleFraction,
    })
    // 0.0053 at one row (230.515 °F against 230.51): the separate working rounded a step earlier.
    expect(Math.abs(cToF(temperatureC) - row.temperatureF)).toBeLessThanOrEqual(0.0055)
    expect(Math.abs(lethalRate(temperatureC, LETHALITY_250F) - row.lethalRate)).toBeLessThanOrEqual(0.0005)
  })

  test('takes its share of the pressure', () => {
    expect(steamPartialPressureKPaAbs(177.2, 0.25)).toBeCloseTo(132.9, 9)
  })

  test.each([-0.01, 1, Number.NaN])('is refused at a share of %s', (airMoleFraction) => {
    expect(() => steamPartialPressureKPaAbs(177, airMoleFraction)).toThrow(ValidRangeError)
  })
})

describe('part of the first air left in a closed vessel', () => {
  test.each(remembered.rows)(
    '$airLeftFraction at $pressurePsiGauge psi: near the classical $temperatureC °C',
    (row) => {
      expect(Math.abs(airLeftC(row) - row.temperatureC)).toBeLessThanOrEqual(1.3)
    },
  )

  test.each(worked.rows)('$airLeftFraction at $pressurePsiGauge psi: $temperatureC °C by the rule', (row) => {
    // 0.051 at one row (100.549 °C against 100.6): the separate working rounded a step earlier.
    expect(Math.abs(airLeftC(row) - row.temperatureC)).toBeLessThanOrEqual(0.055)
  })

  test('makes 15 psi little hotter than an open pot when all of it stays', () => {
    const pressureKPaGauge = convert(15, 'PsiGauge', 'KPaGauge')
    const temperatureC = airLeftTemperatureC({ pressureKPaGauge, atmosphereKPaAbs: 101.325, airLeftFraction: 1 })
    expect(temperatureC - boilingTemperatureC(0)).toBeLessThan(1)
  })

  test.each([-0.01, 1.01, Number.NaN])('is refused at a share of %s', (airLeftFraction) => {
    const vessel = { pressureKPaGauge: 70, atmosphereKPaAbs: 101.325, airLeftFraction }
    expect(() => airLeftTemperatureC(vessel)).toThrow(ValidRangeError)
  })
})
