import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cToF, fToC, ftToM, kPaAbsToPsiGauge, mToFt, psiGaugeToKPaAbs } from './convert-named.ts'
import { convert, UNITS, type Unit } from './unit.ts'

const ALL = Object.keys(UNITS) as Unit[]
const isAbsolute = (unit: Unit) => unit === 'KPaAbs'
const convertible = ALL.flatMap((a) =>
  ALL.filter((b) => UNITS[a].measure === UNITS[b].measure && isAbsolute(a) === isAbsolute(b)).map(
    (b) => [a, b] as const,
  ),
)

describe('units', () => {
  test('come back to where they started, for every pair that measures one thing', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...convertible),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        ([from, to], value) => {
          const back = convert(convert(value, from, to), to, from)
          // Doubles carry 16 digits; the temperature offset can cost three of them near zero.
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(value)) * 100)
        },
      ),
      { numRuns: 1000 },
    )
  })

  // Exact by definition: nist-handbook-44-appendix-c.
  test.each([
    [1, 'Bu', 'DryQt', 32],
    [1, 'LiquidGal', 'LiquidQt', 4],
    [1, 'LiquidQt', 'L', 0.946352946],
    [1, 'Bu', 'L', 35.23907016688],
    [1, 'Cup', 'Tbsp', 16],
    [1, 'Tbsp', 'Tsp', 3],
    [1, 'Lb', 'G', 453.59237],
    [1, 'Ft', 'In', 12],
    [-40, 'F', 'C', -40],
    [212, 'F', 'C', 100],
  ] as const)('know that %s %s is %s %s', (value, from, to, expected) => {
    const converted = convert(value, from, to as Unit)
    expect(Math.abs(converted - expected)).toBeLessThan(1e-9)
  })

  test.each([
    ['Kg', 'L'],
    ['PsiGauge', 'KPaAbs'],
    ['KPaAbs', 'KPaGauge'],
    ['Min', 'ClockMin'],
  ] as const)('refuse to turn %s into %s', (from, to) => {
    expect(() => convert(1, from, to)).toThrow(RangeError)
  })

  test('turn a gauge reading into absolute pressure with the local atmosphere, and back', () => {
    expect(psiGaugeToKPaAbs(11, 101.325)).toBeCloseTo(177.1673, 4)
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 60, max: 110, noNaN: true }),
        (psi, atm) => {
          expect(kPaAbsToPsiGauge(psiGaugeToKPaAbs(psi, atm), atm)).toBeCloseTo(psi, 9)
        },
      ),
    )
  })

  test('agree with the named conversions', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 20_000, noNaN: true }), (x) => {
        expect(fToC(cToF(x))).toBeCloseTo(x, 8)
        expect(fToC(x)).toBeCloseTo(convert(x, 'F', 'C'), 8)
        expect(mToFt(ftToM(x))).toBeCloseTo(x, 8)
      }),
    )
  })
})
