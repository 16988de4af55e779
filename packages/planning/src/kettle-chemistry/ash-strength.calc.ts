import { ASH_G_PER_CUP, type AshKept, ashEstimate, type Calc } from '@crib/science'
import { say } from '../shared/say.ts'
import { amount, valuesOf, wider } from './fields.ts'

interface AshStrengthInput {
  readonly kept: AshKept
  readonly gPerCup?: number
}

const sourceKeys = ['etiegni-campbell-1991', 'misra-1993', 'wood-ash-bulk'] as const

export const ashStrengthCalc: Calc<AshStrengthInput> = {
  id: 'ash-strength',
  title: 'An ash that nobody measured',
  question: 'How much alkali may a wood ash bring when nothing was measured, by how it was kept?',
  inputs: {
    kept: { kind: 'choice', label: 'Kept', options: ['fresh', 'air-aged', 'rained-on'] },
    gPerCup: amount('A level cup of it weighs', 'G', 20, 300, { optional: true }),
  },
  outputs: {
    lotEqPerKg: { label: 'Alkali that dissolves', unit: 'EqPerKg' },
    hydroxideFraction: { label: 'of it hydroxide', unit: 'Fraction' },
    eqPerCup: { label: 'To the cup', unit: 'Eq' },
    gPerCup: { label: 'A level cup weighs', unit: 'G' },
  },
  sourceKeys,
  example: { kept: 'air-aged' },
  run: (input) => {
    const value = valuesOf(input, sourceKeys)
    const { eqPerKg, hydroxideFraction, eqPerCup } = ashEstimate(input.kept)
    const own = input.gPerCup
    const cup = { value: ASH_G_PER_CUP.middle, low: ASH_G_PER_CUP.low, high: ASH_G_PER_CUP.high }
    return {
      ok: true,
      values: [
        value('lotEqPerKg', eqPerKg, 'EqPerKg', 0.01, { basis: 'published' }),
        value('hydroxideFraction', hydroxideFraction, 'Fraction', 0.01, { basis: 'published' }),
        value('eqPerCup', own === undefined ? eqPerCup : wider(eqPerKg, own / 1000), 'Eq', 0.001),
        own === undefined
          ? value('gPerCup', cup, 'G', 1, { basis: 'published', sourceKeys: ['wood-ash-bulk'] })
          : value('gPerCup', own, 'G', 1, { basis: 'as-typed', sourceKeys: [] }),
      ],
      reasons: [
        say('kettle:chem-ash-unmeasured'),
        ...(input.kept === 'air-aged' ? [say('kettle:chem-mostly-carbonate')] : []),
        ...(input.kept === 'rained-on' ? [say('kettle:chem-ash-rained-on')] : []),
        say('kettle:chem-float'),
        ...(own === undefined ? [say('kettle:chem-weigh-not-cups')] : []),
      ],
      warnings: [say('cautions:ash-clean-wood')],
    }
  },
}
