/** How a made-up run is asked for, alike in each calculation on one. */
import type { Field } from '../calc.ts'
import { ELEVATION_FIELD, GAUGE_FIELD } from '../steam/steam-fields.ts'
import type { MadeUpRun } from './jar-study.ts'

export interface MadeUpRunInput {
  readonly jar: 'pint' | 'quart'
  readonly pack: 'free brine' | 'packed solid'
  readonly gaugeKPaGauge: number
  readonly elevationM: number
  readonly ventMin: number
  readonly holdMin: number
  readonly fillC: number
  readonly coolDownMin?: number
  readonly gaugeReadsHighKPaGauge?: number
}

const USUAL_COOL_DOWN_MIN = 35

const minutes = (label: string, min: number, max: number, optional = false): Field => ({
  kind: 'quantity',
  label,
  unit: 'Min',
  min,
  max,
  limitSource: 'project-rule',
  ...(optional && { optional }),
})

export const MADE_UP_RUN_FIELDS = {
  jar: { kind: 'choice', label: 'Jar', options: ['pint', 'quart'] },
  pack: { kind: 'choice', label: 'How the food lies', options: ['free brine', 'packed solid'] },
  gaugeKPaGauge: { ...GAUGE_FIELD, label: 'What the gauge shows' },
  elevationM: ELEVATION_FIELD,
  ventMin: minutes('Steady steam from the open vent', 0, 60),
  holdMin: minutes('At pressure', 0, 240),
  fillC: {
    kind: 'quantity',
    label: 'Food when the jars go in',
    unit: 'C',
    min: 30,
    max: 98,
    limitSource: 'project-rule',
  },
  coolDownMin: minutes('From heat off to zero, by itself; 35 unless said', 3, 180, true),
  gaugeReadsHighKPaGauge: {
    kind: 'quantity',
    label: 'How much too high the gauge reads; none unless said',
    unit: 'KPaGauge',
    min: -20,
    max: 30,
    limitSource: 'project-rule',
    optional: true,
  },
} as const satisfies { readonly [name in keyof MadeUpRunInput]-?: Field }

/** Invented. */
export const MADE_UP_RUN_EXAMPLE = {
  jar: 'pint',
  pack: 'free brine',
  gaugeKPaGauge: { value: 11, unit: 'PsiGauge' },
  elevationM: 250,
  ventMin: 10,
  holdMin: 55,
  fillC: 82,
} as const

export function madeUpRunOf(input: MadeUpRunInput): MadeUpRun {
  return {
    jar: input.jar,
    pack: input.pack,
    elevationM: input.elevationM,
    gaugeKPa: input.gaugeKPaGauge,
    gaugeReadsHighKPa: input.gaugeReadsHighKPaGauge ?? 0,
    ventMin: input.ventMin,
    holdMin: input.holdMin,
    fillC: input.fillC,
    coolDownMin: input.coolDownMin ?? USUAL_COOL_DOWN_MIN,
  }
}
