import { BOUGHT_ALKALIS, type BoughtAlkali, type Calc, neutralisingVinegarL, vinegarMolPerL } from '@crib/science'
import { up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { boughtEq } from './alkali-dose.ts'
import { amount, RULE, valuesOf } from './fields.ts'

interface DisposalInput {
  readonly alkali: 'ash' | BoughtAlkali
  readonly alkaliG: number
  readonly lotEqPerKg?: number
  readonly acidityGPer100Ml: number
}

const sourceKeys = ['iupac-weights-2021', 'vinegar-titration-worked'] as const

export const disposalCalc: Calc<DisposalInput> = {
  id: 'disposal',
  title: 'Spent liquor',
  question: 'How much vinegar takes up the alkali of a spent pot, at most?',
  inputs: {
    alkali: { kind: 'choice', label: 'Alkali', options: ['ash', ...BOUGHT_ALKALIS] },
    alkaliG: amount('Put in, all together', 'G', 0.1, 100_000),
    lotEqPerKg: amount('Strength of the ash lot', 'EqPerKg', 0.001, 40, { optional: true }),
    acidityGPer100Ml: {
      kind: 'count',
      label: 'Acidity on the vinegar’s label, in whole % (g in 100 mL)',
      min: 1,
      max: 12,
      limitSource: RULE,
    },
  },
  outputs: {
    alkaliEq: { label: 'Alkali in all', unit: 'Eq' },
    vinegarL: { label: 'Vinegar, at most', unit: 'L' },
  },
  sourceKeys,
  example: { alkali: 'sodium-hydroxide', alkaliG: 56.7, acidityGPer100Ml: 5 },
  run: (input) => {
    const { alkali, alkaliG, lotEqPerKg, acidityGPer100Ml } = input
    if (alkali === 'ash' && lotEqPerKg === undefined) {
      return { ok: false, refused: 'no-strength', why: [say('kettle:chem-no-strength')], askWhom: [] }
    }
    const value = valuesOf(input, sourceKeys)
    const eq = alkali === 'ash' ? (alkaliG / 1000) * lotEqPerKg! : boughtEq(alkali, alkaliG)
    return {
      ok: true,
      values: [
        value('alkaliEq', eq, 'Eq', 0.001),
        value('vinegarL', neutralisingVinegarL(eq, vinegarMolPerL(acidityGPer100Ml)), 'L', 0.1, { rounding: up(0.1) }),
      ],
      reasons: [say('kettle:chem-disposal-most'), say('kettle:chem-disposal-how')],
      warnings: [say('cautions:wash-caustic'), say('cautions:wash-no-drain'), say('kettle:chem-disposal-not-skin')],
    }
  },
}
