/** Between which the figures of a dose lie. */
import type { AmountSpec } from '../amount.tsx'

export const CORN: AmountSpec = { unit: 'Lb', min: 0.2, max: 400, measures: ['mass', 'volume'] }
export const WATER_L: AmountSpec = { unit: 'L', min: 0.1, max: 1000 }
export const WANTED_EQ: AmountSpec = { unit: 'EqPerKg', min: 0.01, max: 1.5 }
export const WANTED_MOL: AmountSpec = { unit: 'MolPerL', min: 0.0001, max: 0.8 }
