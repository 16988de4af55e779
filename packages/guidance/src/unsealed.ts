/** What may still be done with a jar that did not seal, by the hours since it came out. */
import type { Sentence } from '@crib/science'
import json from '../data/unsealed-jars.json' with { type: 'json' }
import { GUIDANCE_EDITION, type Standing } from '../schema/envelope.ts'
import { type UnsealedChoiceKey, unsealedJarsSchema } from '../schema/list-tables.ts'
import { loadTable, tableSourceKeys } from './load.ts'
import { ruleFor } from './rules.ts'
import { sentence } from './sentence.ts'

export const UNSEALED_JARS = loadTable(unsealedJarsSchema, json)

export interface UnsealedChoice {
  readonly key: UnsealedChoiceKey | 'discard'
  readonly say: Sentence
  /** Hours left for this choice; null for discarding, which never closes. */
  readonly hoursLeft: number | null
}

export interface UnsealedOutcome {
  /** Open choices, gentlest first; only `discard` when none is open. */
  readonly choices: readonly UnsealedChoice[]
  readonly why: readonly Sentence[]
  readonly standing: Standing
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

/**
 * Choices for an unsealed jar: refrigerate, freeze, or the full process again, within 24 h; within 2 h when the method
 * itself was wrong. Afterwards: do not taste, throw away.
 *
 * @param hoursSinceOut since the jars came out of the canner. [h]  0 or more; exactly 24 h is still within.
 * @throws {RangeError} when negative or not a number.
 * @source unl-unsealed-jars; msu-01600593; stricter for a wrong method: kstate-unsealed
 */
export function unsealedChoices(hoursSinceOut: number, methodWasRight: boolean): UnsealedOutcome {
  if (!(hoursSinceOut >= 0 && hoursSinceOut < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`hoursSinceOut is ${hoursSinceOut} h; ${UNSEALED_JARS.source} covers 0 h and later`)
  }
  const rows = UNSEALED_JARS.rows.filter((row) => row.method === (methodWasRight ? 'right' : 'wrong'))
  const open = rows.filter((row) => hoursSinceOut <= row.withinH)
  const limitH = Math.max(...rows.map((row) => row.withinH))
  return {
    choices:
      open.length > 0
        ? open.map((row) => ({ key: row.choice, say: sayChoice(row.choice), hoursLeft: row.withinH - hoursSinceOut }))
        : [{ key: 'discard', say: sentence('guidance:unsealed-discard'), hoursLeft: null }],
    why: [
      sentence(methodWasRight ? 'guidance:unsealed-limit' : 'guidance:unsealed-limit-wrong-method', {
        limit: { value: limitH, unit: 'H' },
      }),
      ...(methodWasRight ? [] : [sentence('guidance:unsealed-stricter-source')]),
    ],
    standing: UNSEALED_JARS.standing,
    sourceKeys: tableSourceKeys(UNSEALED_JARS),
    edition: GUIDANCE_EDITION,
  }
}

function sayChoice(choice: UnsealedChoiceKey): Sentence {
  switch (choice) {
    case 'refrigerate':
      return sentence('guidance:unsealed-refrigerate')
    case 'freeze': {
      const { value, unit } = ruleFor('refreeze-headspace').figure
      return sentence('guidance:unsealed-freeze', { headspace: { value, unit } })
    }
    case 'full-process-again':
      return sentence('guidance:unsealed-full-process')
  }
}
