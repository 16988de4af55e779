import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { convert } from '../units/unit.ts'
import { bulkDensityKgPerL, SHELLED_CORN_KG_PER_L, shelledCornKg, shelledCornL } from './bulk.ts'
import {
  bushelOfDryMatterLb,
  SHELLED_PER_EAR_CORN_TRADE_FRACTION,
  shelledFromEarCornKg,
  shelledPerEarCornFraction,
} from './ear-corn.ts'
import { cookedPerRaw, massAtMoistureKg, moistureShrinkFraction } from './moisture.ts'
import { HOMINY_SWELLING, hominyVolumeRangeL } from './swelling.ts'

const table = <const C extends string>(name: string, columns: readonly C[]) =>
  readReferenceTable(new URL(`./${name}`, import.meta.url), columns).rows

describe('weight and volume of shelled corn', () => {
  test.each(table('bulk.measures.csv', ['volumeL', 'massG']))(
    '$volumeL L holds $massG g at 56 lb to the bushel',
    (row) => {
      const massG = shelledCornKg(row.volumeL, bulkDensityKgPerL(56)) * 1000
      expect(Math.abs(massG - row.massG)).toBeLessThanOrEqual(row.massG > 10_000 ? 0.5 : 0.05)
    },
  )

  test('a liquid quart is 1.5 lb unless the lot has its own weight', () => {
    expect(convert(shelledCornKg(0.946352946), 'Kg', 'Lb')).toBeCloseTo(1.5, 12)
    expect(convert(shelledCornL(convert(9, 'Lb', 'Kg')), 'L', 'LiquidQt')).toBeCloseTo(6, 12)
  })

  test('the project weight is within half a percent of the 56 lb bushel, 0.721 kg/L (wisconsin-l033-2015)', () => {
    expect(bulkDensityKgPerL(56)).toBeCloseTo(0.721, 3)
    expect(Math.abs(SHELLED_CORN_KG_PER_L / 0.721 - 1)).toBeLessThan(0.005)
  })

  test('a cup is near the 166 g of usda-sr, and hard flint at 0.801 kg/L (ordonez-2012) is a test weight of 62 lb', () => {
    expect(Math.abs(shelledCornKg(0.2365882365) * 1000 - 166) / 166).toBeLessThan(0.03)
    expect(Math.abs(bulkDensityKgPerL(62.2) - 0.801)).toBeLessThan(0.001)
  })

  test('weight to volume and back is the same weight', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1000, noNaN: true }),
        fc.double({ min: 35, max: 80, noNaN: true }),
        (kg, lb) => {
          expect(shelledCornKg(shelledCornL(kg, bulkDensityKgPerL(lb)), bulkDensityKgPerL(lb))).toBeCloseTo(kg, 9)
        },
      ),
    )
  })

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('refuses %s', (amount) => {
    expect(() => shelledCornKg(amount)).toThrow(ValidRangeError)
    expect(() => shelledCornL(amount)).toThrow(ValidRangeError)
    expect(() => shelledCornL(1, amount)).toThrow(ValidRangeError)
    expect(() => bulkDensityKgPerL(amount)).toThrow(ValidRangeError)
  })
})

describe('drying', () => {
  test.each(
    table('moisture.shrink-factor.csv', ['finalWetPercent', 'factorPercentPerPoint']).filter(
      ({ finalWetPercent }) => finalWetPercent !== 11, // rounding slip in print, see below
    ),
  )('to $finalWetPercent % shrinks $factorPercentPerPoint % per point', (row) => {
    const change = { fromWetFraction: (row.finalWetPercent + 1) / 100, toWetFraction: row.finalWetPercent / 100 }
    const factor = moistureShrinkFraction(change) * 100
    expect(Math.abs(factor - row.factorPercentPerPoint)).toBeLessThanOrEqual(0.005)
  })

  test('to 11 % shrinks 1.12 % per point, not the printed 1.13', () => {
    expect(moistureShrinkFraction({ fromWetFraction: 0.12, toWetFraction: 0.11 }) * 100).toBeCloseTo(1.1236, 4)
  })

  test.each(table('moisture.shrink.csv', ['fromWetPercent', 'toWetPercent', 'shrinkPercent']))(
    'from $fromWetPercent % to $toWetPercent % takes $shrinkPercent %',
    (row) => {
      const change = { fromWetFraction: row.fromWetPercent / 100, toWetFraction: row.toWetPercent / 100 }
      expect(Math.abs(moistureShrinkFraction(change) * 100 - row.shrinkPercent)).toBeLessThanOrEqual(0.005)
    },
  )

  // Worked by hand from m2 = m1 (1 - M1)/(1 - M2).
  test.each([
    { kg: 10, from: 0.18, to: 0.13, leavesKg: 9.425 },
    { kg: 25, from: 0.3, to: 0.135, leavesKg: 20.231 },
  ])('$kg kg from $from to $to leaves $leavesKg kg', ({ kg, from, to, leavesKg }) => {
    expect(massAtMoistureKg(kg, { fromWetFraction: from, toWetFraction: to })).toBeCloseTo(leavesKg, 3)
  })

  test('keeps the dry matter', () => {
    const wet = fc.double({ min: 0, max: 0.95, noNaN: true })
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), wet, wet, (massKg, from, to) => {
        const afterKg = massAtMoistureKg(massKg, { fromWetFraction: from, toWetFraction: to })
        expect(afterKg * (1 - to)).toBeCloseTo(massKg * (1 - from), 9)
      }),
    )
  })

  test.each([-0.01, 0.96, 15.5, Number.NaN])('refuses a moisture of %s, a percentage least of all', (wetFraction) => {
    expect(() => massAtMoistureKg(1, { fromWetFraction: wetFraction, toWetFraction: 0.1 })).toThrow(ValidRangeError)
    expect(() => massAtMoistureKg(1, { fromWetFraction: 0.1, toWetFraction: wetFraction })).toThrow(ValidRangeError)
  })
})

