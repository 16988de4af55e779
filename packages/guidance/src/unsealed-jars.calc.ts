import type { Calc } from '@crib/science'
import { printedFigure } from './figures.ts'
import { unsealedChoices } from './unsealed.ts'

interface UnsealedInput {
  readonly hoursSinceOut: number
  readonly methodWasRight: boolean
}

export const unsealedJarsCalc: Calc<UnsealedInput> = {
  id: 'unsealed-jars',
  title: 'A jar that did not seal',
  question: 'What can still be done with a jar that did not seal, and for how long?',
  inputs: {
    hoursSinceOut: {
      kind: 'quantity',
      label: 'Since the jars came out',
      unit: 'H',
      min: 0,
      max: 8760,
      limitSource: 'project-rule',
    },
    methodWasRight: { kind: 'flag', label: 'Time, pressure and cooling were as directed' },
  },
  outputs: { hoursLeft: { label: 'Time left to decide', unit: 'H' } },
  sourceKeys: ['unl-unsealed-jars', 'msu-01600593', 'kstate-unsealed'],
  example: { hoursSinceOut: 13, methodWasRight: true },
  run: ({ hoursSinceOut, methodWasRight }) => {
    const { choices, why, sourceKeys } = unsealedChoices(hoursSinceOut, methodWasRight)
    const hoursLeft = Math.max(0, ...choices.map((choice) => choice.hoursLeft ?? 0))
    const value = printedFigure({
      id: 'hoursLeft',
      value: hoursLeft,
      unit: 'H',
      seen: 'seen',
      sourceKeys,
      inputs: { hoursSinceOut, methodWasRight },
    })
    return {
      ok: true,
      // Rounded down: time left to act is never shown longer than it is.
      values: [{ ...value, rounding: { mode: 'down', step: 0.25 } }],
      reasons: choices.map((choice) => choice.say),
      warnings: why,
    }
  },
}
