import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { compileHeatStep, moduleOf } from '../../scripts/make-heat-step.ts'
import { conductInto, type HeatField, type HeatRun } from './finite-volume.ts'
import { createFastKernel } from './finite-volume-fast.ts'
import type { HeatMesh } from './finite-volume-grid.ts'
import { createPlainKernel } from './finite-volume-plain.ts'
import { JAR_SIZES } from './jar-materials.ts'
import { filledJarMesh, plainCylinderMesh } from './jar-mesh.ts'

const food = { conductivityWPerMK: 0.6, heatCapacityJPerM3K: 4e6 }
const steam = [
  { timeMin: 0, temperatureC: 60 },
  { timeMin: 5, temperatureC: 98 },
  { timeMin: 20, temperatureC: 116 },
  { timeMin: 90, temperatureC: 98 },
]
const water = steam.map(({ timeMin, temperatureC }) => ({ timeMin: timeMin * 1.1, temperatureC: temperatureC - 3 }))
const run: HeatRun = { initialC: (i, j) => 60 + i / 7 - j / 11, water, steam, durationS: 1800, stepS: 5, keepEvery: 60 }

const compiledFast = (prepared: Parameters<typeof createFastKernel>[0]) => {
  const kernel = createFastKernel(prepared)
  if (!kernel) throw new Error('the compiled kernel did not start')
  return kernel
}

/** Every number as its bits, so that even the two zeros differ. */
function bitsOf({ fieldsC, enteredJ, gainedJ }: HeatField): readonly BigUint64Array[] {
  return [...fieldsC, Float64Array.of(enteredJ, gainedJ)].map((numbers) => new BigUint64Array(numbers.slice().buffer))
}

function bothWays(mesh: HeatMesh, more: Partial<HeatRun> = {}) {
  return [compiledFast, createPlainKernel].map((kernel) => bitsOf(conductInto(mesh, { ...run, ...more }, kernel)))
}

afterEach(() => {
  vi.unstubAllGlobals()
  vi.resetModules()
})

describe('the compiled kernel', () => {
  test('is what its source compiles to', { timeout: 60_000 }, async () => {
    const kept = readFileSync(new URL('./heat-step-bytes.ts', import.meta.url), 'utf8')
    expect(kept).toBe(moduleOf(await compileHeatStep()))
  })

  test('equals the plain one to the last bit in a jar of glass, food and headspace, and for 64 x 128 cells', () => {
    for (const mesh of [
      filledJarMesh({ food: JAR_SIZES.quart, material: food }),
      plainCylinderMesh(JAR_SIZES.pint, food, { nr: 64, nz: 128 }),
    ]) {
      const [fast, plain] = bothWays(mesh)
      expect(fast).toHaveLength(8)
      expect(fast).toEqual(plain)
    }
  })

  test('equals the plain one to the last bit for any number of uneven cells of any stuff', () => {
    const widths = fc.array(fc.double({ min: 1e-3, max: 1e-2, noNaN: true }), { minLength: 3, maxLength: 19 })
    const faces = (steps: readonly number[]) => {
      let faceM = 0
      return [0, ...steps.map((step) => (faceM += step))]
    }
    fc.assert(
      fc.property(widths, widths, fc.double({ min: 0, max: 0.2, noNaN: true }), (radial, axial, waterLineM) => {
        const [fast, plain] = bothWays(
          {
            rFacesM: faces(radial),
            zFacesM: faces(axial),
            materialOf: (i, j) => ({ conductivityWPerMK: 0.3 + ((i * 7 + j) % 5), heatCapacityJPerM3K: 2e6 + 1e5 * j }),
            waterLineM,
            filmWaterWPerM2K: 1000,
            filmSteamWPerM2K: 3000,
          },
          { durationS: 300, keepEvery: 20 },
        )
        expect(fast).toEqual(plain)
      }),
      { numRuns: 60 },
    )
  })

  test('is what runs where nothing is asked for', () => {
    const mesh = plainCylinderMesh(JAR_SIZES.pint, food, { nr: 8, nz: 16 })
    const compile = vi.spyOn(WebAssembly, 'Instance')
    conductInto(mesh, run)
    expect(compile).toHaveBeenCalledOnce()
    compile.mockRestore()
  })

  test.each([
    ['knows no such thing', undefined],
    ['has no vector instructions, or forbids compiling', { Module: refuse, Instance: refuse }],
  ])('is done without where the engine %s', async (_what, engine) => {
    const mesh = plainCylinderMesh(JAR_SIZES.pint, food, { nr: 8, nz: 16 })
    const expected = bitsOf(conductInto(mesh, run))
    vi.stubGlobal('WebAssembly', engine)
    const anew = await import('./finite-volume.ts')
    const { createFastKernel: fastAnew } = await import('./finite-volume-fast.ts')
    anew.conductInto(mesh, run, (prepared) => {
      expect(fastAnew(prepared)).toBeNull()
      return createPlainKernel(prepared)
    })
    expect(bitsOf(anew.conductInto(mesh, run))).toEqual(expected)
  })
})

function refuse(): never {
  throw new Error('refused')
}
