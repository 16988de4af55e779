/**
 * Strength of a clear alkali liquor by vinegar and phenolphthalein, one sample, two end points: cold, then boiled.
 * Silicate, phosphate, borate and dissolved hull acids take up acid too: the answer is "as hydroxide and carbonate".
 */
import { requireInRange } from '../errors.ts'

/** Molar mass of acetic acid. [g/mol] */
const ACETIC_G_PER_MOL = 60.052

export interface VinegarTitration {
  /** Clear liquor taken. [mL] Valid: 0.5 to 1000. */
  readonly sampleMl: number
  /** Vinegar until the colour just goes, cold. [mL] Valid: 0 to 1000. */
  readonly coldMl: number
  /** Vinegar in all until it stays colourless at the simmer. [mL] Valid: coldMl to 1000. */
  readonly boiledMl: number
  /** On the label: 5 % is 5 g in 100 mL. [g/100 mL] Valid: 1 to 12. */
  readonly acidityGPer100Ml: number
  /** Parts of water to one part of vinegar. [parts] Valid: 0 to 50. */
  readonly vinegarWaterParts?: number
  /** Parts of water to one part of liquor before the sample was taken. [parts] Valid: 0 to 1000. */
  readonly liquorWaterParts?: number
  /** Finest mark of the syringe. [mL] Valid: 0.001 to 10. */
  readonly syringeStepMl?: number
  /** How far the label may be off, either way. [fraction] Valid: 0 to 0.5. */
  readonly labelSpreadFraction?: number
}

export interface Spread {
  readonly value: number
  readonly low: number
  readonly high: number
}

export interface LiquorStrength {
  readonly hydroxideMolPerL: Spread
  readonly carbonateMolPerL: Spread
  readonly bicarbonateMolPerL: Spread
  /** Hydroxide and twice carbonate, with bicarbonate. [eq/L] */
  readonly alkalinityEqPerL: Spread
}

/** A syringe read to half its finest mark at each end. */
const READINGS_PER_VOLUME = 2
/** Vinegar labels state a minimum; four in a hundred either way.  common practice, no source */
export const LABEL_SPREAD_FRACTION = 0.04
export const SYRINGE_STEP_MEANT_ML = 0.1

/**
 * Acetic acid in a vinegar. [mol/L]
 *
 * 5 % on the label: 0.8326; one part in five: 0.1665.
 *
 * @param acidityGPer100Ml [g/100 mL] Valid: 1 to 12.
 * @param waterParts parts of water to one of vinegar. [parts] Valid: 0 to 50.
 * @throws {ValidRangeError} outside those ranges.
 * @source iupac-weights-2021
 */
export function vinegarMolPerL(acidityGPer100Ml: number, waterParts = 0): number {
  requireInRange('acidityGPer100Ml', acidityGPer100Ml, { min: 1, max: 12, unit: 'g/100 mL', source: 'project-rule' })
  requireInRange('waterParts', waterParts, { min: 0, max: 50, unit: 'parts', source: 'project-rule' })
  return (acidityGPer100Ml * 10) / ACETIC_G_PER_MOL / (1 + waterParts)
}

/**
 * Hydroxide and carbonate of a liquor from its two end points. [mol/L, eq/L]
 *
 * c P / V is hydroxide and carbonate, c T / V hydroxide and twice carbonate. When T is more than 2 P there is bicarbonate
 * and no hydroxide. 50 mL, vinegar of 5 %, P 4.80 and T 5.41 mL: 0.0901 eq/L, hydroxide 0.070, carbonate 0.010 mol/L.
 * Each range joins label, syringe and a sample measured to 2 %, in quadrature, at twice their standard uncertainty.
 *
 * @throws {ValidRangeError} outside the ranges named at VinegarTitration.
 * @source vinegar-titration-worked
 */
export function liquorStrength(titration: VinegarTitration): LiquorStrength {
  const { sampleMl, coldMl, boiledMl, acidityGPer100Ml, vinegarWaterParts = 0, liquorWaterParts = 0 } = titration
  const { syringeStepMl = SYRINGE_STEP_MEANT_ML, labelSpreadFraction = LABEL_SPREAD_FRACTION } = titration
  const rule = (min: number, max: number, unit: string) => ({ min, max, unit, source: 'project-rule' })
  requireInRange('sampleMl', sampleMl, rule(0.5, 1000, 'mL'))
  requireInRange('coldMl', coldMl, rule(0, 1000, 'mL'))
  requireInRange('boiledMl', boiledMl, rule(coldMl, 1000, 'mL'))
  requireInRange('liquorWaterParts', liquorWaterParts, rule(0, 1000, 'parts'))
  requireInRange('syringeStepMl', syringeStepMl, rule(0.001, 10, 'mL'))
  requireInRange('labelSpreadFraction', labelSpreadFraction, rule(0, 0.5, 'fraction'))
  const c = vinegarMolPerL(acidityGPer100Ml, vinegarWaterParts)
  const molPerMl = (c * (1 + liquorWaterParts)) / sampleMl

  // Two independent readings, each an even spread over half a mark either way.
  const volumeUncertaintyMl = (Math.sqrt(READINGS_PER_VOLUME) * (syringeStepMl / 2)) / Math.sqrt(3)
  // An even spread over the label's range, and a kitchen measure good to 2 %.
  const scaleUncertainty = Math.hypot(labelSpreadFraction / Math.sqrt(3), SAMPLE_UNCERTAINTY_FRACTION)
  const spread = (volumeMl: number, weightOfCold: number, weightOfBoiled: number): Spread => {
    const value = Math.max(0, molPerMl * volumeMl)
    const half =
      2 *
      Math.hypot(value * scaleUncertainty, molPerMl * volumeUncertaintyMl * Math.hypot(weightOfCold, weightOfBoiled))
    return { value, low: Math.max(0, value - half), high: value + half }
  }
  const P = coldMl
  const T = boiledMl
  const hasBicarbonate = T > 2 * P
  return {
    hydroxideMolPerL: spread(2 * P - T, 2, 1),
    carbonateMolPerL: hasBicarbonate ? spread(P, 1, 0) : spread(T - P, 1, 1),
    bicarbonateMolPerL: spread(T - 2 * P, 2, 1),
    alkalinityEqPerL: spread(T, 0, 1),
  }
}

/** Standard uncertainty of a sample measured in a kitchen. [fraction]  common practice, no source */
const SAMPLE_UNCERTAINTY_FRACTION = 0.02
