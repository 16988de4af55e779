import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ValidRangeError } from '../errors.ts'
import { cylinderCurve } from './cylinder-series.ts'
import { conductInto, type HeatRun } from './finite-volume.ts'
import { JAR_SIZES } from './jar-materials.ts'
import { DEFAULT_MESH, filledJarMesh, isFoodCell, middleTemperatureC, plainCylinderMesh } from './jar-mesh.ts'
import type { SurfaceHistory } from './surface-history.ts'

/** alpha 1.5e-7 m2/s. */
const food = { conductivityWPerMK: 0.6, heatCapacityJPerM3K: 4e6 }
const history: SurfaceHistory = [
  { timeMin: 0, temperatureC: 60 },
  { timeMin: 5, temperatureC: 98 },
  { timeMin: 15, temperatureC: 99 },
  { timeMin: 20, temperatureC: 116 },
  { timeMin: 60, temperatureC: 116 },
  { timeMin: 90, temperatureC: 98 },
]
const run = (more: Partial<HeatRun> = {}): HeatRun => ({
  initialC: () => 60,
  water: history,
  steam: history,
  durationS: 5400,
  stepS: 5,
  keepEvery: 12,
  ...more,
})
const exact = cylinderCurve({ ...JAR_SIZES.pint, diffusivityM2PerS: 1.5e-7 }, history, { initialC: 60, stepS: 60 })

/** Farthest from the closed series at the middle, from Fo 0.01 on. [°C] */
function farthestC(cells: { nr: number; nz: number }, stepS: number): number {
  const field = conductInto(plainCylinderMesh(JAR_SIZES.pint, food, cells), run({ stepS, keepEvery: 60 / stepS }))
  const misses = field.fieldsC.map((fieldC, k) => Math.abs(middleTemperatureC(field, fieldC) - exact.temperaturesC[k]!))
  return Math.max(...misses.slice(2))
}

describe('the finite-volume model of one material', () => {
  test('is within 0.05 °C of the closed series at the default mesh', () => {
    expect(farthestC(DEFAULT_MESH, 5)).toBeLessThan(0.05)
  })

  test('is within 0.05 °C of it after a rise of 56 °C in one minute, and after as quick a fall', () => {
    const sudden: SurfaceHistory = [
      { timeMin: 0, temperatureC: 60 },
      { timeMin: 1, temperatureC: 116 },
      { timeMin: 60, temperatureC: 116 },
      { timeMin: 61, temperatureC: 60 },
      { timeMin: 90, temperatureC: 60 },
    ]
    const series = cylinderCurve({ ...JAR_SIZES.pint, diffusivityM2PerS: 1.5e-7 }, sudden, { initialC: 60, stepS: 60 })
    const field = conductInto(plainCylinderMesh(JAR_SIZES.pint, food), run({ water: sudden, steam: sudden }))
    const misses = field.fieldsC.map((c, k) => Math.abs(middleTemperatureC(field, c) - series.temperaturesC[k]!))
    expect(misses).toHaveLength(91)
    // Fo 0.01 is 94 s.
    expect(Math.max(...misses.slice(2))).toBeLessThan(0.05)
  })

  test('is of second order: half the cells and half the step leave a quarter of the error', () => {
    const coarse = farthestC({ nr: 8, nz: 16 }, 20)
    const middle = farthestC({ nr: 16, nz: 32 }, 10)
    const fine = farthestC({ nr: 32, nz: 64 }, 5)
    expect(Math.log2(coarse / middle)).toBeGreaterThan(1.8)
    expect(Math.log2(middle / fine)).toBeGreaterThan(1.8)
  })

  test('keeps account of every joule to 1e-8', () => {
    for (const mesh of [
      plainCylinderMesh(JAR_SIZES.quart, food),
      filledJarMesh({ food: JAR_SIZES.quart, material: food }),
    ]) {
      const { enteredJ, gainedJ } = conductInto(mesh, run())
      expect(gainedJ).toBeGreaterThan(100_000)
      expect(Math.abs(enteredJ / gainedJ - 1)).toBeLessThan(1e-8)
    }
  })

  test('stays bounded at steps a hundred times what an explicit scheme could take', () => {
    const ramp = [
      { timeMin: 0, temperatureC: 60 },
      { timeMin: 10, temperatureC: 116 },
      { timeMin: 600, temperatureC: 116 },
    ]
    const { fieldsC } = conductInto(
      plainCylinderMesh(JAR_SIZES.pint, food, { nr: 64, nz: 128 }),
      run({ water: ramp, steam: ramp, durationS: 36_000, stepS: 60, keepEvery: 10 }),
    )
    const all = fieldsC.flatMap((fieldC) => [Math.min(...fieldC), Math.max(...fieldC)])
    expect(Math.min(...all)).toBeGreaterThan(59)
    expect(Math.max(...all)).toBeLessThan(117)
    expect(fieldsC.at(-1)!.every((t) => Math.abs(t - 116) < 1e-3)).toBe(true)
  })

  test('leaves food as warm as its surroundings alone', () => {
    const still = [
      { timeMin: 0, temperatureC: 60 },
      { timeMin: 90, temperatureC: 60 },
    ]
    const { fieldsC } = conductInto(
      filledJarMesh({ food: JAR_SIZES.pint, material: food }),
      run({ water: still, steam: still }),
    )
    for (const t of fieldsC.at(-1)!) expect(Math.abs(t - 60)).toBeLessThan(1e-9)
  })

  test('does not change when its history is cut into more pieces', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 14.5, noNaN: true }), (cutMin) => {
        const at = history.findIndex(({ timeMin }) => timeMin > cutMin)
        const a = history[at - 1]!
        const b = history[at]!
        const share = (cutMin - a.timeMin) / (b.timeMin - a.timeMin)
        const extra = { timeMin: cutMin, temperatureC: a.temperatureC + share * (b.temperatureC - a.temperatureC) }
        const cut = [...history.slice(0, at), extra, ...history.slice(at)]
        const mesh = plainCylinderMesh(JAR_SIZES.pint, food, { nr: 8, nz: 16 })
        const plain = conductInto(mesh, run({ stepS: 30, keepEvery: 1000 })).fieldsC.at(-1)!
        const other = conductInto(mesh, run({ stepS: 30, keepEvery: 1000, water: cut, steam: cut })).fieldsC.at(-1)!
        other.forEach((t, k) => {
          expect(Math.abs(t - plain[k]!)).toBeLessThan(1e-9)
        })
      }),
      { numRuns: 20 },
    )
  })
})

