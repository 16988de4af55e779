/** What the journal refuses or asks, as a sentence: its codes are the keys of messages/en/errors.json. */
import type { Question, Refusal } from '@crib/journal'
import type { Sentence } from '@crib/science'
import { showInstant } from './clock-times.ts'

export function refusalSentence({ code, params }: Refusal | Question): Sentence {
  return { key: `errors:${code}`, params }
}

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/

/** A question with its instants as clocks of `zone` show them. */
export function questionSentence({ code, params }: Question, zone: string): Sentence {
  const told = Object.entries(params).map(([name, value]) => [
    name,
    typeof value === 'string' && INSTANT.test(value) ? showInstant(Date.parse(value), zone) : value,
  ])
  return { key: `errors:${code}`, params: Object.fromEntries(told) }
}
