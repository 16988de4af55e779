import { describe, expect, test } from 'vitest'
import type { CalcResult, Reckoned } from './index.ts'
import { shownValue, ValidRangeError } from './index.ts'
import { SCIENCE_CALCS } from './science-calcs.ts'

const run = (id: string, input: object): CalcResult => {
  const calc = SCIENCE_CALCS.find((candidate) => candidate.id === id)
  if (!calc) throw new Error(`no calculation ${id}`)
  return calc.run(input as never)
}
const shown = (result: CalcResult) => {
  if (!result.ok) throw new Error(result.refused)
  return Object.fromEntries(result.values.map((value) => [value.id, shownValue(value)]))
}

// Each expected figure is in the published or worked table of its own part, or in the source named.
describe('a calculation of this package', () => {
  test('tells the atmosphere and the boiling point at 5,000 ft', () => {
    expect(shown(run('standard-atmosphere', { elevationM: 1524 }))).toEqual({
      elevationFt: 5000,
      atmosphereKPaAbs: 84.31,
      boilingC: 94.9,
      boilingF: 202.8,
    })
  })

  test('tells the steam at 11 psi at sea level, with five percent air', () => {
    const input = { pressureKPaGauge: 75.84233, elevationM: 0, airMoleFraction: 0.05 }
    expect(shown(run('steam-temperature', input))).toEqual({
      steamC: 114.84,
      steamF: 238.72,
      lethalRateFraction: 0.236,
    })
  })

  test('tells what half the air left in costs at 15 psi', () => {
    const values = shown(run('trapped-air', { pressureKPaGauge: 103.42136, elevationM: 0, airLeftFraction: 0.5 }))
    expect(values).toMatchObject({ ventedC: 121, withAirC: 112.2 })
  })

  test('tells the marks of a gauge that reads 1.5 high', () => {
    const test = [
      { truePsi: 10, readsPsi: 11.5 },
      { truePsi: 11, readsPsi: 12.5 },
      { truePsi: 15, readsPsi: 16.5 },
    ]
    expect(shown(run('gauge-correction', { test, truePsi: 11, marksEveryPsi: 1 }))).toEqual({
      errorPsi: 1.5,
      requiredReadingPsi: 12.5,
      holdAtPsi: 13,
      trueAtHoldPsi: 11.5,
    })
  })

  test('names no true pressure for a mark above the last reading tested', () => {
    const values = shown(run('gauge-correction', { test: [{ truePsi: 11, readsPsi: 12.5 }], truePsi: 11 }))
    expect(values).toEqual({ errorPsi: 1.5, requiredReadingPsi: 12.5, holdAtPsi: 13 })
  })

  test('tells the lethality of a ramp, a hold and a fall, and only the rules its steps allow', () => {
    const readings = [
      { time: 0, value: 100 },
      { time: 10, value: 116 },
      { time: 70, value: 116 },
      { time: 90, value: 100 },
    ]
    const values = shown(run('lethality', { readings, reference: '121.1 °C, z 10 °C' }))
    expect(values.lethalityMin).toBe(20.995)
    expect(Object.keys(values)).toEqual(['lethalityMin', 'trapezoidMin'])
  })

  test('tells 9 lb as 6 liquid quarts and 13.2 to 24 of hominy', () => {
    const result = run('kernel-measure', { massKg: 9 * 0.45359237 })
    expect(shown(result)).toMatchObject({ massLb: 9, dryLiquidQt: 6, dryCup: 24, hominyLiquidQt: 18 })
    const hominy = result.ok ? result.values.find(({ id }) => id === 'hominyLiquidQt') : undefined
    expect(hominy?.low).toBeCloseTo(13.2, 9)
    expect(hominy?.high).toBeCloseTo(24, 9)
  })

  test('tells the same corn whether weight or volume is given', () => {
    const byVolume = shown(run('kernel-measure', { volumeL: 0.946352946 }))
    expect(byVolume).toEqual(shown(run('kernel-measure', { massKg: 0.680388555 })))
    expect(byVolume.massLb).toBe(1.5)
  })

  test.each([{}, { massKg: 1, volumeL: 1 }])('refuses corn given as %o', (input) => {
    expect(() => run('kernel-measure', input)).toThrow(ValidRangeError)
  })

  test('tells dried, cooked and shelled weights', () => {
    const dried = { massKg: 10, fromWetFraction: 0.18, toWetFraction: 0.13 }
    expect(shown(run('moisture-shrink', dried)).afterKg).toBe(9.425)
    const cook = { massKg: 2, rawWetFraction: 0.104, dryMatterLossFraction: 0.1, cookedWetFraction: 0.7 }
    expect(shown(run('cooked-yield', cook))).toEqual({ cookedPerRaw: 2.69, cookedKg: 5.376 })
    expect(
      shown(run('equilibrium-moisture', { temperatureC: 21.1111, humidityFraction: 0.6, cornType: 'flint' })),
    ).toEqual({ equilibriumWetFraction: 0.128, equilibriumDryFraction: 0.147 })
    expect(shown(run('ear-corn', { earCornKg: 68.4, kernelWetFraction: 0.155 }))).toMatchObject({ shelledKg: 56 })
  })
})

describe('every calculation of this package', () => {
  test.each(SCIENCE_CALCS)('$id has its own name, a question and known outputs, in the unit it promises', (calc) => {
    expect(SCIENCE_CALCS.filter(({ id }) => id === calc.id)).toHaveLength(1)
    expect(calc.id).toMatch(/^[a-z]+(-[a-z]+)*$/)
    expect(calc.question.endsWith('?') || calc.question.endsWith('.')).toBe(true)
    const result = calc.run(canonical(calc.example) as never)
    const values: readonly Reckoned[] = result.ok ? result.values : []
    expect(values.length).toBeGreaterThan(0)
    for (const value of values) {
      expect(value.unit).toBe(calc.outputs[value.id]?.unit)
      expect(Number.isFinite(value.value)).toBe(true)
      expect(value.sourceKeys.every((key) => calc.sourceKeys.includes(key))).toBe(true)
    }
  })
})

/** Examples as a door would hand them on: psi in kPa, lb in kg, °C as it is. */
function canonical(example: object): object {
  return Object.fromEntries(
    Object.entries(example).map(([name, given]) => {
      if (given?.unit === 'PsiGauge') return [name, given.value * 6.894757293168]
      if (given?.unit === 'C') return [name, given.value]
      if (given?.unit === 'Lb') return [name, given.value * 0.45359237]
      return [name, given]
    }),
  )
}
