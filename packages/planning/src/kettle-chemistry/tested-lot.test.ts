import { expect, test } from 'vitest'
import { testedStrength, testedStrengths } from './tested-lot.ts'

const at = (day: string) => ({ instant: `2026-${day}T09:00:00.000Z`, zone: 'UTC' })
const entry = { entryId: 'x', deviceId: 'x', personId: 'x' }
const vinegar = (coldMl: number, boiledMl: number, more = {}) => ({
  way: 'vinegar',
  sampleMl: 50,
  coldMl,
  boiledMl,
  acidityGPer100Ml: 5,
  steepedG: 100,
  steepWaterL: 1,
  ...more,
})
const lot = (tests: readonly object[]) => ({ tests }) as unknown as Parameters<typeof testedStrengths>[0]

test('a lot that stood open is seen to weaken from titration to titration', () => {
  const strengths = testedStrengths(
    lot([
      { ...entry, at: at('01-10'), found: vinegar(4.8, 5.41), gPerCup: 95 },
      { ...entry, at: at('06-01'), found: { way: 'strip', stripPH: 12, liquorC: 20 } },
      { ...entry, at: at('11-02'), found: vinegar(0.9, 1.7) },
    ]),
  )
  // 5.41 and 1.7 mL of 0.8326 mol/L in 50 mL, from 100 g to the litre.
  expect(strengths.map(({ strength }) => Number(strength.eqPerKg.value.toFixed(2)))).toEqual([0.9, 0.28])
  expect(strengths[0]!.gPerCup).toBe(95)
  expect(strengths[1]!.strength.hydroxideFraction).toBeLessThan(0.1)
})

test('a titration without its steep, or with volumes that contradict each other, tells no strength of the lot', () => {
  expect(
    testedStrength(lot([{ ...entry, at: at('01-10'), found: vinegar(4.8, 5.41, { steepedG: undefined }) }])),
  ).toBeNull()
  expect(testedStrength(lot([{ ...entry, at: at('01-10'), found: vinegar(4.8, 1) }]))).toBeNull()
})
