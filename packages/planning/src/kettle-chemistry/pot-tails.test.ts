import { foldFacts } from '@crib/journal'
import { expect, test } from 'vitest'
import { mouldFound, potTails } from './pot-tails.ts'

type Batch = Parameters<typeof potTails>[1]
const batch = (sorts: readonly object[], seen: readonly object[]) =>
  ({
    batchId: 'b',
    sorts: sorts.map((sort) => ({ when: 'wet', ...sort })),
    cook: seen.map((each) => ({ potLoad: 1, seen: each })),
  }) as unknown as Batch
const kitchen = (rejectLine?: object) =>
  ({ ...foldFacts([]), kitchen: rejectLine ? { rejectLine } : null }) as unknown as Parameters<typeof potTails>[0]
const line = { shareFraction: 0.05, above: 'cook-tails-again' }
const keysOf = (tails: ReturnType<typeof potTails>) => tails?.sentences.map(({ key }) => key)

test('half a kilo of ten that is left is a tenth of ten and a half, by cause, above a line of a twentieth', () => {
  const unhulled = { cause: 'unhulled', massKg: 0.4 }
  const tails = potTails(
    kitchen(line),
    batch(
      [{ removedKg: 0.6, potLoad: 1, tails: [{ cause: 'dark-tip', massKg: 0.1 }, unhulled] }],
      [{ type: 'hominy-weighed', massKg: 9.4 }],
    ),
    1,
  )!
  expect(tails.shareFraction?.value).toBeCloseTo(0.06, 12)
  expect(tails.causes.map(({ cause }) => cause)).toEqual(['unhulled', 'dark-tip'])
  expect(tails.causes[0]?.shareFraction?.value).toBeCloseTo(0.04, 12)
  expect(tails.causes[0]?.massKg?.value).toBe(0.4)
  expect(tails).toMatchObject({ line: 'above', hasMould: false, askWhom: [] })
  expect(tails.offered[0]).toBe('cook-tails-again')
  expect(keysOf(tails)).toEqual(['kettle:tails-line-above', 'kettle:tails-go-cook-tails-again'])
})

test('a handful is a share with a range, and says when the line lies within it', () => {
  const seen = { type: 'handful-sorted', ofCount: 50, tails: [{ cause: 'unhulled', count: 4 }] }
  const tails = potTails(kitchen(line), batch([], [seen]), 1)!
  expect(tails.shareFraction?.value).toBe(0.08)
  // Clopper and Pearson's limits for 4 of 50 at 95 %: 2.2 to 19.2 %.
  expect(tails.shareFraction?.low).toBeCloseTo(0.0222, 3)
  expect(tails.shareFraction?.high).toBeCloseTo(0.1923, 3)
  expect(keysOf(tails)).toContain('kettle:tails-line-close')
})

test('weight without hominy to stand against has no share, and asks for one', () => {
  const tails = potTails(kitchen(line), batch([{ removedKg: 0.6 }], []), 1)!
  expect(tails.shareFraction).toBeUndefined()
  expect(tails.line).toBe('not-known')
  expect(keysOf(tails)).toEqual(['kettle:tails-weigh-or-count'])
})

test('one mouldy kernel stops whatever the line says: thrown out, and whom to ask', () => {
  const seen = { type: 'handful-sorted', ofCount: 100, tails: [{ cause: 'mould', count: 1 }] }
  const tails = potTails(kitchen({ shareFraction: 0.5, above: 'feed' }), batch([], [seen]), 1)!
  expect(tails).toMatchObject({ hasMould: true, line: 'below', offered: ['discard'] })
  expect(tails.askWhom.map(({ key }) => key)).toEqual(['kettle:mould-ask', 'guidance:ask-extension-office'])
  expect(mouldFound('wet').map(({ key }) => key)).toContain('kettle:mould-in-the-pot')
})

test('no sort of this pot is no tails; a sort that names no pot is of the first', () => {
  const sorted = batch([{ removedKg: 0.2 }], [])
  expect(potTails(kitchen(), sorted, 1)).not.toBeNull()
  expect(potTails(kitchen(), sorted, 2)).toBeNull()
})

test('a cause that only the handful showed keeps its share of the handful beside weighed tails', () => {
  const seen = { type: 'handful-sorted', ofCount: 50, tails: [{ cause: 'broken', count: 5 }] }
  const tails = potTails(
    kitchen(),
    batch(
      [{ removedKg: 0.5, tails: [{ cause: 'unhulled', massKg: 0.5 }] }],
      [seen, { type: 'hominy-weighed', massKg: 9.5 }],
    ),
    1,
  )!
  expect(tails.shareFraction?.value).toBeCloseTo(0.05, 12)
  expect(tails.causes.map(({ cause, shareFraction }) => [cause, shareFraction?.value])).toEqual([
    ['unhulled', 0.05],
    ['broken', 0.1],
  ])
})
