/** Jars, cooling, keeping, habits, doses: small lookups that share one page of expectations. */
import { expect, test } from 'vitest'
import { coolingWindow } from './cooling.ts'
import { HABIT_TOPICS, habitLine } from './habits.ts'
import { jarUses } from './jars.ts'
import { keepingAdvice } from './keeping.ts'
import { ALKALI_RECIPES, partsPer10Corn, printedAshPartsPer10Corn, printedCalciumHydroxideFraction } from './recipes.ts'

// K-State Extension 2022; half-gallon: Penn State Extension.
test.each([
  ['half-pint', 'pint'],
  ['twelve-ounce', 'pint'],
  ['pint', 'pint'],
  ['twenty-four-ounce', 'quart'],
  ['twenty-eight-ounce', 'quart'],
  ['quart', 'quart'],
  ['half-gallon', null],
] as const)('a %s jar takes the minutes of: %s', (jar, timeAs) => {
  expect(jarUses(jar).timeAs).toBe(timeAs)
})

test('hominy that waits cools 135 to 70 F in 2 h and to 41 F in 6 h in all (Food Code 3-501.14)', () => {
  expect(coolingWindow()).toMatchObject({
    steps: [
      { fromF: 135, toF: 70, withinMin: 120 },
      { fromF: 135, toF: 41, withinMin: 360 },
    ],
    holdHotF: 135,
    sourceKeys: ['food-code-cooling'],
  })
})

test.each([
  ['fresh', { low: 3, high: 4, unit: 'Days' }, 40],
  ['frozen', { low: 8, high: 12, unit: 'Months' }, 0],
  ['dried', null, null],
  ['canned', { low: 12, high: 12, unit: 'Months' }, null],
] as const)('%s hominy keeps as printed for its neighbours', (form, keeps, holdF) => {
  expect(keepingAdvice(form)).toMatchObject({ keeps, holdF, standing: { madeFor: 'neighbouring-food' } })
})

test.each([
  ['vent', 7, 10],
  ['canner-water', 0.5, 2],
  ['dial-near-sea-level', 10, 11],
  ['lid-wait', 2, 10],
  ['jars', null, null],
  ['rim', null, null],
] as const)('the habit line of %s names both sides', (topic, habit, today) => {
  expect(habitLine(topic)).toMatchObject({ habit, today })
})

test('every habit has a line, and an unknown one is refused', () => {
  expect(HABIT_TOPICS).toHaveLength(6)
  expect(() => habitLine('stirring' as 'vent')).toThrow(RangeError)
})

// Alkali reference 3.2, ash recipes, by volume.
test.each([
  ['ash-1911', 1.25],
  ['ash-seneca', 2.5],
  ['ash-cookbook', 5],
  ['ash-1915', 10],
  ['ash-mohawk', 10],
])('%s prints %s parts ash to 10 of dry corn', (id, parts) => {
  const recipe = ALKALI_RECIPES.rows.find((row) => row.id === id)!
  expect(partsPer10Corn(recipe)).toBeCloseTo(parts, 9)
  const { low, high } = printedAshPartsPer10Corn()
  expect(parts).toBeGreaterThanOrEqual(low!)
  expect(parts).toBeLessThanOrEqual(high!)
})

test('the ash range is 1 to 20 parts per 10, and weighed recipes have no ratio by volume', () => {
  expect(printedAshPartsPer10Corn()).toMatchObject({ low: 1, high: 20 })
  expect(partsPer10Corn(ALKALI_RECIPES.rows.find((row) => row.id === 'ash-camp')!)).toBeNull()
})

test('calcium hydroxide is about one per cent of the corn, 6.8 g for 680 g', () => {
  expect(680 * printedCalciumHydroxideFraction().value).toBeCloseTo(6.8, 9)
})
