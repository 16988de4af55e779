import type { Facts } from '@crib/journal'
import { expect, test } from 'vitest'
import { alkaliInPot, ownStrengths } from './own-strengths.ts'
import { potDisposal } from './pot-disposal.ts'

const at = { instant: '2026-11-03T14:00:00.000Z', zone: 'UTC', entryId: 'e' }
const titrated = {
  at,
  gPerCup: 100,
  found: {
    way: 'vinegar',
    sampleMl: 50,
    coldMl: 4.8,
    boiledMl: 5.41,
    acidityGPer100Ml: 5,
    steepedG: 100,
    steepWaterL: 1,
  },
}
const facts = (tests: readonly object[]) =>
  ({
    alkaliLots: { ash: { alkali: 'ash', tests }, pickling: { alkali: 'calcium-hydroxide', tests: [] } },
    batches: {
      b: {
        batchId: 'b',
        stages: [],
        cook: [],
        plan: { title: 'Lantern flint', inputs: null },
        additions: [
          { potLoad: 1, alkaliLotId: 'ash', cups: 2, at },
          { potLoad: 1, alkaliLotId: 'pickling', massKg: 0.0068, at },
        ],
      },
    },
  }) as unknown as Facts

test('every addition to a pot counts by its own lot: two cups at 0.90 eq/kg and 6.8 g of calcium hydroxide', () => {
  const book = facts([titrated])
  const eq = alkaliInPot(book, book.batches.b!, 1)!
  // 0.2 kg x 0.901 eq/kg + 6.8 g / 37.05 g to the equivalent.
  expect(eq.value).toBeCloseTo(0.18 + 0.1835, 2)
  expect(eq.low).toBeLessThan(eq.value)
})

test('an ash that nobody titrated has no strength, and its pot is counted as not measured', () => {
  const book = facts([])
  expect(alkaliInPot(book, book.batches.b!, 1)).toBeNull()
  expect(ownStrengths(book)).toEqual({ rows: [], unmeasuredCount: 1 })
})

test('a spent pot takes at most the vinegar of all its alkali, and without a measure says only how', () => {
  const book = facts([titrated])
  const known = potDisposal(book, book.batches.b!, 1, 5)
  // 0.364 eq and its range upward, of 0.8326 mol/L.
  expect(known.vinegarL!.value).toBeGreaterThan(0.437)
  expect(known.vinegarL!.value).toBeLessThan(0.46)
  const unknown = potDisposal(facts([]), book.batches.b!, 1, 5)
  expect([unknown.vinegarL, unknown.reasons.map(({ key }) => key)]).toEqual([undefined, ['kettle:chem-disposal-how']])
})
