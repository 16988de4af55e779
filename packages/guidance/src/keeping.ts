/** How hominy keeps: fresh, frozen, dried, canned. Printed for neighbouring foods, and said so. */
import type { Sentence } from '@crib/science'
import json from '../data/keeping.json' with { type: 'json' }
import { GUIDANCE_EDITION, type Seen, type Standing } from '../schema/envelope.ts'
import { type KeepingForm, keepingSchema } from '../schema/list-tables.ts'
import { loadTable } from './load.ts'
import { sentence } from './sentence.ts'

export const KEEPING = loadTable(keepingSchema, json)

const SAY = {
  fresh: 'guidance:keeping-fresh',
  frozen: 'guidance:keeping-frozen',
  dried: 'guidance:keeping-dried',
  canned: 'guidance:keeping-canned',
} as const

export interface KeepingAdvice {
  readonly form: KeepingForm
  /** How long, as printed; null where no time is printed for it. */
  readonly keeps: { readonly low: number; readonly high: number; readonly unit: 'Days' | 'Months' } | null
  /** At or below. [F]  Null where none is printed. */
  readonly holdF: number | null
  readonly printed: string
  readonly say: Sentence
  readonly seen: Seen
  readonly standing: Standing
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

/**
 * How long a form of hominy keeps, and how. Fresh 3 to 4 days at 40 F or less; frozen 8 to 12 months for quality.
 *
 * @throws {RangeError} for a form the table does not know.
 * @source illinois-leftovers; usda-garden-produce; msu-01600519; usda-aib-539-1994
 */
export function keepingAdvice(form: KeepingForm): KeepingAdvice {
  const row = KEEPING.rows.find((candidate) => candidate.form === form)
  if (!row) throw new RangeError(`form is "${String(form)}"; ${KEEPING.source} covers ${Object.keys(SAY).join(', ')}`)
  const { low, high, unit, holdF, printed, seen, source } = row
  return {
    form,
    keeps: low !== null && high !== null && unit !== null ? { low, high, unit } : null,
    holdF,
    printed,
    say: sentence(SAY[form], { ...(low !== null && { low }), ...(high !== null && { high }) }),
    seen,
    standing: KEEPING.standing,
    sourceKeys: [source],
    edition: GUIDANCE_EDITION,
  }
}
