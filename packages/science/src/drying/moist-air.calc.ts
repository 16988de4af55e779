import type { Calc } from '../calc.ts'
import { nearest, valuesOf } from '../calc-value.ts'
import { dewPointC, humidityOfRatio, humidityRatio, wetBulbC } from './moist-air.ts'

interface MoistAirInput {
  readonly temperatureC: number
  readonly humidityFraction: number
  readonly pressureKPaAbs?: number
  readonly heatedToC?: number
}

const SEA_LEVEL_KPA = 101.325
const sourceKeys = ['ashrae-fundamentals-2017-ch1'] as const
const LIMIT = { limitSource: 'ashrae-fundamentals-2017-ch1' } as const
const outputs = {
  humidityRatio: { label: 'Water to dry air, by weight', unit: 'Fraction' },
  wetBulbC: { label: 'Wet bulb', unit: 'C' },
  dewPointC: { label: 'Dew point', unit: 'C' },
  heatedHumidityFraction: { label: 'Humidity once heated', unit: 'Fraction' },
} as const

export const moistAirCalc: Calc<MoistAirInput> = {
  id: 'moist-air',
  title: 'Air for drying',
  question: 'How much water does this air carry, when does it sweat, and how dry does it become when it is heated?',
  inputs: {
    temperatureC: { kind: 'quantity', label: 'Air', unit: 'C', min: -40, max: 100, ...LIMIT },
    humidityFraction: { kind: 'quantity', label: 'Humidity', unit: 'Fraction', min: 0.02, max: 1, ...LIMIT },
    pressureKPaAbs: {
      kind: 'quantity',
      label: 'Barometer; left out, sea level',
      unit: 'KPaAbs',
      min: 50,
      max: 110,
      ...LIMIT,
      optional: true,
    },
    heatedToC: { kind: 'quantity', label: 'Heated to', unit: 'C', min: -40, max: 100, ...LIMIT, optional: true },
  },
  outputs,
  sourceKeys,
  example: { temperatureC: 10, humidityFraction: 0.7, heatedToC: 35 },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const { temperatureC, humidityFraction, pressureKPaAbs = SEA_LEVEL_KPA, heatedToC } = input
    const air = { temperatureC, humidityFraction, pressureKPaAbs }
    const ratio = humidityRatio(air)
    const values = [
      value('humidityRatio', ratio, nearest(0.0001)),
      value('wetBulbC', wetBulbC(air), nearest(0.1)),
      value('dewPointC', dewPointC(air), nearest(0.1)),
      ...(heatedToC === undefined
        ? []
        : [
            value(
              'heatedHumidityFraction',
              humidityOfRatio(ratio, { temperatureC: heatedToC, pressureKPaAbs }),
              nearest(0.001),
            ),
          ]),
    ]
    return { ok: true, values, reasons: [], warnings: [] }
  },
}
