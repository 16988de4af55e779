import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { titrationCurve } from '../water/titration-curve.ts'
import { ashEstimate, ashPotassiumEqPerKg, asPotassiumCarbonateGPerKg } from './ash-estimate.ts'
import { lotDoseG, lotStrengthEqPerKg, neutralisingVinegarL } from './dose.ts'
import { ALKALI_MAKES, alkaliEq, alkaliG, BAKED_SODA_FRACTION, BOUGHT_ALKALIS } from './equivalents.ts'
import { liquorIntensity, molPerLForHydroxide } from './intensity.ts'
import { isCorrosive, stripHydroxideMolPerL } from './liquor-reading.ts'
import { liquorStrength, vinegarMolPerL } from './vinegar-titration.ts'

const equivalents = readReferenceTable(new URL('./equivalents.csv', import.meta.url), [
  'order',
  'gPerEq',
  'perSodiumHydroxide',
])
const potassium = readReferenceTable(new URL('./ash-estimate.potassium.csv', import.meta.url), [
  'k2oPercent',
  'eqPerKg',
  'potassiumCarbonateGPer100G',
])
const recipes = readReferenceTable(new URL('./dose.recipes.csv', import.meta.url), [
  'alkali',
  'cornG',
  'alkaliG',
  'waterL',
  'eqPerKg',
  'molPerL',
  'toleranceMolPerL',
])
const ORDER = [
  'sodium-hydroxide',
  'potassium-hydroxide',
  'calcium-hydroxide',
  'potassium-carbonate',
  'sodium-carbonate',
  'baking-soda',
] as const

describe('an equivalent', () => {
  test.each(equivalents.rows)('of alkali $order weighs $gPerEq g', ({ order, gPerEq, perSodiumHydroxide }) => {
    const found = alkaliG(ORDER[order]!, 1)
    expect(Math.abs(found - gPerEq)).toBeLessThanOrEqual(0.0011)
    expect(Math.abs(found / alkaliG('sodium-hydroxide', 1) - perSodiumHydroxide)).toBeLessThanOrEqual(0.0011)
  })

  test('comes back from grams, for every alkali', () => {
    fc.assert(
      fc.property(fc.constantFrom(...BOUGHT_ALKALIS), fc.double({ min: 0, max: 1000, noNaN: true }), (alkali, eq) => {
        expect(alkaliEq(alkali, alkaliG(alkali, eq))).toBeCloseTo(eq, 8)
      }),
    )
  })

  // 105.989 / (2 x 84.007), iupac-weights-2021.
  test('of baking soda is baked when its weight has fallen to 63.1 %', () => {
    expect(BAKED_SODA_FRACTION).toBeCloseTo(0.6308, 4)
  })
})

