import type { Calc } from '../calc.ts'
import { nearest, valuesOf } from '../calc-value.ts'
import type { Band } from './band.ts'
import { studyJar } from './jar-study.ts'
import { MADE_UP_RUN_EXAMPLE, MADE_UP_RUN_FIELDS, type MadeUpRunInput, madeUpRunOf } from './made-up-run-fields.ts'

/** Enough for two digits of a band. */
const SAMPLES_COUNT = 2048

const sourceKeys = [
  'carslaw-jaeger-1959',
  'iapws-r7-97',
  'us-standard-atmosphere-1976',
  'autoclave-handbook-air-table',
  'bigelow-1920',
  'food-diffusivity-table',
  'crc-kinetics-table-10-10',
  'joe-kuo-2008',
] as const
const outputs = {
  endOfHoldC: { label: 'Slowest place when the hold ends, nine tenths of made-up jars', unit: 'C' },
  lethalityMin: { label: 'Lethality of the made-up jar, heating and cooling, reference 250 °F', unit: 'Min' },
  coolingShareFraction: { label: 'Share of it gained after the heat went off', unit: 'Fraction' },
  gaugeKPa: { label: 'The same if only the true pressure is unsure', unit: 'Min' },
  weatherKPa: { label: 'The same if only the weather is unsure', unit: 'Min' },
  purgeMin: { label: 'The same if only the speed at which air leaves is unsure', unit: 'Min' },
  fillC: { label: 'The same if only the warmth of the food going in is unsure', unit: 'Min' },
  diffusivityM2PerS: { label: 'The same if only the food is unsure', unit: 'Min' },
  jarConductanceFactor: { label: 'The same if only glass and films are unsure', unit: 'Min' },
  comeUpMin: { label: 'The same if only the come-up is unsure', unit: 'Min' },
  coolDownMin: { label: 'The same if only the cool-down is unsure', unit: 'Min' },
  zDeltaC: { label: 'The same if only z of the spores is unsure', unit: 'Min' },
} as const

export const jarHeatingCalc: Calc<MadeUpRunInput> = {
  id: 'jar-heating',
  title: 'Heat in a made-up jar',
  question:
    'How warm does the slowest place of a made-up jar get, and how unsure is that? It explains; process times are looked up.',
  inputs: MADE_UP_RUN_FIELDS,
  outputs,
  sourceKeys,
  example: MADE_UP_RUN_EXAMPLE,
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const study = studyJar(madeUpRunOf(input), SAMPLES_COUNT)
    const range = ({ low, high }: Band) => ({ low, high })
    return {
      ok: true,
      values: [
        value('endOfHoldC', study.endOfHoldC.mid, nearest(0.1), range(study.endOfHoldC)),
        value('lethalityMin', study.lethalityMin.mid, nearest(0.1), range(study.lethalityMin)),
        value('coolingShareFraction', study.coolingShareFraction, nearest(0.01)),
        // Widest first.
        ...study.swings.map(({ input: name, atLow, atHigh }) =>
          value(name, study.lethalityMin.mid, nearest(0.1), {
            low: Math.min(atLow, atHigh, study.lethalityMin.mid),
            high: Math.max(atLow, atHigh, study.lethalityMin.mid),
          }),
        ),
      ],
      reasons: [
        { key: input.pack === 'packed solid' ? 'heat:packed-solid' : 'heat:free-brine' },
        { key: 'heat:made-up' },
      ],
      warnings: [{ key: 'heat:does-not-change-directions' }],
    }
  },
}