describe('the finite-volume model of a jar', () => {
  test('lags behind a jar of food alone, since glass and film stand in the way', () => {
    const bare = conductInto(plainCylinderMesh(JAR_SIZES.pint, food), run({ durationS: 3600 }))
    const jar = conductInto(filledJarMesh({ food: JAR_SIZES.pint, material: food }), run({ durationS: 3600 }))
    const coldest = Math.min(...jar.fieldsC.at(-1)!)
    const middle = middleTemperatureC(bare, bare.fieldsC.at(-1)!)
    expect(coldest).toBeLessThan(middle - 0.5)
    expect(coldest).toBeGreaterThan(middle - 15)
  })

  test('has its coldest food near the axis and above the middle, under the headspace that passes little heat', () => {
    const mesh = filledJarMesh({ food: JAR_SIZES.pint, material: food })
    const { fieldsC, nz } = conductInto(mesh, run({ durationS: 3600 }))
    const last = fieldsC.at(-1)!
    const at = last.indexOf(Math.min(...last))
    const i = Math.floor(at / nz)
    const j = at % nz
    expect(isFoodCell(DEFAULT_MESH, i, j)).toBe(true)
    expect(i).toBe(0)
    expect(j).toBeGreaterThan(4 + DEFAULT_MESH.nz / 2)
  })

  test('can be stopped on the way', () => {
    const seen: number[] = []
    const field = conductInto(filledJarMesh({ food: JAR_SIZES.pint, material: food }), {
      ...run(),
      onKept: (timeS) => seen.push(timeS) < 3,
    })
    expect(field.stopped).toBe(true)
    expect(seen).toEqual([60, 120, 180])
  })

  test.each([
    ['a step of nothing', { stepS: 0 }],
    ['food of no temperature', { initialC: () => Number.NaN }],
    ['a history of one point', { water: history.slice(0, 1) }],
  ])('is refused for %s', (_what, more) => {
    expect(() => conductInto(plainCylinderMesh(JAR_SIZES.pint, food), run(more))).toThrow(ValidRangeError)
  })
})
