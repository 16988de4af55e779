import { expect, test } from 'vitest'
import { createWords, PLAIN_NOUNS } from './words.ts'

test('a gap takes text, a number or a quantity', () => {
  const words = createWords()
  expect(words.say('common:clock-next-day', { clock: '00:49' })).toBe('00:49 next day')
  expect(words.say('common:range', { low: { value: 2, unit: 'Lb' }, high: { value: 3.5, unit: 'Lb' } })).toBe(
    '2 lb (0.907 kg) to 3.5 lb (1.59 kg)',
  )
})

test('a key no file has is an error, never a silent key on a screen', () => {
  expect(() => createWords().sentence({ key: 'common:never-written' })).toThrow('no message "common:never-written"')
})

test("the keeper's own nouns go into the sentences that name them", () => {
  const words = createWords({ hull: 'husk', hulls: 'husks', jar: 'bottle', jars: 'bottles', corn: 'Lantern flint' })
  expect(words.say('common:nouns-preview')).toBe(
    'So the book will say: the husks slip off the Lantern flint, one husk at a time, and the bottles wait. One bottle is for tonight.',
  )
  expect(createWords(PLAIN_NOUNS).say('common:nouns-preview')).toContain('the hulls slip off the corn')
})

test('a gap left empty is an error, never a hole in a sentence', () => {
  expect(() => createWords().say('common:clock-next-day')).toThrow('"clock"')
})
