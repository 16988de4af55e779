/** What a kettle liquor is asked of, and what is told of it: totals in, species, pH and saturation out. */
import type { ActivityModel, Ion } from './activity.ts'

/** Totals in solution. [mol/kg water], taken as mol/L in dilute kitchen liquors. What is not named is not there. */
export interface Mixture {
  readonly sodium?: number
  readonly potassium?: number
  readonly calcium?: number
  readonly magnesium?: number
  /** All inorganic carbon: CO2, bicarbonate, carbonate. */
  readonly carbon?: number
  readonly boron?: number
  readonly acetate?: number
  readonly chloride?: number
}

export type Neutral = 'CO2' | 'CaCO3' | 'MgCO3' | 'BOH3' | 'aceticAcid'
export type Species = Ion | Neutral

export interface Speciation {
  readonly kind: 'solved'
  readonly pH: number
  readonly temperatureC: number
  readonly ionicStrengthMolPerKg: number
  /** By species. [mol/kg] */
  readonly molPerKg: Readonly<Record<Species, number>>
  /** log10 of ion product over solubility product: 0 saturated, above 0 too much. Null without the ions or off the range. */
  readonly saturation: {
    readonly calcite: number | null
    readonly portlandite: number | null
    readonly brucite: number | null
  }
  /** Pressure of CO2 that would stand over it. [atm] */
  readonly pCO2Atm: number
  /** Charge left over, against the sum of |z| c. Never above 1e-10. */
  readonly chargeErrorFraction: number
  /** Passes over the ionic strength, and evaluations of the charge balance in all. */
  readonly passesCount: number
  readonly evaluationsCount: number
  /** Stronger than the activity model is good to: a pH to be taken with more than 0.03 either way. */
  readonly isBeyondModel: boolean
}

export type SpeciationOutcome =
  | Speciation
  | {
      readonly kind: 'not-solved'
      /** `too-strong`: above an ionic strength of 1. The others never happened in a million mixtures; they are said, not hidden. */
      readonly why: 'too-strong' | 'no-root-between-pH-limits' | 'not-converged' | 'charge-balance'
      readonly ionicStrengthMolPerKg: number
    }

export interface SpeciationOptions {
  readonly activityModel?: ActivityModel
  /** A nearby pH to begin from: speeds up a curve, changes no answer. */
  readonly nearPH?: number
}
