import type { Calc } from '@crib/science'
import { say } from '../shared/say.ts'
import { type DryingInput, dryingPlan } from './drying-plan.ts'

const RULE = { limitSource: 'project-rule' } as const

export const dryingCalc: Calc<DryingInput> = {
  id: 'drying',
  title: 'Drying to a weight',
  question: 'At what weight is this tray or braid dry, and how long may that take in this air?',
  inputs: {
    what: { kind: 'choice', options: ['kernels', 'hominy', 'ears'], label: 'What dries' },
    massKg: { kind: 'quantity', label: 'Weight now', unit: 'Kg', min: 0.001, max: 5000, ...RULE },
    startWetFraction: {
      kind: 'quantity',
      label: 'Moisture now, wet basis: water over total weight',
      unit: 'Fraction',
      min: 0.05,
      max: 0.95,
      ...RULE,
    },
    endWetFraction: {
      kind: 'quantity',
      label: 'Moisture wanted, wet basis',
      unit: 'Fraction',
      min: 0.01,
      max: 0.9,
      ...RULE,
    },
    air: {
      kind: 'table',
      maxRows: 1000,
      optional: true,
      label: 'Air, for kernels: begun again from the top when it is through',
      columns: {
        hours: { kind: 'quantity', label: 'For', unit: 'H', min: 0.1, max: 1000, ...RULE },
        temperatureC: { kind: 'quantity', label: 'Air', unit: 'C', min: 30, max: 60, limitSource: 'ordonez-2012' },
        humidityFraction: {
          kind: 'quantity',
          label: 'Humidity',
          unit: 'Fraction',
          min: 0.1,
          max: 0.83,
          limitSource: 'misra-brooker-1980',
        },
      },
    },
  },
  outputs: {
    stopAtKg: { label: 'Stop when it weighs', unit: 'Kg' },
    waterGoneKg: { label: 'Water gone by then', unit: 'Kg' },
    dryingH: { label: 'That may take', unit: 'H' },
    settlesFraction: { label: 'As far as this air can bring it, wet basis', unit: 'Fraction' },
  },
  sourceKeys: ['hicks-cloud-nch-61', 'misra-brooker-1980', 'ordonez-2012', 'asae-d245', 'msu-01600519'],
  example: {
    what: 'kernels',
    massKg: 5,
    startWetFraction: 0.22,
    endWetFraction: 0.13,
    air: [
      { hours: 10, temperatureC: 38, humidityFraction: 0.3 },
      { hours: 14, temperatureC: 30, humidityFraction: 0.55 },
    ],
  },
  run: (input) => {
    if (!(input.endWetFraction < input.startWetFraction)) {
      return { ok: false, refused: 'not-drier', why: [say('keeping:not-drier')], askWhom: [] }
    }
    return { ok: true, ...dryingPlan(input) }
  },
}
