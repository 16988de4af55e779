import type { Calc, Field } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { convert } from '../units/unit.ts'
import { massAtMoistureKg, moistureShrinkFraction } from './moisture.ts'

interface MoistureShrinkInput {
  readonly massKg: number
  readonly fromWetFraction: number
  readonly toWetFraction: number
}

const sourceKeys = ['hicks-cloud-nch-61', 'wisconsin-l033-2015'] as const
const outputs = {
  afterKg: { label: 'Weight after', unit: 'Kg' },
  afterLb: { label: 'Weight after, in lb', unit: 'Lb' },
  shrinkFraction: { label: 'Share of the weight taken off', unit: 'Fraction' },
} as const

const moistureField = (label: string): Field => ({
  kind: 'quantity',
  label,
  unit: 'Fraction',
  min: 0,
  max: 0.95,
  limitSource: 'project-rule',
})

export const moistureShrinkCalc: Calc<MoistureShrinkInput> = {
  id: 'moisture-shrink',
  title: 'Weight of grain as it dries',
  question: 'What will this grain weigh at another moisture, if only water goes?',
  inputs: {
    massKg: { kind: 'quantity', label: 'Weight now', unit: 'Kg', min: 0, max: 1e6, limitSource: 'project-rule' },
    fromWetFraction: moistureField('Moisture now, wet basis, 0 to 0.95'),
    toWetFraction: moistureField('Moisture then, wet basis, 0 to 0.95'),
  },
  outputs,
  sourceKeys,
  example: { massKg: 10, fromWetFraction: 0.18, toWetFraction: 0.13 },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const afterKg = massAtMoistureKg(input.massKg, input)
    return done([
      value('afterKg', afterKg, nearest(0.001)),
      value('afterLb', convert(afterKg, 'Kg', 'Lb'), nearest(0.01)),
      value('shrinkFraction', moistureShrinkFraction(input), nearest(0.0001)),
    ])
  },
}
