/**
 * Printed recipes in one measure: equivalents on a kilogram of dry corn, and the strength of the pot when all is
 * dissolved. For a plot with the keeper's own batches on it. Leaves out time, by which the weak ones work.
 */
import { type AlkaliRecipe, alkaliRecipesFor } from '@crib/guidance'
import {
  ASH_G_PER_CUP,
  alkaliEq,
  ashPotassiumEqPerKg,
  type BoughtAlkali,
  convert,
  type Reckoned,
  UNITS,
  type Unit,
} from '@crib/science'
import { valuesOf } from './fields.ts'

export interface RecipeStrength {
  readonly id: string
  readonly name: string
  readonly alkali: AlkaliRecipe['alkali']
  readonly eqPerKg: number
  /** All of it dissolved in the printed water; null where no water is printed. [eq/L] */
  readonly eqPerL: number | null
  readonly time: string
  readonly sourceKey: string
}

/** A liquid quart of shelled corn as the recipes are compared: 56 lb to the bushel. [g]  @source rankin-wisconsin-bushels */
const CORN_G_PER_LIQUID_QT = 682
/** A level tablespoon. [g]  from memory, not re-read */
const TBSP_G: Partial<Record<AlkaliRecipe['alkali'], number>> = {
  'sodium-hydroxide': 15,
  'baking-soda': 13.8,
  'calcium-hydroxide': 9,
}
/** Ash as the recipes are compared: 5.5 % K2O, 60 % of it soluble. [eq/kg]  @source etiegni-campbell-1991 */
const RECIPE_ASH_EQ_PER_KG = ashPotassiumEqPerKg(0.055)

const ALKALIS = ['ash', 'calcium-hydroxide', 'sodium-hydroxide', 'baking-soda'] as const

/** Every printed recipe with a weight or measure of both, weakest on the corn first. */
export function recipeStrengths(): readonly RecipeStrength[] {
  return ALKALIS.flatMap((alkali) => alkaliRecipesFor(alkali))
    .flatMap((row) => {
      const eq = recipeEq(row)
      if (eq === null) return []
      const cornKg = inUnit(row.corn, row.cornUnit, CORN_G_PER_LIQUID_QT / convert(1, 'LiquidQt', 'L')) / 1000
      const waterL = row.water === null || row.waterUnit === null ? null : inUnit(row.water, row.waterUnit, 1000) / 1000
      const { id, name, alkali, time, source } = row
      return [
        {
          id,
          name,
          alkali,
          time,
          sourceKey: source,
          eqPerKg: eq / cornKg,
          eqPerL: waterL === null ? null : eq / waterL,
        },
      ]
    })
    .toSorted((a, b) => a.eqPerKg - b.eqPerKg)
}

export interface PrintedRecipe extends Omit<RecipeStrength, 'eqPerKg' | 'eqPerL'> {
  readonly eqPerKg: Reckoned
  /** Absent where no water is printed. */
  readonly eqPerL?: Reckoned
}

/** The same, to be shown. */
export function printedRecipes(): readonly PrintedRecipe[] {
  return recipeStrengths().map(({ eqPerKg, eqPerL, ...recipe }) => {
    const value = valuesOf({ recipe: recipe.name }, [recipe.sourceKey, 'hominy-recipes-recomputed'])
    return {
      ...recipe,
      eqPerKg: value('eqPerKg', eqPerKg, 'EqPerKg', 0.001),
      ...(eqPerL !== null && { eqPerL: value('eqPerL', eqPerL, 'EqPerL', 0.001) }),
    }
  })
}

function recipeEq({ alkali, alkaliAmount, alkaliUnit }: AlkaliRecipe): number | null {
  if (alkali === 'none') return null
  if (alkali === 'ash') {
    const gPerL = ASH_G_PER_CUP.middle / convert(1, 'Cup', 'L')
    return (inUnit(alkaliAmount, alkaliUnit, gPerL) / 1000) * RECIPE_ASH_EQ_PER_KG
  }
  const tbspG = TBSP_G[alkali]
  if (tbspG === undefined) return null
  return alkaliEq(alkali satisfies BoughtAlkali, inUnit(alkaliAmount, alkaliUnit, tbspG / convert(1, 'Tbsp', 'L')))
}

/** A mass or a volume as grams. [g] */
function inUnit(amount: number, unit: Unit, gPerL: number): number {
  return UNITS[unit].measure === 'mass' ? convert(amount, unit, 'G') : convert(amount, unit, 'L') * gPerL
}
