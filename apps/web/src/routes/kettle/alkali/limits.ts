/** Between which a kitchen's figures lie; the same as an entry takes. */
import type { AmountSpec } from '../amount.tsx'

export const STEEPED_G: AmountSpec = { unit: 'G', min: 1, max: 100_000 }
export const STEEP_L: AmountSpec = { unit: 'L', min: 0.01, max: 1000 }
export const G_PER_CUP: AmountSpec = { unit: 'G', min: 10, max: 500 }
export const SAMPLE_ML: AmountSpec = { unit: 'Ml', min: 0.5, max: 1000 }
export const ML: AmountSpec = { unit: 'Ml', min: 0, max: 1000 }
export const STRIP_PH: AmountSpec = { unit: 'PH', min: 0, max: 14 }
export const LIQUOR_C: AmountSpec = { unit: 'C', min: 0, max: 100 }
export const BOILED_MIN: AmountSpec = { unit: 'Min', min: 0, max: 1440 }
