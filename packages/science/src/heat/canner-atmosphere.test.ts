import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ValidRangeError } from '../errors.ts'
import { LETHALITY_250F } from '../lethality/lethal-rate.ts'
import { lethalityMin } from '../lethality/lethality.ts'
import { convert } from '../units/unit.ts'
import { bandOf, swingsOf, triangularQuantile } from './band.ts'
import { airLeftAfterVentFraction, cannerHistory, historyFromPressure } from './canner-atmosphere.ts'
import { curveSamples, cylinderCurve } from './cylinder-series.ts'
import { JAR_SIZES } from './jar-materials.ts'
import {
  BOTULINUM_DESIGN,
  BOTULINUM_OUTBREAK_STRAIN,
  curveLethalityMin,
  dAtTemperatureMin,
  keptFraction,
  THIAMINE,
} from './kill-and-cook.ts'

const schedule = {
  atmosphereKPaAbs: 101.325,
  pressureKPaGauge: convert(11, 'PsiGauge', 'KPaGauge'),
  airLeftFraction: 0,
  startC: 80,
  heatUpMin: 15,
  ventMin: 10,
  comeUpMin: 5,
  holdMin: 60,
  coolDownMin: 40,
}
const pint = { ...JAR_SIZES.pint, diffusivityM2PerS: 1.5e-7 }
const worth = (more: Partial<typeof schedule>) =>
  curveLethalityMin(
    cylinderCurve(pint, cannerHistory({ ...schedule, ...more }), { initialC: 80, stepS: 30 }),
    LETHALITY_250F,
  )

describe('the canner around a jar', () => {
  test('holds 116.42 °C at 11 psi at sea level, boils at 99.974 before and stands there again at zero', () => {
    const history = cannerHistory(schedule)
    const at = (timeMin: number) => history.find((point) => Math.abs(point.timeMin - timeMin) < 1e-9)!.temperatureC
    expect(at(25)).toBeCloseTo(99.974, 3)
    expect(at(30)).toBeCloseTo(116.42, 2)
    expect(at(90)).toBeCloseTo(116.42, 2)
    expect(at(130)).toBeCloseTo(99.974, 3)
    expect(history.at(-1)!.temperatureC).toBe(40)
  })

  test('loses air with time', () => {
    expect(airLeftAfterVentFraction(0, 2)).toBe(1)
    expect(airLeftAfterVentFraction(10, 2)).toBeCloseTo(0.00674, 5)
  })

  test('never gives a jar more for more air, less heat or less time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (air, moreAir, more) => {
          const plain = worth({ airLeftFraction: air })
          expect(worth({ airLeftFraction: air + moreAir })).toBeLessThanOrEqual(plain * (1 + 1e-9))
          expect(
            worth({ airLeftFraction: air, pressureKPaGauge: schedule.pressureKPaGauge + more }),
          ).toBeGreaterThanOrEqual(plain)
          expect(worth({ airLeftFraction: air, holdMin: 60 + more })).toBeGreaterThanOrEqual(plain * (1 - 1e-9))
        },
      ),
      { numRuns: 60 },
    )
  })

  test('from a log of pressure dips where the log dips, within 0.05 °C of the saturation line', () => {
    const kPa = (psi: number) => convert(psi, 'PsiGauge', 'KPaGauge')
    const log = [0, 11, 11, 6, 11].map((psi, i) => ({ timeMin: i * 10, pressureKPaGauge: kPa(psi) }))
    const air = { atmosphereKPaAbs: 101.325, airLeftFraction: 0, floorC: 80 }
    const history = historyFromPressure(log, air)
    expect(history[0]).toMatchObject({ timeMin: 0 })
    expect(history.find(({ timeMin }) => timeMin === 30)!.temperatureC).toBeLessThan(111)
    const fine = historyFromPressure(
      Array.from({ length: 41 }, (_, minute) => {
        const from = log[Math.min(3, Math.floor(minute / 10))]!
        const to = log[Math.min(4, Math.floor(minute / 10) + 1)]!
        const share = (minute - from.timeMin) / 10
        return {
          timeMin: minute,
          pressureKPaGauge: from.pressureKPaGauge + share * (to.pressureKPaGauge - from.pressureKPaGauge),
        }
      }),
      air,
    )
    for (const { timeMin, temperatureC } of fine) {
      const next = Math.max(
        1,
        history.findIndex((point) => point.timeMin >= timeMin - 1e-9),
      )
      const a = history[next - 1]!
      const b = history[next]!
      const line =
        a.temperatureC + ((timeMin - a.timeMin) / (b.timeMin - a.timeMin)) * (b.temperatureC - a.temperatureC)
      expect(Math.abs(line - temperatureC)).toBeLessThan(0.05)
    }
  })

  test.each([
    { airLeftFraction: 1.1 },
    { pressureKPaGauge: 0 },
    { holdMin: -1 },
    { coolDownMin: 0 },
    { startC: Number.NaN },
  ])('is refused for %o', (more) => {
    expect(() => cannerHistory({ ...schedule, ...more })).toThrow(ValidRangeError)
  })
})

