import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Facts } from '../fold/facts.ts'
import { foldFacts } from '../fold/fold.ts'
import { play, step } from '../testing/played.ts'
import { factOf, factText } from './fact-text.ts'

const LISTS_NOT_KEYED = new Set(['kitchen', 'entryCount', 'questions', 'unread', 'ledger'])

function factsOf(facts: Facts): object[] {
  const lists = Object.entries(facts).filter(([part]) => !LISTS_NOT_KEYED.has(part))
  return lists.flatMap(([, list]) => Object.values(list as Record<string, object>))
}

test('[J75] a fact comes back from its text letter by letter', () => {
  let told = 0
  fc.assert(
    fc.property(fc.array(step, { minLength: 10, maxLength: 60 }), (steps) => {
      for (const fact of factsOf(foldFacts(play(steps, true, [-2, 0, 3]).entries))) {
        told += 1
        expect(JSON.stringify(factOf(factText(fact)))).toBe(JSON.stringify(fact))
      }
    }),
    { numRuns: 200 },
  )
  expect(told).toBeGreaterThan(1000)
})

test('[J75] who said a line is told once for all lines of one teller', () => {
  const teller = { zone: 'America/Toronto', personId: 'someone', deviceId: 'a device', visibility: 'family' } as const
  const at = (entryId: string, more = {}) => ({ entryId, instant: '2026-11-01T10:00:00.000Z', ...teller, ...more })
  const fact = {
    lotId: 'a lot',
    corn: [{ lotId: 'another', massKg: 2 }],
    names: ['one', 'two', 'three'],
    at: at('first'),
    uses: [
      { count: 1, at: at('second') },
      { count: 2, at: at('third', { deviceId: 'another device' }) },
    ],
    ended: null,
  }
  const text = factText(fact)
  expect(text.match(/America\/Toronto/g)).toHaveLength(2)
  expect(factOf(text)).toEqual(fact)
})
