/**
 * Liquor with solids at the bottom: how much calcium hydroxide or calcite stays dissolved, what falls out, and CO2 that
 * leaves or comes in. Leaves out: how fast; a stirred pot is taken to have come to rest.
 */
import { requireInRange } from '../errors.ts'
import { bracketedRoot } from '../numeric/bracketed-root.ts'
import type { Mixture, Speciation, SpeciationOptions, SpeciationOutcome } from './mixture.ts'
import { speciate } from './speciation.ts'

export type Solid = 'portlandite' | 'calcite'

export interface SettledLiquor {
  readonly kind: 'settled'
  readonly liquor: Speciation
  /** At the bottom. [mol/kg water] */
  readonly portlanditeMolPerKg: number
  readonly calciteMolPerKg: number
}

export type SettledOutcome = SettledLiquor | Exclude<SpeciationOutcome, Speciation>

const RELATIVE = 1e-11
const NOT_SETTLED = { kind: 'not-solved', why: 'not-converged', ionicStrengthMolPerKg: Number.NaN } as const
/** Molar mass of Ca(OH)2. [g/mol] */
const CALCIUM_HYDROXIDE_G_PER_MOL = 74.093

/**
 * A mixture with solids allowed to form or to dissolve until each is just saturated or gone. [mol/kg]
 *
 * KOH 0.1 with plenty of Ca(OH)2 at 25 °C keeps 4.37 mmol/kg of calcium: a fifth of what plain water takes.
 *
 * @param mixture totals of liquor and solids together. [mol/kg water]
 * @param solids those that may lie at the bottom; one left out stays in solution however oversaturated.
 * @param temperatureC [°C] Valid: 0 to 100; with calcite 0 to 90.
 * @throws {ValidRangeError} outside those ranges.
 * @source plummer-busenberg-1982; thermoddem-1-10
 */
export function settle(
  mixture: Mixture,
  solids: readonly Solid[],
  temperatureC: number,
  options: SpeciationOptions = {},
): SettledOutcome {
  if (solids.includes('calcite')) {
    requireInRange('temperatureC', temperatureC, { min: 0, max: 90, unit: '°C', source: 'plummer-busenberg-1982' })
  }
  const calcium = mixture.calcium ?? 0
  const carbon = mixture.carbon ?? 0

  const withPortlandite = (calciteOut: number): SettledOutcome => {
    const dissolved = (portlanditeOut: number): SpeciationOutcome =>
      speciate(
        {
          ...mixture,
          calcium: Math.max(0, calcium - calciteOut - portlanditeOut),
          carbon: Math.max(0, carbon - calciteOut),
        },
        temperatureC,
        options,
      )
    const most = calcium - calciteOut
    const all = dissolved(0)
    const over = (outcome: SpeciationOutcome) =>
      outcome.kind === 'solved' ? (outcome.saturation.portlandite ?? Number.NEGATIVE_INFINITY) : 1
    const settled = (liquor: SpeciationOutcome, portlanditeMolPerKg: number): SettledOutcome =>
      liquor.kind === 'solved' ? { kind: 'settled', liquor, portlanditeMolPerKg, calciteMolPerKg: calciteOut } : liquor
    if (!solids.includes('portlandite') || over(all) <= 0) return settled(all, 0)
    // In log of what stays dissolved, where the saturation is nearly a straight line.
    const lnLeft = bracketedRoot((ln) => over(dissolved(most - Math.exp(ln))), {
      low: Math.log(most * 1e-9),
      high: Math.log(most),
      relativeWidth: RELATIVE,
    })
    if (lnLeft === null) return NOT_SETTLED
    const out = most - Math.exp(lnLeft)
    return settled(dissolved(out), out)
  }

  const none = withPortlandite(0)
  if (!solids.includes('calcite') || none.kind !== 'settled') {
    if (!solids.includes('calcite') || (none.kind === 'not-solved' && none.why !== 'too-strong')) return none
  } else if ((none.liquor.saturation.calcite ?? Number.NEGATIVE_INFINITY) <= 0) return none
  const scarcer = Math.min(calcium, carbon)
  const over = (outcome: SettledOutcome) =>
    outcome.kind === 'settled' ? (outcome.liquor.saturation.calcite ?? Number.NEGATIVE_INFINITY) : 1
  const lnLeft = bracketedRoot((ln) => over(withPortlandite(scarcer - Math.exp(ln))), {
    low: Math.log(scarcer * 1e-9),
    high: Math.log(scarcer),
    relativeWidth: RELATIVE,
  })
  return lnLeft === null ? NOT_SETTLED : withPortlandite(scarcer - Math.exp(lnLeft))
}

