import { foldFacts } from '@crib/journal'
import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { testKitchen } from '../../../../../packages/journal/src/testing/invented.ts'
import { leftTheShelf } from './left-the-shelf.ts'

test('a pack eaten in the evening left the shelf that day, whatever day it was in Greenwich', () => {
  const kitchen = testKitchen()
  kitchen.clock.set('2026-11-04T00:30:00.000Z') // half past seven on the 3rd in Toronto
  const author = kitchen.author()
  const lotId = kitchen.newId()
  const facts = foldFacts([
    author.write('kitchen-opened', { kitchenId: kitchen.kitchenId, name: 'Ostrey Point', demo: false }),
    author.write('food-put-up', { lotId, loadCode: 'K-1', form: 'freezer', count: 3 }),
    author.write('lot-used', { lotId, count: 1, how: 'eaten' }),
    author.write('food-opened', { lotId, count: 1, found: 'good' }),
  ])
  const words = createWords()
  const said = leftTheShelf(facts.foodLots[lotId]!, words).map(words.sentence)
  expect(said).toHaveLength(2)
  for (const sentence of said) expect(sentence).toContain('3 Nov 2026')
})
