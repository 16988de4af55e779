import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { askedSentence } from './asked-sentence.ts'

test('the two times of a question are told as clocks show them here, names and amounts as they are', () => {
  const firstAt = '2026-10-03T15:18:00.000Z'
  const otherAt = '2026-10-03T15:31:00.000Z'
  const here = (instant: string) => new Date(instant).toLocaleString('en-US', { hour: 'numeric', minute: '2-digit' })
  const asked = askedSentence({
    code: 'question-two-heat-off-times',
    params: { name: 'HARK-261003-A1', firstAt, otherAt },
    entryIds: [],
    entities: [],
  })
  const text = createWords().sentence(asked)
  expect(text).toContain('HARK-261003-A1')
  expect(text).toContain(here(firstAt))
  expect(text).toContain(here(otherAt))
  expect(text).not.toMatch(/T\d\d:|Z\b/)
})
