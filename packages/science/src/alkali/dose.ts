/**
 * From a lot's strength to grams for a wanted amount of alkali on the corn. Grams first; cups and spoons only with the
 * lot's own weight. Leaves out minutes: the rub decides.
 */
import { requireInRange } from '../errors.ts'

export interface DoseWish {
  /** Alkali wanted on each kilogram of dry corn. [eq/kg] Valid: 0.001 to 5. */
  readonly eqPerKgCorn: number
  /** Dry corn in the pot. [kg] Valid: 0.01 to 1000. */
  readonly cornKg: number
  /** Alkali that a kilogram of the lot brings into solution. [eq/kg] Valid: 0.001 to 40. */
  readonly lotEqPerKg: number
}

/**
 * Weight of a lot that brings the wanted alkali. [g]
 *
 * 0.68 kg of corn at 0.10 eq/kg with an ash of 0.70 eq/kg: 97 g, about a cup.
 *
 * @throws {ValidRangeError} outside the ranges named at DoseWish.
 * @source none: equivalents
 */
export function lotDoseG({ eqPerKgCorn, cornKg, lotEqPerKg }: DoseWish): number {
  const rule = (min: number, max: number, unit: string) => ({ min, max, unit, source: 'project-rule' })
  requireInRange('eqPerKgCorn', eqPerKgCorn, rule(0.001, 5, 'eq/kg'))
  requireInRange('cornKg', cornKg, rule(0.01, 1000, 'kg'))
  requireInRange('lotEqPerKg', lotEqPerKg, rule(0.001, 40, 'eq/kg'))
  return ((eqPerKgCorn * cornKg) / lotEqPerKg) * 1000
}

/**
 * Alkali of a lot from the liquor steeped from it. [eq/kg]
 *
 * What stays in the wet ash is counted as in the liquor, since the water of the steep is what was measured.
 *
 * @param liquorEqPerL [eq/L] Valid: 0 to 5. @param steepWaterL [L] Valid: 0.01 to 1000. @param lotG [g] Valid: 1 to 1e6.
 * @throws {ValidRangeError} outside those ranges.
 * @source none: mass balance
 */
export function lotStrengthEqPerKg(liquorEqPerL: number, steepWaterL: number, lotG: number): number {
  const rule = (min: number, max: number, unit: string) => ({ min, max, unit, source: 'project-rule' })
  requireInRange('liquorEqPerL', liquorEqPerL, rule(0, 5, 'eq/L'))
  requireInRange('steepWaterL', steepWaterL, rule(0.01, 1000, 'L'))
  requireInRange('lotG', lotG, rule(1, 1e6, 'g'))
  return (liquorEqPerL * steepWaterL * 1000) / lotG
}

/**
 * Vinegar that takes up what a spent liquor may still hold. [L]
 *
 * 1.42 eq, the whole of 2 oz of sodium hydroxide, against 5 % vinegar: 1.70 L. At most, since the corn ate some.
 *
 * @param eq [eq] Valid: 0 to 1e4. @param vinegarMolPerL [mol/L] Valid: 0.01 to 2.
 * @throws {ValidRangeError} outside those ranges.
 * @source none: equivalents
 */
export function neutralisingVinegarL(eq: number, vinegarMolPerL: number): number {
  requireInRange('eq', eq, { min: 0, max: 1e4, unit: 'eq', source: 'project-rule' })
  requireInRange('vinegarMolPerL', vinegarMolPerL, { min: 0.01, max: 2, unit: 'mol/L', source: 'project-rule' })
  return eq / vinegarMolPerL
}
