import { expect, test } from 'vitest'
import type { StoredEntry } from '../envelope.ts'
import { checkBody } from '../kinds/index.ts'
import { propose } from '../propose.ts'
import { testKitchen } from '../testing/invented.ts'
import { foldFacts } from './fold.ts'

const VINEGAR = { way: 'vinegar', sampleMl: 50, coldMl: 0.9, boiledMl: 1.7, acidityGPer100Ml: 5 } as const

test('a lot keeps its tests of strength in the order they happened', () => {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const alkaliLotId = kitchen.newId()
  const at = (day: number) => ({ happenedAt: { instant: `2026-11-0${day}T09:00:00.000Z` } })
  const entries: StoredEntry[] = [
    author.write('alkali-lot-recorded', { alkaliLotId, name: 'M-0', alkali: 'ash' }, at(1)),
    author.write('alkali-lot-tested', { alkaliLotId, found: { way: 'strip', stripPH: 11, liquorC: 20 } }, at(3)),
    author.write(
      'alkali-lot-tested',
      { alkaliLotId, found: { ...VINEGAR, steepedG: 100, steepWaterL: 1 }, gPerCup: 100 },
      at(2),
    ),
  ]
  const lot = foldFacts(entries).alkaliLots[alkaliLotId]!
  expect(lot.tests.map(({ found }) => found.way)).toEqual(['vinegar', 'strip'])
  expect(lot.tests[0]).toMatchObject({ gPerCup: 100, found: { coldMl: 0.9, boiledMl: 1.7 } })
  expect(lot.judged).toBe('unknown')
})

test.each([
  [{ ...VINEGAR, acidityGPer100Ml: 50 }, 'found.acidityGPer100Ml'],
  [{ ...VINEGAR, sampleMl: 0 }, 'found.sampleMl'],
  [{ way: 'strip', stripPH: 15, liquorC: 20 }, 'found.stripPH'],
  [{ way: 'trial-cup', slippedCount: 3, ofCount: 0, boiledMin: 60 }, 'found.ofCount'],
])('%j is refused at its field', (found, field) => {
  const checked = checkBody('alkali-lot-tested', { alkaliLotId: testKitchen().newId(), found })
  expect(checked.ok).toBe(false)
  if (!checked.ok) expect(checked.refusals.map(({ params }) => params?.field)).toEqual([field])
})

test('[J12] a boiled reading below the cold one is asked about with both values, and a line that has it is read', () => {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const alkaliLotId = kitchen.newId()
  const body = { alkaliLotId, found: { ...VINEGAR, coldMl: 4.8, boiledMl: 4.7 } }
  const ash = author.write('alkali-lot-recorded', { alkaliLotId, name: 'M-0', alkali: 'ash' })
  const facts = foldFacts([ash])
  expect(propose(facts, 'alkali-lot-tested', body)).toEqual({
    ok: false,
    refusals: [{ code: 'boiled-below-cold', params: { field: 'found.boiledMl', value: 4.7, min: 4.8, unit: 'mL' } }],
  })
  expect(propose(facts, 'alkali-lot-tested', { ...body, found: { ...body.found, boiledMl: 4.8 } })).toEqual({
    ok: true,
  })
  const told = foldFacts([ash, author.write('alkali-lot-tested', body)])
  expect(told.unread).toEqual([])
  expect(told.alkaliLots[alkaliLotId]?.tests).toHaveLength(1)
})
