import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { neverGoesIn, stoppedBy } from './never-goes-in.ts'

const words = createWords()
const said = (sentences: ReturnType<typeof stoppedBy>) => sentences.map((each) => words.sentence(each)).join('\n')

test('an ash is asked for every fire that spoils it, and one of them is enough to stop', () => {
  expect(neverGoesIn('ash')).toEqual([
    ...['treated', 'painted', 'coal', 'briquettes', 'glossy-paper', 'driftwood', 'oil'],
  ])
  expect(said(stoppedBy('ash', ['treated']))).toMatch(/arsenic/)
  expect(said(stoppedBy('ash', ['treated']))).toMatch(/not for food/)
  expect(stoppedBy('ash', [])).toEqual([])
})

test('calcium hydroxide is asked for the garden and the building, lye for the drain', () => {
  expect(said(stoppedBy('calcium-hydroxide', ['builders']))).toMatch(/builder's lime/i)
  expect(said(stoppedBy('sodium-hydroxide', ['drain-cleaner']))).toMatch(/drain/i)
  // What is ticked for another alkali says nothing of this one.
  expect(stoppedBy('baking-soda', ['drain-cleaner'])).toEqual([])
})
