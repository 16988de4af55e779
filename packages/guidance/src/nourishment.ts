/** What hot alkali truly frees, said first; and what it does not give. Leaves out: figures per serving. */
import type { Sentence } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import json from '../data/nourishment.json' with { type: 'json' }
import { nourishmentSchema } from '../schema/list-tables.ts'
import { loadTable } from './load.ts'
import { sentence } from './sentence.ts'

export const NOURISHMENT = loadTable(nourishmentSchema, json)

/** What alkali frees first, then what it does not give. @source the row's own source in data/nourishment.json */
export function whatAlkaliFrees(): readonly Sentence[] {
  // nourishment.test.ts checks that every row names a message that exists.
  return NOURISHMENT.rows.map((row) => sentence(`guidance:${row.message}` as MessageKey))
}
