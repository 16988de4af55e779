import type { Calc, CalcResult } from '@crib/science'
import {
  cleanSaltJarWetFraction,
  JAR_TEST_FRACTION,
  jarMoistureWetFraction,
  moistureByWeightWetFraction,
  OVEN_REPLICATE_FRACTION,
  ovenMoistureWetFraction,
} from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface MoistureForm {
  readonly by: 'oven' | 'weight' | 'closed-jar' | 'salt-jar'
  readonly dishG?: number
  readonly withWetG?: number
  readonly withDryG?: number
  readonly startKg?: number
  readonly startWetFraction?: number
  readonly nowKg?: number
  readonly temperatureC?: number
  readonly readsFraction?: number
  readonly overSaltFraction?: number
  readonly saltClung?: boolean
}

const RULE = { limitSource: 'project-rule', optional: true } as const
const grams = (label: string) => ({ kind: 'quantity', label, unit: 'G', min: 0, max: 100_000, ...RULE }) as const
const kilos = (label: string) => ({ kind: 'quantity', label, unit: 'Kg', min: 0.001, max: 5000, ...RULE }) as const
const share = (label: string) => ({ kind: 'quantity', label, unit: 'Fraction', min: 0.01, max: 0.95, ...RULE }) as const

/** What each way of testing must be told. */
const NEEDS = {
  oven: ['dishG', 'withWetG', 'withDryG'],
  weight: ['startKg', 'startWetFraction', 'nowKg'],
  'closed-jar': ['temperatureC', 'readsFraction'],
  'salt-jar': ['temperatureC', 'saltClung'],
} as const satisfies { readonly [by in MoistureForm['by']]: readonly (keyof MoistureForm)[] }

export const moistureCalc: Calc<MoistureForm> = {
  id: 'moisture-test',
  title: 'Moisture of corn by a home test',
  question: 'What moisture does this test show, on the wet basis, and how far can it be trusted?',
  inputs: {
    by: { kind: 'choice', options: ['oven', 'weight', 'closed-jar', 'salt-jar'], label: 'Test' },
    dishG: grams('Oven: empty dish'),
    withWetG: grams('Oven: dish and corn before'),
    withDryG: grams('Oven: dish and corn after 72 h at 103 °C'),
    startKg: kilos('Weight: then'),
    startWetFraction: share('Weight: moisture then, wet basis'),
    nowKg: kilos('Weight: now'),
    temperatureC: { kind: 'quantity', label: 'Jar: warmth', unit: 'C', min: 0, max: 60, ...RULE },
    readsFraction: share('Closed jar: the hygrometer reads'),
    overSaltFraction: share('Closed jar: the same hygrometer over wet table salt read'),
    saltClung: { kind: 'flag', label: 'Salt jar: salt clung to the glass', optional: true },
  },
  outputs: { moistureFraction: { label: 'Moisture, wet basis', unit: 'Fraction' } },
  sourceKeys: ['asae-s352', 'hicks-cloud-nch-61', 'jar-hygrometer-purdue', 'greenspan-1977', 'asae-d245'],
  example: { by: 'closed-jar', temperatureC: 20, readsFraction: 0.62, overSaltFraction: 0.77 },
  run: (form) => {
    const missing = NEEDS[form.by].filter((name) => form[name] === undefined)
    if (missing.length > 0) return refuse('missing', say('keeping:test-needs', { what: missing.join(', ') }))
    const grown =
      form.by === 'oven' ? form.withDryG! > form.withWetG! : form.by === 'weight' && form.nowKg! > form.startKg!
    if (grown) return refuse('grew-heavier', say('keeping:grew-heavier'))
    return tested(form)
  },
}

/** What one home test shows. @source each way's own, named in the value */
export function moistureTest(form: MoistureForm): CalcResult {
  return moistureCalc.run(form)
}

const refuse = (refused: string, why: ReturnType<typeof say>): CalcResult => ({
  ok: false,
  refused,
  why: [why],
  askWhom: [],
})

function tested(form: MoistureForm): CalcResult {
  const [moisture, width, sourceKeys] = readTest(form)
  const value = reckon({
    id: 'moistureFraction',
    value: moisture,
    ...(width > 0 && { low: Math.max(0, moisture - width), high: moisture + width }),
    unit: 'Fraction',
    rounding: nearest(0.001),
    basis: 'computed',
    sourceKeys,
    inputs: { by: form.by },
  })
  if (form.by === 'salt-jar') {
    const key = form.saltClung ? 'keeping:salt-clung' : 'keeping:salt-clean'
    return { ok: true, values: [value], reasons: [say(key, { moisture: quantity(moisture) })], warnings: [] }
  }
  const warnings =
    form.by === 'closed-jar' && form.overSaltFraction === undefined ? [say('keeping:check-over-salt')] : []
  return { ok: true, values: [value], reasons: [say('keeping:wet-basis')], warnings }
}

/** Moisture, how far either way it can be off, and whose method. */
function readTest(form: MoistureForm): readonly [number, number, readonly string[]] {
  const { dishG, withWetG, withDryG, startKg, startWetFraction, nowKg, temperatureC, readsFraction } = form
  switch (form.by) {
    case 'oven': {
      const dish = { dishG: dishG!, withWetG: withWetG!, withDryG: withDryG! }
      return [ovenMoistureWetFraction(dish), OVEN_REPLICATE_FRACTION, ['asae-s352']]
    }
    case 'weight': {
      const weights = { startKg: startKg!, startWetFraction: startWetFraction!, nowKg: nowKg! }
      return [moistureByWeightWetFraction(weights), 0, ['hicks-cloud-nch-61']]
    }
    case 'closed-jar': {
      const { overSaltFraction } = form
      const reading = {
        temperatureC: temperatureC!,
        readsFraction: readsFraction!,
        ...(overSaltFraction !== undefined && { overSaltFraction }),
      }
      const keys = ['jar-hygrometer-purdue', 'greenspan-1977', 'asae-d245']
      return [jarMoistureWetFraction(reading), JAR_TEST_FRACTION, keys]
    }
    case 'salt-jar':
      return [cleanSaltJarWetFraction(temperatureC!), 0, ['greenspan-1977', 'asae-d245']]
  }
}

const quantity = (value: number) => ({ value: Math.round(value * 1000) / 1000, unit: 'Fraction' }) as const
