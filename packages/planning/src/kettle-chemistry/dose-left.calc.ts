import type { Calc } from '@crib/science'
import { say } from '../shared/say.ts'
import { doseLeft } from './dose-left.ts'
import { amount, valuesOf } from './fields.ts'

interface DoseLeftForm {
  readonly wantedEqPerKgCorn: number
  readonly cornKg: number
  readonly soFarG?: number
  readonly soFarLotEqPerKg?: number
  readonly nextLotEqPerKg: number
}

const sourceKeys = ['iupac-weights-2021'] as const

export const doseLeftCalc: Calc<DoseLeftForm> = {
  id: 'dose-left',
  title: 'What is left of the dose',
  question: 'Some alkali is in the pot already: how much is left to add, and how much of it next?',
  inputs: {
    wantedEqPerKgCorn: amount('Alkali wanted on dry corn', 'EqPerKg', 0.001, 10),
    cornKg: amount('Dry corn in the pot', 'Kg', 0.01, 1000),
    soFarG: amount('Put in so far', 'G', 0, 1e6, { optional: true }),
    soFarLotEqPerKg: amount('of a lot as strong as', 'EqPerKg', 0.001, 40, { optional: true }),
    nextLotEqPerKg: amount('Strength of the lot to add from', 'EqPerKg', 0.001, 40),
  },
  outputs: {
    soFarEqPerKg: { label: 'On the corn so far', unit: 'EqPerKg' },
    leftG: { label: 'Left to add, in all', unit: 'G' },
    stepG: { label: 'Next step', unit: 'G' },
  },
  sourceKeys,
  example: { wantedEqPerKgCorn: 0.13, cornKg: 0.68, soFarG: 50, soFarLotEqPerKg: 0.9, nextLotEqPerKg: 0.9 },
  run: (input) => {
    const { cornKg, soFarG = 0, soFarLotEqPerKg, nextLotEqPerKg } = input
    const additions = soFarG > 0 ? [{ massG: soFarG, lotEqPerKg: soFarLotEqPerKg ?? nextLotEqPerKg }] : []
    const { soFarEq, leftG, stepG, overEq } = doseLeft({ ...input, additions })
    const value = valuesOf(input, sourceKeys)
    return {
      ok: true,
      values: [
        value('soFarEqPerKg', soFarEq / cornKg, 'EqPerKg', 0.001),
        value('leftG', leftG, 'G', leftG < 20 ? 0.1 : 1),
        value('stepG', stepG, 'G', stepG < 20 ? 0.1 : 1),
      ],
      reasons: [
        say('kettle:chem-in-steps'),
        ...(leftG === 0 ? [say('kettle:dose-all-in')] : []),
        ...(overEq > 0
          ? [say('kettle:dose-over', { over: { value: Number((overEq / cornKg).toFixed(3)), unit: 'EqPerKg' } })]
          : []),
        say('kettle:rub-not-clock'),
      ],
      warnings: [say('cautions:alkali-eyes'), say('cautions:alkali-no-aluminium')],
    }
  },
}
