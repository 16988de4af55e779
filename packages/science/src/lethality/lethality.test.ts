import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { fToC } from '../units/convert-named.ts'
import { LETHALITY_121_1C, LETHALITY_250F, lethalRate } from './lethal-rate.ts'
import {
  lethalityMin,
  lethalityRectangleMin,
  lethalitySimpsonMin,
  lethalityTrapezoidMin,
  type TemperatureSample,
} from './lethality.ts'

const tableF = readReferenceTable(new URL('./lethal-rate.table-f.csv', import.meta.url), ['temperatureF', 'lethalRate'])
const tableC = readReferenceTable(new URL('./lethal-rate.table-c.csv', import.meta.url), ['temperatureC', 'lethalRate'])
const example = readReferenceTable(new URL('./lethality.example-38-4.csv', import.meta.url), [
  'timeMin',
  'temperatureF',
]).rows.map(({ timeMin, temperatureF }) => ({ timeMin, temperatureC: fToC(temperatureF) }))

const rules = readReferenceTable(new URL('./lethality.rules.csv', import.meta.url), [
  ...(['rectangleMin', 'trapezoidMin', 'simpsonMin', 'exactMin'] as const),
])
const closedForms = readReferenceTable(new URL('./lethality.closed-forms.csv', import.meta.url), [
  ...(['rampMin', 'fromC', 'holdC', 'holdMin', 'fallMin', 'referenceC', 'lethalityMin'] as const),
])

const HALF_UNIT = 0.5e-5 * (1 + 1e-9)

describe('lethal rate', () => {
  test.each(tableF.rows)('is $lethalRate at $temperatureF °F', (row) => {
    expect(Math.abs(lethalRate(fToC(row.temperatureF), LETHALITY_250F) - row.lethalRate)).toBeLessThanOrEqual(HALF_UNIT)
  })

  test.each(tableC.rows)('is $lethalRate at $temperatureC °C', (row) => {
    expect(Math.abs(lethalRate(row.temperatureC, LETHALITY_121_1C) - row.lethalRate)).toBeLessThanOrEqual(HALF_UNIT)
  })

  test('is 0.26 % higher with 121.1 °C as reference than with 250 °F', () => {
    expect(lethalRate(116, LETHALITY_121_1C) / lethalRate(116, LETHALITY_250F)).toBeCloseTo(1.0026, 4)
  })

  test.each([-1, 151, Number.NaN])('refuses %s °C', (temperatureC) => {
    expect(() => lethalRate(temperatureC, LETHALITY_250F)).toThrow(ValidRangeError)
  })

  test.each([0, -10, Number.NaN])('refuses z of %s °C', (zDeltaC) => {
    expect(() => lethalRate(100, { zDeltaC, referenceC: 121.1 })).toThrow(ValidRangeError)
  })
})

describe('lethality of the published record of 16 readings (food-biochemistry-ch38 table 38.4)', () => {
  test('is 6.27 times 2.52 min by the rectangle rule, as published', () => {
    const rectangleMin = lethalityRectangleMin(example, LETHALITY_250F)
    expect(Math.abs(rectangleMin / 2.52 - 6.27)).toBeLessThanOrEqual(0.005)
    expect(rectangleMin).toBeCloseTo(15.8004, 4)
  })

  test.each(rules.rows)(
    'is $trapezoidMin min by the trapezoid, $simpsonMin by Simpson, $exactMin by the exact rule',
    (row) => {
      expect(lethalityRectangleMin(example, LETHALITY_250F)).toBeCloseTo(row.rectangleMin, 4)
      expect(lethalityTrapezoidMin(example, LETHALITY_250F)).toBeCloseTo(row.trapezoidMin, 4)
      expect(lethalitySimpsonMin(example, LETHALITY_250F)).toBeCloseTo(row.simpsonMin, 2)
      expect(lethalityMin(example, LETHALITY_250F)).toBeCloseTo(row.exactMin, 3)
    },
  )
})

describe('lethality in closed form', () => {
  test.each(closedForms.rows)(
    'of $rampMin min up, $holdMin min at $holdC °C and $fallMin min down is $lethalityMin min',
    ({ rampMin, fromC, holdC, holdMin, fallMin, referenceC, lethalityMin: expectedMin }) => {
      const ends = [
        { timeMin: 0, temperatureC: fromC },
        { timeMin: rampMin, temperatureC: holdC },
        { timeMin: rampMin + holdMin, temperatureC: holdC },
        { timeMin: rampMin + holdMin + fallMin, temperatureC: fromC },
      ]
      // A part that takes no time is left out.
      const curve = ends.slice(rampMin === 0 ? 1 : 0, fallMin === 0 ? 3 : 4)
      const rising = curve.filter(({ timeMin }, i) => i === 0 || timeMin > curve[i - 1]!.timeMin)
      expect(lethalityMin(rising, { ...LETHALITY_121_1C, referenceC })).toBeCloseTo(expectedMin, 4)
    },
  )

  test('by Simpson, is exact where L is a parabola over an odd and an even number of readings', () => {
    // L = 1 + t + t^2 on 0..3: integral 1 + t + t^2 from 0 to 2 is 20/3, from 0 to 3 is 16.5.
    const at = (t: number): TemperatureSample => ({
      timeMin: t,
      temperatureC: LETHALITY_250F.referenceC + 10 * Math.log10(1 + t + t * t),
    })
    expect(lethalitySimpsonMin([0, 1, 2].map(at), LETHALITY_250F)).toBeCloseTo(20 / 3, 9)
    expect(lethalitySimpsonMin([0, 1, 2, 3].map(at), LETHALITY_250F)).toBeCloseTo(16.5, 9)
  })
})

