/** Input fields that more than one calculation of this package asks for. */
import type { Field } from '@crib/science'
import { GROUND_MAX_FT, GROUND_MIN_FT } from './boil.ts'

/** Wider than any table on purpose: off the table is an answer, with whom to ask, and not a fault of typing. */
export const ELEVATION_FIELD: Field = {
  kind: 'quantity',
  label: 'Elevation',
  unit: 'Ft',
  min: GROUND_MIN_FT,
  max: GROUND_MAX_FT,
  limitSource: 'project-rule',
}

export const GAUGE_FIELD: Field = { kind: 'choice', label: 'Gauge', options: ['dial', 'weight'] }
