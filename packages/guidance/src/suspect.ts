/** What to do with a jar in doubt: by published rule, in order, without opening or tasting it. */
import type { Sentence } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import json from '../data/suspect-jars.json' with { type: 'json' }
import { suspectJarsSchema } from '../schema/list-tables.ts'
import { loadTable } from './load.ts'
import { sentence } from './sentence.ts'

export const SUSPECT_JARS = loadTable(suspectJarsSchema, json)

/** The steps for a jar that is still sealed, or that is open, unsealed or leaking. @source missouri-qafs157 */
export function suspectJarSteps(state: 'sealed' | 'open'): readonly Sentence[] {
  // suspect.test.ts checks that every row names a message that exists.
  const steps = SUSPECT_JARS.rows.filter((row) => row.state === state)
  return [
    sentence('guidance:suspect-never-taste'),
    ...steps.map(({ message }) => sentence(`guidance:${message}` as MessageKey)),
  ]
}
