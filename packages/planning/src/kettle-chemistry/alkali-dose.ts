/**
 * From wanted alkali on the corn to grams of what is at hand, with capacity and intensity apart.
 * Leaves out: minutes, and any word that two alkalis of equal equivalents do the same.
 */
import {
  ALKALI_MAKES,
  alkaliEq,
  alkaliG,
  type BoughtAlkali,
  type LiquorIntensity,
  liquorIntensity,
  lotDoseG,
  type Mixture,
} from '@crib/science'

export type DosedAlkali = BoughtAlkali | 'ash'

export interface DoseInput {
  readonly alkali: DosedAlkali
  /** [eq/kg dry corn] */
  readonly eqPerKgCorn: number
  readonly cornKg: number
  readonly waterL: number
  /** Strength of the ash. [eq/kg] */
  readonly lotEqPerKg?: number
  /** Of the ash's alkali, as hydroxide; the rest is carbonate. [fraction] */
  readonly hydroxideFraction?: number
  readonly temperatureC: number
}

export interface AlkaliDose {
  readonly massG: number
  readonly eq: number
  /** Null where the liquor is too strong for the model. */
  readonly intensity: LiquorIntensity | null
}

/** @throws {ValidRangeError} outside the ranges of science; {RangeError} for ash without a strength. */
export function alkaliDose(input: DoseInput): AlkaliDose {
  const { alkali, eqPerKgCorn, cornKg, waterL, temperatureC } = input
  const eq = eqPerKgCorn * cornKg
  if (alkali === 'ash') {
    if (input.lotEqPerKg === undefined) throw new RangeError('ash needs its strength in eq/kg')
    const massG = lotDoseG({ eqPerKgCorn, cornKg, lotEqPerKg: input.lotEqPerKg })
    return { massG, eq, intensity: liquorIntensity(ashLiquor(eq / waterL, input.hydroxideFraction ?? 0), temperatureC) }
  }
  const { brings, purityFraction, eqPerMol } = ALKALI_MAKES[alkali]
  const mol = eq / eqPerMol / waterL
  return {
    massG: alkaliG(alkali, eq) / purityFraction,
    eq,
    intensity: liquorIntensity(times(brings, mol), temperatureC),
  }
}

/** Alkali of ash in its clear liquor: potassium with hydroxide and carbonate. [mol/L] */
export function ashLiquor(eqPerL: number, hydroxideFraction: number): Mixture {
  return { potassium: eqPerL, carbon: (eqPerL * (1 - hydroxideFraction)) / 2 }
}

/** What a weight of a bought alkali brings into water, pure or not. [eq] */
export function boughtEq(alkali: BoughtAlkali, massG: number): number {
  return alkaliEq(alkali, massG * ALKALI_MAKES[alkali].purityFraction)
}

function times(mixture: Mixture, by: number): Mixture {
  return Object.fromEntries(Object.entries(mixture).map(([name, each]) => [name, each * by]))
}
