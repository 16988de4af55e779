/** Sheets for the kettle at Ostrey Point (S2, second part), invented: lot M-0, titrated, and the federal lye direction. */
import type { LyeSheetInput, RubLogInput, TitrationSheetInput } from '../src/index.ts'
import { reckoned } from './invented-days.ts'

const fine = { rounding: { mode: 'nearest', step: 0.001 } } as const
const EYES = { key: 'cautions:alkali-eyes' }

export const LYE: LyeSheetInput = {
  lot: 'sodium hydroxide, food-grade',
  isDissolved: true,
  dose: [
    { label: 'Weigh out', value: reckoned(56.7, 'G') },
    { label: 'Capacity', value: reckoned(0.187, 'EqPerL', fine) },
    { label: 'Intensity', value: reckoned(0.187, 'MolPerL', fine) },
  ],
  notes: [{ key: 'kettle:chem-equal-not-equal' }, { key: 'kettle:chem-in-steps' }],
  cautions: [
    EYES,
    { key: 'cautions:alkali-no-aluminium' },
    { key: 'cautions:foam-climbs' },
    { key: 'cautions:pot-scald' },
  ],
}

export const TITRATION: TitrationSheetInput = {
  lot: 'M-0',
  before: [{ label: 'Lot M-1, alkali', value: reckoned(0.9, 'EqPerKg') }],
  cautions: [EYES, { key: 'kettle:chem-disposal-not-skin' }],
}

export const RUB_LOG: RubLogInput = {
  batch: 'Lantern flint, 9 lb',
  lot: 'M-0',
  rowsCount: 14,
  notes: [{ key: 'kettle:rub-not-clock' }],
  cautions: [{ key: 'cautions:rub-gloves' }, { key: 'cautions:rub-no-tasting' }, { key: 'cautions:rub-first-aid' }],
}
