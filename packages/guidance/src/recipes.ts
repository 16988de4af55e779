/**
 * Printed amounts of alkali for hulling corn: a place to start where the keeper has no record of an ash lot.
 * Leaves out: any conversion of one alkali into another; ash and calcium hydroxide work by time.
 */
import { convert, type Reckoned, UNITS, type Unit } from '@crib/science'
import json from '../data/alkali-recipes.json' with { type: 'json' }
import type { Seen } from '../schema/envelope.ts'
import { alkaliRecipesSchema } from '../schema/list-tables.ts'
import type { AlkaliKey } from '../schema/process-tables.ts'
import { printedFigure } from './figures.ts'
import { loadTable } from './load.ts'

export const ALKALI_RECIPES = loadTable(alkaliRecipesSchema, json)

export interface AlkaliRecipe {
  readonly id: string
  readonly name: string
  readonly alkali: AlkaliKey
  readonly corn: number
  readonly cornUnit: Unit
  readonly alkaliAmount: number
  readonly alkaliUnit: Unit
  /** Null where none is printed. */
  readonly water: number | null
  readonly waterUnit: Unit | null
  readonly time: string
  readonly source: string
  readonly seen: Seen
}

/** Printed recipes for an alkali, in the units of the page.  @source the row's own source */
export function alkaliRecipesFor(alkali: AlkaliKey): readonly AlkaliRecipe[] {
  return ALKALI_RECIPES.rows.filter((row) => row.alkali === alkali)
}

/**
 * Parts of sifted ash to 10 parts of dry corn by volume, over the sources seen: 1 to 20. [count]
 * No single figure is "the" ratio; the value is the low end.
 *
 * @source health-cookery-1911; country-weekly-1915; seneca-account; community-cookbook
 */
export function printedAshPartsPer10Corn(): Reckoned {
  const { lowPartsPer10Corn, highPartsPer10Corn, seen } = ALKALI_RECIPES.printedAsh
  return printedFigure({
    id: 'ashPartsPer10Corn',
    value: lowPartsPer10Corn,
    high: highPartsPer10Corn,
    unit: 'Count',
    seen,
    sourceKeys: [...new Set(alkaliRecipesFor('ash').map((row) => row.source))],
  })
}

/** Calcium hydroxide as a share of dry corn weight: about 1 %. [fraction]  @source nixtamal-textbook from memory */
export function printedCalciumHydroxideFraction(): Reckoned {
  const { value, seen, source } = ALKALI_RECIPES.printedCalciumHydroxideFraction
  return {
    ...printedFigure({ id: 'calciumHydroxideFraction', value, unit: 'Fraction', seen, sourceKeys: [source] }),
    rounding: { mode: 'nearest', step: 0.001 },
  }
}

/** Parts of alkali to 10 parts of corn by volume; null where the recipe weighs one of them. [count] */
export function partsPer10Corn({ corn, cornUnit, alkaliAmount, alkaliUnit }: AlkaliRecipe): number | null {
  if (UNITS[cornUnit].measure !== 'volume' || UNITS[alkaliUnit].measure !== 'volume') return null
  return (10 * convert(alkaliAmount, alkaliUnit, 'L')) / convert(corn, cornUnit, 'L')
}
