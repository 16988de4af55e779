import type { Calc } from '@crib/science'
import { type CornStorageInput, cornStorage } from './corn-storage.ts'

const LIMIT = { limitSource: 'asae-d535' } as const
const CORN = {
  temperatureC: { kind: 'quantity', label: 'Warmth of the corn', unit: 'C', min: -40, max: 37.8, ...LIMIT },
  wetFraction: {
    kind: 'quantity',
    label: 'Moisture, wet basis: water over total weight',
    unit: 'Fraction',
    min: 0.05,
    max: 0.28,
    ...LIMIT,
  },
} as const

export const cornStorageCalc: Calc<CornStorageInput> = {
  id: 'corn-storage',
  title: 'How long dry corn keeps',
  question: 'How much of its storage time has this shelled corn used, and how long will it keep where it is?',
  inputs: {
    history: {
      kind: 'table',
      maxRows: 1000,
      label: 'How it lay so far',
      columns: {
        days: { kind: 'quantity', label: 'For', unit: 'Days', min: 0, max: 40_000, limitSource: 'project-rule' },
        ...CORN,
      },
    },
    now: { kind: 'record', label: 'How it lies now', fields: CORN },
    handShelled: { kind: 'flag', label: 'Sound kernels, shelled by hand', optional: true },
    isSeed: { kind: 'flag', label: 'Seed is kept in it', optional: true },
  },
  outputs: {
    leftDays: { label: 'Left as it lies now', unit: 'Days' },
    allowableDays: { label: 'Fresh corn would keep so', unit: 'Days' },
    usedFraction: { label: 'Used so far', unit: 'Fraction' },
  },
  sourceKeys: ['asae-d535', 'ndsu-drying-2019', 'mcneill-late-season'],
  example: {
    history: [
      { days: 20, temperatureC: { value: 60, unit: 'F' }, wetFraction: 0.18 },
      { days: 60, temperatureC: { value: 50, unit: 'F' }, wetFraction: 0.16 },
    ],
    now: { temperatureC: { value: 40, unit: 'F' }, wetFraction: 0.15 },
    handShelled: true,
  },
  run: (input) => ({ ok: true, ...cornStorage(input) }),
}
