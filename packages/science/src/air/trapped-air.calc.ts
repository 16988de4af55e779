import { standardPressureKPaAbs } from '../atmosphere/standard-atmosphere.ts'
import type { Calc } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { LETHALITY_250F, lethalRate } from '../lethality/lethal-rate.ts'
import { ELEVATION_FIELD, GAUGE_FIELD } from '../steam/steam-fields.ts'
import { cToF } from '../units/convert-named.ts'
import { airLeftTemperatureC } from './trapped-air.ts'

interface TrappedAirInput {
  readonly pressureKPaGauge: number
  readonly elevationM: number
  readonly airLeftFraction: number
}

const sourceKeys = [
  'dalton-1802',
  'autoclave-handbook-air-table',
  'iapws-r7-97',
  'us-standard-atmosphere-1976',
] as const
const outputs = {
  ventedC: { label: 'With all air driven out', unit: 'C' },
  ventedF: { label: 'The same in Fahrenheit', unit: 'F' },
  withAirC: { label: 'With this much of the air left in', unit: 'C' },
  withAirF: { label: 'The same in Fahrenheit', unit: 'F' },
  lethalRateLeftFraction: { label: 'Lethal rate left, of that with all air out (z 18 °F)', unit: 'Fraction' },
} as const

export const trappedAirCalc: Calc<TrappedAirInput> = {
  id: 'trapped-air',
  title: 'What unvented air costs',
  question: 'How much cooler is a canner whose needle stands right but whose air was not driven out?',
  inputs: {
    pressureKPaGauge: GAUGE_FIELD,
    elevationM: ELEVATION_FIELD,
    airLeftFraction: {
      kind: 'quantity',
      label: 'Share of the first air still in the canner, 0 to 1',
      unit: 'Fraction',
      min: 0,
      max: 1,
      limitSource: 'project-rule',
    },
  },
  outputs,
  sourceKeys,
  example: { pressureKPaGauge: { value: 11, unit: 'PsiGauge' }, elevationM: 250, airLeftFraction: 0.3 },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const { pressureKPaGauge, airLeftFraction } = input
    const canner = { pressureKPaGauge, atmosphereKPaAbs: standardPressureKPaAbs(input.elevationM) }
    const ventedC = airLeftTemperatureC({ ...canner, airLeftFraction: 0 })
    const withAirC = airLeftTemperatureC({ ...canner, airLeftFraction })
    const rateLeft = lethalRate(withAirC, LETHALITY_250F) / lethalRate(ventedC, LETHALITY_250F)
    return done([
      value('ventedC', ventedC, nearest(0.1)),
      value('ventedF', cToF(ventedC), nearest(0.1)),
      value('withAirC', withAirC, nearest(0.1)),
      value('withAirF', cToF(withAirC), nearest(0.1)),
      value('lethalRateLeftFraction', rateLeft, nearest(0.001)),
    ])
  },
}
