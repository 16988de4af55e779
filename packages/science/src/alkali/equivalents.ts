/**
 * Alkalis of a kettle as measured reagents: grams to equivalents and back. Equivalents say how much acid an alkali can
 * take up (capacity); they do not say how strongly it bites (intensity, dose.ts).
 */
import { requireInRange } from '../errors.ts'
import type { Mixture } from '../water/mixture.ts'

export interface AlkaliMake {
  readonly gPerMol: number
  readonly eqPerMol: number
  /** What one mole brings into solution, carbonate and all. [mol/mol] */
  readonly brings: Mixture
  /** Share of the trade article that is the alkali: flakes draw water, so 85 to 90 % for potassium hydroxide. */
  readonly purityFraction: number
}

/** Molar masses from the atomic weights of 2021, to 0.001 g/mol; purity of the trade articles from memory. */
export const ALKALI_MAKES = {
  'sodium-hydroxide': { gPerMol: 39.997, eqPerMol: 1, brings: { sodium: 1 }, purityFraction: 1 },
  'potassium-hydroxide': { gPerMol: 56.106, eqPerMol: 1, brings: { potassium: 1 }, purityFraction: 0.875 },
  'calcium-hydroxide': { gPerMol: 74.093, eqPerMol: 2, brings: { calcium: 1 }, purityFraction: 1 },
  'potassium-carbonate': { gPerMol: 138.206, eqPerMol: 2, brings: { potassium: 2, carbon: 1 }, purityFraction: 1 },
  /** Baking soda baked until it has lost 36.9 % of its weight. */
  'sodium-carbonate': { gPerMol: 105.989, eqPerMol: 2, brings: { sodium: 2, carbon: 1 }, purityFraction: 1 },
  'baking-soda': { gPerMol: 84.007, eqPerMol: 1, brings: { sodium: 1, carbon: 1 }, purityFraction: 1 },
} as const satisfies Record<string, AlkaliMake>

export type BoughtAlkali = keyof typeof ALKALI_MAKES

export const BOUGHT_ALKALIS = Object.keys(ALKALI_MAKES) as readonly BoughtAlkali[]

/** Weight left of baking soda once it is all sodium carbonate. [fraction] */
export const BAKED_SODA_FRACTION = ALKALI_MAKES['sodium-carbonate'].gPerMol / (2 * ALKALI_MAKES['baking-soda'].gPerMol)

/**
 * Equivalents in a weight of the pure alkali. [eq]
 *
 * 56.7 g (2 oz) of sodium hydroxide: 1.418 eq.
 *
 * @param massG [g] Valid: 0 to 1e6.
 * @throws {ValidRangeError} outside that range.
 * @source iupac-weights-2021
 */
export function alkaliEq(alkali: BoughtAlkali, massG: number): number {
  requireInRange('massG', massG, { min: 0, max: 1e6, unit: 'g', source: 'project-rule' })
  const { gPerMol, eqPerMol } = ALKALI_MAKES[alkali]
  return (massG / gPerMol) * eqPerMol
}

/**
 * Weight of the pure alkali that holds a number of equivalents. [g]
 *
 * 1 eq: 39.997 g of sodium hydroxide, 37.047 g of calcium hydroxide, 84.007 g of baking soda.
 *
 * @param eq [eq] Valid: 0 to 1e5.
 * @throws {ValidRangeError} outside that range.
 * @source iupac-weights-2021
 */
export function alkaliG(alkali: BoughtAlkali, eq: number): number {
  requireInRange('eq', eq, { min: 0, max: 1e5, unit: 'eq', source: 'project-rule' })
  const { gPerMol, eqPerMol } = ALKALI_MAKES[alkali]
  return (eq / eqPerMol) * gPerMol
}
