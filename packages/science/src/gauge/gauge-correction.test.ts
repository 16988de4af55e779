import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { LETHALITY_250F, lethalRate } from '../lethality/lethal-rate.ts'
import { steamTemperatureC } from '../steam/canner-steam.ts'
import { cToF } from '../units/convert-named.ts'
import { convert } from '../units/unit.ts'
import { gaugeErrorPsi, nextFaceMarkPsi, requiredReadingPsi, truePsiAtReading } from './gauge-correction.ts'

const readsHigh = readReferenceTable(new URL('./gauge-correction.reads-high.csv', import.meta.url), [
  'errorPsi',
  'truePsi',
  'temperatureF',
  'lethalRate',
  'shareOfMeantPercent',
])

/** An invented gauge: true 10 reads 11.5, true 11 reads 12.5, true 15 reads 16.5. */
const readsHighByOneAndAHalf = [
  { truePsi: 15, readsPsi: 16.5 },
  { truePsi: 10, readsPsi: 11.5 },
  { truePsi: 11, readsPsi: 12.5 },
]
const seaLevelC = (psi: number) =>
  steamTemperatureC({ pressureKPaGauge: convert(psi, 'PsiGauge', 'KPaGauge'), elevationM: 0 })

describe('a dial gauge that reads high', () => {
  test.each(readsHigh.rows)('by $errorPsi psi and is held at 11 gives $temperatureF °F', (row) => {
    const bench = [5, 8, 9, 10, 11, 15].map((truePsi) => ({ truePsi, readsPsi: truePsi + row.errorPsi }))
    const truePsi = truePsiAtReading(bench, 11)
    expect(truePsi).toBe(row.truePsi)
    // 0.00546 at 8 psi (234.7355 °F against 234.73): the separate working rounded a step earlier.
    expect(Math.abs(cToF(seaLevelC(truePsi)) - row.temperatureF)).toBeLessThanOrEqual(0.0055)
    const rate = lethalRate(seaLevelC(truePsi), LETHALITY_250F)
    expect(Math.abs(rate - row.lethalRate)).toBeLessThanOrEqual(0.0005)
    const sharePercent = (100 * rate) / lethalRate(seaLevelC(11), LETHALITY_250F)
    expect(Math.abs(sharePercent - row.shareOfMeantPercent)).toBeLessThanOrEqual(0.6)
  })

  test('by 1.5 psi must show 12.5 for a true 11, and is held at the 13 mark, a true 11.5', () => {
    expect(gaugeErrorPsi(readsHighByOneAndAHalf, 11)).toBe(1.5)
    expect(requiredReadingPsi(readsHighByOneAndAHalf, 11)).toBe(12.5)
    expect(nextFaceMarkPsi(12.5, 1)).toBe(13)
    expect(truePsiAtReading(readsHighByOneAndAHalf, 13)).toBeCloseTo(11.5, 12)
  })
})

describe('a dial gauge that reads low', () => {
  test('by 1 psi shows 10 at a true 11', () => {
    expect(requiredReadingPsi([{ truePsi: 11, readsPsi: 10 }], 11)).toBe(10)
  })
})

describe('a mark to hold', () => {
  test.each([
    [12.5, 1, 13],
    [13, 1, 13],
    [11, 5, 15],
    [10.4, 0.5, 10.5],
    [0.3, 0.1, 0.3],
    [0, 1, 0],
  ])('for a least reading of %s with marks every %s psi is %s', (readingPsi, marksEveryPsi, mark) => {
    expect(nextFaceMarkPsi(readingPsi, marksEveryPsi)).toBe(mark)
  })

  test('is never below the least reading, and less than one mark above it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 25, noNaN: true }),
        fc.constantFrom(0.25, 0.5, 1, 2, 5),
        (reading, every) => {
          const mark = nextFaceMarkPsi(reading, every)
          expect(mark).toBeGreaterThanOrEqual(reading - 1e-8)
          expect(mark - reading).toBeLessThan(every)
        },
      ),
    )
  })
})

const anyTest = fc
  .uniqueArray(fc.integer({ min: 0, max: 20 }), { minLength: 2, maxLength: 6 })
  .chain((trues) =>
    fc.tuple(
      fc.constant(trues),
      fc.array(fc.double({ min: -0.4, max: 0.4, noNaN: true }), { minLength: trues.length, maxLength: trues.length }),
    ),
  )
  .map(([trues, errors]) => trues.map((truePsi, i) => ({ truePsi, readsPsi: truePsi + 2 + (errors[i] ?? 0) })))

describe('any bench test', () => {
  test('leads from true pressure to reading and back', () => {
    fc.assert(
      fc.property(anyTest, fc.double({ min: 0, max: 1, noNaN: true }), (bench, share) => {
        const trues = bench.map(({ truePsi }) => truePsi)
        const low = Math.min(...trues)
        const truePsi = Math.min(Math.max(...trues), low + share * (Math.max(...trues) - low))
        expect(truePsiAtReading(bench, requiredReadingPsi(bench, truePsi))).toBeCloseTo(truePsi, 9)
      }),
    )
  })

  test('gives the tested readings themselves at the tested points, in whatever order they were written', () => {
    fc.assert(
      fc.property(anyTest, (bench) => {
        for (const { truePsi, readsPsi } of bench) {
          expect(requiredReadingPsi(bench.toReversed(), truePsi)).toBeCloseTo(readsPsi, 12)
        }
      }),
    )
  })
})

describe('a bench test that cannot answer', () => {
  test('is refused below and above the pressures tested: no line is drawn past the last point', () => {
    expect(() => gaugeErrorPsi(readsHighByOneAndAHalf, 9.9)).toThrow(/covers 10 to 15 psi/)
    expect(() => gaugeErrorPsi(readsHighByOneAndAHalf, 15.1)).toThrow(ValidRangeError)
    expect(() => truePsiAtReading(readsHighByOneAndAHalf, 11)).toThrow(/covers 11.5 to 16.5 psi/)
  })

  test.each([
    ['no points', []],
    [
      'one pressure twice',
      [
        { truePsi: 10, readsPsi: 10 },
        { truePsi: 10, readsPsi: 11 },
      ],
    ],
    ['an unknown reading', [{ truePsi: 10, readsPsi: Number.NaN }]],
    ['a pressure no canner has', [{ truePsi: 100, readsPsi: 100 }]],
  ])('is refused with %s', (_what, bench) => {
    expect(() => gaugeErrorPsi(bench, 10)).toThrow(ValidRangeError)
  })

  test('is refused when the needle fell while the pressure rose', () => {
    const stuck = [
      { truePsi: 10, readsPsi: 12 },
      { truePsi: 11, readsPsi: 11 },
    ]
    expect(() => truePsiAtReading(stuck, 11.5)).toThrow(ValidRangeError)
  })

  test.each([
    [Number.NaN, 1],
    [-1, 1],
    [11, 0],
    [11, Number.NaN],
  ])('has no mark for a reading of %s with marks every %s psi', (readingPsi, marksEveryPsi) => {
    expect(() => nextFaceMarkPsi(readingPsi, marksEveryPsi)).toThrow(ValidRangeError)
  })
})