describe('a titration with vinegar', () => {
  const worked = { sampleMl: 50, coldMl: 4.8, boiledMl: 5.41, acidityGPer100Ml: 5 }

  // vinegar-titration-worked: 0.0901 eq/L, hydroxide 0.0700, carbonate 0.0100 mol/L; the issue asks for 2 %.
  test('finds hydroxide, carbonate and alkalinity of the worked lye', () => {
    const { hydroxideMolPerL, carbonateMolPerL, bicarbonateMolPerL, alkalinityEqPerL } = liquorStrength(worked)
    expect(Math.abs(alkalinityEqPerL.value / 0.0901 - 1)).toBeLessThanOrEqual(0.02)
    expect(Math.abs(hydroxideMolPerL.value / 0.07 - 1)).toBeLessThanOrEqual(0.02)
    expect(Math.abs(carbonateMolPerL.value / 0.01 - 1)).toBeLessThanOrEqual(0.02)
    expect(bicarbonateMolPerL.value).toBe(0)
  })

  test('is good to about 6 % with a tenth-mL syringe, and wider with a coarse one', () => {
    const { low, high, value } = liquorStrength(worked).alkalinityEqPerL
    expect((high - low) / 2 / value).toBeGreaterThan(0.04)
    expect((high - low) / 2 / value).toBeLessThan(0.08)
    const coarse = liquorStrength({ ...worked, syringeStepMl: 1 }).alkalinityEqPerL
    expect(coarse.high - coarse.low).toBeGreaterThan(1.5 * (high - low))
  })

  test('finds bicarbonate and no hydroxide when the boiled volume is more than twice the cold one', () => {
    const { hydroxideMolPerL, bicarbonateMolPerL } = liquorStrength({ ...worked, coldMl: 1, boiledMl: 5 })
    expect(hydroxideMolPerL.value).toBe(0)
    expect(bicarbonateMolPerL.value).toBeCloseTo((0.8326 * 3) / 50, 4)
  })

  test('counts water that went to vinegar and to liquor', () => {
    expect(vinegarMolPerL(5)).toBeCloseTo(0.8326, 4)
    expect(vinegarMolPerL(5, 4)).toBeCloseTo(0.1665, 4)
    const thinned = liquorStrength({ ...worked, liquorWaterParts: 9, coldMl: 0.48, boiledMl: 0.541 })
    expect(thinned.alkalinityEqPerL.value).toBeCloseTo(0.0901, 4)
  })

  test('that was boiled down to less vinegar than cold is refused', () => {
    expect(() => liquorStrength({ ...worked, boiledMl: 4 })).toThrow(ValidRangeError)
  })

  test('recovers what was mixed, read off its own curve with a shaking hand, within its own range', () => {
    let insideCount = 0
    let triedCount = 0
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (hydroxide, carbonate, coldNoise, boiledNoise, labelNoise) => {
          const c = 0.8326 * (1 + 0.04 * labelNoise)
          const setup = {
            sample: { potassium: hydroxide + 2 * carbonate, carbon: carbonate },
            sampleMl: 50,
            titrant: { acetate: c },
            temperatureC: 25,
          }
          // The eye sees phenolphthalein go at about pH 8.2 (the low end of its range).
          const coldMl = endPointMl(setup, 8.2) + 0.05 * coldNoise
          const boiledMl = Math.max(coldMl, endPointMl({ ...setup, isBoiled: true }, 8.2) + 0.05 * boiledNoise)
          const found = liquorStrength({ sampleMl: 50, coldMl, boiledMl, acidityGPer100Ml: 5 })
          const alkalinity = hydroxide + 2 * carbonate
          triedCount += 1
          if (found.alkalinityEqPerL.low <= alkalinity && alkalinity <= found.alkalinityEqPerL.high) insideCount += 1
          // Worst case: a label 4 % high divides by 0.96; the hand adds 0.05 mL and the end point at most 0.01 mL.
          const worst = (1 + 0.06 / (alkalinity * 60)) / 0.96 - 1
          expect(Math.abs(found.alkalinityEqPerL.value / alkalinity - 1)).toBeLessThan(worst)
          expect(Math.abs(found.hydroxideMolPerL.value - hydroxide)).toBeLessThan(0.006 + 0.08 * alkalinity)
        },
      ),
      { numRuns: 300 },
    )
    expect(insideCount / triedCount).toBeGreaterThanOrEqual(0.95)
  })
})

/** Where the curve crosses a pH, by halving. [mL] */
function endPointMl(setup: Parameters<typeof titrationCurve>[0], pH: number): number {
  let low = 0
  let high = 60
  for (let step = 0; step < 30; step++) {
    const middle = (low + high) / 2
    if (titrationCurve(setup, [middle])[0]!.pH! > pH) low = middle
    else high = middle
  }
  return (low + high) / 2
}

describe('a pH strip', () => {
  test('tells hydroxide to a factor of three either way', () => {
    const { value, low, high } = stripHydroxideMolPerL(12.5, 25)!
    expect(value).toBeGreaterThan(0.03)
    expect(value).toBeLessThan(0.05)
    expect(value / low).toBeGreaterThan(2.8)
    expect(value / low).toBeLessThan(3.6)
    expect(high / value).toBeGreaterThan(2.8)
    expect(high / value).toBeLessThan(3.6)
  })

  // Check case 13: hydroxide 0.1872 mol/L reads 11.364 at the boil and 13.141 cold.
  test('read in boiling liquor is not taken for a cold one', () => {
    expect(stripHydroxideMolPerL(11.364, 100)!.value).toBeCloseTo(0.1872, 3)
    expect(stripHydroxideMolPerL(11.364, 25)!.value).toBeLessThan(0.003)
  })

  test('at 11.5 or above says corrosive', () => {
    expect([isCorrosive(11.49), isCorrosive(11.5), isCorrosive(13)]).toEqual([false, true, true])
  })
})

