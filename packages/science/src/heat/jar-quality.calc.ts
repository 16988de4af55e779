import type { Calc } from '../calc.ts'
import { nearest, valuesOf } from '../calc-value.ts'
import type { Band } from './band.ts'
import { studyQuality } from './jar-quality.ts'
import { MADE_UP_RUN_EXAMPLE, MADE_UP_RUN_FIELDS, type MadeUpRunInput, madeUpRunOf } from './made-up-run-fields.ts'

/** Enough for two digits of a band. */
const SAMPLES_COUNT = 2048

const sourceKeys = [
  'crc-kinetics-table-10-10',
  'ramaswamy-1990',
  'lee-2017-texture',
  'carslaw-jaeger-1959',
  'iapws-r7-97',
  'us-standard-atmosphere-1976',
  'autoclave-handbook-air-table',
  'food-diffusivity-table',
  'joe-kuo-2008',
] as const
const outputs = {
  thiamineKeptFraction: { label: 'Thiamine left at the slowest place, nine tenths of made-up jars', unit: 'Fraction' },
  cookedMin: { label: 'Cooked at the slowest place as by a boil at 100 °C of', unit: 'Min' },
  cookedZDeltaC: { label: 'The same if only how heat softens the food is unsure', unit: 'Min' },
  gaugeKPa: { label: 'The same if only the true pressure is unsure', unit: 'Min' },
  coolDownMin: { label: 'The same if only the cool-down is unsure', unit: 'Min' },
} as const

export const jarQualityCalc: Calc<MadeUpRunInput> = {
  id: 'jar-quality',
  title: 'What a made-up run does to the food',
  question: 'How much thiamine is left in a made-up jar, and how long a boil at 100 °C would have cooked it as much?',
  inputs: MADE_UP_RUN_FIELDS,
  outputs,
  sourceKeys,
  example: MADE_UP_RUN_EXAMPLE,
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const { thiamineKeptFraction, cookedMin, swings } = studyQuality(madeUpRunOf(input), SAMPLES_COUNT)
    const range = ({ low, high }: Band) => ({ low, high })
    const swing = (name: 'cookedZDeltaC' | 'gaugeKPa' | 'coolDownMin') => {
      const { atLow, atHigh } = swings.find(({ input: one }) => one === name)!
      const ends = [atLow, atHigh, cookedMin.mid]
      return value(name, cookedMin.mid, nearest(1), { low: Math.min(...ends), high: Math.max(...ends) })
    }
    return {
      ok: true,
      values: [
        value('thiamineKeptFraction', thiamineKeptFraction.mid, nearest(0.01), range(thiamineKeptFraction)),
        value('cookedMin', cookedMin.mid, nearest(1), range(cookedMin)),
        swing('cookedZDeltaC'),
        swing('gaugeKPa'),
        swing('coolDownMin'),
      ],
      reasons: [
        { key: input.pack === 'packed solid' ? 'heat:packed-solid' : 'heat:free-brine' },
        { key: 'heat:made-up' },
        { key: 'heat:quality-of-other-foods' },
      ],
      warnings: [{ key: 'heat:does-not-change-directions' }],
    }
  },
}