describe('cooking', () => {
  test.each(table('moisture.yield.csv', ['rawWetPercent', 'lossPercent', 'cookedWetPercent', 'cookedPerRaw']))(
    'to $cookedWetPercent % water gives $cookedPerRaw times the raw weight',
    (row) => {
      const ratio = cookedPerRaw({
        rawWetFraction: row.rawWetPercent / 100,
        dryMatterLossFraction: row.lossPercent / 100,
        cookedWetFraction: row.cookedWetPercent / 100,
      })
      expect(Math.abs(ratio - row.cookedPerRaw)).toBeLessThanOrEqual(0.005)
    },
  )

  test.each([-0.1, 0.91, Number.NaN])('refuses a loss of %s', (dryMatterLossFraction) => {
    const cook = { rawWetFraction: 0.1, dryMatterLossFraction, cookedWetFraction: 0.7 }
    expect(() => cookedPerRaw(cook)).toThrow(ValidRangeError)
  })
})

describe('hominy from dry kernels', () => {
  test.each(table('swelling.statements.csv', ['dryVolume', 'hominyVolume', 'ratio']))(
    '$dryVolume to $hominyVolume in print is a ratio of $ratio and lies in the range shown',
    ({ dryVolume, hominyVolume, ratio }) => {
      expect(Math.abs(hominyVolume / dryVolume - ratio)).toBeLessThanOrEqual(0.05)
      expect(ratio).toBeGreaterThanOrEqual(HOMINY_SWELLING.low)
      expect(ratio).toBeLessThanOrEqual(HOMINY_SWELLING.high)
    },
  )

  test('of an easy-hulling large flint, four for one, lies in the range shown (common practice, no source)', () => {
    expect(hominyVolumeRangeL(1).highL).toBeGreaterThanOrEqual(4)
  })

  test('of 6 is 13.2 to 24, 18 in the middle', () => {
    const { lowL, middleL, highL } = hominyVolumeRangeL(6)
    expect([lowL, middleL, highL].map((x) => Number(x.toFixed(9)))).toEqual([13.2, 18, 24])
  })

  test.each([
    { low: 3, middle: 2, high: 4 },
    { low: 2, middle: 3, high: 2.5 },
    { low: 0.5, middle: 3, high: 4 },
    { low: 2, middle: 3, high: Number.NaN },
  ])('refuses a swelling of %o', (swelling) => {
    expect(() => hominyVolumeRangeL(1, swelling)).toThrow(ValidRangeError)
  })
})

describe('ear corn', () => {
  test.each(table('ear-corn.agf-502.csv', ['kernelWetPercent', 'shelledLb', 'earLb']))(
    'at $kernelWetPercent % gives $shelledLb lb shelled from $earLb lb of ears',
    (row) => {
      const wetFraction = row.kernelWetPercent / 100
      expect(Math.abs(bushelOfDryMatterLb(wetFraction) - row.shelledLb)).toBeLessThanOrEqual(0.005)
      const earLb = bushelOfDryMatterLb(wetFraction) / shelledPerEarCornFraction(wetFraction)
      expect(Math.abs(earLb - row.earLb)).toBeLessThanOrEqual(0.005)
    },
  )

  test('between rows lies between their shares, and the trade figure of 56 from 70 is a little lower', () => {
    const share = shelledPerEarCornFraction(0.16)
    expect(share).toBeLessThan(shelledPerEarCornFraction(0.155))
    expect(share).toBeGreaterThan(shelledPerEarCornFraction(0.165))
    expect(SHELLED_PER_EAR_CORN_TRADE_FRACTION).toBe(0.8)
    expect(shelledFromEarCornKg(70, 0.155)).toBeCloseTo(57.31, 2) // 70 x 56.00 / 68.40
  })

  test.each([0.099, 0.281, Number.NaN])('refuses a kernel moisture of %s: the table stops', (kernelWetFraction) => {
    expect(() => shelledPerEarCornFraction(kernelWetFraction)).toThrow(ValidRangeError)
  })
})