describe('ash that was not measured', () => {
  test.each(potassium.rows)('of $k2oPercent % K2O brings $eqPerKg eq/kg', (row) => {
    const eqPerKg = ashPotassiumEqPerKg(row.k2oPercent / 100)
    expect(Math.abs(eqPerKg - row.eqPerKg)).toBeLessThanOrEqual(0.01)
    expect(Math.abs(asPotassiumCarbonateGPerKg(eqPerKg) / 10 - row.potassiumCarbonateGPer100G)).toBeLessThanOrEqual(0.1)
  })

  test('is told with its whole spread, wider by the cup than by weight', () => {
    for (const kept of ['fresh', 'air-aged', 'rained-on'] as const) {
      const { eqPerKg, eqPerCup } = ashEstimate(kept)
      expect(eqPerKg.low).toBeLessThanOrEqual(eqPerKg.value)
      expect(eqPerKg.value).toBeLessThanOrEqual(eqPerKg.high)
      if (kept !== 'rained-on') {
        expect(eqPerKg.high / eqPerKg.low).toBeGreaterThan(3)
        expect(eqPerCup.high / eqPerCup.low).toBeGreaterThan(8)
      }
    }
  })
})

describe('capacity and intensity', () => {
  test('of calcium hydroxide part at the boil: more of it is reserve, not strength', () => {
    const little = liquorIntensity({ calcium: 0.02 }, 100)!
    const much = liquorIntensity({ calcium: 0.2 }, 100)!
    expect(much.hydroxideMolPerL).toBeCloseTo(little.hydroxideMolPerL, 6)
    // Between 0.63 and 0.8 g/L dissolved, 0.017 to 0.02 mol/L of hydroxide less what is bound as CaOH+.
    expect(much.hydroxideMolPerL).toBeGreaterThan(0.013)
    expect(much.hydroxideMolPerL).toBeLessThan(0.02)
    expect(much.reserveEqPerL).toBeGreaterThan(0.37)
  })

  test('of the strong hydroxide are the same, of carbonate and baking soda far apart', () => {
    const of = (make: (typeof ALKALI_MAKES)[keyof typeof ALKALI_MAKES]) =>
      liquorIntensity(
        Object.fromEntries(Object.entries(make.brings).map(([n, x]) => [n, (x * 0.1) / make.eqPerMol])),
        25,
      )!
    expect(of(ALKALI_MAKES['sodium-hydroxide']).hydroxideMolPerL).toBeCloseTo(0.1, 3)
    expect(of(ALKALI_MAKES['potassium-carbonate']).hydroxideMolPerL).toBeLessThan(0.005)
    expect(of(ALKALI_MAKES['baking-soda']).hydroxideMolPerL).toBeLessThan(1e-4)
  })

  test('tell when no amount reaches a wanted hydroxide', () => {
    expect(molPerLForHydroxide({ sodium: 1 }, 0.1, 25)).toBeCloseTo(0.1, 6)
    expect(molPerLForHydroxide({ calcium: 1 }, 0.1, 100)).toBeNull()
    expect(molPerLForHydroxide({ sodium: 1, carbon: 1 }, 0.1, 25)).toBeNull()
  })
})

describe('a dose', () => {
  test.each(recipes.rows)('of a printed recipe carries $eqPerKg eq/kg ($alkaliG g on $cornG g)', (row) => {
    const eq = row.alkali === 9 ? 0.7 * (row.alkaliG / 1000) : alkaliEq(ORDER[row.alkali]!, row.alkaliG)
    const eqPerKg = eq / (row.cornG / 1000)
    expect(Math.abs(eqPerKg - row.eqPerKg)).toBeLessThanOrEqual(row.eqPerKg > 1.5 ? 0.05 : 0.01)
    if (row.waterL > 0) expect(Math.abs(eq / row.waterL - row.molPerL)).toBeLessThanOrEqual(row.toleranceMolPerL)
  })

  test('gives back the alkali that was wanted', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (eqPerKgCorn, cornKg, lotEqPerKg) => {
          const grams = lotDoseG({ eqPerKgCorn, cornKg, lotEqPerKg })
          expect((grams / 1000) * lotEqPerKg).toBeCloseTo(eqPerKgCorn * cornKg, 9)
        },
      ),
    )
  })

  test('rests on a lot’s strength, which is its liquor times the water of the steep', () => {
    // 0.0901 eq/L from 100 g in a litre: 0.901 eq/kg.
    expect(lotStrengthEqPerKg(0.0901, 1, 100)).toBeCloseTo(0.901, 9)
  })

  // 1.42 eq / 0.8326 mol/L, the disposal sum of the worked example.
  test('of 2 oz of sodium hydroxide takes at most 1.70 L of 5 % vinegar to neutralise', () => {
    expect(neutralisingVinegarL(alkaliEq('sodium-hydroxide', 56.7), vinegarMolPerL(5))).toBeCloseTo(1.7, 2)
  })
})
