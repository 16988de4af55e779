import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { questionSentence } from './refusals.ts'

test('a question about two times tells both by the clock of the zone', () => {
  const firstAt = '2026-10-03T15:18:00.000Z'
  const otherAt = '2026-10-04T03:31:00.000Z'
  const question = {
    code: 'question-two-heat-off-times' as const,
    params: { name: 'HARK-261003-A1', firstAt, otherAt },
    entryIds: [],
    entities: [],
  }
  expect(createWords().sentence(questionSentence(question, 'America/Toronto'))).toBe(
    'HARK-261003-A1: two people told two times of heat off, 2026-10-03 11:18 and 2026-10-03 23:31. Which one holds?',
  )
})
