import type { Calc } from '@crib/science'
import { say } from '../shared/say.ts'
import { type WeakAshInput, weakAshAdvice } from './ash-advice.ts'

const RULE = { limitSource: 'project-rule' } as const

export const weakAshCalc: Calc<WeakAshInput> = {
  id: 'weak-ash',
  title: 'An ash that has gone flat',
  question: 'The hulls do not slip: what can be done with this pot, and in what order?',
  inputs: {
    lotName: { kind: 'text', maxLength: 60, label: 'Ash lot in the pot' },
    recordLotName: { kind: 'text', maxLength: 60, label: 'Ash lot whose record was followed', optional: true },
    dryCornLiquidQt: { kind: 'quantity', unit: 'LiquidQt', min: 0.1, max: 500, ...RULE, label: 'Dry corn in the pot' },
    ashSoFarCups: { kind: 'quantity', unit: 'Cup', min: 0, max: 500, ...RULE, label: 'Ash put in so far' },
    boiledMin: { kind: 'quantity', unit: 'Min', min: 0, max: 1440, ...RULE, label: 'Boiled so far' },
    slippedCount: { kind: 'count', min: 0, max: 1000, ...RULE, label: 'Kernels that slipped' },
    rubbedCount: { kind: 'count', min: 1, max: 1000, ...RULE, label: 'Kernels rubbed' },
    isSoftening: { kind: 'flag', label: 'Kernels are softening' },
    stoodOpenMonths: { kind: 'count', min: 0, max: 600, ...RULE, label: 'Months the ash stood open', optional: true },
    lbPerLiquidQt: {
      kind: 'quantity',
      unit: 'Lb',
      min: 1,
      max: 2,
      ...RULE,
      label: "The lot's own weight of one liquid qt",
      optional: true,
    },
  },
  outputs: {
    ashStepCups: { label: 'One step of ash', unit: 'Cup' },
    ashAfterStepCups: { label: 'Ash in the pot after it', unit: 'Cup' },
    rubAgainMin: { label: 'Rub again after', unit: 'Min' },
    calciumHydroxideG: { label: 'Or calcium hydroxide, food-grade', unit: 'G' },
    calciumHydroxideGPerLiquidQt: { label: 'That is, to one liquid qt', unit: 'G' },
    ashPartsPer10CornLow: { label: 'Ash in print, parts per 10 parts corn, low', unit: 'Count' },
    ashPartsPer10CornHigh: { label: 'Ash in print, parts per 10 parts corn, high', unit: 'Count' },
  },
  sourceKeys: ['health-cookery-1911', 'country-weekly-1915', 'mohawk-report', 'naggayi-2020'],
  example: {
    lotName: 'M-0',
    recordLotName: 'M-1',
    dryCornLiquidQt: 1,
    ashSoFarCups: 1,
    boiledMin: 120,
    slippedCount: 0,
    rubbedCount: 20,
    isSoftening: true,
    stoodOpenMonths: 14,
  },
  run: (input) => {
    if (input.slippedCount > input.rubbedCount) {
      const why = [say('kettle:more-slipped', { slipped: input.slippedCount, rubbed: input.rubbedCount })]
      return { ok: false, refused: 'more-slipped-than-rubbed', why, askWhom: [] }
    }
    const { values, reasons, warnings } = weakAshAdvice(input)
    return { ok: true, values, reasons, warnings }
  },
}
