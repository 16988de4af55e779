import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { debyeHueckel, TRUESDELL_JONES } from './activity.ts'
import { equilibriaAt } from './equilibria.ts'
import type { Mixture, Speciation } from './mixture.ts'
import { speciate, summedCharges } from './speciation.ts'

/** A longer sweep on demand: MIXTURES=1000000. */
const MIXTURES_COUNT = Number(process.env.MIXTURES ?? 10_000)
const STANDARD = ['caseNumber', 'temperatureC', 'sodium', 'calcium', 'carbon', 'boron', 'pH', 'tolerancePH'] as const
const LIQUOR = ['caseNumber', 'temperatureC', 'sodium', 'potassium', 'carbon', 'pH', 'tolerancePH'] as const
const standards = [
  readReferenceTable(new URL('./speciation.nbs.csv', import.meta.url), STANDARD),
  readReferenceTable(new URL('./speciation.jis.csv', import.meta.url), STANDARD),
  readReferenceTable(new URL('./speciation.nbs-from-memory.csv', import.meta.url), STANDARD),
].flatMap(({ rows }) => rows)
const davies = readReferenceTable(new URL('./speciation.davies.csv', import.meta.url), LIQUOR)
const phreeqc = readReferenceTable(new URL('./speciation.phreeqc.csv', import.meta.url), LIQUOR)
const constants = readReferenceTable(new URL('./equilibria.constants.csv', import.meta.url), [
  'temperatureC',
  'henryCO2',
  'carbonic1',
  'carbonic2',
  'calcite',
  'CaHCO3',
  'CaCO3',
])
const water = readReferenceTable(new URL('./equilibria.water.csv', import.meta.url), ['temperatureC', 'pKw'])
const portlandite = readReferenceTable(new URL('./equilibria.portlandite.csv', import.meta.url), [
  'temperatureC',
  'logK',
])
const iapws = readReferenceTable(new URL('./equilibria.iapws.csv', import.meta.url), ['temperatureC', 'A', 'pKw'])
const slopes = readReferenceTable(new URL('./activity.debye-hueckel.csv', import.meta.url), ['temperatureC', 'A'])

function solved(mixture: Mixture, temperatureC: number, options = {}): Speciation {
  const outcome = speciate(mixture, temperatureC, options)
  if (outcome.kind !== 'solved') throw new Error(`${outcome.why} at ${JSON.stringify(mixture)}, ${temperatureC} °C`)
  return outcome
}

describe('equilibrium constants', () => {
  test.each(constants.rows)('of carbonate are the printed ones at $temperatureC °C', ({ temperatureC, ...row }) => {
    const at = equilibriaAt(temperatureC)
    for (const name of ['henryCO2', 'carbonic1', 'carbonic2', 'calcite'] as const) {
      expect(Math.abs(at[name]! - row[name])).toBeLessThanOrEqual(0.001)
    }
    expect(Math.abs(at.CaHCO3 - row.CaHCO3)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(at.CaCO3 - row.CaCO3)).toBeLessThanOrEqual(0.005)
  })

  test.each(water.rows)('of water is near the handbook at $temperatureC °C', ({ temperatureC, pKw }) => {
    expect(Math.abs(-equilibriaAt(temperatureC).water - pKw)).toBeLessThanOrEqual(0.03)
  })

  test.each(portlandite.rows)('of calcium hydroxide fall to $logK at $temperatureC °C', ({ temperatureC, logK }) => {
    expect(Math.abs(equilibriaAt(temperatureC).portlandite - logK)).toBeLessThanOrEqual(0.001)
  })

  test.each(slopes.rows)('go with a Debye-Hückel slope of $A at $temperatureC °C', ({ temperatureC, A }) => {
    expect(Math.abs(debyeHueckel(temperatureC).A - A)).toBeLessThanOrEqual(0.001)
  })

  test.each(iapws.rows)(
    'are near those of the formulations for steam at $temperatureC °C',
    ({ temperatureC, A, pKw }) => {
      expect(Math.abs(debyeHueckel(temperatureC).A / A - 1)).toBeLessThanOrEqual(0.006)
      expect(Math.abs(-equilibriaAt(temperatureC).water - pKw)).toBeLessThanOrEqual(0.015)
    },
  )

  test.each([-1, 101, Number.NaN])('are refused at %s °C', (temperatureC) => {
    expect(() => equilibriaAt(temperatureC)).toThrow(ValidRangeError)
  })

  test('tell no calcite above 90 °C, where it was not measured', () => {
    expect(equilibriaAt(90).calcite).not.toBeNull()
    expect(equilibriaAt(91).calcite).toBeNull()
  })
})

