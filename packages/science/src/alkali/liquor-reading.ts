/**
 * Hydroxide from a pH strip: the poor man's strength, good to a factor of three either way. And the line from which a
 * liquor is called corrosive. Leaves out carbonate, which a strip does not see.
 */
import { requireInRange } from '../errors.ts'
import { bracketedRoot } from '../numeric/bracketed-root.ts'
import { speciate } from '../water/speciation.ts'
import type { Spread } from './vinegar-titration.ts'

/** At or above it a liquor is called corrosive to skin and eyes. [pH at 25 °C]  @source niosh-2011-150 */
export const CORROSIVE_PH = 11.5
/** How far a strip may be off, either way. [pH] */
export const STRIP_SPREAD_PH = 0.5

/** Whether a liquor of that pH is called corrosive. [pH at 25 °C]  @source niosh-2011-150 */
export function isCorrosive(pH: number): boolean {
  return pH >= CORROSIVE_PH
}

/**
 * Hydroxide that a pH means in a plain lye. [mol/L]
 *
 * The same lye reads 1.8 less at the boil than at 25 °C, so the temperature of the liquor is asked for.
 *
 * @param pH Valid: 7 to 14; at 100 °C to 12.1.
 * @param temperatureC of the liquor when it was read. [°C] Valid: 0 to 100.
 * @returns null when no lye up to 0.9 mol/L reaches that pH there.
 * @throws {ValidRangeError} outside those ranges.
 * @source davies-1962; phreeqc-3
 */
export function hydroxideOfPHMolPerL(pH: number, temperatureC: number): number | null {
  requireInRange('pH', pH, { min: 7, max: 14, unit: 'pH', source: 'project-rule' })
  const over = (ln: number) => {
    const outcome = speciate({ sodium: Math.exp(ln) }, temperatureC)
    return outcome.kind === 'solved' ? outcome.pH - pH : 1
  }
  const ln = bracketedRoot(over, { low: Math.log(1e-12), high: Math.log(0.9), relativeWidth: 1e-9 })
  if (ln !== null) return Math.exp(ln)
  return over(Math.log(0.9)) < 0 ? null : 0
}

/**
 * Hydroxide from a strip, with its band. [mol/L]  Half a pH either way is about three times less and three times more.
 *
 * @returns null when the strip reads more than any lye of the model has.
 * @throws {ValidRangeError} outside the ranges of `hydroxideOfPHMolPerL`.
 * @source davies-1962; the strip's half pH is common practice, no source
 */
export function stripHydroxideMolPerL(stripPH: number, temperatureC: number): Spread | null {
  const value = hydroxideOfPHMolPerL(stripPH, temperatureC)
  if (value === null) return null
  const low = hydroxideOfPHMolPerL(Math.max(7, stripPH - STRIP_SPREAD_PH), temperatureC) ?? value
  const high = hydroxideOfPHMolPerL(Math.min(14, stripPH + STRIP_SPREAD_PH), temperatureC)
  return { value, low, high: high ?? value * 10 ** STRIP_SPREAD_PH }
}