/**
 * Calcium hydroxide that a liquor takes at a temperature. [g/kg water]
 *
 * Falls when heated: about 1.5 at 25 °C, 0.65 at the boil, however much lies at the bottom. Another alkali in the
 * liquor cuts it down further (common ion).
 *
 * @param temperatureC [°C] Valid: 0 to 100.
 * @throws {ValidRangeError} outside that range.
 * @source thermoddem-1-10
 */
export function calciumHydroxideSolubilityGPerKg(temperatureC: number, alreadyIn: Mixture = {}): number | null {
  const settled = settle({ ...alreadyIn, calcium: (alreadyIn.calcium ?? 0) + 0.2 }, ['portlandite'], temperatureC)
  if (settled.kind !== 'settled') return null
  return (0.2 - settled.portlanditeMolPerKg) * CALCIUM_HYDROXIDE_G_PER_MOL
}

/**
 * A mixture after CO2 has gone off, its alkalinity unchanged. [mol/kg]
 *
 * Of bicarbonate, half the carbon can leave and leaves carbonate behind: NaHCO3 0.1736 becomes Na2CO3 0.0868.
 *
 * @param lostFraction of the CO2 that can leave before only carbonate is left. [fraction] Valid: 0 to 1.
 * @throws {ValidRangeError} outside that range.
 * @source none: charge and mass balance
 */
export function withCO2Lost(mixture: Mixture, lostFraction: number): Mixture {
  requireInRange('lostFraction', lostFraction, { min: 0, max: 1, unit: 'fraction', source: 'project-rule' })
  const carbon = mixture.carbon ?? 0
  const left = Math.max(0, Math.min(carbon, carbonateAlkalinity(mixture) / 2))
  return { ...mixture, carbon: carbon - lostFraction * (carbon - left) }
}

/**
 * A mixture open to a gas: carbon until its CO2 stands at that pressure. [mol/kg]
 *
 * @param pCO2Atm [atm] Valid: 1e-8 to 1; outdoor air about 4.2e-4.
 * @returns null when no carbon up to 5 mol/kg reaches that pressure.
 * @throws {ValidRangeError} outside that range.
 * @source plummer-busenberg-1982 (Henry's constant)
 */
export function openToCO2(mixture: Mixture, pCO2Atm: number, temperatureC: number): Mixture | null {
  requireInRange('pCO2Atm', pCO2Atm, { min: 1e-8, max: 1, unit: 'atm', source: 'project-rule' })
  const over = (ln: number) => {
    const outcome = speciate({ ...mixture, carbon: Math.exp(ln) }, temperatureC)
    return outcome.kind === 'solved' ? Math.log(outcome.pCO2Atm / pCO2Atm) : 1e3
  }
  const ln = bracketedRoot(over, { low: Math.log(1e-12), high: Math.log(1), relativeWidth: 1e-10 })
  return ln === null ? null : { ...mixture, carbon: Math.exp(ln) }
}

/** Equivalents that carbonate could balance: cations less the strong anions. [eq/kg] */
function carbonateAlkalinity({
  sodium = 0,
  potassium = 0,
  calcium = 0,
  magnesium = 0,
  acetate = 0,
  chloride = 0,
}: Mixture): number {
  return sodium + potassium + 2 * (calcium + magnesium) - acetate - chloride
}
