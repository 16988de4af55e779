import {
  type Calc,
  type Fields,
  type LiquorStrength,
  liquorStrength,
  speciate,
  stripHydroxideMolPerL,
} from '@crib/science'
import { say } from '../shared/say.ts'
import { amount, corrosiveWarning, RULE, tooStrong, valuesOf } from './fields.ts'
import { type LotTest, lotStrength } from './lot-strength.ts'

type TitrationInput = Omit<LotTest, 'steepedG' | 'steepWaterL'> & {
  readonly steepedG?: number
  readonly steepWaterL?: number
  readonly stripPH?: number
  readonly stripAtC?: number
}

const sourceKeys = ['vinegar-titration-worked', 'iupac-weights-2021', 'davies-1962'] as const

export const TITRATION_FIELDS = {
  sampleMl: amount('Clear liquor taken', 'Ml', 0.5, 1000),
  coldMl: amount('Vinegar until the colour just goes, cold', 'Ml', 0, 1000),
  boiledMl: amount('Vinegar in all until it stays gone at the simmer', 'Ml', 0, 1000),
  acidityGPer100Ml: {
    kind: 'count',
    label: 'Acidity on the label, in whole % (g in 100 mL)',
    min: 1,
    max: 12,
    limitSource: RULE,
  },
  vinegarWaterParts: {
    kind: 'count',
    label: 'Parts of water to one of vinegar',
    min: 0,
    max: 50,
    limitSource: RULE,
    optional: true,
  },
  liquorWaterParts: {
    kind: 'count',
    label: 'Parts of water to one of liquor',
    min: 0,
    max: 1000,
    limitSource: RULE,
    optional: true,
  },
  syringeStepMl: amount('Finest mark of the syringe', 'Ml', 0.001, 10, { optional: true }),
  labelSpreadFraction: amount('How far the label may be off, 0 to 0.5', 'Fraction', 0, 0.5, { optional: true }),
} as const satisfies Fields

/** Above about pH 13 the indicator fades by itself. [mol/L] */
const FADING_HYDROXIDE_MOL_PER_L = 0.12
/** Below it the alkali is mostly carbonate. [fraction]  project rule */
const MOSTLY_CARBONATE_FRACTION = 0.3

export const titrationCalc: Calc<TitrationInput> = {
  id: 'titration',
  title: 'How strong is this ash water?',
  question:
    'What hydroxide and carbonate does a titration with vinegar find in a clear liquor, and in the ash it came from?',
  inputs: {
    ...TITRATION_FIELDS,
    steepedG: amount('Ash that was steeped', 'G', 1, 1e6, { optional: true }),
    steepWaterL: amount('Water it was steeped in', 'L', 0.01, 1000, { optional: true }),
    stripPH: amount('A pH strip read, 7 to 14', 'PH', 7, 14, { optional: true }),
    stripAtC: amount('in liquor of', 'C', 0, 100, { optional: true }),
  },
  outputs: {
    alkalinityEqPerL: { label: 'Alkali in the liquor', unit: 'EqPerL' },
    hydroxideMolPerL: { label: 'of it hydroxide', unit: 'MolPerL' },
    carbonateMolPerL: { label: 'and carbonate', unit: 'MolPerL' },
    bicarbonateMolPerL: { label: 'Bicarbonate', unit: 'MolPerL' },
    lotEqPerKg: { label: 'Alkali in the ash', unit: 'EqPerKg' },
    hydroxideFraction: { label: 'Share of it that is hydroxide', unit: 'Fraction' },
    stripHydroxideMolPerL: { label: 'Hydroxide by the strip', unit: 'MolPerL' },
  },
  sourceKeys,
  example: {
    sampleMl: 50,
    coldMl: 4.8,
    boiledMl: 5.41,
    acidityGPer100Ml: 5,
    syringeStepMl: 0.1,
    steepedG: 100,
    steepWaterL: 1,
  },
  run: (input) => {
    const { coldMl, boiledMl, steepedG, steepWaterL, stripPH, stripAtC = 25, liquorWaterParts = 0 } = input
    if (boiledMl < coldMl) {
      const why = [
        say('kettle:chem-boiled-less', {
          cold: { value: coldMl, unit: 'Ml' },
          boiled: { value: boiledMl, unit: 'Ml' },
        }),
      ]
      return { ok: false, refused: 'boiled-less-than-cold', why, askWhom: [] }
    }
    const value = valuesOf(input, sourceKeys)
    const liquor = liquorStrength(input)
    const lot =
      steepedG !== undefined && steepWaterL !== undefined ? lotStrength({ ...input, steepedG, steepWaterL }) : null
    const { alkalinityEqPerL, hydroxideMolPerL, carbonateMolPerL, bicarbonateMolPerL } = liquor
    const alkali = alkalinityEqPerL.value
    const share = alkali > 0 ? Math.min(1, hydroxideMolPerL.value / alkali) : 0
    const strip = stripPH === undefined ? null : stripHydroxideMolPerL(stripPH, stripAtC)
    const pHAt25C = coldPH(liquor)
    if (pHAt25C === null) return tooStrong
    return {
      ok: true,
      values: [
        value('alkalinityEqPerL', alkalinityEqPerL, 'EqPerL', 0.0001),
        value('hydroxideMolPerL', hydroxideMolPerL, 'MolPerL', 0.0001),
        value('carbonateMolPerL', carbonateMolPerL, 'MolPerL', 0.0001),
        ...(bicarbonateMolPerL.value > 0 ? [value('bicarbonateMolPerL', bicarbonateMolPerL, 'MolPerL', 0.0001)] : []),
        ...(lot ? [value('lotEqPerKg', lot.eqPerKg, 'EqPerKg', 0.01)] : []),
        value('hydroxideFraction', share, 'Fraction', 0.01),
        ...(strip ? [value('stripHydroxideMolPerL', strip, 'MolPerL', 0.001)] : []),
      ],
      reasons: [
        say('kettle:chem-as-hydroxide-carbonate'),
        say('kettle:chem-titration-clear'),
        ...(bicarbonateMolPerL.value > 0 ? [say('kettle:chem-titration-bicarbonate')] : []),
        ...(share < MOSTLY_CARBONATE_FRACTION ? [say('kettle:chem-mostly-carbonate')] : []),
        ...(stripPH === undefined ? [] : [say('kettle:chem-strip-band')]),
      ],
      warnings: [
        ...corrosiveWarning(pHAt25C),
        ...(hydroxideMolPerL.value > FADING_HYDROXIDE_MOL_PER_L && liquorWaterParts === 0
          ? [say('kettle:chem-titration-strong')]
          : []),
      ],
    }
  },
}

/** The liquor as it was found, read cold; the first sample's own strength, before any thinning. */
function coldPH({ hydroxideMolPerL, carbonateMolPerL, bicarbonateMolPerL }: LiquorStrength): number | null {
  const carbon = carbonateMolPerL.value + bicarbonateMolPerL.value
  const potassium = hydroxideMolPerL.value + 2 * carbonateMolPerL.value + bicarbonateMolPerL.value
  const outcome = potassium <= 5 ? speciate({ potassium, carbon }, 25) : null
  return outcome?.kind === 'solved' ? outcome.pH : null
}
