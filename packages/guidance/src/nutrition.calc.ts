import type { Calc } from '@crib/science'
import type { NutritionFood } from '../schema/nutrition-table.ts'
import { NUTRIENTS, NUTRITION_FOODS, type NutrientId, nutritionOf } from './nutrition.ts'

const LABELS: { readonly [id in NutrientId]: string } = {
  energyKcal: 'Energy',
  waterG: 'Water',
  proteinG: 'Protein',
  fatG: 'Fat',
  saturatedFatG: 'Saturated fat',
  carbohydrateG: 'Carbohydrate, fibre within it',
  fibreG: 'Fibre',
  sugarsG: 'Sugars',
  calciumMg: 'Calcium',
  ironMg: 'Iron',
  potassiumMg: 'Potassium',
  sodiumMg: 'Sodium',
  niacinMg: 'Niacin',
  folateUg: 'Folate',
}

const ids = Object.keys(NUTRIENTS) as NutrientId[]

export const nutritionCalc: Calc<{ readonly food: NutritionFood; readonly servingG?: number }> = {
  id: 'nutrition',
  title: 'What a serving holds',
  question: 'What do 100 g, or a serving, of corn, hominy, masa flour or tortilla hold?',
  inputs: {
    food: { kind: 'choice', options: NUTRITION_FOODS, label: 'Food, as the table names it' },
    servingG: {
      kind: 'quantity',
      label: 'Serving; left out, 100 g',
      unit: 'G',
      min: 1,
      max: 2000,
      limitSource: 'project-rule',
      optional: true,
    },
  },
  outputs: Object.fromEntries(ids.map((id) => [id, { label: LABELS[id], unit: NUTRIENTS[id].unit }])),
  sourceKeys: ['usda-sr'],
  example: { food: 'hominy-canned-white', servingG: 140 },
  run: ({ food, servingG }) => {
    const { values, say } = nutritionOf(food, servingG)
    return { ok: true, values, reasons: say, warnings: [] }
  },
}
