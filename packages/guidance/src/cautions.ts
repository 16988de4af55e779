/** Cautions, one line each, at the moment the hand is about to act. */
import type { Sentence } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import json from '../data/cautions.json' with { type: 'json' }
import { cautionsSchema, type Moment, momentSchema } from '../schema/list-tables.ts'
import { loadTable } from './load.ts'
import { sentence } from './sentence.ts'

export const CAUTIONS = loadTable(cautionsSchema, json)
export const MOMENTS: readonly Moment[] = momentSchema.options

/** The cautions of a moment, gravest first. @source the row's own source in data/cautions.json */
export function cautionsFor(moment: Moment): readonly Sentence[] {
  return (
    CAUTIONS.rows
      .filter((row) => row.moment === moment)
      // cautions.test.ts checks that every row names a message that exists.
      .map((row) => sentence(`cautions:${row.message}` as MessageKey))
  )
}
