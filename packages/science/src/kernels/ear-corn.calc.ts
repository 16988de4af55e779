import type { Calc } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { convert } from '../units/unit.ts'
import { SHELLED_PER_EAR_CORN_TRADE_FRACTION, shelledFromEarCornKg } from './ear-corn.ts'

interface EarCornInput {
  readonly earCornKg: number
  readonly kernelWetFraction: number
}

const sourceKeys = ['agf-502-2018', 'wisconsin-l033-2015'] as const
const outputs = {
  shelledKg: { label: 'Shelled corn in these ears', unit: 'Kg' },
  shelledLb: { label: 'Shelled corn in lb', unit: 'Lb' },
  tradeShelledLb: { label: 'By the trade figure, 56 lb from 70 lb of ears', unit: 'Lb' },
} as const

export const earCornCalc: Calc<EarCornInput> = {
  id: 'ear-corn',
  title: 'Shelled corn in a weight of ears',
  question: 'How much shelled corn do these husked ears hold, by the moisture of their kernels?',
  inputs: {
    earCornKg: { kind: 'quantity', label: 'Husked ears', unit: 'Kg', min: 0, max: 1e6, limitSource: 'project-rule' },
    kernelWetFraction: {
      kind: 'quantity',
      label: 'Moisture of the kernels, wet basis, 0.10 to 0.28',
      unit: 'Fraction',
      min: 0.1,
      max: 0.28,
      limitSource: 'agf-502-2018',
    },
  },
  outputs,
  sourceKeys,
  example: { earCornKg: { value: 70, unit: 'Lb' }, kernelWetFraction: 0.14 },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const shelledKg = shelledFromEarCornKg(input.earCornKg, input.kernelWetFraction)
    const tradeKg = input.earCornKg * SHELLED_PER_EAR_CORN_TRADE_FRACTION
    return done([
      value('shelledKg', shelledKg, nearest(0.01), { basis: 'published' }),
      value('shelledLb', convert(shelledKg, 'Kg', 'Lb'), nearest(0.1), { basis: 'published' }),
      value('tradeShelledLb', convert(tradeKg, 'Kg', 'Lb'), nearest(0.1), { basis: 'common-practice', sourceKeys: [] }),
    ])
  },
}
