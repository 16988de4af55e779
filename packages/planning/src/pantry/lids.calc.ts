import type { Calc } from '@crib/science'
import { type LidNeed, lidsAndJarsToBuy } from './use-forecast.ts'

const COUNT = { kind: 'count', min: 0, max: 10_000, limitSource: 'project-rule' } as const

export const lidsCalc: Calc<LidNeed> = {
  id: 'lids-to-buy',
  title: 'Lids and jars to buy',
  question: 'How many lids and jars does the plan take beyond what is at hand?',
  inputs: {
    jarsCount: { ...COUNT, label: 'Jars of the plan' },
    spareLidFraction: {
      kind: 'quantity',
      label: 'Spare lids, as a share',
      unit: 'Fraction',
      min: 0,
      max: 1,
      limitSource: 'project-rule',
    },
    lidsAtHandCount: { ...COUNT, label: 'New lids at hand' },
    jarsAtHandCount: { ...COUNT, label: 'Empty jars at hand' },
  },
  outputs: {
    lidsToBuy: { label: 'Lids to buy', unit: 'Count' },
    jarsToBuy: { label: 'Jars to buy', unit: 'Count' },
  },
  sourceKeys: ['project-rule'],
  example: { jarsCount: 96, spareLidFraction: 0.05, lidsAtHandCount: 0, jarsAtHandCount: 96 },
  run: (input) => ({ ok: true, values: lidsAndJarsToBuy(input), reasons: [], warnings: [] }),
}