describe('a liquor', () => {
  test.each(standards)('of case $caseNumber has the standard pH $pH at $temperatureC °C', (row) => {
    const { temperatureC, sodium, calcium, carbon, boron, pH, tolerancePH } = row
    expect(Math.abs(solved({ sodium, calcium, carbon, boron }, temperatureC).pH - pH)).toBeLessThanOrEqual(tolerancePH)
  })

  test.each(davies.rows)('of case $caseNumber has pH $pH with Davies activities', (row) => {
    const { temperatureC, sodium, potassium, carbon, pH, tolerancePH } = row
    expect(Math.abs(solved({ sodium, potassium, carbon }, temperatureC).pH - pH)).toBeLessThanOrEqual(tolerancePH)
  })

  test.each(phreeqc.rows)('of case $caseNumber has pH $pH by an independent program', (row) => {
    const { temperatureC, sodium, potassium, carbon, pH, tolerancePH } = row
    const { pH: found } = solved({ sodium, potassium, carbon }, temperatureC, { activityModel: TRUESDELL_JONES })
    expect(Math.abs(found - pH)).toBeLessThanOrEqual(tolerancePH)
  })

  test('loses 1.8 of pH when heated to the boil, and no hydroxide', () => {
    const cold = solved({ sodium: 0.1872 }, 25)
    const hot = solved({ sodium: 0.1872 }, 100)
    expect(cold.pH - hot.pH).toBeGreaterThan(1.7)
    expect(hot.molPerKg.OH).toBeCloseTo(0.1872, 6)
    expect(cold.molPerKg.OH).toBeCloseTo(0.1872, 6)
  })

  test('stronger than the model says so, and past its end gives no pH', () => {
    expect(solved({ sodium: 0.7 }, 25).isBeyondModel).toBe(true)
    expect(solved({ sodium: 0.1 }, 25).isBeyondModel).toBe(false)
    expect(speciate({ sodium: 2 }, 25)).toMatchObject({ kind: 'not-solved', why: 'too-strong' })
  })

  test.each([{ sodium: -0.1 }, { carbon: Number.NaN }, { potassium: 6 }])('of %j is refused', (mixture) => {
    expect(() => speciate(mixture, 25)).toThrow(ValidRangeError)
  })
})

const amount = fc.oneof(
  { weight: 1, arbitrary: fc.constant(0) },
  { weight: 2, arbitrary: fc.double({ min: -7, max: -0.3, noNaN: true }).map((log) => 10 ** log) },
)
const mixtures = fc.record({
  sodium: amount,
  potassium: amount,
  calcium: amount,
  magnesium: amount,
  carbon: amount,
  boron: amount,
  acetate: amount,
  chloride: amount,
})
const celsius = fc.double({ min: 0, max: 100, noNaN: true })
const relative = (a: number, b: number) => Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-300)

describe('any mixture', () => {
  test(
    'is solved with its charges and masses in balance, or is too strong',
    () => {
      let solvedCount = 0
      fc.assert(
        fc.property(mixtures, celsius, (mixture, temperatureC) => {
          const outcome = speciate(mixture, temperatureC)
          if (outcome.kind === 'not-solved') {
            expect(outcome.why).toBe('too-strong')
            return
          }
          solvedCount += 1
          const m = outcome.molPerKg
          const plus = m.H + m.Na + m.K + 2 * m.Ca + 2 * m.Mg + m.CaOH + m.CaHCO3 + m.MgOH + m.MgHCO3
          const minus = m.OH + m.HCO3 + 2 * m.CO3 + m.BOH4 + m.acetate + m.Cl
          expect(Math.abs(plus - minus)).toBeLessThanOrEqual(1e-10 * summedCharges(m))
          const carbon = m.CO2 + m.HCO3 + m.CO3 + m.CaHCO3 + m.CaCO3 + m.MgHCO3 + m.MgCO3
          expect(relative(carbon, mixture.carbon)).toBeLessThanOrEqual(1e-10)
          expect(relative(m.Ca + m.CaOH + m.CaHCO3 + m.CaCO3, mixture.calcium)).toBeLessThanOrEqual(1e-10)
          expect(relative(m.Mg + m.MgOH + m.MgHCO3 + m.MgCO3, mixture.magnesium)).toBeLessThanOrEqual(1e-10)
          expect(relative(m.BOH3 + m.BOH4, mixture.boron)).toBeLessThanOrEqual(1e-10)
          expect(Math.min(...Object.values(m))).toBeGreaterThanOrEqual(0)
        }),
        { numRuns: MIXTURES_COUNT },
      )
      expect(solvedCount).toBeGreaterThan(MIXTURES_COUNT * 0.8)
    },
    60_000 + MIXTURES_COUNT,
  )

  // Over the whole span acid to alkali, weak enough that Davies coefficients do not turn back on themselves.
  test('rises in pH with each addition of base', () => {
    fc.assert(
      fc.property(
        mixtures.filter((m) => Object.values(m).every((each) => each < 0.05)),
        celsius,
        fc.double({ min: 1e-6, max: 0.05, noNaN: true }),
        (mixture, temperatureC, base) => {
          const before = solved(mixture, temperatureC).pH
          const after = solved({ ...mixture, potassium: mixture.potassium + base }, temperatureC).pH
          expect(after).toBeGreaterThan(before)
        },
      ),
      { numRuns: 1000 },
    )
  })

  test('has one pH wherever the search begins', () => {
    fc.assert(
      fc.property(mixtures, celsius, fc.double({ min: 0, max: 15, noNaN: true }), (mixture, temperatureC, nearPH) => {
        const outcome = speciate(mixture, temperatureC)
        if (outcome.kind !== 'solved') return
        expect(Math.abs(solved(mixture, temperatureC, { nearPH }).pH - outcome.pH)).toBeLessThan(1e-7)
      }),
      { numRuns: 1000 },
    )
  })
})
