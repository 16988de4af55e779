import { type CalcResult, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { alkaliDoseCalc } from './alkali-dose.calc.ts'
import { ashStrengthCalc } from './ash-strength.calc.ts'
import { KETTLE_CHEMISTRY_CALCS } from './calcs.ts'
import { cookAltitudeCalc } from './cook-altitude.calc.ts'
import { disposalCalc } from './disposal.calc.ts'
import { hydrationCalc } from './hydration.calc.ts'
import { recipeStrengths } from './recipes.ts'
import { rinsePlanCalc } from './rinse-plan.calc.ts'
import { titrationCalc } from './titration.calc.ts'
import { waterChemistryCalc } from './water-chemistry.calc.ts'
import { weakLotCalc } from './weak-lot.calc.ts'

const words = createWords()
const done = (result: CalcResult) => {
  if (!result.ok) throw new Error(result.refused)
  return result
}
const shown = (result: CalcResult) =>
  Object.fromEntries(done(result).values.map((value) => [value.id, shownValue(value)]))
const said = (result: CalcResult) =>
  [...done(result).reasons, ...done(result).warnings].map((sentence) => words.sentence(sentence)).join('\n')

const WORKED = { sampleMl: 50, coldMl: 4.8, boiledMl: 5.41, acidityGPer100Ml: 5, steepedG: 100, steepWaterL: 1 }

describe('a titration', () => {
  // vinegar-titration-worked: 0.0901 eq/L, hydroxide 0.0700, carbonate 0.0100; 100 g to the litre makes 0.90 eq/kg.
  test('tells hydroxide, carbonate and the strength of the ash', () => {
    const result = titrationCalc.run(WORKED)
    const values = shown(result)
    expect(values.alkalinityEqPerL).toBeCloseTo(0.0901, 3)
    expect(values.hydroxideMolPerL).toBeCloseTo(0.07, 2)
    expect(values.carbonateMolPerL).toBeCloseTo(0.01, 2)
    expect(values.lotEqPerKg).toBe(0.9)
    for (const value of done(result).values) {
      if (value.id === 'hydroxideFraction') continue
      expect(value.low).toBeLessThan(value.value)
      expect(value.high).toBeGreaterThan(value.value)
    }
  })

  test('calls that liquor corrosive, and says water for skin and eyes', () => {
    expect(said(titrationCalc.run(WORKED))).toMatch(/corrosive/)
    expect(said(titrationCalc.run(WORKED))).toMatch(/no vinegar/)
    expect(said(titrationCalc.run({ ...WORKED, coldMl: 0.02, boiledMl: 0.04 }))).not.toMatch(/corrosive/)
  })

  test('says when an ash has taken up air, and when there is only bicarbonate', () => {
    expect(said(titrationCalc.run({ ...WORKED, coldMl: 2.8 }))).toMatch(/taken up air/)
    const bicarbonate = titrationCalc.run({ ...WORKED, coldMl: 1 })
    expect(said(bicarbonate)).toMatch(/no free hydroxide/)
    expect(shown(bicarbonate).hydroxideMolPerL).toBe(0)
  })

  test('beside a strip shows the strip’s wide band', () => {
    const strip = done(titrationCalc.run({ ...WORKED, stripPH: 12.5 })).values.find(
      ({ id }) => id === 'stripHydroxideMolPerL',
    )!
    expect(strip.high! / strip.low!).toBeGreaterThan(8)
  })

  test('whose boiled volume is below the cold one is refused with the reason', () => {
    const refused = titrationCalc.run({ ...WORKED, boiledMl: 1 })
    expect(refused.ok).toBe(false)
    if (!refused.ok) expect(words.sentence(refused.why[0]!)).toMatch(/from the beginning/)
  })
})

describe('a dose', () => {
  // 0.68 kg at 0.10 eq/kg is 0.068 eq; at 0.9 eq/kg that is 75.6 g, three quarters of a 100 g cup.
  test('of titrated ash is told in grams first, then in its own cups and spoons', () => {
    const result = alkaliDoseCalc.run(alkaliDoseCalc.example as never)
    expect(Object.keys(shown(result)).slice(0, 3)).toEqual(['doseG', 'doseCups', 'doseTbsp'])
    expect(shown(result)).toMatchObject({ doseG: 76, doseCups: 0.75, doseTbsp: 12, alkaliEq: 0.068 })
  })

  // The federal direction: 2 oz on 2 liquid qt in 8 liquid qt is 1.04 eq/kg and 0.187 mol/L.
  test('of sodium hydroxide at the printed equivalents gives the printed strength back', () => {
    const values = shown(
      alkaliDoseCalc.run({ alkali: 'sodium-hydroxide', eqPerKgCorn: 1.0393, cornKg: 1.364, waterL: 7.571 }),
    )
    expect(values.doseG).toBe(57)
    expect(values.hydroxideMolPerL).toBeCloseTo(0.187, 3)
  })

  test('of calcium hydroxide shows capacity and intensity far apart', () => {
    const values = shown(alkaliDoseCalc.run({ alkali: 'calcium-hydroxide', eqPerKgCorn: 1, cornKg: 1, waterL: 4 }))
    expect(values.capacityEqPerL).toBe(0.25)
    expect(values.hydroxideMolPerL!).toBeLessThan(0.02)
    expect(values.reserveEqPerL!).toBeGreaterThan(0.2)
  })

  test('of ash without a strength is refused', () => {
    const refused = alkaliDoseCalc.run({ alkali: 'ash', eqPerKgCorn: 0.1, cornKg: 1, waterL: 4 })
    expect(refused.ok).toBe(false)
  })

  test('names no equal power, and goggles before the alkali', () => {
    const text = said(alkaliDoseCalc.run(alkaliDoseCalc.example as never))
    expect(text).toMatch(/Equal equivalents are not equal power/)
    expect(text).toMatch(/Splash goggles/)
  })
})

describe('printed recipes', () => {
  // Recomputed in hominy-recipes-recomputed, to a hundredth.
  test.each([
    ['lye-federal', 1.04],
    ['soda-later', 0.48],
    ['lye-1912', 0.27],
    ['lye-1911', 0.14],
    ['soda-1917', 0.48],
    ['soda-1915', 0.18],
    ['hydrate-textbook', 0.27],
    ['hydrate-digest', 0.89],
    ['ash-1911', 0.05],
    ['ash-seneca', 0.1],
    ['ash-cookbook', 0.2],
    ['ash-1915', 0.41],
    ['ash-mohawk', 0.41],
    ['ash-camp', 2.5],
  ])('%s carries %s eq/kg', (id, eqPerKg) => {
    const recipe = recipeStrengths().find((each) => each.id === id)!
    expect(Math.abs(recipe.eqPerKg - eqPerKg)).toBeLessThanOrEqual(eqPerKg > 1.5 ? 0.05 : 0.01)
  })

  test('come weakest first, with the strength of the pot where water is printed', () => {
    const strengths = recipeStrengths()
    expect(strengths[0]!.id).toBe('ash-1911')
    expect(strengths.find(({ id }) => id === 'lye-federal')!.eqPerL).toBeCloseTo(0.187, 3)
    expect(strengths.find(({ id }) => id === 'soda-1917')!.eqPerL).toBeNull()
  })
})

// S2, second part: one liquid qt, one cup of M-0 that stood open 14 months, no slip at 120 min.
describe('the ash that has gone flat, titrated', () => {
  const result = weakLotCalc.run(weakLotCalc.example as never)

  test('is found weak against the lot that worked', () => {
    // 1.7 mL of 50 at 0.8326 mol/L is 0.0283 eq/L, 0.28 eq/kg; 1.7 less twice 0.9 leaves a tenth of it hydroxide.
    expect(shown(result).lotEqPerKg).toBe(0.28)
    expect(said(result)).toMatch(/Mark M-0 "weak" in the ash record/)
    expect(said(result)).toMatch(/taken up air/)
  })

  test('offers three rescues in order, with numbers', () => {
    const text = said(result)
    const at = ['First: stir in more M-0', 'food-grade lime (calcium hydroxide)', 'use this corn for grinding'].map(
      (words) => text.indexOf(words),
    )
    expect(at.every((where) => where >= 0)).toBe(true)
    expect(at).toEqual(at.toSorted((a, b) => a - b))
    // A cup of M-1 brought 0.9 x 0.1 = 0.09 eq; M-0 brings 0.0283 to the cup: 3.18 cups in all, rounded up to quarters.
    expect(shown(result)).toMatchObject({ ashInAllCups: 3.25, moreAshCups: 2.25, calciumHydroxideG: 6.8 })
    expect(text).toMatch(/6.8 g/)
    expect(text).toMatch(/no single figure is "the" ratio/)
    expect(text).toMatch(/do not go into jars/)
  })

  test('says no pH, no minute and no hope', () => {
    const text = said(result)
    expect(text).not.toMatch(/\bpH\b|nearly|almost|\bsafe\b|will slip/)
  })

  test('gains hydroxide at the boil from calcium hydroxide, since its own is carbonate', () => {
    const values = shown(result)
    expect(values.hydroxideWithLimeMolPerL!).toBeGreaterThan(2 * values.hydroxideNowMolPerL!)
  })
})

describe('the wash', () => {
  test('fits the water at hand and says what is still inside', () => {
    const result = rinsePlanCalc.run({ dryCornKg: 0.68, waterL: 20, timeMin: 90, boilsCount: 2 })
    const values = shown(result)
    expect(values.bathsCount! * values.waterEachL!).toBeLessThanOrEqual(20.5)
    expect(values.takesMin!).toBeLessThanOrEqual(90)
    expect(values.boilsCount!).toBeLessThanOrEqual(2)
    expect(values.kernelFraction!).toBeGreaterThan(3 * values.bathFraction!)
    const text = said(result)
    expect(text).toMatch(/Not in the running rinse/)
    expect(text).not.toMatch(/\bclean\b|\bsafe\b/)
  })

  test('with too little water is refused with the least that covers', () => {
    const refused = rinsePlanCalc.run({ dryCornKg: 2, waterL: 3, timeMin: 90, boilsCount: 2 })
    expect(refused.ok).toBe(false)
    if (!refused.ok) expect(words.sentence(refused.why[0]!)).toMatch(/4.8 L/)
  })
})

describe('the other answers', () => {
  // 1.42 eq / 0.8326 mol/L = 1.70 L.
  test('spent liquor of 2 oz of sodium hydroxide takes at most 1.7 L of vinegar, rounded up', () => {
    expect(shown(disposalCalc.run({ alkali: 'sodium-hydroxide', alkaliG: 56.7, acidityGPer100Ml: 5 }))).toEqual({
      alkaliEq: 1.418,
      vinegarL: 1.8,
    })
  })

  test('an hour at 5,000 ft takes 95 to 111 min, and no canner minute changes', () => {
    const result = cookAltitudeCalc.run({ elevationM: 1524, seaLevelMin: 60 })
    const cook = done(result).values.find(({ id }) => id === 'cookMin')!
    // Factors 1.59 and 1.85, to 0.02 of an hour.
    expect(Math.abs(cook.low! - 95.4)).toBeLessThan(1.2)
    expect(Math.abs(cook.high! - 111)).toBeLessThan(1.2)
    expect(said(result)).toMatch(/canner's minutes stay the same/)
  })

  test('unmeasured ash is told with its whole spread, and a float is not used', () => {
    const result = ashStrengthCalc.run({ kept: 'air-aged' })
    const lot = done(result).values.find(({ id }) => id === 'lotEqPerKg')!
    expect(lot.high! / lot.low!).toBeGreaterThan(3)
    expect(said(result)).toMatch(/not its alkali/)
  })

  test('weighings that never level off get no curve', () => {
    const weighings = [0, 60, 120].map((time) => ({ time, value: 100 + time ** 2 }))
    expect(hydrationCalc.run({ weighings, afterMin: 60 }).ok).toBe(false)
    expect(shown(hydrationCalc.run(hydrationCalc.example as never)).plateauG!).toBeGreaterThan(135)
  })

  // Check case 11: KOH 0.07 and K2CO3 0.01 mol/L: pH 12.733.
  test('the model ash liquor has pH 12.73 and 0.07 mol/L of hydroxide', () => {
    const values = shown(waterChemistryCalc.run({ potassium: 0.09, carbon: 0.01, temperatureC: 25 }))
    expect(values).toMatchObject({ pH: 12.73, pHAt25C: 12.73 })
    expect(values.hydroxideMolPerL).toBeCloseTo(0.07, 3)
  })

  test('every liquor at or above pH 11.5 is called corrosive, hot or cold', () => {
    const boiling = waterChemistryCalc.run({ sodium: 0.1872, temperatureC: 100 })
    expect(shown(boiling).pH!).toBeLessThan(11.5)
    expect(said(boiling)).toMatch(/corrosive/)
    expect(said(waterChemistryCalc.run({ sodium: 0.001, temperatureC: 25 }))).not.toMatch(/corrosive/)
  })

  test('none of them says safe or clean', () => {
    for (const calc of KETTLE_CHEMISTRY_CALCS) {
      expect(said(calc.run(calc.example as never))).not.toMatch(/\bsafe\b|\bclean\b(?!, dry)/)
    }
  })
})
