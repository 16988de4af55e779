import type { Calc } from '@crib/science'
import { type PowerCut, powerCutAdvice } from './power-cut.ts'

export const powerCutCalc: Calc<PowerCut> = {
  id: 'power-cut',
  title: 'Cold food when the power is out',
  question: 'How long do fridge and freezer hold behind shut doors, and what may be frozen again?',
  inputs: {
    hoursOut: { kind: 'quantity', label: 'Without power', unit: 'H', min: 0, max: 720, limitSource: 'project-rule' },
    freezer: { kind: 'choice', options: ['full', 'half', 'none'], label: 'The freezer was' },
    freezerReadsF: {
      kind: 'quantity',
      label: 'Warmest in the freezer, by thermometer',
      unit: 'F',
      min: -60,
      max: 120,
      limitSource: 'project-rule',
      optional: true,
    },
    hasIceCrystals: { kind: 'flag', label: 'There are ice crystals in it', optional: true },
  },
  outputs: {
    fridgeLeftH: { label: 'Fridge, doors shut, still', unit: 'H' },
    freezerLeftH: { label: 'Freezer, doors shut, still', unit: 'H' },
  },
  sourceKeys: ['foodsafety-gov-outage'],
  example: { hoursOut: 10, freezer: 'full' },
  run: (cut) => {
    const { fridgeLeft, freezerLeft, say } = powerCutAdvice(cut)
    return { ok: true, values: freezerLeft ? [fridgeLeft, freezerLeft] : [fridgeLeft], reasons: say, warnings: [] }
  },
}
