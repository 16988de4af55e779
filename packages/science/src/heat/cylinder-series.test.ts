import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { LETHALITY_250F } from '../lethality/lethal-rate.ts'
import { lethalityMin } from '../lethality/lethality.ts'
import { besselJ, zerosOfJ0 } from '../numeric/bessel.ts'
import {
  curveSamples,
  cylinderAxisUnaccomplished,
  cylinderCurve,
  cylinderHeatingFhMin,
  slabMiddleUnaccomplished,
} from './cylinder-series.ts'
import { JAR_SIZES } from './jar-materials.ts'
import type { SurfaceHistory } from './surface-history.ts'

const centre = readReferenceTable(new URL('./cylinder-series.centre.csv', import.meta.url), [
  'fourier',
  'cylinder',
  'slab',
])
const jars = readReferenceTable(new URL('./cylinder-series.jars.csv', import.meta.url), [
  'radiusCm',
  'halfHeightCm',
  'initialC',
  'minutes',
  'centreC',
  'lethalityMin',
])
const integrated = readReferenceTable(new URL('./cylinder-series.scipy.csv', import.meta.url), [
  'timeMin',
  'centreC',
  'halfwayC',
])
const roots = readReferenceTable(new URL('./cylinder-series.roots.csv', import.meta.url), ['root'])
const longTime = readReferenceTable(new URL('./cylinder-series.long-time.csv', import.meta.url), [
  'radiusCm',
  'halfHeightCm',
  'fhMin',
  'j',
])
const half = (unit: number) => 0.5 * unit * (1 + 1e-6)
const pint = { ...JAR_SIZES.pint, diffusivityM2PerS: 1.5e-7 }
const run: SurfaceHistory = [
  { timeMin: 0, temperatureC: 80 },
  { timeMin: 5, temperatureC: 98 },
  { timeMin: 15, temperatureC: 99 },
  { timeMin: 20, temperatureC: 116 },
  { timeMin: 80, temperatureC: 116 },
  { timeMin: 110, temperatureC: 98 },
  { timeMin: 120, temperatureC: 40 },
]
const heldAt = (temperatureC: number, minutes: number): SurfaceHistory => [
  { timeMin: 0, temperatureC },
  { timeMin: minutes, temperatureC },
]

describe('the series for a surface at one temperature', () => {
  test.each(centre.rows)('gives the worked centre values at Fo $fourier', ({ fourier, cylinder, slab }) => {
    expect(Math.abs(cylinderAxisUnaccomplished(fourier) - cylinder)).toBeLessThanOrEqual(half(1e-6))
    expect(Math.abs(slabMiddleUnaccomplished(fourier) - slab)).toBeLessThanOrEqual(half(1e-6))
  })

  test('has the printed roots, not the 18.0761 of a public list', () => {
    const printed = roots.rows.map(({ root }) => root)
    expect(zerosOfJ0(printed.length).map((b) => Number(b.toFixed(6)))).toEqual(printed)
  })

  test('by its first term alone is 0.48 % high at Fo 0.2 and 5.9 % at 0.1 in a cylinder, 0.65 % at 0.2 in a slab', () => {
    const b = zerosOfJ0(1)[0]!
    const cylinder = (fourier: number) => (2 / (b * besselJ(b).J1)) * Math.exp(-(b ** 2) * fourier)
    const slab = (fourier: number) => (4 / Math.PI) * Math.exp(-((Math.PI / 2) ** 2) * fourier)
    const highPercent = (one: number, all: number) => (one / all - 1) * 100
    expect(highPercent(cylinder(0.2), cylinderAxisUnaccomplished(0.2))).toBeCloseTo(0.48, 2)
    expect(highPercent(cylinder(0.1), cylinderAxisUnaccomplished(0.1))).toBeCloseTo(5.9, 1)
    expect(highPercent(slab(0.2), slabMiddleUnaccomplished(0.2))).toBeCloseTo(0.65, 2)
    expect(cylinder(0) * slab(0)).toBeCloseTo(2.0397, 4) // jh at the centre
  })

  test('is all there at the start and gone at the end', () => {
    expect(cylinderAxisUnaccomplished(0.001)).toBeCloseTo(1, 10)
    expect(slabMiddleUnaccomplished(0.001)).toBeCloseTo(1, 10)
    expect(cylinderAxisUnaccomplished(10)).toBeLessThan(1e-24)
  })

  test.each(longTime.rows)('gives fh of $fhMin min and j of $j where R is $radiusCm cm', (row) => {
    const jar = { radiusM: row.radiusCm / 100, halfHeightM: row.halfHeightCm / 100, diffusivityM2PerS: 1.5e-7 }
    expect(cylinderHeatingFhMin(jar)).toBeCloseTo(row.fhMin, 1)
    const b = zerosOfJ0(1)[0]!
    expect((2 / (b * besselJ(b).J1)) * (4 / Math.PI)).toBeCloseTo(row.j, 4)
  })
})

