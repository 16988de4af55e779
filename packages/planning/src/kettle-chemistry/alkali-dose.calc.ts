import { BOUGHT_ALKALIS, type Calc, convert, isCorrosive } from '@crib/science'
import { nearest } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { alkaliDose, type DoseInput } from './alkali-dose.ts'
import { amount, corrosiveWarning, tooStrong, valuesOf } from './fields.ts'
import { recipeStrengths } from './recipes.ts'

type AlkaliDoseInput = Omit<DoseInput, 'temperatureC'> & {
  readonly temperatureC?: number
  readonly gPerCup?: number
}

const sourceKeys = ['iupac-weights-2021', 'hominy-recipes-recomputed', 'davies-1962', 'thermoddem-1-10'] as const
const BOIL_C = 100

export const alkaliDoseCalc: Calc<AlkaliDoseInput> = {
  id: 'alkali-dose',
  title: 'How much alkali for this corn',
  question: 'How many grams bring the wanted alkali onto the corn, and how strongly does the pot then bite?',
  inputs: {
    alkali: { kind: 'choice', label: 'Alkali', options: ['ash', ...BOUGHT_ALKALIS] },
    eqPerKgCorn: {
      ...amount('Alkali wanted on dry corn', 'EqPerKg', 0.01, 1.5),
      kind: 'quantity',
      unit: 'EqPerKg',
      min: 0.01,
      max: 1.5,
      limitSource: 'hominy-recipes-recomputed',
    },
    cornKg: amount('Dry shelled corn', 'Kg', 0.05, 200),
    waterL: amount('Water in the pot', 'L', 0.1, 1000),
    lotEqPerKg: amount('Strength of the ash lot', 'EqPerKg', 0.001, 40, { optional: true }),
    hydroxideFraction: amount('Share of its alkali that is hydroxide', 'Fraction', 0, 1, { optional: true }),
    gPerCup: amount('A level cup of it weighs', 'G', 20, 300, { optional: true }),
    temperatureC: amount('Temperature of the pot (the boil unless told)', 'C', 0, 100, { optional: true }),
  },
  outputs: {
    doseG: { label: 'Weigh out', unit: 'G' },
    doseCups: { label: 'That is, by its own weight of a cup', unit: 'Cup' },
    doseTbsp: { label: 'or in spoons', unit: 'Tbsp' },
    alkaliEq: { label: 'Alkali in all', unit: 'Eq' },
    capacityEqPerL: { label: 'Capacity: alkali in the pot, dissolved or not', unit: 'EqPerL' },
    hydroxideMolPerL: { label: 'Intensity: hydroxide that bites', unit: 'MolPerL' },
    reserveEqPerL: { label: 'Reserve at the bottom', unit: 'EqPerL' },
    pHAt25C: { label: 'The pot read cold', unit: 'PH' },
  },
  sourceKeys,
  example: {
    alkali: 'ash',
    eqPerKgCorn: 0.1,
    cornKg: 0.68,
    waterL: 3.8,
    lotEqPerKg: 0.9,
    hydroxideFraction: 0.78,
    gPerCup: 100,
  },
  run: (input) => {
    if (input.alkali === 'ash' && input.lotEqPerKg === undefined) {
      return { ok: false, refused: 'no-strength', why: [say('kettle:chem-no-strength')], askWhom: [] }
    }
    const { massG, eq, intensity } = alkaliDose({ ...input, temperatureC: input.temperatureC ?? BOIL_C })
    if (!intensity) return tooStrong
    const value = valuesOf(input, sourceKeys)
    const recipes = recipeStrengths()
    const cups = input.gPerCup === undefined ? null : massG / input.gPerCup
    const range = { low: recipes[0]!.eqPerKg, high: recipes.at(-1)!.eqPerKg }
    return {
      ok: true,
      values: [
        value('doseG', massG, 'G', massG < 20 ? 0.1 : 1),
        ...(cups === null
          ? []
          : [
              value('doseCups', cups, 'Cup', 0.25, { rounding: nearest(0.25) }),
              value('doseTbsp', convert(cups, 'Cup', 'Tbsp'), 'Tbsp', 0.5),
            ]),
        value('alkaliEq', eq, 'Eq', 0.001),
        value('capacityEqPerL', intensity.capacityEqPerL, 'EqPerL', 0.0001),
        value('hydroxideMolPerL', intensity.hydroxideMolPerL, 'MolPerL', 0.0001),
        ...(intensity.reserveEqPerL > 0 ? [value('reserveEqPerL', intensity.reserveEqPerL, 'EqPerL', 0.0001)] : []),
        value('pHAt25C', intensity.pHAt25C, 'PH', 0.1),
      ],
      reasons: [
        say('kettle:chem-equal-not-equal'),
        say('kettle:chem-recipes-spread', {
          low: { value: Number(range.low.toFixed(2)), unit: 'EqPerKg' },
          high: { value: Number(range.high.toFixed(2)), unit: 'EqPerKg' },
        }),
        say('kettle:chem-in-steps'),
        ...(input.alkali === 'calcium-hydroxide' ? [say('kettle:chem-lime-reserve')] : []),
        ...(cups === null && input.alkali === 'ash' ? [say('kettle:chem-weigh-not-cups')] : []),
        ...(input.alkali === 'sodium-hydroxide' ? [say('kettle:lye-printed-only')] : []),
        say('kettle:rub-not-clock'),
      ],
      warnings: [
        ...(isCorrosive(intensity.pHAt25C) ? [say('cautions:alkali-eyes')] : []),
        ...corrosiveWarning(intensity.pHAt25C),
        ...(input.alkali === 'sodium-hydroxide' || input.alkali === 'potassium-hydroxide'
          ? [say('cautions:alkali-into-water')]
          : []),
        say('cautions:alkali-no-aluminium'),
      ],
    }
  },
}
