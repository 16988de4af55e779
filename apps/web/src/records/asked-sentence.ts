/** What the book asks or refuses, as a sentence: instants as people here write them, fields by a name and not their path. */
import type { Question, Refusal } from '@crib/journal'
import type { Sentence } from '@crib/science'
import type { Words } from '@crib/wording'
import { whenText } from '../routes/people/when-text.ts'

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/

export function askedSentence({ code, params }: Question | Refusal, words: Words): Sentence {
  const told = Object.entries(params).map(([name, value]) => {
    if (typeof value !== 'string') return [name, value]
    if (name === 'field' && code !== 'unknown-field') return [name, fieldName(value, words)]
    return [name, INSTANT.test(value) ? whenText(value) : value]
  })
  return { key: `errors:${code}`, params: Object.fromEntries(told) }
}

/** `readings.1.truePsi` is "Readings, Row 2, True pressure". */
function fieldName(path: string, { say, sentence }: Words): string {
  const parts = path.split('.')
  return parts
    .map((part) =>
      /^\d+$/.test(part) ? say('workbench:row', { row: Number(part) + 1 }) : sentence({ key: `fields:${part}` }),
    )
    .join(', ')
}
