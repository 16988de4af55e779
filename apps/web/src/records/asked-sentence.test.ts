import { checkBody, KINDS } from '@crib/journal'
import { createWords, ENGLISH } from '@crib/wording'
import { expect, test } from 'vitest'
import { askedSentence } from './asked-sentence.ts'

const WORDS = createWords()

test('the two times of a question are told as clocks show them here, names and amounts as they are', () => {
  const firstAt = '2026-10-03T15:18:00.000Z'
  const otherAt = '2026-10-03T15:31:00.000Z'
  const here = (instant: string) => new Date(instant).toLocaleString('en-US', { hour: 'numeric', minute: '2-digit' })
  const asked = askedSentence(
    {
      code: 'question-two-heat-off-times',
      params: { name: 'HARK-261003-A1', firstAt, otherAt },
      entryIds: [],
      entities: [],
    },
    WORDS,
  )
  const text = WORDS.sentence(asked)
  expect(text).toContain('HARK-261003-A1')
  expect(text).toContain(here(firstAt))
  expect(text).toContain(here(otherAt))
  expect(text).not.toMatch(/T\d\d:|Z\b/)
})

test('a refused field is called by a name, also in a row, and never by its path', () => {
  const checked = checkBody('gauge-tested', {
    cannerId: '0190a000-0000-7000-8000-000000000001',
    testedOn: '2026-04-02',
    tester: 'extension office',
    readings: [
      { truePsi: 10, readsPsi: 10 },
      { truePsi: 99, readsPsi: 10 },
    ],
    marksEveryPsi: 1,
    restsAtPsi: 0,
  })
  const [refusal] = checked.ok ? [] : checked.refusals
  expect(refusal).toMatchObject({ code: 'out-of-limits', params: { field: 'readings.1.truePsi', value: 99 } })
  expect(refusal && WORDS.sentence(askedSentence(refusal, WORDS))).toMatch(/^Readings, Row 2, True pressure is 99 psi;/)
  const foreign = { code: 'unknown-field', params: { field: 'colour' } } as const
  expect(WORDS.sentence(askedSentence(foreign, WORDS))).toBe('colour is not part of this kind of entry.')
})

test('every field of every kind has a name, and no name is left over', () => {
  const fields = new Set<string>()
  const seen = new Set<unknown>() // a piped schema holds itself as its first part
  const collect = (schema: unknown): void => {
    if (schema === null || typeof schema !== 'object' || seen.has(schema)) return
    seen.add(schema)
    for (const [name, part] of Object.entries(schema)) {
      if (name === 'entries') for (const field of Object.keys(part)) fields.add(field)
      collect(part)
    }
  }
  for (const { schema } of Object.values(KINDS)) collect(schema)
  expect(Object.keys(ENGLISH.fields).sort()).toEqual([...fields].sort())
})
