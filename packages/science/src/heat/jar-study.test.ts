import { describe, expect, test } from 'vitest'
import { MADE_UP_RUN } from '../../testing/made-up-run.ts'
import { ValidRangeError } from '../errors.ts'
import { jarHeatingCalc } from './jar-heating.calc.ts'
import { type MadeUpRun, studyJar } from './jar-study.ts'
import { whatVentingCostsCalc } from './what-venting-costs.calc.ts'

const run: MadeUpRun = { ...MADE_UP_RUN, pack: 'packed solid' }
const study = (more: Partial<MadeUpRun> = {}) => studyJar({ ...run, ...more }, 512)

describe('a made-up jar', () => {
  test('has a band around its middle, and the same one each time', () => {
    const { endOfHoldC, lethalityMin } = study()
    expect(endOfHoldC.low).toBeLessThan(endOfHoldC.mid)
    expect(endOfHoldC.high).toBeGreaterThan(endOfHoldC.mid)
    expect(study().lethalityMin).toEqual(lethalityMin)
  })

  test('packed solid stays behind free brine and gains most of its heat after the fire is out', () => {
    const solid = study()
    const free = study({ pack: 'free brine' })
    expect(free.endOfHoldC.low).toBeGreaterThan(solid.endOfHoldC.high)
    expect(solid.coolingShareFraction).toBeGreaterThan(0.5)
    expect(free.coolingShareFraction).toBeLessThan(0.3)
  })

  test.each([
    ['a shorter vent', { ventMin: 0 }],
    ['a gauge that reads high', { gaugeReadsHighKPa: 13.8 }],
    ['more elevation at the same gauge', { elevationM: 600 }],
    ['a quicker cool-down', { coolDownMin: 8 }],
    ['cooler food going in', { fillC: 60 }],
    ['a shorter hold', { holdMin: 45 }],
  ])('is worth less with %s', (_what, more) => {
    expect(study(more).lethalityMin.mid).toBeLessThan(study().lethalityMin.mid)
  })

  test('is refused for a hold of no length a clock can show', () => {
    expect(() => study({ holdMin: Number.NaN })).toThrow(ValidRangeError)
  })
})

describe('the calculations of heat in a jar', () => {
  test('say of a made-up jar that it is made up and that directions stand', () => {
    const result = jarHeatingCalc.run({ ...jarHeatingCalc.example, gaugeKPaGauge: 75.84 } as never)
    if (!result.ok) throw new Error(result.refused)
    expect(result.reasons.map(({ key }) => key)).toContain('heat:made-up')
    expect(result.warnings.map(({ key }) => key)).toContain('heat:does-not-change-directions')
  })

  test('tell a short vent beside ten minutes only, and nothing at ten', () => {
    const values = (ventMin: number) => {
      const result = whatVentingCostsCalc.run({ pressureKPaGauge: 75.84, elevationM: 0, ventMin })
      if (!result.ok) throw new Error(result.refused)
      return result.values
    }
    expect(values(10).map(({ value }) => value)).toEqual([1, 0])
    const [left] = values(0)
    // All the air left at 11 psi: 91.9 °C against 116.4 (p_steam = p_gauge), so under a hundredth of the rate.
    expect(left!.value).toBeLessThan(0.01)
    expect(values(7)[0]!.value).toBeGreaterThan(left!.value)
    expect(Object.keys(whatVentingCostsCalc.outputs)).not.toContain('lethalityMin')
  })
})
