import { airLeftTemperatureC } from '../air/trapped-air.ts'
import { standardPressureKPaAbs } from '../atmosphere/standard-atmosphere.ts'
import type { Calc } from '../calc.ts'
import { nearest, valuesOf } from '../calc-value.ts'
import { LETHALITY_250F, lethalRate } from '../lethality/lethal-rate.ts'
import { ELEVATION_FIELD, GAUGE_FIELD } from '../steam/steam-fields.ts'
import { airLeftAfterVentFraction, PURGE_MIN } from './canner-atmosphere.ts'

interface VentingInput {
  readonly pressureKPaGauge: number
  readonly elevationM: number
  readonly ventMin: number
}

/** The published rule. */
const PUBLISHED_VENT_MIN = 10

const sourceKeys = [
  'iapws-r7-97',
  'us-standard-atmosphere-1976',
  'autoclave-handbook-air-table',
  'bigelow-1920',
  'wambura-2004',
] as const
const outputs = {
  rateLeftFraction: { label: 'Lethal rate, of the same run vented for 10 min', unit: 'Fraction' },
  coolerDeltaC: { label: 'Cooler than the same run vented for 10 min', unit: 'DeltaC' },
} as const

export const whatVentingCostsCalc: Calc<VentingInput> = {
  id: 'what-venting-costs',
  title: 'What a shorter vent costs',
  question:
    'Beside the same canner vented for the published ten minutes, how much heat is lost when the vent closes sooner?',
  inputs: {
    pressureKPaGauge: GAUGE_FIELD,
    elevationM: ELEVATION_FIELD,
    ventMin: {
      kind: 'quantity',
      label: 'Steady steam before the vent closed',
      unit: 'Min',
      min: 0,
      max: 60,
      limitSource: 'project-rule',
    },
  },
  outputs,
  sourceKeys,
  example: { pressureKPaGauge: { value: 11, unit: 'PsiGauge' }, elevationM: 250, ventMin: 7 },
  run: (input) => {
    const { pressureKPaGauge, elevationM, ventMin } = input
    const atmosphereKPaAbs = standardPressureKPaAbs(elevationM)
    const steamC = (minutes: number, purgeMin: number) => {
      const airLeftFraction = airLeftAfterVentFraction(minutes, purgeMin)
      return airLeftTemperatureC({ pressureKPaGauge, atmosphereKPaAbs, airLeftFraction })
    }
    const beside = (purgeMin: number) => {
      const soonC = steamC(ventMin, purgeMin)
      const fullC = steamC(PUBLISHED_VENT_MIN, purgeMin)
      return { left: lethalRate(soonC, LETHALITY_250F) / lethalRate(fullC, LETHALITY_250F), cooler: fullC - soonC }
    }
    const all = [PURGE_MIN.low, PURGE_MIN.mid, PURGE_MIN.high].map(beside)
    const span = (of: 'left' | 'cooler') => {
      const figures = all.map((one) => one[of])
      return { low: Math.min(...figures), high: Math.max(...figures) }
    }
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    return {
      ok: true,
      values: [
        value('rateLeftFraction', all[1]!.left, nearest(0.01), span('left')),
        value('coolerDeltaC', all[1]!.cooler, nearest(0.1), span('cooler')),
      ],
      reasons: [{ key: 'heat:vent-guess' }, { key: 'heat:vent-study' }],
      warnings: [{ key: 'heat:vent-rule' }, { key: 'heat:does-not-change-directions' }],
    }
  },
}
