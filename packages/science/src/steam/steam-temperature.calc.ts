import type { Calc } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { LETHALITY_250F, lethalRate } from '../lethality/lethal-rate.ts'
import { cToF } from '../units/convert-named.ts'
import { type CannerSteam, steamTemperatureC } from './canner-steam.ts'
import { ELEVATION_FIELD, GAUGE_FIELD } from './steam-fields.ts'

const sourceKeys = ['iapws-r7-97', 'us-standard-atmosphere-1976', 'dalton-1802', 'bigelow-1920'] as const
const outputs = {
  steamC: { label: 'Temperature of the steam', unit: 'C' },
  steamF: { label: 'The same in Fahrenheit', unit: 'F' },
  lethalRateFraction: { label: 'Lethal rate, beside steam of 250 °F (z 18 °F)', unit: 'Fraction' },
} as const

export const steamTemperatureCalc: Calc<CannerSteam> = {
  id: 'steam-temperature',
  title: 'Steam temperature in a canner',
  question: 'How hot is the steam at a pressure and an elevation? It explains published pressures and never sets one.',
  inputs: {
    pressureKPaGauge: GAUGE_FIELD,
    elevationM: ELEVATION_FIELD,
    airMoleFraction: {
      kind: 'quantity',
      label: 'Share of air left among the gas in the canner, 0 to 1',
      unit: 'Fraction',
      min: 0,
      max: 0.9,
      limitSource: 'project-rule',
      optional: true,
    },
  },
  outputs,
  sourceKeys,
  example: { pressureKPaGauge: { value: 11, unit: 'PsiGauge' }, elevationM: 250, airMoleFraction: 0.05 },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const steamC = steamTemperatureC(input)
    return done([
      value('steamC', steamC, nearest(0.01)),
      value('steamF', cToF(steamC), nearest(0.01)),
      value('lethalRateFraction', lethalRate(steamC, LETHALITY_250F), nearest(0.001)),
    ])
  },
}
