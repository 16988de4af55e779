/**
 * The same alkali on the corn from every alkali there is, side by side: grams, capacity, intensity and reserve, and in
 * one word how it bites. Leaves out minutes, and any word that two of them do the same.
 */
import { ALKALI_MAKES, BOUGHT_ALKALIS, type CalcResult, molPerLForHydroxide, type Reckoned } from '@crib/science'
import { alkaliDoseCalc } from './alkali-dose.calc.ts'
import { alkaliDose, type DosedAlkali, type DoseInput } from './alkali-dose.ts'
import { cookAltitudeCalc } from './cook-altitude.calc.ts'
import { valuesOf } from './fields.ts'

/** What a cook would call it. */
export type Bite = 'strong' | 'middling' | 'mild' | 'hardly'

export interface DoseRow {
  readonly alkali: DosedAlkali
  readonly doseG: Reckoned
  readonly hydroxideMolPerL: Reckoned
  /** Absent where nothing lies at the bottom. */
  readonly reserveEqPerL?: Reckoned
  readonly bite: Bite
}

/** From where on hydroxide is called so. [mol/L]  project rule: the printed sodium hydroxide boil has about 0.19, lime 0.02 */
const BITES = [
  ['strong', 0.05],
  ['middling', 0.01],
  ['mild', 0.002],
] as const

const SOURCES = ['iupac-weights-2021', 'davies-1962', 'thermoddem-1-10'] as const

/** Rows for the ash, where its strength is told, and every bought alkali; those the model cannot follow are left out. */
export function doseAcross(input: Omit<DoseInput, 'alkali'>): readonly DoseRow[] {
  const alkalis: readonly DosedAlkali[] = [
    ...(input.lotEqPerKg === undefined ? [] : ['ash' as const]),
    ...BOUGHT_ALKALIS,
  ]
  return alkalis.flatMap((alkali) => {
    const { massG, intensity } = alkaliDose({ ...input, alkali })
    if (!intensity) return []
    const value = valuesOf({ ...input, alkali }, SOURCES)
    const { hydroxideMolPerL, reserveEqPerL } = intensity
    return [
      {
        alkali,
        doseG: value('doseG', massG, 'G', massG < 20 ? 0.1 : 1),
        hydroxideMolPerL: value(
          'hydroxideMolPerL',
          hydroxideMolPerL,
          'MolPerL',
          hydroxideMolPerL < 0.01 ? 0.0001 : 0.001,
        ),
        ...(reserveEqPerL > 0 && { reserveEqPerL: value('reserveEqPerL', reserveEqPerL, 'EqPerL', 0.001) }),
        bite: BITES.find(([, from]) => hydroxideMolPerL >= from)?.[0] ?? 'hardly',
      },
    ]
  })
}

export type DoseAsked = Parameters<typeof alkaliDoseCalc.run>[0]

/** The dose of one alkali in full, as calculation `alkali-dose` tells it. */
export function doseOf(input: DoseAsked): CalcResult {
  return alkaliDoseCalc.run(input)
}

/**
 * Alkali on the corn that brings a wanted hydroxide into the pot. [eq/kg]
 *
 * @returns null when no amount does: calcium hydroxide dissolves only so far, bicarbonate hardly bites.
 * @throws {ValidRangeError} outside the range of `molPerLForHydroxide`.
 */
export function eqPerKgForHydroxide(
  hydroxideMolPerL: number,
  { alkali, cornKg, waterL, temperatureC, hydroxideFraction = 0 }: Omit<DoseInput, 'eqPerKgCorn'>,
): number | null {
  const [brings, eqPerMol] =
    alkali === 'ash'
      ? [{ potassium: 1, carbon: (1 - hydroxideFraction) / 2 }, 1]
      : [ALKALI_MAKES[alkali].brings, ALKALI_MAKES[alkali].eqPerMol]
  const molPerL = molPerLForHydroxide(brings, hydroxideMolPerL, temperatureC)
  return molPerL === null ? null : (molPerL * eqPerMol * waterL) / cornKg
}

/** An hour at the boil near sea level, in an open pot at that elevation, as calculation `cook-altitude` tells it. */
export function anHourAtElevation(elevationM: number): CalcResult {
  return cookAltitudeCalc.run({ elevationM, seaLevelMin: 60 })
}
