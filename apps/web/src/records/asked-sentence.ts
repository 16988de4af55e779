/** What the book asks or refuses, as a sentence; instants in it are told as people here write them. */
import type { Question, Refusal } from '@crib/journal'
import type { Sentence } from '@crib/science'
import { whenText } from '../routes/people/when-text.ts'

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/

export function askedSentence({ code, params }: Question | Refusal): Sentence {
  const told = Object.entries(params).map(([name, value]) => [
    name,
    typeof value === 'string' && INSTANT.test(value) ? whenText(value) : value,
  ])
  return { key: `errors:${code}`, params: Object.fromEntries(told) }
}
