/**
 * Strength of wood ash when nothing was measured: from composition and how it was kept, with the whole spread.
 * Leaves out species tables (none that could be read for maple, hickory or white ash) and CCE, which counts what stays
 * at the bottom of the pot.
 */
import { requireInRange } from '../errors.ts'
import { ALKALI_MAKES } from './equivalents.ts'
import type { Spread } from './vinegar-titration.ts'

/** Molar mass of K2O, the analyst's unit for potassium. [g/mol] */
const K2O_G_PER_MOL = 94.196

/** How it was kept: fresh, white and closed; in the air but never rained on; rained on. */
export type AshKept = 'fresh' | 'air-aged' | 'rained-on'

/** Working band of K2O in household ash. [fraction]  @source misra-1993 from memory, with later station work of 4 to 9 % */
export const ASH_K2O_FRACTION = { low: 0.03, middle: 0.055, high: 0.09 } as const
/** Share of potassium that dissolves.  @source etiegni-campbell-1991 */
export const ASH_SOLUBLE_FRACTION = 0.6
/** Potassium held as sulfate and chloride, which takes up no acid. [fraction]  from memory, not re-read */
const ASH_NEUTRAL_FRACTION = { low: 0.25, middle: 0.175, high: 0.1 } as const
/** Of the leachate's alkalinity in ash that still holds calcium hydroxide.  @source etiegni-campbell-1991 */
const FRESH_HYDROXIDE_FRACTION = 0.92

/** Sifted ash in a US cup. [g]  @source wood-ash-bulk; 60 to 150, so grams are asked for first */
export const ASH_G_PER_CUP = { low: 60, middle: 100, high: 150 } as const

/**
 * Alkali that the potassium of ash brings into water, from its analysis. [eq/kg]
 *
 * 5.5 % K2O, 60 % of it soluble: 0.70 eq/kg, 0.070 to a cup of 100 g.
 *
 * @param k2oFraction [fraction] Valid: 0 to 0.3.
 * @param solubleFraction [fraction] Valid: 0 to 1.
 * @throws {ValidRangeError} outside those ranges.
 * @source etiegni-campbell-1991
 */
export function ashPotassiumEqPerKg(k2oFraction: number, solubleFraction = ASH_SOLUBLE_FRACTION): number {
  requireInRange('k2oFraction', k2oFraction, { min: 0, max: 0.3, unit: 'fraction', source: 'misra-1993' })
  requireInRange('solubleFraction', solubleFraction, { min: 0, max: 1, unit: 'fraction', source: 'project-rule' })
  return ((2 * k2oFraction) / K2O_G_PER_MOL) * solubleFraction * 1000
}

export interface AshEstimate {
  /** Alkali that dissolves. [eq/kg ash] */
  readonly eqPerKg: Spread
  /** Of it, as hydroxide; the rest is carbonate. [fraction] */
  readonly hydroxideFraction: Spread
  /** The same in a level cup, sifted. [eq] */
  readonly eqPerCup: Spread
}

/**
 * What an unmeasured ash may bring into the pot. [eq/kg, eq per cup]
 *
 * The range is the whole of it: a factor of four by weight and of ten by the cup. Fresh ash adds what little calcium
 * hydroxide the potassium leaves room for (at most 0.04 eq/L at 25 °C), which is left out here and told by `settle`.
 *
 * @source etiegni-campbell-1991; misra-1993
 */
export function ashEstimate(kept: AshKept): AshEstimate {
  const fullEqPerKg = (end: 'low' | 'middle' | 'high') =>
    ashPotassiumEqPerKg(ASH_K2O_FRACTION[end]) * (1 - ASH_NEUTRAL_FRACTION[end])
  // Rain takes the potassium first: none may be left, or a fifth.  from memory, not re-read
  const left = kept === 'rained-on' ? { low: 0, middle: 0.1, high: 0.2 } : { low: 1, middle: 1, high: 1 }
  const eqPerKg: Spread = {
    low: fullEqPerKg('low') * left.low,
    value: fullEqPerKg('middle') * left.middle,
    high: fullEqPerKg('high') * left.high,
  }
  const hydroxideFraction: Spread =
    kept === 'fresh'
      ? { low: 0.5, value: FRESH_HYDROXIDE_FRACTION, high: 1 }
      : kept === 'air-aged'
        ? { low: 0, value: 0.05, high: 0.3 }
        : { low: 0, value: 0.5, high: 1 }
  return {
    eqPerKg,
    hydroxideFraction,
    eqPerCup: {
      low: (eqPerKg.low * ASH_G_PER_CUP.low) / 1000,
      value: (eqPerKg.value * ASH_G_PER_CUP.middle) / 1000,
      high: (eqPerKg.high * ASH_G_PER_CUP.high) / 1000,
    },
  }
}

/** Alkali of the ash as potassium carbonate of the same equivalents. [g/kg ash]  @source iupac-weights-2021 */
export function asPotassiumCarbonateGPerKg(eqPerKg: number): number {
  const { gPerMol, eqPerMol } = ALKALI_MAKES['potassium-carbonate']
  return (eqPerKg / eqPerMol) * gPerMol
}
