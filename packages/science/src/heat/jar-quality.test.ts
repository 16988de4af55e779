import { describe, expect, test } from 'vitest'
import { MADE_UP_RUN } from '../../testing/made-up-run.ts'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { jarQualityCalc } from './jar-quality.calc.ts'
import { studyQuality } from './jar-quality.ts'
import type { MadeUpRun } from './jar-study.ts'
import { curveLethalityMin } from './kill-and-cook.ts'
import { COOK_VALUE, COOKED_Z_DELTA_C, THIAMINE_Z_DELTA_C, zOfActivationEnergyDeltaC } from './softening.ts'

const energies = readReferenceTable(new URL('./softening.energies.csv', import.meta.url), ['activationKJPerMol'])
const pairs = readReferenceTable(new URL('./softening.pairs.csv', import.meta.url), ['zDeltaC', 'activationKJPerMol'])
const quality = (more: Partial<MadeUpRun> = {}) => studyQuality({ ...MADE_UP_RUN, ...more }, 512)

describe('how heat softens', () => {
  test.each(pairs.rows)('has a z of $zDeltaC °C where the energy is $activationKJPerMol kJ/mol', (row) => {
    // The readings lay about 90 to 120 °C.
    const z = zOfActivationEnergyDeltaC(row.activationKJPerMol, [90, 120])
    expect(Math.abs(z / row.zDeltaC - 1)).toBeLessThan(0.06)
  })

  test('spreads as the published energies do, with the convention between', () => {
    const zs = energies.rows.map(({ activationKJPerMol }) =>
      zOfActivationEnergyDeltaC(activationKJPerMol, [100, 121.1]),
    )
    expect(COOKED_Z_DELTA_C).toEqual({ low: Math.min(...zs), mid: 33, high: Math.max(...zs) })
    expect(COOKED_Z_DELTA_C.low).toBeCloseTo(16.4, 1)
    expect(COOKED_Z_DELTA_C.high).toBeCloseTo(51.8, 1)
    expect(THIAMINE_Z_DELTA_C.low).toBeCloseTo(22.7, 1)
    expect(THIAMINE_Z_DELTA_C.high).toBeCloseTo(85.3, 1)
  })

  test('gives the same two rates as the energy it is from', () => {
    const z = zOfActivationEnergyDeltaC(100, [100, 121.1])
    const arrhenius = Math.exp((100_000 / 8.314463) * (1 / 373.15 - 1 / 394.25))
    expect(10 ** (21.1 / z)).toBeCloseTo(arrhenius, 12)
  })

  test('counts a minute at 100 °C as one, and one at 133 °C as ten', () => {
    const held = (temperatureC: number) => ({
      temperaturesC: new Float64Array([temperatureC, temperatureC]),
      stepS: 60,
    })
    expect(curveLethalityMin(held(100), COOK_VALUE)).toBeCloseTo(1, 12)
    expect(curveLethalityMin(held(133), COOK_VALUE)).toBeCloseTo(10, 12)
  })

  test.each([
    [9, 100],
    [Number.NaN, 100],
    [100, 151],
  ])('is refused for %s kJ/mol at %s °C', (energy, temperatureC) => {
    expect(() => zOfActivationEnergyDeltaC(energy, [90, temperatureC])).toThrow(ValidRangeError)
  })
})

describe('what a made-up run does to the food', () => {
  test('is a band around its middle, the same each time, and mostly what is not known of softening', () => {
    const { thiamineKeptFraction, cookedMin, swings } = quality()
    expect(cookedMin.low).toBeLessThan(cookedMin.mid)
    expect(cookedMin.high).toBeGreaterThan(cookedMin.mid)
    // Carrot puree keeps more than most of what is published.
    expect(thiamineKeptFraction.high).toBe(thiamineKeptFraction.mid)
    expect(thiamineKeptFraction.low).toBeLessThan(thiamineKeptFraction.mid - 0.05)
    expect(quality().cookedMin).toEqual(cookedMin)
    expect(swings[0]!.input).toBe('cookedZDeltaC')
  })

  test.each([
    ['a shorter hold', { holdMin: 30 }],
    ['a quicker cool-down', { coolDownMin: 8 }],
    ['a pack in which nothing moves', { pack: 'packed solid' as const }],
    ['a gauge that reads high', { gaugeReadsHighKPa: 13.8 }],
  ])('is less with %s: more thiamine is left, and a shorter boil cooks as much', (_what, more) => {
    expect(quality(more).thiamineKeptFraction.mid).toBeGreaterThan(quality().thiamineKeptFraction.mid)
    expect(quality(more).cookedMin.mid).toBeLessThan(quality().cookedMin.mid)
  })

  test('says that the jar is made up, that the figures are of other foods, and that directions stand', () => {
    const result = jarQualityCalc.run({ ...jarQualityCalc.example, gaugeKPaGauge: 75.84 } as never)
    if (!result.ok) throw new Error(result.refused)
    expect(result.reasons.map(({ key }) => key)).toEqual([
      'heat:free-brine',
      'heat:made-up',
      'heat:quality-of-other-foods',
    ])
    expect(result.warnings.map(({ key }) => key)).toEqual(['heat:does-not-change-directions'])
    expect(Object.keys(jarQualityCalc.outputs)).not.toContain('lethalityMin')
  })

  test('is refused for a hold of no length a clock can show', () => {
    expect(() => quality({ holdMin: Number.NaN })).toThrow(ValidRangeError)
  })
})
