/** Whom to ask when a table does not reach as far as the question. */
import type { Sentence } from '@crib/science'
import { sentence } from './sentence.ts'

/** Extension office, process authority, and whoever holds the local or tribal food code; nearest first. */
export function askWhom(): readonly Sentence[] {
  return [
    sentence('guidance:ask-extension-office'),
    sentence('guidance:ask-process-authority'),
    sentence('guidance:ask-food-code'),
  ]
}
