import { convert, type Reckoned, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { KETTLEBROOK_FIELD } from '../../testing/kettlebrook-field.ts'
import { fieldPlanCalc } from './field-plan.calc.ts'
import { fieldPlan } from './field-plan.ts'

const words = createWords()
const shown = (values: readonly Reckoned[]) => Object.fromEntries(values.map((one) => [one.id, shownValue(one)]))
const saidBy = ({ reasons, warnings }: Pick<ReturnType<typeof fieldPlan>, 'reasons' | 'warnings'>) =>
  [...reasons, ...warnings].map((one) => words.sentence(one)).join(' ')

describe('the field plan', () => {
  // Worked by hand: 1.2 x 280 x 0.258 g x 0.85 = 73.68 g a plant; 60 lb and 263 g of seed are 27,479 g: 373 plants.
  // 373 / (0.92 x 0.80) = 506.8; the 95 % count by the binomial sum, worked separately: 529. 11 rows of 34 on 34 by 33 ft.
  test('goes from 60 lb of food and 1,020 kernels of seed back to plants, kernels and ground', () => {
    const plan = fieldPlan(KETTLEBROOK_FIELD)
    expect(shown(plan.values)).toEqual({
      plants: 373,
      plantsForFood: 373,
      kernelsOnAverage: 507,
      kernelsToSow: 529,
      kernelsToSowOz: 4.9,
      rows: 11,
      plantsInRow: 34,
      rowLengthFt: 34,
      rowFeetFt: 374,
      kernelSpacingIn: 8.5,
      lengthFt: 34,
      widthFt: 33,
      areaFt2: 1122,
      areaAcre: 0.026,
      harvestLb: 60.5,
      harvestBuPerAcre: 42,
    })
    expect(saidBy(plan)).toContain('Seed first, then food: 1,020 kernels')
    expect(saidBy(plan)).toContain('11 rows of 34 plants')
  })

  test('keeps to the line where the food alone needs fewer plants', () => {
    const plan = fieldPlan({ ...KETTLEBROOK_FIELD, foodLb: 5 })
    expect(shown(plan.values).plants).toBe(240)
    expect(saidBy(plan)).toContain('The line asks for 240 plants; food and seed alone would need 35')
  })

  // 240 plants at three a hill are 80 hills: 9 rows of 9 at 4 ft. Beans 4 to 8, squash 8 a hill: cornell-three-sisters.
  test('lays hills with beans and squash', () => {
    const hills = { ...KETTLEBROOK_FIELD, foodLb: 5, pattern: 'hills', withBeans: true, withSquash: true } as const
    const four = convert(4, 'Ft', 'M')
    const plan = fieldPlan({ ...hills, rowSpacingM: four, inRowSpacingM: four })
    expect(shown(plan.values)).toMatchObject({
      rowsOfHills: 9,
      hillsInRow: 9,
      hills: 81,
      squashSeeds: 648,
      lengthFt: 36,
    })
    const beans = plan.values.find(({ id }) => id === 'beanSeeds')
    expect([beans?.low, beans?.high]).toEqual([324, 648])
    expect(saidBy(plan)).toContain('6 to 12 in tall')
    expect(saidBy(fieldPlan({ ...KETTLEBROOK_FIELD, withBeans: true }))).toContain('Choose hills')
  })

  test('warns of few plants and of a hopeful yield, and says what was met', () => {
    expect(saidBy(fieldPlan({ ...KETTLEBROOK_FIELD, foodLb: 1, plantsForLineCount: 20 }))).toContain(
      '100 plants, better 200',
    )
    expect(saidBy(fieldPlan({ ...KETTLEBROOK_FIELD, earsPerPlant: 4 }))).toContain('met at 22 to 76')
    expect(saidBy(fieldPlan(KETTLEBROOK_FIELD))).not.toContain('bu/acre')
  })

  test('never plans less than food, seed and line ask for, and more food never needs less of anything', () => {
    const more = fc.record({
      foodLb: fc.double({ min: 0, max: 500, noNaN: true }),
      plantsForLineCount: fc.integer({ min: 1, max: 1000 }),
      reserveKernelsCount: fc.integer({ min: 1, max: 5000 }),
    })
    fc.assert(
      fc.property(more, fc.double({ min: 0, max: 50, noNaN: true }), (given, extraLb) => {
        const [one, two] = [given.foodLb, given.foodLb + extraLb].map((foodLb) =>
          shown(fieldPlan({ ...KETTLEBROOK_FIELD, ...given, foodLb }).values),
        )
        expect(one!.plants).toBeGreaterThanOrEqual(given.plantsForLineCount)
        const broughtG = one!.plants! * 1.2 * 280 * 0.258 * 0.85
        expect(broughtG + 1e-6).toBeGreaterThanOrEqual(given.foodLb * 453.59237 + given.reserveKernelsCount * 0.258)
        expect(one!.kernelsToSow).toBeGreaterThanOrEqual(one!.kernelsOnAverage!)
        for (const id of ['plants', 'kernelsToSow', 'harvestLb']) expect(two![id]).toBeGreaterThanOrEqual(one![id]!)
      }),
      { numRuns: 60 },
    )
  })

  test('too large to be made in one piece is refused, with what to do', () => {
    const result = fieldPlanCalc.run({ ...KETTLEBROOK_FIELD, foodLb: 50_000 })
    expect(result.ok ? '' : result.why.map((one) => words.sentence(one)).join(' ')).toContain('Plan it in parts')
    const dead = fieldPlanCalc.run({ ...KETTLEBROOK_FIELD, germinationFraction: 0.01, survivalFraction: 0.1 })
    expect(dead.ok ? '' : dead.refused).toBe('plan-too-large')
  })

  test('every value is among the outputs of its calculation, in its unit', () => {
    for (const pattern of ['rows', 'hills'] as const) {
      for (const { id, unit } of fieldPlan({ ...KETTLEBROOK_FIELD, pattern, withBeans: true, withSquash: true })
        .values) {
        expect([id, fieldPlanCalc.outputs[id]?.unit]).toEqual([id, unit])
      }
    }
  })
})
