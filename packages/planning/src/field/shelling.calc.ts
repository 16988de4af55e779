import type { Calc } from '@crib/science'
import { type ShellingInput, shellingTime } from './shelling.ts'

const RULE = { limitSource: 'project-rule' } as const

export const shellingTimeCalc: Calc<ShellingInput> = {
  id: 'shelling-time',
  title: 'Shelling by hand',
  question: 'What will these dry ears give shelled, and how long does it take so many hands?',
  inputs: {
    earCornKg: { kind: 'quantity', unit: 'Kg', min: 0.01, max: 5000, label: 'Dry husked ears', ...RULE },
    helpersCount: { kind: 'count', min: 1, max: 500, label: 'People shelling', ...RULE },
    lbPerHour: {
      kind: 'quantity',
      unit: 'Count',
      min: 0.5,
      max: 200,
      label: 'Own rate of one person, pounds shelled in an hour',
      optional: true,
      ...RULE,
    },
  },
  outputs: {
    shelledLb: { label: 'Shelled corn to expect', unit: 'Lb' },
    shellingHours: { label: 'With all hands', unit: 'H' },
  },
  sourceKeys: [],
  example: { earCornKg: 31.75, helpersCount: 3 },
  run: (input) => ({ ok: true, ...shellingTime(input), warnings: [] }),
}