describe('what a curve is worth', () => {
  test('is the same by the fast sum as by the rule of the book', () => {
    const curve = cylinderCurve(pint, cannerHistory(schedule), { initialC: 80, stepS: 30 })
    expect(curveLethalityMin(curve, LETHALITY_250F)).toBeCloseTo(lethalityMin(curveSamples(curve), LETHALITY_250F), 9)
  })

  test('leaves 58.8 % of thiamine after 60 min at 115.6 °C and 76.7 % after 18 min at 121.1 °C', () => {
    const held = (temperatureC: number, minutes: number) => ({
      temperaturesC: new Float64Array([temperatureC, temperatureC]),
      stepS: minutes * 60,
    })
    // Worked with 121 °C as the reference, to 0.1 %.
    expect(keptFraction(held(115.6, 60), THIAMINE)).toBeCloseTo(0.588, 3)
    expect(keptFraction(held(121.1, 18), THIAMINE)).toBeCloseTo(0.767, 3)
  })

  test('gives the outbreak strain a D of 0.36 min at 121.1 °C and the design one 0.745 min at 115.6', () => {
    expect(dAtTemperatureMin(BOTULINUM_OUTBREAK_STRAIN, 121.1)).toBeCloseTo(0.36, 2)
    expect(dAtTemperatureMin(BOTULINUM_DESIGN, 115.6)).toBeCloseTo(0.745, 3)
  })
})

describe('a band', () => {
  const even = { a: { low: 0, mid: 1, high: 2 }, b: { low: 0, mid: 1, high: 2 } }

  test('of a triangle has its closed quantiles', () => {
    const { mid, low, high } = bandOf({ a: { low: 0, mid: 0, high: 1 } }, ({ a }) => a, 65_536)
    expect(mid).toBe(0)
    expect(low).toBeCloseTo(1 - Math.sqrt(0.95), 3)
    expect(high).toBeCloseTo(1 - Math.sqrt(0.05), 3)
    expect(triangularQuantile({ low: 0, mid: 1, high: 2 }, 0.5)).toBe(1)
  })

  test('is the same every time, and settles with samples', () => {
    const wide = (count: number) => bandOf(even, ({ a, b }) => a * b, count)
    expect(wide(1024)).toEqual(wide(1024))
    expect(wide(1024).high).toBeCloseTo(wide(65_536).high, 1)
  })

  test('tells which input matters most first', () => {
    const swings = swingsOf({ ...even, c: { low: 0, mid: 1, high: 10 } }, ({ a, b, c }) => a + 3 * b + 0.1 * c)
    expect(swings.map(({ input }) => input)).toEqual(['b', 'a', 'c'])
  })

  test('is refused for a middle outside its ends', () => {
    expect(() => bandOf({ a: { low: 0, mid: 3, high: 2 } }, ({ a }) => a, 100)).toThrow(ValidRangeError)
  })
})
