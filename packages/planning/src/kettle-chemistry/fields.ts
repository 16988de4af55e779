/** Small helpers of this part's calculations: fields, and values with the inputs they came from. */
import type { Basis, Field, Json, Reckoned, Rounding, Sentence, Spread, Unit } from '@crib/science'
import { isCorrosive } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export const RULE = 'project-rule'

export function amount(
  label: string,
  unit: Unit,
  min: number,
  max: number,
  more: { readonly optional?: true } = {},
): Field {
  return { kind: 'quantity', label, unit, min, max, limitSource: RULE, ...more }
}

export type ValueMaker = (
  id: string,
  value: number | Spread,
  unit: Unit,
  step: number,
  more?: { readonly basis?: Basis; readonly sourceKeys?: readonly string[]; readonly rounding?: Rounding },
) => Reckoned

/** A maker of values for one run of one calculation; a spread brings its range along. */
export function valuesOf(inputs: object, sourceKeys: readonly string[]): ValueMaker {
  // Inputs of a calculation are plain data by its schema.
  const given = JSON.parse(JSON.stringify(inputs)) as { readonly [name: string]: Json }
  return (id, value, unit, step, more = {}) => {
    const spread = typeof value === 'number' ? { value, low: undefined, high: undefined } : value
    return reckon({
      id,
      value: spread.value,
      low: spread.low,
      high: spread.high,
      unit,
      rounding: more.rounding ?? nearest(step),
      basis: more.basis ?? 'computed',
      sourceKeys: more.sourceKeys ?? sourceKeys,
      inputs: given,
    })
  }
}

/** At pH 11.5 and above a liquor is called corrosive, everywhere. [pH at 25 °C] */
export function corrosiveWarning(pHAt25C: number): readonly Sentence[] {
  return isCorrosive(pHAt25C)
    ? [say('kettle:chem-corrosive', { pH: Number(pHAt25C.toFixed(1)) }), say('cautions:rub-first-aid')]
    : []
}

export const tooStrong = {
  ok: false,
  refused: 'too-strong',
  why: [say('kettle:chem-too-strong')],
  askWhom: [],
} as const

export const wider = ({ value, low, high }: Spread, by: number): Spread => ({
  value: value * by,
  low: low * by,
  high: high * by,
})
