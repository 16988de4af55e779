/** What the journal refuses or asks, as a sentence: its codes are the keys of messages/en/errors.json. */
import type { Question, Refusal } from '@crib/journal'
import type { Sentence } from '@crib/science'

export function refusalSentence({ code, params }: Refusal | Question): Sentence {
  return { key: `errors:${code}`, params }
}
