/**
 * What 100 g or a serving of a food holds, from the public-domain table. For the cook's own knowledge; no sales label.
 * Leaves out: what a kitchen's own hominy holds, which depends on its water and on how it was washed.
 */
import { type Reckoned, requireInRange, type Sentence, type Unit } from '@crib/science'
import json from '../data/nutrition.json' with { type: 'json' }
import { type NutritionFood, nutritionSchema } from '../schema/nutrition-table.ts'
import { printedFigure } from './figures.ts'
import { loadTable } from './load.ts'
import { whatAlkaliFrees } from './nourishment.ts'
import { sentence } from './sentence.ts'

export const NUTRITION = loadTable(nutritionSchema, json)
export const NUTRITION_FOODS: readonly NutritionFood[] = NUTRITION.rows.map(({ food }) => food)

type Row = (typeof NUTRITION.rows)[number]

/** Columns shown, with unit and the step they are shown in. */
export const NUTRIENTS = {
  energyKcal: { unit: 'Kcal', step: 1 },
  waterG: { unit: 'G', step: 0.1 },
  proteinG: { unit: 'G', step: 0.1 },
  fatG: { unit: 'G', step: 0.1 },
  saturatedFatG: { unit: 'G', step: 0.01 },
  carbohydrateG: { unit: 'G', step: 0.1 },
  fibreG: { unit: 'G', step: 0.1 },
  sugarsG: { unit: 'G', step: 0.1 },
  calciumMg: { unit: 'Mg', step: 1 },
  ironMg: { unit: 'Mg', step: 0.1 },
  potassiumMg: { unit: 'Mg', step: 1 },
  sodiumMg: { unit: 'Mg', step: 1 },
  niacinMg: { unit: 'Mg', step: 0.01 },
  folateUg: { unit: 'Ug', step: 1 },
} as const satisfies { readonly [name in keyof Row]?: { readonly unit: Unit; readonly step: number } }

export type NutrientId = keyof typeof NUTRIENTS

export interface Nutrition {
  readonly food: NutritionFood
  readonly servingG: number
  readonly values: readonly Reckoned[]
  /** Missing in the table: said, and never shown as nought. */
  readonly missing: readonly NutrientId[]
  readonly say: readonly Sentence[]
}

/**
 * What a serving holds: the table's figures for 100 g, times the serving.
 *
 * @param servingG weight of a serving. [g] Valid: 1 to 2000. 100 gives the table itself.
 * @throws {RangeError} for a food the table does not know, or a serving out of range.
 * @source usda-sr
 */
export function nutritionOf(food: NutritionFood, servingG = 100): Nutrition {
  requireInRange('servingG', servingG, { min: 1, max: 2000, unit: 'g', source: 'project-rule' })
  const row = NUTRITION.rows.find((candidate) => candidate.food === food)
  if (!row) throw new RangeError(`food is "${String(food)}"; usda-sr here covers ${NUTRITION_FOODS.join(', ')}`)
  const ids = Object.keys(NUTRIENTS) as NutrientId[]
  const values = ids.flatMap((id) => {
    const per100 = row[id]
    if (per100 === null) return []
    const { unit, step } = NUTRIENTS[id]
    const figure = printedFigure({
      id,
      value: (per100 * servingG) / 100,
      unit,
      seen: NUTRITION.seen,
      sourceKeys: [NUTRITION.source],
      inputs: { food, ndb: row.ndb, servingG },
    })
    return [{ ...figure, rounding: { mode: 'nearest', step } as const }]
  })
  return {
    food,
    servingG,
    values,
    missing: ids.filter((id) => row[id] === null),
    say: [
      ...(food.startsWith('hominy') ? [sentence('guidance:nutrition-hominy-of-the-trade')] : []),
      ...whatAlkaliFrees(),
      sentence('guidance:nutrition-no-label'),
    ],
  }
}
