import type { Calc, Reckoned } from '@crib/science'
import { ELEVATION_FIELD, GAUGE_FIELD } from './fields.ts'
import { printedFigure } from './figures.ts'
import { type FoundPressure, type GaugeKind, pressureRowFor } from './pressure.ts'

interface PressureBandInput {
  readonly gauge: GaugeKind
  readonly elevationFt: number
}

/** A printed pressure and its band as values for a door. */
export function pressureValues(pressure: FoundPressure, inputs: Reckoned['inputs']): readonly Reckoned[] {
  const { sourceKeys } = pressure
  const figure = (id: string, value: number, unit: Reckoned['unit']): Reckoned =>
    printedFigure({ id, value, unit, seen: 'seen', sourceKeys, inputs })
  return [
    figure(pressure.gauge === 'dial' ? 'setPsi' : 'setWeightLb', pressure.setPsi, pressure.unit),
    figure('bandMinFt', pressure.bandMinFt, 'Ft'),
    figure('bandMaxFt', pressure.bandMaxFt, 'Ft'),
  ]
}

export const PRESSURE_OUTPUTS = {
  setPsi: { label: 'Set the dial to', unit: 'PsiGauge' },
  setWeightLb: { label: 'Use the weight of', unit: 'LbWeight' },
  bandMinFt: { label: 'Band of the table, above', unit: 'Ft' },
  bandMaxFt: { label: 'Band of the table, up to', unit: 'Ft' },
} as const

export const pressureBandCalc: Calc<PressureBandInput> = {
  id: 'pressure-band',
  title: 'Pressure printed for an elevation',
  question: 'Which pressure does the published table print for this gauge and elevation?',
  inputs: { gauge: GAUGE_FIELD, elevationFt: ELEVATION_FIELD },
  outputs: PRESSURE_OUTPUTS,
  sourceKeys: ['usda-aib-539-1994', 'pnw-421'],
  example: { gauge: 'dial', elevationFt: 2150 },
  run: ({ gauge, elevationFt }) => {
    const outcome = pressureRowFor(gauge, elevationFt)
    if (outcome.kind === 'off-table') {
      const { why, askWhom, forInformation } = outcome
      return { ok: false, refused: 'off-table', why: forInformation ? [...why, forInformation] : why, askWhom }
    }
    return { ok: true, values: pressureValues(outcome, { gauge, elevationFt }), reasons: [], warnings: [] }
  },
}
