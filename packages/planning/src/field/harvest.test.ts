import { foldFacts } from '@crib/journal'
import { convert, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { cribLotOfHarvest, plantingRecords } from './harvest.ts'
import { harvestWeightCalc } from './harvest-weight.calc.ts'
import { yieldEstimateCalc } from './yield-estimate.calc.ts'
import { estimateByEars, estimateByWeight } from './yield-estimate.ts'

const words = createWords()
type Result = ReturnType<typeof harvestWeightCalc.run>
const shown = (result: Result) => {
  if (!result.ok) throw new Error(result.refused)
  return Object.fromEntries(result.values.map((one) => [one.id, shownValue(one)]))
}
const why = (result: Result) =>
  result.ok ? '' : [...result.why, ...result.askWhom].map((one) => words.sentence(one)).join(' ')

describe('ears brought in', () => {
  const ears = { earCornKg: convert(68.4, 'Lb', 'Kg'), kernelMoistureFraction: 0.155, driedToWetFraction: 0.155 }

  // agf-502-2018: 68.40 lb of ears at 15.5 % are 56 lb of shelled corn, 47.32 lb of it dry matter: 54.39 lb at 13 %.
  test('of 68.4 lb at 15.5 % are 56 lb shelled, 54.4 lb at 13 %', () => {
    expect(shown(harvestWeightCalc.run({ ...ears, basis: 'wet' }))).toMatchObject({
      shelledNowLb: 56,
      cobsLb: 12.4,
      waterOffLb: 0,
      shrinkFraction: 0,
    })
    const dried = shown(harvestWeightCalc.run({ ...ears, basis: 'wet', driedToWetFraction: 0.13 }))
    expect(dried).toMatchObject({ shelledDryLb: 54.4, waterOffLb: 1.6, shelledDryLiquidQt: 36.3 })
  })

  // corn-moisture-discount-2019: 25 to 15.5 % shrinks 11.24 %.
  test('from 25 to 15.5 % shrink by 11.24 %', () => {
    const wet = { ...ears, kernelMoistureFraction: 0.25, basis: 'wet' } as const
    expect(shown(harvestWeightCalc.run(wet)).shrinkFraction).toBe(0.1124)
  })

  test('without a basis of their moisture are refused, since 15.1 % dry is 13.1 % wet', () => {
    expect(why(harvestWeightCalc.run(ears))).toContain('15.1 % dry is only 13.1 % wet')
    const dry = { ...ears, kernelMoistureFraction: 0.151, basis: 'dry', driedToWetFraction: 0.131 } as const
    expect(shown(harvestWeightCalc.run(dry)).waterOffLb).toBe(0)
  })

  test('wetter than the table are refused with whom to ask', () => {
    const soaking = harvestWeightCalc.run({ ...ears, kernelMoistureFraction: 0.35, basis: 'wet' })
    expect(why(soaking)).toContain('35 % are outside the table')
    expect(why(soaking)).toContain('extension office')
  })
})

describe('the yield of a field', () => {
  // purdue-yield-component: 35 ears, 16 rows, 36 kernels, 90 thousand a bushel (282.24 g a thousand): 224.
  test('by ears counted is the printed 224 bu/acre, with a fifth either way', () => {
    const place = { earsCount: 35, rowFt: 14.52, kernelRows: 16, kernelsPerRow: 36 }
    const gPerThousand = convert(56, 'Lb', 'G') / 90
    const { values, warnings } = estimateByEars({ places: [place], rowSpacingFt: 3, gPerThousand })
    expect(shownValue(values[0]!)).toBe(224)
    expect([values[0]!.low, values[0]!.high].map((x) => Math.round(x!))).toEqual([179, 269])
    expect(warnings.map(({ key }) => key)).toEqual(['field:yield-more-places'])
  })

  test('takes in the best and the poorest place counted', () => {
    const place = { rowFt: 14.52, kernelRows: 8, kernelsPerRow: 36 }
    const places = [5, 20, 35].map((earsCount) => ({ ...place, earsCount }))
    const [yieldBu] = estimateByEars({ places, rowSpacingFt: 3, gPerThousand: 300, areaM2: 100 }).values
    expect(yieldBu!.low! / yieldBu!.value).toBeCloseTo(0.25, 9)
    expect(yieldBu!.high! / yieldBu!.value).toBeCloseTo(1.75, 9)
  })

  test('by weight of a thousandth of an acre: 68.4 lb of ears at 15.5 % are 1000 bu/acre', () => {
    const part = { earCornKg: convert(68.4, 'Lb', 'Kg'), kernelWetFraction: 0.155 }
    const areaOfPartM2 = convert(43.56, 'Ft2', 'M2')
    const { values } = estimateByWeight({ ...part, areaOfPartM2, areaM2: convert(1, 'Acre', 'M2') })
    expect(values.map(shownValue)).toEqual([1000, 62770, 56_000])
  })

  test('half told is refused, and says what is still wanted', () => {
    const count = yieldEstimateCalc.run({ how: 'ears-counted', places: [] })
    const weigh = yieldEstimateCalc.run({ how: 'part-weighed', earCornKg: 3 })
    expect(why(count)).toContain('weight of a thousand dry kernels')
    expect(why(weigh)).toContain('ground that part stood on')
  })
})

describe('from the field to the crib', () => {
  test('a harvest becomes a lot of its own, of the same weight', () => {
    const harvest = { form: 'ears', massKg: 24 } as const
    const lot = { lotId: 'a', cornType: 'flint', asTyped: '53 lb' } as const
    expect(cribLotOfHarvest(harvest, { cornName: 'Heron Foot flint' }, lot)).toEqual({
      ...lot,
      name: 'Heron Foot flint',
      form: 'ears',
      massKg: 24,
      treatedSeed: false,
    })
  })

  test('without plantings there is no own record, and nothing is made up', () => {
    const { plantings } = foldFacts([])
    const book = { standFraction: 0.736, earsKgPerPlant: 0.1 }
    expect(plantingRecords(Object.values(plantings), book)).toEqual({ standFraction: null, earsKgPerPlant: null })
  })

  // Shrinkage by project rule: (2 x 0.7 + 0.8) / 3; 24 kg of ears from 240 plants are 0.1 kg each.
  test('own stand and own ears to a plant stand between the book and the own mean', () => {
    const planting = {
      stands: [{ plantsCount: 80, ofKernelsCount: 100 }, { plantsCount: 240 }],
      harvests: [{ form: 'ears', massKg: 24 }],
    }
    const records = plantingRecords([planting as never], { standFraction: 0.7, earsKgPerPlant: 0.13 })
    expect(records.standFraction?.value).toBeCloseTo(2.2 / 3, 9)
    expect(records.earsKgPerPlant?.ownMean).toBeCloseTo(0.1, 9)
    expect(records.earsKgPerPlant?.value).toBeCloseTo(0.12, 9)
  })
})
