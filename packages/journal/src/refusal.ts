/**
 * Why something is not taken as written: a code with what goes in its gaps. Apps word it from messages/en/errors.json,
 * whose keys are these codes.
 */
export const REFUSAL_CODES = [
  'out-of-limits',
  'not-a-number',
  'wrong-value',
  'missing-value',
  'unknown-field',
  'unknown-kind',
  'aluminium-pot',
  'boiled-below-cold',
  'alkali-never-into-food',
  'tails-beyond-whole',
  'handful-beyond-whole',
  'mould-only-discarded',
  'reason-needed',
  'amount-needed',
  'treated-seed-never-food',
  'two-canners-one-name',
  'used-more-than-held',
  'used-more-than-remaining',
  'seed-over-lot',
  'no-such-lot',
  'no-such-batch',
  'no-such-canner',
  'no-such-run',
  'no-such-alkali-lot',
  'no-such-entry',
  'no-such-plot',
  'no-such-planting',
  'before-sowing',
  'no-such-seed-lot',
  'before-seed-put-by',
  'seed-used-beyond',
  'heat-off-already-told',
  'gauge-not-on-canner',
  'correction-moves-entry',
  'happened-after-written',
  'not-yours-to-write',
  'heavier-while-drying',
  'heavier-than-before',
  'made-into-itself',
] as const

export type RefusalCode = (typeof REFUSAL_CODES)[number]

/** What goes in a sentence's gaps. A weight keeps its unit, so that each kitchen reads it in its own measure. */
export interface GapParams {
  readonly [name: string]: string | number | { readonly value: number; readonly unit: 'Kg' }
}

export interface Refusal {
  readonly code: RefusalCode
  readonly params: GapParams
}

export function kg(value: number): { readonly value: number; readonly unit: 'Kg' } {
  return { value, unit: 'Kg' }
}

/** A body its kind does not take. Carries every reason, so that a form can show them beside their fields. */
export class BodyRefused extends RangeError {
  readonly refusals: readonly Refusal[]

  constructor(kind: string, refusals: readonly Refusal[]) {
    super(`${kind} refused: ${refusals.map(({ code, params }) => `${code} ${JSON.stringify(params)}`).join('; ')}`)
    this.name = 'BodyRefused'
    this.refusals = refusals
  }
}
