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

/** Few by default; INTERLEAVINGS=100000 on demand. */
const INTERLEAVINGS = Number(process.env.INTERLEAVINGS ?? 400)

test(`[J21] three devices whose clocks are days apart, merged in any order: the same facts, ${INTERLEAVINGS} times`, {
  timeout: 60_000 + INTERLEAVINGS * 20,
}, () => {
  const skew = fc.integer({ min: -9, max: 9 })
  fc.assert(
    fc.property(
      fc.array(step, { maxLength: 25 }),
      fc.tuple(skew, skew, skew),
      fc.infiniteStream(fc.nat()),
      (steps, skewDays, numbers) => {
        const next = (below: number): number => (numbers.next().value as number) % below
        const { entries } = play(steps, true, skewDays)
        const expected = JSON.stringify(foldFacts(entries))
        // Each book begins with the lines of its own device and takes in, a few at a time, what another one holds.
        const deviceIds = [...new Set(entries.map(({ envelope }) => envelope.deviceId))]
        const books = deviceIds.map((id) => {
          const own = entries.filter(({ envelope }) => envelope.deviceId === id)
          return { held: new Set(own), facts: foldFacts(own) }
        })
        for (let meetings = 0; books.some(({ held }) => held.size < entries.length); meetings += 1) {
          const taker = books[meetings % books.length]!
          const giver = books[next(books.length)]!
          const given = [...giver.held].sort(() => next(3) - 1).slice(0, 1 + next(12) + meetings)
          for (const entry of given) taker.held.add(entry)
          taker.facts = applyEntries(taker.facts, given) // some of them for the second time
        }
        for (const { facts } of books) expect(JSON.stringify(facts)).toBe(expected)
      },
    ),
    { numRuns: INTERLEAVINGS },
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
