import fc from 'fast-check'
import { expect, test } from 'vitest'
import { play, step } from '../testing/played.ts'
import type { Facts } from './facts.ts'
import { applyEntries, foldFacts } from './fold.ts'

test('[J21] any order and any splitting of one set of entries, with some handed in twice, gives the same facts', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 40 }), fc.infiniteStream(fc.nat()), (steps, numbers) => {
      const { entries } = play(steps, true)
      const next = (below: number): number => (numbers.next().value as number) % below
      const expected = foldFacts(entries)
      const shuffled = [...entries, ...entries.filter(() => next(4) === 0)]
      for (let i = shuffled.length - 1; i > 0; i -= 1) {
        const j = next(i + 1)
        ;[shuffled[i], shuffled[j]] = [shuffled[j]!, shuffled[i]!]
      }
      let facts: Facts = foldFacts([])
      while (shuffled.length > 0) facts = applyEntries(facts, shuffled.splice(0, 1 + next(7)))
      // As text: the order of ids, of questions and of fields is part of it.
      expect(JSON.stringify(facts)).toBe(JSON.stringify(expected))
    }),
    { numRuns: 300 },
  )
})

test('[J24] corn brought in is corn gone and corn left, to the gram', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
      const { entries, broughtInG, goneG } = play(steps)
      const facts = foldFacts(entries)
      expect(Object.keys(facts.cornLots).sort()).toEqual([...broughtInG.keys()].sort())
      for (const [lotId, grams] of broughtInG) {
        const balance = facts.cornLots[lotId]!.balance!
        expect(Math.round(balance.leftKg * 1000)).toBe(grams - (goneG.get(lotId) ?? 0))
        const { cobsKg, sortedOutKg, seedKg, usedInBatchesKg, eatenKg, givenKg, discardedKg, leftKg } = balance
        const named = cobsKg + sortedOutKg + seedKg + usedInBatchesKg + eatenKg + givenKg + discardedKg + leftKg
        expect(named).toBeCloseTo(balance.broughtInKg, 9)
        const asked = facts.questions.some(
          ({ code, entities }) => code === 'question-corn-used-beyond' && entities.includes(`lot:${lotId}`),
        )
        expect(asked).toBe(grams < (goneG.get(lotId) ?? 0))
      }
    }),
    { numRuns: 300 },
  )
})

test('[J24] jars put up are jars used and jars remaining', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
      const { entries, putUp, used } = play(steps)
      const facts = foldFacts(entries)
      for (const [lotId, count] of putUp) {
        const lot = facts.foodLots[lotId]!
        expect(lot.usedCount).toBe(used.get(lotId) ?? 0)
        expect(lot.remainingCount + (used.get(lotId) ?? 0)).toBe(count)
      }
    }),
    { numRuns: 300 },
  )
})