const anyCurve = fc
  .array(
    fc.record({
      stepMin: fc.double({ min: 0.01, max: 30, noNaN: true }),
      temperatureC: fc.double({ min: 0, max: 150, noNaN: true }),
    }),
    {
      minLength: 2,
      maxLength: 40,
    },
  )
  .map((steps) => {
    let timeMin = 0
    return steps.map(({ stepMin, temperatureC }) => {
      timeMin += stepMin
      return { timeMin, temperatureC }
    })
  })

/** Room for the rounding of forty additions. */
const DUST = 1e-12

describe('lethality of any record', () => {
  test('by the exact rule never exceeds the trapezoid', () => {
    fc.assert(
      fc.property(anyCurve, (curve) => {
        const trapezoidMin = lethalityTrapezoidMin(curve, LETHALITY_250F)
        expect(lethalityMin(curve, LETHALITY_250F)).toBeLessThanOrEqual(trapezoidMin * (1 + DUST))
      }),
    )
  })

  test('adds up where a record is cut in two at a reading', () => {
    fc.assert(
      fc.property(anyCurve, fc.nat(), (curve, n) => {
        fc.pre(curve.length > 2)
        const cut = 1 + (n % (curve.length - 2))
        const whole = lethalityMin(curve, LETHALITY_250F)
        const parts =
          lethalityMin(curve.slice(0, cut + 1), LETHALITY_250F) + lethalityMin(curve.slice(cut), LETHALITY_250F)
        expect(Math.abs(parts - whole)).toBeLessThanOrEqual(DUST * whole)
      }),
    )
  })

  test('is the same for the record run backwards', () => {
    fc.assert(
      fc.property(anyCurve, (curve) => {
        const backwards = curve.map(({ timeMin, temperatureC }) => ({ timeMin: -timeMin, temperatureC })).reverse()
        const forwardsMin = lethalityMin(curve, LETHALITY_250F)
        // exp(x) carries the error of x, up to 35 here.
        expect(Math.abs(lethalityMin(backwards, LETHALITY_250F) - forwardsMin)).toBeLessThanOrEqual(1e-11 * forwardsMin)
      }),
    )
  })

  test('does not change when a reading on the straight line is added', () => {
    fc.assert(
      fc.property(anyCurve, (curve) => {
        const [a, b, ...rest] = curve as [TemperatureSample, TemperatureSample, ...TemperatureSample[]]
        const middle = { timeMin: (a.timeMin + b.timeMin) / 2, temperatureC: (a.temperatureC + b.temperatureC) / 2 }
        const before = lethalityMin(curve, LETHALITY_250F)
        expect(Math.abs(lethalityMin([a, middle, b, ...rest], LETHALITY_250F) - before)).toBeLessThanOrEqual(
          1e-11 * before,
        )
      }),
    )
  })

  test('grows when any reading is hotter', () => {
    fc.assert(
      fc.property(anyCurve, fc.nat(), (curve, n) => {
        const hotter = curve.map((sample, i) =>
          i === n % curve.length ? { ...sample, temperatureC: Math.min(150, sample.temperatureC + 5) } : sample,
        )
        expect(lethalityMin(hotter, LETHALITY_250F)).toBeGreaterThanOrEqual(
          lethalityMin(curve, LETHALITY_250F) * (1 - DUST),
        )
      }),
    )
  })
})

describe('a record that cannot be integrated', () => {
  const at = (timeMin: number, temperatureC = 100): TemperatureSample => ({ timeMin, temperatureC })

  test.each([
    ['no reading', []],
    ['one reading', [at(0)]],
    ['two readings at one time', [at(0), at(0)]],
    ['time running back', [at(5), at(4)]],
    ['an unknown time', [at(0), at(Number.NaN)]],
    ['a last reading too hot', [at(0), at(1, 151)]],
    ['an unknown temperature', [at(0), at(1, Number.NaN)]],
  ])('is refused: %s', (_what, curve) => {
    for (const rule of [lethalityMin, lethalityTrapezoidMin, lethalityRectangleMin, lethalitySimpsonMin]) {
      expect(() => rule(curve, LETHALITY_250F)).toThrow(ValidRangeError)
    }
  })

  test('with unequal steps is refused by the rules that need equal ones', () => {
    const uneven = [at(0), at(1), at(3)]
    expect(() => lethalityRectangleMin(uneven, LETHALITY_250F)).toThrow(/equal steps/)
    expect(() => lethalitySimpsonMin(uneven, LETHALITY_250F)).toThrow(/equal steps/)
    expect(lethalityMin(uneven, LETHALITY_250F)).toBeGreaterThan(0)
  })
})
