import type { Calc } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { type Cook, cookedPerRaw } from './moisture.ts'

const sourceKeys = ['fao-maize-1992', 'usda-sr'] as const
const outputs = {
  cookedPerRaw: { label: 'Weight cooked, for each unit of raw weight', unit: 'Count' },
  cookedKg: { label: 'Cooked weight', unit: 'Kg' },
} as const
const fraction = { kind: 'quantity', unit: 'Fraction', min: 0, limitSource: 'project-rule' } as const

export const cookedYieldCalc: Calc<Cook & { readonly massKg: number }> = {
  id: 'cooked-yield',
  title: 'Weight of hominy from dry kernels',
  question: 'What do dry kernels weigh when hulled and cooked, by what water they took and what they lost?',
  inputs: {
    massKg: { kind: 'quantity', label: 'Raw weight', unit: 'Kg', min: 0, max: 1e6, limitSource: 'project-rule' },
    rawWetFraction: { ...fraction, label: 'Moisture raw, wet basis, 0 to 0.95', max: 0.95 },
    dryMatterLossFraction: { ...fraction, label: 'Dry matter lost, 0 to 0.9', max: 0.9 },
    cookedWetFraction: { ...fraction, label: 'Moisture cooked, wet basis, 0 to 0.95', max: 0.95 },
  },
  outputs,
  sourceKeys,
  example: { massKg: 1, rawWetFraction: 0.104, dryMatterLossFraction: 0.1, cookedWetFraction: 0.7 },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const ratio = cookedPerRaw(input)
    return done([value('cookedPerRaw', ratio, nearest(0.01)), value('cookedKg', input.massKg * ratio, nearest(0.001))])
  },
}
