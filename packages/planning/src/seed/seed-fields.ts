/** Fields the seed calculations share. Limits are wide where the calculation itself gives the reason and what to do. */
const RULE = { limitSource: 'project-rule' } as const

export const countField = (label: string, min: number, max: number) =>
  ({ kind: 'count', min, max, label, ...RULE }) as const
export const shareField = (label: string, min = 0.01, max = 1) =>
  ({ kind: 'quantity', unit: 'Fraction', min, max, label, ...RULE }) as const
export const optional = <F extends object>(field: F) => ({ ...field, optional: true }) as const

export const SPROUTED = countField('Kernels that sprouted', 0, 10_000)
export const TESTED = countField('Kernels tested', 0, 10_000)
export const CONFIDENCE = optional(shareField('Confidence wanted', 0.5, 0.9999))
export const MOISTURE = shareField('Moisture of the kernels, wet basis', 0, 0.6)
export const STORE_C = {
  kind: 'quantity',
  unit: 'C',
  min: -60,
  max: 60,
  label: 'Warmth of the store',
  ...RULE,
} as const
export const STORE_RECORD = {
  kind: 'table',
  label: 'A year of the store, span by span; it repeats',
  maxRows: 400,
  columns: { days: countField('Days', 0, 3660), wetFraction: MOISTURE, temperatureC: STORE_C },
  optional: true,
} as const
