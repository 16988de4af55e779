/** A printed figure as a Reckoned value, so that it reaches every door with its source. */
import { type Basis, CODE_VERSION, type Reckoned, type Unit } from '@crib/science'
import { GUIDANCE_EDITION, type Seen } from '../schema/envelope.ts'

const BASIS: Readonly<Record<Seen, Basis>> = {
  seen: 'published',
  'seen in part': 'published',
  'from memory, not re-read': 'published',
  'common practice, no source': 'common-practice',
  'project rule': 'project-rule',
}

/** Finer than any figure printed here, so that showing never changes a printed value. */
const AS_PRINTED = { mode: 'nearest', step: 0.05 } as const

export function printedFigure(figure: {
  readonly id: string
  readonly value: number
  readonly high?: number | undefined
  readonly unit: Unit
  readonly seen: Seen
  readonly sourceKeys: readonly string[]
  readonly inputs?: Reckoned['inputs']
}): Reckoned {
  const { id, value, high, unit, seen, sourceKeys, inputs = {} } = figure
  return {
    id,
    value,
    unit,
    rounding: AS_PRINTED,
    ...(high !== undefined && { low: value, high }),
    basis: BASIS[seen],
    sourceKeys,
    inputs,
    edition: GUIDANCE_EDITION,
    codeVersion: CODE_VERSION,
  }
}
