/** Fields that calculations about canner steam share. */
import type { Field } from '../calc.ts'

export const GAUGE_FIELD: Field = {
  kind: 'quantity',
  label: 'True gauge pressure',
  unit: 'KPaGauge',
  min: 0,
  max: 206.85,
  limitSource: 'project-rule',
}

export const ELEVATION_FIELD: Field = {
  kind: 'quantity',
  label: 'Elevation',
  unit: 'M',
  min: -500,
  max: 6000,
  limitSource: 'project-rule',
}
