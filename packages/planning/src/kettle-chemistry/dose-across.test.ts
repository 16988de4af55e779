import { shownValue } from '@crib/science'
import { expect, test } from 'vitest'
import { doseAcross, eqPerKgForHydroxide } from './dose-across.ts'

const POT = { cornKg: 0.68, waterL: 3.8, temperatureC: 100 }

test('the same alkali on the corn takes other grams of each, and bites otherwise', () => {
  const rows = doseAcross({ ...POT, eqPerKgCorn: 0.1, lotEqPerKg: 0.9, hydroxideFraction: 0.78 })
  const row = (alkali: string) => rows.find((each) => each.alkali === alkali)!
  expect(rows[0]!.alkali).toBe('ash')
  // 0.068 eq: 40.0, 37.0 and 84.0 g to the equivalent.
  expect(shownValue(row('sodium-hydroxide').doseG)).toBe(2.7)
  expect(shownValue(row('calcium-hydroxide').doseG)).toBe(2.5)
  expect(shownValue(row('baking-soda').doseG)).toBe(5.7)
  expect(row('sodium-hydroxide').bite).toBe('middling')
  expect(row('baking-soda').bite).toBe('hardly')
  expect(doseAcross({ ...POT, eqPerKgCorn: 0.1 }).some(({ alkali }) => alkali === 'ash')).toBe(false)
})

test('more calcium hydroxide lies at the bottom and bites no harder', () => {
  const bite = (eqPerKgCorn: number) =>
    doseAcross({ ...POT, eqPerKgCorn }).find(({ alkali }) => alkali === 'calcium-hydroxide')!
  expect(bite(0.8).hydroxideMolPerL.value).toBeCloseTo(bite(0.4).hydroxideMolPerL.value, 5)
  expect(bite(0.8).reserveEqPerL!.value).toBeGreaterThan(bite(0.4).reserveEqPerL!.value)
})

test('a wanted hydroxide is turned into alkali on the corn, or into nothing where none reaches it', () => {
  // 0.1 mol/L of sodium hydroxide in 3.8 L on 0.68 kg.
  expect(eqPerKgForHydroxide(0.1, { ...POT, alkali: 'sodium-hydroxide' })).toBeCloseTo(0.5588, 3)
  expect(eqPerKgForHydroxide(0.1, { ...POT, alkali: 'calcium-hydroxide' })).toBeNull()
})
