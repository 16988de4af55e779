import { describe, expect, test } from 'vitest'
import { ValidRangeError } from '../errors.ts'
import { type BrineJar, brineCurve, sphereHeatingFhMin } from './convecting-brine.ts'
import { cylinderCurve, cylinderHeatingFhMin } from './cylinder-series.ts'
import { empiricalHeatingC, fitHeating } from './empirical-heating.ts'
import { JAR_SIZES } from './jar-materials.ts'
import type { SurfaceHistory } from './surface-history.ts'

const jar: BrineJar = {
  conductanceWPerK: 8,
  liquidJPerK: 900,
  kernelsJPerK: 1100,
  kernelRadiusM: 0.0055,
  kernelDiffusivityM2PerS: 1.5e-7,
}
const run: SurfaceHistory = [
  { timeMin: 0, temperatureC: 60 },
  { timeMin: 5, temperatureC: 98 },
  { timeMin: 15, temperatureC: 116 },
  { timeMin: 60, temperatureC: 116 },
]
const held: SurfaceHistory = [
  { timeMin: 0, temperatureC: 100 },
  { timeMin: 30, temperatureC: 100 },
]

describe('a jar of free brine', () => {
  test('without kernels warms by one exponential', () => {
    const { liquidC } = brineCurve({ ...jar, kernelsJPerK: 0 }, held, { initialC: 20, stepS: 1 })
    for (const minute of [1, 5, 20]) {
      const expected = 100 - 80 * Math.exp((-8 / 900) * minute * 60)
      expect(Math.abs(liquidC[minute * 60]! - expected)).toBeLessThan(1e-3)
    }
  })

  test('with very small kernels warms as if all were liquid', () => {
    const tiny = brineCurve({ ...jar, kernelRadiusM: 1e-4 }, held, { initialC: 20, stepS: 1 })
    const { liquidC } = brineCurve({ ...jar, liquidJPerK: 2000, kernelsJPerK: 0 }, held, { initialC: 20, stepS: 1 })
    liquidC.forEach((t, i) => {
      expect(Math.abs(t - tiny.liquidC[i]!)).toBeLessThan(0.02)
    })
  })

  test('keeps account of every joule to 1e-8', () => {
    const { enteredJ, gainedJ } = brineCurve(jar, run, { initialC: 60, stepS: 5 })
    expect(gainedJ).toBeGreaterThan(100_000)
    expect(Math.abs(enteredJ / gainedJ - 1)).toBeLessThan(1e-8)
  })

  test('is of second order in the step', () => {
    const end = (stepS: number) => brineCurve(jar, run, { initialC: 60, stepS }).kernelCentreC[(20 * 60) / stepS]!
    const best = end(0.25)
    expect(Math.log2(Math.abs(end(10) - best) / Math.abs(end(5) - best))).toBeGreaterThan(1.7)
  })

  test('leaves the middle of a kernel behind the liquid by the lag of a sphere, R²/(6 alpha), on a steady rise', () => {
    const rise: SurfaceHistory = [
      { timeMin: 0, temperatureC: 0 },
      { timeMin: 100, temperatureC: 100 },
    ]
    const { liquidC, kernelCentreC } = brineCurve(jar, rise, { initialC: 0, stepS: 10 })
    expect(liquidC.at(-1)! - kernelCentreC.at(-1)!).toBeCloseTo(0.0055 ** 2 / (6 * 1.5e-7) / 60, 3)
  })

  test('is far quicker than the same jar packed solid', () => {
    const brine = brineCurve(jar, run, { initialC: 60, stepS: 5 }).kernelCentreC.at(-1)!
    const solid = cylinderCurve({ ...JAR_SIZES.pint, diffusivityM2PerS: 1.5e-7 }, run, { initialC: 60, stepS: 5 })
    expect(brine - solid.temperaturesC.at(-1)!).toBeGreaterThan(8)
  })

  test('has kernels of 5 to 6 mm with an fh of 39 to 56 s', () => {
    expect(Math.round(sphereHeatingFhMin(0.005, 1.5e-7) * 60)).toBe(39)
    expect(Math.round(sphereHeatingFhMin(0.006, 1.5e-7) * 60)).toBe(56)
  })

  test('is refused without liquid', () => {
    expect(() => brineCurve({ ...jar, liquidJPerK: 0 }, held, { initialC: 20, stepS: 1 })).toThrow(ValidRangeError)
  })
})

describe('an empirical heating curve', () => {
  const heating = { mediumC: 116, initialC: 60, fhMin: 30, jh: 1.4 }

  test('closes nine tenths of the gap in each fh', () => {
    const left = (min: number) => 116 - empiricalHeatingC(heating, min)
    expect(left(60) / left(30)).toBeCloseTo(0.1, 12)
    expect(left(30)).toBeCloseTo(56 * 0.14, 12)
  })

  test('never starts below the food', () => {
    expect(empiricalHeatingC(heating, 0)).toBe(60)
  })

  test('goes on from the break with the second fh', () => {
    const broken = { ...heating, broken: { atMin: 20, fhMin: 60 } }
    expect(empiricalHeatingC(broken, 20)).toBeCloseTo(empiricalHeatingC(heating, 20), 12)
    expect((116 - empiricalHeatingC(broken, 80)) / (116 - empiricalHeatingC(broken, 20))).toBeCloseTo(0.1, 12)
  })

  test('fitted to the closed series of a pint gives its fh, and jh 2.0397', () => {
    const pint = { ...JAR_SIZES.pint, diffusivityM2PerS: 1.5e-7 }
    const surface = [
      { timeMin: 0, temperatureC: 116 },
      { timeMin: 240, temperatureC: 116 },
    ]
    const { temperaturesC } = cylinderCurve(pint, surface, { initialC: 60, stepS: 60 })
    const readings = Array.from(temperaturesC, (temperatureC, timeMin) => ({ timeMin, temperatureC }))
    const fit = fitHeating(readings, { mediumC: 116, initialC: 60, straightFromMin: 130 })
    expect(fit.fhMin).toBeCloseTo(cylinderHeatingFhMin(pint), 2)
    expect(fit.jh).toBeCloseTo(2.0397, 3)
    expect(fit.missLog10).toBeLessThan(1e-4)
  })

  test('is not fitted through two readings, or one as hot as the canner', () => {
    const at = (timeMin: number, temperatureC: number) => ({ timeMin, temperatureC })
    const options = { mediumC: 116, initialC: 60, straightFromMin: 0 }
    expect(() => fitHeating([at(0, 60), at(1, 70)], options)).toThrow(ValidRangeError)
    expect(() => fitHeating([at(0, 60), at(1, 70), at(2, 116)], options)).toThrow(ValidRangeError)
  })
})
