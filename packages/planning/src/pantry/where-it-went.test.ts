import { type Facts, foldFacts, type StoredEntry } from '@crib/journal'
import { shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { testKitchen } from '../../../journal/src/testing/invented.ts'
import { whereItWent } from './where-it-went.ts'

const words = createWords()
const FORMS = ['jar', 'fridge', 'freezer', 'dried', 'roasted'] as const

/** 10 kg at 13 % into the kettle; `told` writes what became of it. */
function kettle(told: (book: ReturnType<typeof opened>) => readonly StoredEntry[]): Facts {
  const book = opened()
  return foldFacts([...book.entries, ...told(book)])
}

function opened() {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const lotId = kitchen.newId()
  const batchId = kitchen.newId()
  const plan = { title: 'Day', inputs: {}, edition: 'guidance-2026-11', codeVersion: '0.1.0', shown: {} }
  const corn = { lotId, name: 'Lantern flint', cornType: 'flint', form: 'shelled', asTyped: '10 kg' } as const
  const entries = [
    author.write('corn-lot-brought-in', { ...corn, massKg: 10, treatedSeed: false }),
    author.write('moisture-tested', { lotId, testedOn: '2026-11-01', by: 'oven', wetFraction: 0.13 }),
    author.write('batch-planned', { batchId, ...plan, corn: [{ lotId, massKg: 10 }] }),
    author.write('stage-noted', { batchId, potLoad: 1, stageId: 'cook', what: 'begun' }),
  ]
  return { kitchen, author, entries, lotId, batchId }
}

const told = (facts: Facts) =>
  Object.fromEntries(whereItWent(facts)!.strands.map(({ place, form, corn }) => [form ?? place, shownValue(corn)]))

// By hand: 12 kg at 70 % hold 3.6 kg dry, from 3.6/0.87 = 4.138 kg of the corn; 10 - 4.138 = 5.862 kg.
test('drained hominy is told in the corn it came from, and the rest is named', () => {
  const facts = kettle(({ kitchen, author, batchId }) => [
    author.write('food-put-up', {
      lotId: kitchen.newId(),
      batchId,
      loadCode: 'K-1',
      form: 'freezer',
      count: 12,
      massKg: 12,
      wetFraction: 0.7,
    } as const),
  ])
  expect(told(facts)).toEqual({ freezer: 4.14, 'hulls-and-unweighed': 5.86 })
  expect(whereItWent(facts)!.reasons.map(({ key }) => key)).toEqual(['pantry:went-in-dry-corn'])
})

// By hand: 2 kg dried at 10 % hold 1.8 kg; half of it ground gives 0.87 kg flour at 9.79 %, 0.7848 kg dry of 0.9.
test('dried hominy that was ground is counted once, and what the mill kept is named', () => {
  const facts = kettle(({ kitchen, author, batchId }) => {
    const dried = kitchen.newId()
    const flour = kitchen.newId()
    const put = { batchId, count: 2 } as const
    return [
      author.write('food-put-up', {
        ...put,
        lotId: dried,
        loadCode: 'K-2',
        form: 'dried',
        massKg: 2,
        wetFraction: 0.1,
      }),
      author.write('food-put-up', { ...put, lotId: flour, loadCode: 'K-3', form: 'flour', massKg: 0.87 }),
      author.write('lot-used', { lotId: dried, count: 1, massKg: 1, how: 'made-into', intoLotId: flour }),
      author.write('food-opened', { lotId: dried, count: 1, found: 'insects' }),
    ]
  })
  expect(told(facts)).toEqual({
    flour: 0.9,
    discarded: 1.03,
    'lost-in-work': 0.13,
    'hulls-and-unweighed': 7.93,
  })
  expect(words.sentence(whereItWent(facts)!.reasons[1]!)).toContain('K-3')
})

test('food without a weight, untested corn, and more food than the corn can give are owned up to', () => {
  const unweighed = kettle(({ kitchen, author, batchId }) => [
    author.write('food-put-up', { lotId: kitchen.newId(), batchId, loadCode: 'K-4', form: 'fridge', count: 2 }),
    author.write('food-put-up', { lotId: kitchen.newId(), batchId, loadCode: 'K-4', form: 'freezer', count: 1 }),
  ])
  expect(whereItWent(unweighed)!.unweighedCodes).toEqual(['K-4'])
  const tooMuch = kettle(({ kitchen, author, batchId }) => [
    author.write('food-put-up', {
      lotId: kitchen.newId(),
      batchId,
      loadCode: 'K-5',
      form: 'dried',
      count: 1,
      massKg: 11,
    }),
  ])
  expect(whereItWent(tooMuch)!.reasons.map(({ key }) => key)).toContain('pantry:went-more-out-than-in')
  const { entries } = opened()
  const untested = foldFacts(entries.filter(({ envelope }) => envelope.kind !== 'moisture-tested'))
  expect(words.sentence(whereItWent(untested)!.reasons[1]!)).toContain('Lantern flint')
})

test('nothing is told before any corn went into the kettle', () => {
  expect(whereItWent(foldFacts(opened().entries.slice(0, 2)))).toBeNull()
})

describe('conservation', () => {
  const pack = fc.record({
    form: fc.constantFrom(...FORMS),
    count: fc.integer({ min: 1, max: 9 }),
    grams: fc.integer({ min: 100, max: 3000 }),
    used: fc.integer({ min: 0, max: 9 }),
    how: fc.constantFrom('eaten', 'given', 'discarded', 'made-into'),
  })
  test('the strands add up to the corn, whatever was put up, used, given and made into other food', () => {
    fc.assert(
      fc.property(fc.array(pack, { minLength: 1, maxLength: 8 }), (packs) => {
        const facts = kettle(({ kitchen, author, batchId }) =>
          packs.flatMap(({ form, count, grams, used, how }, index) => {
            const lotId = kitchen.newId()
            const made = kitchen.newId()
            const common = { batchId, loadCode: `K-${index}`, form, count, massKg: (count * grams) / 1000 }
            const taken = { lotId, count: Math.min(used, count), how }
            return [
              author.write('food-put-up', { ...common, lotId }),
              ...(how === 'made-into'
                ? [author.write('food-put-up', { ...common, lotId: made, form: 'flour', massKg: common.massKg / 3 })]
                : []),
              author.write('lot-used', { ...taken, ...(how === 'made-into' && { intoLotId: made }) }),
            ]
          }),
        )
        const { corn, strands } = whereItWent(facts)!
        const sum = strands.reduce((total, strand) => total + strand.corn.value, 0)
        expect(Math.abs(sum - corn.value)).toBeLessThan(1e-9)
      }),
      { numRuns: 60 },
    )
  })
})
