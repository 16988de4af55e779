import { ValidRangeError } from '@crib/science'
import { createWords, formatReckoned } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { NUTRITION, nutritionOf } from './nutrition.ts'
import { powerCutAdvice } from './power-cut.ts'
import { ruleFor } from './rules.ts'
import { SUSPECT_JARS, suspectJarSteps } from './suspect.ts'

const words = createWords()
const said = (sentences: readonly Parameters<typeof words.sentence>[0][]) =>
  sentences.map((each) => words.sentence(each))

describe('a power cut', () => {
  // foodsafety-gov-outage: 4, 48 and 24 h, doors shut; 40 F or ice crystals may be frozen again.
  test.each([
    [1, 'full', 3, 47],
    [10, 'full', 0, 38],
    [10, 'half', 0, 14],
    [50, 'full', 0, 0],
  ] as const)('after %s h, freezer %s: fridge %s h and freezer %s h left', (hoursOut, freezer, fridge, cold) => {
    const { fridgeLeft, freezerLeft } = powerCutAdvice({ hoursOut, freezer })
    expect([fridgeLeft.value, freezerLeft?.value]).toEqual([fridge, cold])
  })

  test('a thermometer or ice crystals decide over the hours', () => {
    const cut = { hoursOut: 60, freezer: 'full' } as const
    expect(said(powerCutAdvice(cut).say).at(-1)).toContain('ice crystals in it or is at 40 °F (4 °C) or colder')
    expect(said(powerCutAdvice({ ...cut, hasIceCrystals: true }).say).at(-1)).toContain('may be frozen again')
    expect(said(powerCutAdvice({ ...cut, freezerReadsF: 40 }).say).at(-1)).toContain('may be frozen again')
    expect(said(powerCutAdvice({ ...cut, freezerReadsF: 41 }).say).at(-1)).toContain('throw it out')
    // Warm already, however short the cut.
    expect(said(powerCutAdvice({ ...cut, hoursOut: 2, freezerReadsF: 50 }).say).at(-1)).toContain('throw it out')
  })

  test('hours before the beginning are refused', () => {
    expect(() => powerCutAdvice({ hoursOut: -1, freezer: 'none' })).toThrow(ValidRangeError)
  })
})

// usda-garden-produce: 2 to 3 lb a cubic foot a day.
test('a freezer takes 2 to 3 lb a cubic foot a day', () => {
  expect(ruleFor('freezer-load', 'per-cubic-foot').figure).toMatchObject({ low: 2, high: 3, unit: 'Lb' })
})

describe('a jar in doubt', () => {
  test('is never tasted, sealed or open, and the boiling of an open one is 30 min', () => {
    for (const state of ['sealed', 'open'] as const) expect(said(suspectJarSteps(state))[0]).toContain('not tasted')
    expect(said(suspectJarSteps('open')).join(' ')).toContain('boil 30 min')
    expect(said(suspectJarSteps('sealed')).join(' ')).not.toContain('30 min')
    expect(SUSPECT_JARS.rows.length).toBe(5)
  })
})

describe('what a serving holds', () => {
  // usda-sr, worked by hand: 140 g of canned white hominy.
  test('is the table times the serving', () => {
    const { values } = nutritionOf('hominy-canned-white', 140)
    const value = (id: string) => values.find((each) => each.id === id)!.value
    expect(value('energyKcal')).toBeCloseTo(100.8, 9)
    expect(value('sodiumMg')).toBeCloseTo(483, 9)
    expect(value('carbohydrateG')).toBeCloseTo(19.964, 9)
    expect(value('fibreG')).toBeCloseTo(3.5, 9)
    expect(values.map((each) => formatReckoned(each, 'alone'))).toContain('101 kcal')
  })

  test('a gap in the table is missing, not nought', () => {
    const { values, missing } = nutritionOf('grain-white')
    expect(missing).toEqual(['fibreG', 'sugarsG', 'folateUg'])
    expect(values.map(({ id }) => id)).not.toContain('fibreG')
  })

  test('says what alkali frees, and that this is no sales label', () => {
    const text = said(nutritionOf('hominy-canned-yellow').say).join(' ')
    for (const phrase of ['niacin', 'no vitamin D', 'mostly peeled with sodium hydroxide', 'not a label'])
      expect(text).toContain(phrase)
  })

  test('is refused for a food or a serving the table does not cover', () => {
    expect(() => nutritionOf('popcorn' as never)).toThrow(RangeError)
    expect(() => nutritionOf('grain-white', 0)).toThrow(ValidRangeError)
    expect(NUTRITION.rows).toHaveLength(9)
  })
})
