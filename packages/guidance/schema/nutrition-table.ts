/** Shape of the table of what 100 g of a food hold. A gap is missing in the file it came from, never nought. */
import * as v from 'valibot'
import { envelopeEntries } from './envelope.ts'

const foodKeySchema = v.picklist([
  'grain-yellow',
  'grain-white',
  'hominy-canned-white',
  'hominy-canned-yellow',
  'masa-flour-enriched-white',
  'masa-flour-unenriched-white',
  'masa-flour-enriched-yellow',
  'corn-flour-whole-yellow',
  'tortilla-corn',
])
export type NutritionFood = v.InferOutput<typeof foodKeySchema>

const perHundred = v.nullable(v.pipe(v.number(), v.minValue(0)))
const grams = v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(100)))

const rowSchema = v.pipe(
  v.strictObject({
    food: foodKeySchema,
    /** Number of the food in that file. */
    ndb: v.string(),
    waterG: grams,
    energyKcal: perHundred,
    proteinG: grams,
    fatG: grams,
    saturatedFatG: grams,
    ashG: grams,
    carbohydrateG: grams,
    fibreG: grams,
    sugarsG: grams,
    calciumMg: perHundred,
    ironMg: perHundred,
    potassiumMg: perHundred,
    sodiumMg: perHundred,
    niacinMg: perHundred,
    folateUg: perHundred,
    vitaminAIu: perHundred,
  }),
  v.check(
    ({ waterG, proteinG, fatG, ashG, carbohydrateG }) =>
      Math.abs((waterG ?? 0) + (proteinG ?? 0) + (fatG ?? 0) + (ashG ?? 0) + (carbohydrateG ?? 0) - 100) < 0.1,
    'water, protein, fat, ash and carbohydrate make up the 100 g',
  ),
)

export const nutritionSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.pipe(
    v.array(rowSchema),
    v.check((rows) => rows.length === foodKeySchema.options.length, 'one row for each food'),
    v.check((rows) => new Set(rows.map(({ food }) => food)).size === rows.length, 'each food once'),
  ),
})