describe('the curve of a jar packed solid', () => {
  test.each(jars.rows)('from $initialC °C is $centreC °C after $minutes min and worth $lethalityMin min', (row) => {
    const jar = { radiusM: row.radiusCm / 100, halfHeightM: row.halfHeightCm / 100, diffusivityM2PerS: 1.5e-7 }
    const curve = cylinderCurve(jar, heldAt(115.6, row.minutes), { initialC: row.initialC, stepS: 5 })
    expect(Math.abs(curve.temperaturesC.at(-1)! - row.centreC)).toBeLessThanOrEqual(half(0.1))
    // 0.0053 at one row (1.7047 min against 1.71): the separate working summed coarser steps, which adds a little.
    expect(Math.abs(lethalityMin(curveSamples(curve), LETHALITY_250F) - row.lethalityMin)).toBeLessThanOrEqual(0.0055)
  })

  test.each(integrated.rows)('agrees with the integral by another program after $timeMin min', (row) => {
    const at = (options: object) => {
      const curve = cylinderCurve(pint, run, { initialC: 60, stepS: 30, ...options })
      return curve.temperaturesC[row.timeMin * 2]!
    }
    expect(Math.abs(at({}) - row.centreC)).toBeLessThanOrEqual(2e-6)
    const place = { radiusFraction: 0.5, heightFraction: 0.5 }
    expect(Math.abs(at({ place }) - row.halfwayC)).toBeLessThanOrEqual(2e-6)
  })

  test('is the same at any spacing of the answer', () => {
    const fine = cylinderCurve(pint, run, { initialC: 60, stepS: 1 })
    const coarse = cylinderCurve(pint, run, { initialC: 60, stepS: 60 })
    coarse.temperaturesC.forEach((temperatureC, i) => {
      expect(Math.abs(temperatureC - fine.temperaturesC[i * 60]!)).toBeLessThan(1e-9)
    })
  })

  test('follows a steady rise at a steady distance once the start is forgotten', () => {
    const rise = [
      { timeMin: 0, temperatureC: 0 },
      { timeMin: 1000, temperatureC: 100 },
    ]
    const { temperaturesC } = cylinderCurve(pint, rise, { initialC: 0, stepS: 60 })
    const lag = (minute: number) => minute * 0.1 - temperaturesC[minute]!
    expect(lag(900)).toBeCloseTo(lag(1000), 8)
    expect(lag(1000)).toBeGreaterThan(1)
  })

  test('does not change when its history is cut into more pieces', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.1, max: 119.9, noNaN: true }), { minLength: 1, maxLength: 12 }),
        (cuts) => {
          const { temperaturesC } = cylinderCurve(pint, run, { initialC: 60, stepS: 60 })
          const cut = cylinderCurve(pint, withCuts(run, cuts), { initialC: 60, stepS: 60 })
          for (const [i, t] of cut.temperaturesC.entries()) expect(Math.abs(t - temperaturesC[i]!)).toBeLessThan(1e-7)
        },
      ),
      { numRuns: 40 },
    )
  })

  test('is never worth less when the surface is hotter or held longer', () => {
    const worth = (history: SurfaceHistory, initialC = 60) =>
      lethalityMin(curveSamples(cylinderCurve(pint, history, { initialC, stepS: 30 })), LETHALITY_250F)
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.integer({ min: 0, max: 40 }),
        fc.double({ min: 20, max: 95, noNaN: true }),
        (hotterC, longerMin, initialC) => {
          const plain = worth(run, initialC)
          const hotter = run.map((p) => ({ ...p, temperatureC: p.temperatureC + hotterC }))
          const longer = run.map((p) => ({ ...p, timeMin: p.timeMin > 20 ? p.timeMin + longerMin : p.timeMin }))
          expect(worth(hotter, initialC)).toBeGreaterThanOrEqual(plain * (1 - 1e-9))
          expect(worth(longer, initialC)).toBeGreaterThanOrEqual(plain * (1 - 1e-9))
        },
      ),
      { numRuns: 40 },
    )
  })

  test.each([
    ['a place too near the glass', { place: { radiusFraction: 0.8, heightFraction: 0 } }],
    ['a step of nothing', { stepS: 0 }],
    ['food of no temperature', { initialC: Number.NaN }],
  ])('is refused for %s', (_what, options) => {
    expect(() => cylinderCurve(pint, run, { initialC: 60, stepS: 60, ...options })).toThrow(ValidRangeError)
  })

  test('is refused for a history that runs backward', () => {
    expect(() => cylinderCurve(pint, run.toReversed(), { initialC: 60, stepS: 60 })).toThrow(ValidRangeError)
  })
})

function withCuts(history: SurfaceHistory, cuts: readonly number[]): SurfaceHistory {
  const times = [...new Set([...history.map(({ timeMin }) => timeMin), ...cuts])].toSorted((a, b) => a - b)
  return times.map((timeMin) => {
    const i = Math.max(
      1,
      history.findIndex((p) => p.timeMin >= timeMin),
    )
    const from = history[i - 1]!
    const to = history[i]!
    const share = (timeMin - from.timeMin) / (to.timeMin - from.timeMin)
    return { timeMin, temperatureC: from.temperatureC + share * (to.temperatureC - from.temperatureC) }
  })
}
