import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { bathStep, drainedKernels, type Kernels, kernelMean } from './bath.ts'
import { afterStandingFraction, followBaths, leastAlkaliPlan, type RinseQuestion } from './plan.ts'
import { dilutedFraction, leftInfiniteBathFraction, limitedBathRoots, toEquilibriumFraction } from './sphere.ts'

const crank = readReferenceTable(new URL('./sphere.crank.csv', import.meta.url), ['fourier', 'infinite', 'alpha3'])
const roots = readReferenceTable(new URL('./sphere.roots.csv', import.meta.url), ['n', 'q'])
const worked = readReferenceTable(new URL('./bath.worked.csv', import.meta.url), [
  'diffusivity1e10',
  'rinse',
  'kernelMean',
  'bath',
])
const kernels: Kernels = { radiusM: 0.0048, kernelWaterL: 1, clingingL: 0.2 }
const COLD = { freshL: 3, minutes: 5, diffusivityM2PerS: 3e-10 }

describe('a sphere', () => {
  test.each(crank.rows)('has given off $infinite of its all at Fo $fourier in fresh water', (row) => {
    expect(Math.abs(leftInfiniteBathFraction(row.fourier) - row.infinite)).toBeLessThanOrEqual(0.0001)
    expect(Math.abs(toEquilibriumFraction(row.fourier, 3) - row.alpha3)).toBeLessThanOrEqual(0.0001)
  })

  test.each(roots.rows)('in a limited bath has root $n at $q', ({ n, q }) => {
    expect(Math.abs(limitedBathRoots(3, 3)[n - 1]! - q)).toBeLessThanOrEqual(0.00005)
  })

  // Library checks: D 1e-10, a 0.2 mm, 100 s: 0.948437; D 1e-11, a 0.1 mm, 100 s: 0.770479.
  test('agrees with two published check values', () => {
    expect(leftInfiniteBathFraction((1e-10 * 100) / 0.0002 ** 2)).toBeCloseTo(0.948437, 6)
    expect(leftInfiniteBathFraction((1e-11 * 100) / 0.0001 ** 2)).toBeCloseTo(0.770479, 6)
  })

  test('goes over from the short-time form to the series without a step', () => {
    expect(Math.abs(leftInfiniteBathFraction(0.00099999) - leftInfiniteBathFraction(0.00100001))).toBeLessThan(2e-6)
  })

  test('thins the clinging liquor rinse by rinse', () => {
    expect([1, 2, 3].map((times) => Number(dilutedFraction(0.2, 3, times).toFixed(5)))).toEqual([
      0.0625, 0.00391, 0.00024,
    ])
  })

  test('off its range is refused', () => {
    expect(() => leftInfiniteBathFraction(-1)).toThrow(ValidRangeError)
    expect(() => limitedBathRoots(0, 1)).toThrow(ValidRangeError)
  })
})

describe('kernels in a bath', () => {
  test.each(worked.rows)('keep $kernelMean after bath $rinse at D $diffusivity1e10 e-10', (row) => {
    const step = bathStep(kernels, { ...COLD, diffusivityM2PerS: row.diffusivity1e10 * 1e-10 })
    let state = drainedKernels()
    let bath = 0
    for (let times = 0; times < row.rinse; times++) ({ state, bath } = step.apply(state))
    expect(Math.abs(kernelMean(state) - row.kernelMean)).toBeLessThanOrEqual(0.004)
    if (row.bath > 0) expect(Math.abs(bath - row.bath)).toBeLessThanOrEqual(0.004)
  })

  // Crank's closed form, with no liquor clinging: the grid is good to half a hundredth from Fo 0.005 on.
  test.each([0.005, 0.01, 0.05, 0.1, 0.2])('follow the closed form at Fo %s', (fourier) => {
    const minutes = (fourier * 0.0048 ** 2) / 3e-10 / 60
    const after = bathStep({ ...kernels, clingingL: 0 }, { ...COLD, minutes }).apply(drainedKernels())
    const share = (1 - after.kernelMean) / (3 / 4)
    expect(Math.abs(share - toEquilibriumFraction(fourier, 3))).toBeLessThanOrEqual(0.005)
  })

  test('lose no alkali and make none, through any sequence', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            freshL: fc.double({ min: 0.1, max: 20, noNaN: true }),
            minutes: fc.double({ min: 0.1, max: 600, noNaN: true }),
            diffusivityM2PerS: fc.double({ min: 2e-10, max: 1.5e-9, noNaN: true }),
          }),
          { minLength: 1, maxLength: 6 },
        ),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (baths, clingingL) => {
          let state = drainedKernels()
          let pouredAway = 0
          for (const bath of baths) {
            const step = bathStep({ ...kernels, clingingL }, bath)
            const after = step.apply(state)
            pouredAway += after.bath * bath.freshL
            expect(after.kernelMean).toBeLessThan(kernelMean(state))
            expect(step.kernelMeanAfter(state)).toBeCloseTo(after.kernelMean, 12)
            state = after.state
          }
          const total = kernelMean(state) + state.clinging * clingingL + pouredAway
          expect(Math.abs(total / (1 + clingingL) - 1)).toBeLessThan(1e-9)
        },
      ),
      { numRuns: 100 },
    )
  })

  // Three 8-h soaks leave 2.4 %, near 1/(1 + alpha) each time: rinse-worked.
  test('soaked three times for 8 h keep 2.4 %', () => {
    const baths = Array.from({ length: 3 }, () => ({ ...COLD, kind: 'stand' as const, minutes: 480 }))
    expect(Math.abs(followBaths(kernels, baths).at(-1)!.kernelMean - 0.024)).toBeLessThanOrEqual(0.002)
  })

  test('look rinsed in the running water while two thirds are inside, and show it on standing', () => {
    const baths = Array.from({ length: 4 }, () => ({ ...COLD, kind: 'rinse' as const }))
    const last = followBaths(kernels, baths).at(-1)!
    expect(last.bath).toBeLessThan(0.02)
    expect(last.kernelMean).toBeGreaterThan(0.62)
    expect(afterStandingFraction(kernels, last.kernelMean, last.bath)).toBeGreaterThan(0.5)
  })
})

