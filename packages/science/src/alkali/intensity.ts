/**
 * How strongly a liquor bites: the hydroxide that is really there, against the alkali that is in it. Equal equivalents
 * are not equal power. Leaves out what the corn eats, and minutes.
 */
import { requireInRange } from '../errors.ts'
import { bracketedRoot } from '../numeric/bracketed-root.ts'
import { CALCITE_TEMPERATURE_C } from '../water/equilibria.ts'
import type { Mixture } from '../water/mixture.ts'
import { type Solid, settle } from '../water/solids.ts'
import { speciate } from '../water/speciation.ts'

export interface LiquorIntensity {
  /** Alkali in it, dissolved or lying at the bottom. [eq/L] */
  readonly capacityEqPerL: number
  /** Hydroxide in solution at that temperature. [mol/L] */
  readonly hydroxideMolPerL: number
  /** Read at that temperature. [pH] */
  readonly pH: number
  /** The same liquor read cold, as the corrosive line is told. [pH at 25 °C] */
  readonly pHAt25C: number
  /** Calcium hydroxide at the bottom: a reserve that dissolves as the pot cools and the corn eats alkali. [eq/L] */
  readonly reserveEqPerL: number
}

/**
 * Capacity and intensity of a liquor. [eq/L, mol/L, pH]
 *
 * Calcium hydroxide at the boil gives 0.016 to 0.02 mol/L however much is put in; the rest is reserve. Above 90 °C no
 * calcite is let fall out, since its solubility was not measured there.
 *
 * @param liquor totals. [mol/L] Valid: as for `speciate`.
 * @param temperatureC [°C] Valid: 0 to 100.
 * @returns null where the liquor is too strong for the model.
 * @throws {ValidRangeError} outside those ranges.
 * @source davies-1962; thermoddem-1-10
 */
export function liquorIntensity(liquor: Mixture, temperatureC: number): LiquorIntensity | null {
  const solidsAt = (t: number): readonly Solid[] => {
    if (!liquor.calcium) return []
    return liquor.carbon && t <= CALCITE_TEMPERATURE_C.max ? ['portlandite', 'calcite'] : ['portlandite']
  }
  const settled = settle(liquor, solidsAt(temperatureC), temperatureC)
  const cold = settle(liquor, solidsAt(25), 25)
  if (settled.kind !== 'settled' || cold.kind !== 'settled') return null
  const { sodium = 0, potassium = 0, calcium = 0, chloride = 0, acetate = 0 } = liquor
  return {
    capacityEqPerL: sodium + potassium + 2 * calcium - chloride - acetate,
    hydroxideMolPerL: settled.liquor.molPerKg.OH,
    pH: settled.liquor.pH,
    pHAt25C: cold.liquor.pH,
    reserveEqPerL: 2 * settled.portlanditeMolPerKg,
  }
}

/**
 * Amount of an alkali that gives a wanted hydroxide. [mol/L of what `brings` is told for]
 *
 * @param brings what one mole brings. [mol/mol]
 * @param hydroxideMolPerL wanted. [mol/L] Valid: 1e-6 to 0.9.
 * @returns null when no amount does: calcium hydroxide is capped by its solubility, bicarbonate hardly bites at all.
 * @throws {ValidRangeError} outside that range.
 * @source davies-1962; thermoddem-1-10
 */
export function molPerLForHydroxide(brings: Mixture, hydroxideMolPerL: number, temperatureC: number): number | null {
  requireInRange('hydroxideMolPerL', hydroxideMolPerL, { min: 1e-6, max: 0.9, unit: 'mol/L', source: 'project-rule' })
  const hydroxideOf = (amount: number): number => {
    const mixture = Object.fromEntries(Object.entries(brings).map(([name, share]) => [name, share * amount]))
    if (brings.calcium) return liquorIntensity(mixture, temperatureC)?.hydroxideMolPerL ?? Number.NaN
    const outcome = speciate(mixture, temperatureC)
    return outcome.kind === 'solved' ? outcome.molPerKg.OH : Number.NaN
  }
  // The most that the model reaches: ionic strength stays below 1.
  const ions = (brings.sodium ?? 0) + (brings.potassium ?? 0) + 3 * (brings.calcium ?? 0) + 2 * (brings.carbon ?? 0)
  const most = 0.9 / Math.max(1, ions)
  const ln = bracketedRoot((at) => Math.log(hydroxideOf(Math.exp(at)) / hydroxideMolPerL), {
    low: Math.log(1e-9),
    high: Math.log(most),
    relativeWidth: 1e-9,
  })
  return ln === null ? null : Math.exp(ln)
}
