/**
 * Weight and volume of dry shelled corn. A bare "quart" never appears: liquid and dry measure differ by 16 %.
 * Leaves out the volume of corn wet from the pot (swelling.ts).
 */
import { requireInRange } from '../errors.ts'
import { convert } from '../units/unit.ts'

/** 1.5 lb to the liquid quart, exactly, unless the lot has its own weight. [kg/L]  Project rule; 56 lb a bushel gives 1.504. */
export const SHELLED_CORN_KG_PER_L = convert(1.5, 'Lb', 'Kg') / convert(1, 'LiquidQt', 'L')

/**
 * Bulk density of a lot from its test weight. [kg/L]
 *
 * 56 lb to the bushel: 0.721. Hard flint runs to 62 and more.
 *
 * @param testWeightLb pounds of shelled corn in one bushel measure. [lb] Valid: 35 to 80.
 * @throws {ValidRangeError} outside that range.
 * @source rankin-wisconsin-bushels; the bushel by nist-handbook-44-appendix-c
 */
export function bulkDensityKgPerL(testWeightLb: number): number {
  requireInRange('testWeightLb', testWeightLb, { min: 35, max: 80, unit: 'lb to the bushel', source: 'project-rule' })
  return convert(testWeightLb, 'Lb', 'Kg') / convert(1, 'Bu', 'L')
}

/**
 * Weight of dry shelled corn that fills a volume. [kg]
 *
 * 1 liquid quart (0.946 L) at the project's weight: 0.680 kg, 1.5 lb.
 *
 * @param volumeL [L] Valid: 0 to 1e6.
 * @param densityKgPerL bulk density, the project's unless the lot has its own. [kg/L] Valid: 0.4 to 1.1.
 * @throws {ValidRangeError} outside those ranges.
 * @source rankin-wisconsin-bushels
 */
export function shelledCornKg(volumeL: number, densityKgPerL = SHELLED_CORN_KG_PER_L): number {
  requireAmount('volumeL', volumeL, 'L')
  requireDensity(densityKgPerL)
  return volumeL * densityKgPerL
}

/**
 * Volume that a weight of dry shelled corn fills. [L]
 *
 * @param massKg [kg] Valid: 0 to 1e6.
 * @param densityKgPerL bulk density, the project's unless the lot has its own. [kg/L] Valid: 0.4 to 1.1.
 * @throws {ValidRangeError} outside those ranges.
 * @source rankin-wisconsin-bushels
 */
export function shelledCornL(massKg: number, densityKgPerL = SHELLED_CORN_KG_PER_L): number {
  requireAmount('massKg', massKg, 'kg')
  requireDensity(densityKgPerL)
  return massKg / densityKgPerL
}

/** @throws {ValidRangeError} unless 0 <= value <= 1e6. */
export function requireAmount(argument: string, value: number, unit: string): void {
  requireInRange(argument, value, { min: 0, max: 1e6, unit, source: 'project-rule' })
}

function requireDensity(densityKgPerL: number): void {
  requireInRange('densityKgPerL', densityKgPerL, { min: 0.4, max: 1.1, unit: 'kg/L', source: 'project-rule' })
}
