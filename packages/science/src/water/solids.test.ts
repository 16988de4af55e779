import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { calciumHydroxideSolubilityGPerKg, openToCO2, settle, withCO2Lost } from './solids.ts'
import { speciate } from './speciation.ts'
import { titrationCurve } from './titration-curve.ts'

const settledCases = readReferenceTable(new URL('./solids.settled.csv', import.meta.url), [
  'caseNumber',
  'potassium',
  'pH',
  'calciumMmolPerKg',
])
const handbook = readReferenceTable(new URL('./solids.solubility.csv', import.meta.url), [
  'temperatureC',
  'gPer100G',
  'toleranceFraction',
])
const worked = readReferenceTable(new URL('./solids.solubility-worked.csv', import.meta.url), [
  'temperatureC',
  'gPer100G',
])
const vinegar = readReferenceTable(new URL('./titration-curve.vinegar.csv', import.meta.url), [
  'isBoiled',
  'addedMl',
  'pH',
])

describe('a liquor over solids', () => {
  test.each(settledCases.rows)('of case $caseNumber settles at pH $pH', ({ caseNumber, potassium, ...row }) => {
    const isCalcite = caseNumber === 14
    const mixture = isCalcite ? { calcium: 0.01, carbon: 0.01 } : { potassium, calcium: 0.1 }
    const settled = settle(mixture, [isCalcite ? 'calcite' : 'portlandite'], 25)
    if (settled.kind !== 'settled') throw new Error(settled.why)
    const leftMmol = 1000 * (mixture.calcium - settled.calciteMolPerKg - settled.portlanditeMolPerKg)
    expect(Math.abs(settled.liquor.pH - row.pH)).toBeLessThanOrEqual(0.02)
    expect(Math.abs(leftMmol / row.calciumMmolPerKg - 1)).toBeLessThanOrEqual(0.05)
  })

  test('of potassium carbonate and calcium hydroxide turns to hydroxide, with calcite at the bottom', () => {
    const settled = settle({ potassium: 0.09, carbon: 0.045, calcium: 0.2 }, ['portlandite', 'calcite'], 25)
    if (settled.kind !== 'settled') throw new Error(settled.why)
    const { OH, CO3 } = settled.liquor.molPerKg
    expect(OH).toBeGreaterThan(0.088)
    expect(CO3 / OH).toBeLessThan(0.01)
    expect(settled.liquor.saturation.calcite).toBeCloseTo(0, 6)
    expect(settled.liquor.saturation.portlandite).toBeCloseTo(0, 6)
  })

  test('keeps its solids when they are more than can dissolve, and none when less', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-5, max: 0.2, noNaN: true }), fc.integer({ min: 0, max: 100 }), (calcium, t) => {
        const settled = settle({ calcium }, ['portlandite'], t)
        if (settled.kind !== 'settled') throw new Error(settled.why)
        const { saturation } = settled.liquor
        if (settled.portlanditeMolPerKg === 0) expect(saturation.portlandite).toBeLessThanOrEqual(0)
        else expect(saturation.portlandite).toBeCloseTo(0, 6)
      }),
      { numRuns: 200 },
    )
  })

  test('is refused above 90 °C where it may hold calcite', () => {
    expect(() => settle({ calcium: 0.01, carbon: 0.01 }, ['calcite'], 95)).toThrow(ValidRangeError)
  })
})

describe('calcium hydroxide', () => {
  test.each(handbook.rows)('dissolves to $gPer100G g in 100 g of water at $temperatureC °C', (row) => {
    const found = calciumHydroxideSolubilityGPerKg(row.temperatureC)! / 10
    expect(Math.abs(found / row.gPer100G - 1)).toBeLessThanOrEqual(row.toleranceFraction)
  })

  test.each(worked.rows)('is worked out as $gPer100G g at $temperatureC °C', ({ temperatureC, gPer100G }) => {
    expect(Math.abs(calciumHydroxideSolubilityGPerKg(temperatureC)! / 10 - gPer100G)).toBeLessThanOrEqual(0.001)
  })

  // bates-1956: 0.0203 mol/L, 1.50 g/L at 25 °C.
  test('at 25 °C is within 5 % of the bureau’s 1.50 g/L', () => {
    expect(Math.abs(calciumHydroxideSolubilityGPerKg(25)! / 1.5 - 1)).toBeLessThanOrEqual(0.05)
  })

  test('dissolves less where another alkali already is', () => {
    const plain = calciumHydroxideSolubilityGPerKg(25)!
    expect(calciumHydroxideSolubilityGPerKg(25, { potassium: 0.1 })!).toBeLessThan(plain / 4)
  })
})

describe('CO2', () => {
  test('lost from all of a bicarbonate leaves carbonate', () => {
    expect(withCO2Lost({ sodium: 0.1736, carbon: 0.1736 }, 1)).toEqual({ sodium: 0.1736, carbon: 0.0868 })
    expect(withCO2Lost({ sodium: 0.1736, carbon: 0.0868 }, 1)).toEqual({ sodium: 0.1736, carbon: 0.0868 })
  })

  // Distilled water open to outdoor air: pH about 5.6, a textbook figure.
  test('of the air brings distilled water to pH 5.6', () => {
    const open = speciate(openToCO2({}, 4.2e-4, 25)!, 25)
    expect(open.kind === 'solved' && open.pH).toBeCloseTo(5.6, 1)
    expect(open.kind === 'solved' && open.pCO2Atm / 4.2e-4).toBeCloseTo(1, 6)
  })
})

describe('a titration with vinegar', () => {
  const lye = {
    sample: { potassium: 0.09, carbon: 0.01 },
    sampleMl: 50,
    titrant: { acetate: 0.8326 },
    temperatureC: 25,
  }

  test.each(vinegar.rows)('passes pH $pH at $addedMl mL (boiled: $isBoiled)', ({ isBoiled, addedMl, pH }) => {
    const curve = titrationCurve({ ...lye, isBoiled: isBoiled === 1 }, [addedMl - 0.02, addedMl + 0.02])
    expect(curve[0]!.pH!).toBeGreaterThan(pH)
    expect(curve[1]!.pH!).toBeLessThan(pH)
  })

  test('falls in pH with every drop', () => {
    const curve = titrationCurve(
      lye,
      Array.from({ length: 200 }, (_, index) => index * 0.05),
    )
    for (const [index, { pH }] of curve.entries()) if (index > 0) expect(pH!).toBeLessThan(curve[index - 1]!.pH!)
  })
})