const question: RinseQuestion = {
  kernels: { radiusM: 0.0048, kernelWaterL: 1.3, clingingL: 0.3 },
  waterL: 24,
  timeMin: 240,
  leastBathL: 3,
  kinds: {
    rinse: { minutes: 5, mostCount: 8, diffusivityM2PerS: 3e-10 },
    boil: { minutes: 5, mostCount: 5, diffusivityM2PerS: 1.2e-9 },
    stand: { minutes: 45, mostCount: 4, diffusivityM2PerS: 3e-10 },
  },
}

describe('a wash planned for the water at hand', () => {
  test('uses no more water, time or boils than there are', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 30, noNaN: true }),
        fc.double({ min: 10, max: 600, noNaN: true }),
        fc.integer({ min: 0, max: 5 }),
        (waterL, timeMin, mostCount) => {
          const kinds = { ...question.kinds, boil: { ...question.kinds.boil, mostCount } }
          const plan = leastAlkaliPlan({ ...question, waterL, timeMin, kinds })!
          expect(plan.baths.reduce((sum, { freshL }) => sum + freshL, 0)).toBeLessThanOrEqual(waterL * (1 + 1e-9))
          expect(plan.baths.reduce((sum, { minutes }) => sum + minutes, 0)).toBeLessThanOrEqual(timeMin)
          expect(plan.boilsCount).toBeLessThanOrEqual(mostCount)
          expect(Math.min(...plan.baths.map(({ freshL }) => freshL))).toBeGreaterThanOrEqual(3 - 1e-9)
        },
      ),
      { numRuns: 12 },
    )
  })

  test('is beaten by no sequence of the same baths tried at random', () => {
    const plan = leastAlkaliPlan(question)!
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('rinse' as const, 'boil' as const, 'stand' as const), { minLength: 1, maxLength: 8 }),
        (kinds) => {
          const timeMin = kinds.reduce((sum, kind) => sum + question.kinds[kind].minutes, 0)
          const counts = (kind: string) => kinds.filter((each) => each === kind).length
          fc.pre(timeMin <= question.timeMin && counts('boil') <= 5 && counts('stand') <= 4)
          const baths = kinds.map((kind) => ({ kind, freshL: question.waterL / kinds.length, ...question.kinds[kind] }))
          const left = followBaths(question.kernels, baths).at(-1)!.kernelMean
          expect(plan.kernelMean).toBeLessThanOrEqual(left + 1e-9)
        },
      ),
      { numRuns: 300 },
    )
  })

  test('leaves less with more water and with more time', () => {
    const left = (more: Partial<RinseQuestion>) => leastAlkaliPlan({ ...question, ...more })!.kernelMean
    expect(left({ waterL: 12 })).toBeGreaterThan(left({}))
    expect(left({ timeMin: 60 })).toBeGreaterThan(left({}))
  })

  test('is none where the water does not cover the kernels once', () => {
    expect(leastAlkaliPlan({ ...question, waterL: 2 })).toBeNull()
  })
})
