import { describe, expect, test } from 'vitest'
import { shownValue } from '../reckoned.ts'
import { empiricalHeatingC } from './empirical-heating.ts'
import { heatingFitCalc } from './heating-fit.calc.ts'

describe('the calculation of a heating trial', () => {
  test('finds the fh 20 and jh 1.4 its invented readings were written from', () => {
    const line = { mediumC: 116, initialC: 62, fhMin: 20, jh: 1.4 }
    const readings = [5, 10, 15, 20, 25].map((time) => ({
      time,
      value: Math.round(empiricalHeatingC(line, time) * 10) / 10,
    }))
    expect(heatingFitCalc.example.readings).toEqual(readings)
    const result = heatingFitCalc.run({ readings, mediumC: 116, initialC: 62, straightFromMin: 5 })
    if (!result.ok) throw new Error(result.refused)
    const shown = Object.fromEntries(result.values.map((value) => [value.id, shownValue(value)]))
    expect(shown).toMatchObject({ usedCount: 5 })
    // Readings are written to a tenth of a degree, the last 4.3 °C below the canner: about one part in a hundred.
    expect(Math.abs(shown.jh! - 1.4)).toBeLessThan(0.014)
    expect(Math.abs(shown.fhMin! - 20)).toBeLessThan(0.2)
    expect(result.warnings.map(({ key }) => key)).toEqual(['heat:does-not-change-directions'])
  })

  test('refuses a reading as warm as the canner around it', () => {
    const readings = [0, 1, 2].map((time) => ({ time, value: 116 }))
    expect(() => heatingFitCalc.run({ readings, mediumC: 116, initialC: 62 })).toThrow(/temperatureC is 116/)
  })
})
