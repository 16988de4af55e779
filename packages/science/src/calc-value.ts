/** Makes the values of this package's calculations: same edition, sources and inputs on each. */
import type { Calc } from './calc.ts'
import { CODE_VERSION, type Json, type Reckoned, type Rounding } from './reckoned.ts'

/** Edition of the sources and equations in sources.bib. */
export const SCIENCE_EDITION = 'science-2026-11'

export const nearest = (step: number): Rounding => ({ mode: 'nearest', step })

type More = Partial<Pick<Reckoned, 'low' | 'high' | 'basis' | 'sourceKeys'>>

/** A maker of values for one run of one calculation. Basis is `computed` unless said otherwise. */
export function valuesOf<Outputs extends Calc['outputs']>(
  { outputs, sourceKeys }: { readonly outputs: Outputs; readonly sourceKeys: readonly string[] },
  inputs: { readonly [name: string]: Json | undefined },
) {
  const given = Object.fromEntries(
    Object.entries(inputs).filter((entry): entry is [string, Json] => entry[1] !== undefined),
  )
  return (id: keyof Outputs & string, value: number, rounding: Rounding, more: More = {}): Reckoned => ({
    id,
    value,
    unit: outputs[id]!.unit,
    rounding,
    basis: 'computed',
    sourceKeys,
    inputs: given,
    edition: SCIENCE_EDITION,
    codeVersion: CODE_VERSION,
    ...more,
  })
}

export const done = (values: readonly Reckoned[]) => ({ ok: true, values, reasons: [], warnings: [] }) as const
