import { expect, test } from 'vitest'
import type { Visibility } from '../envelope.ts'
import { foldFacts } from '../fold/fold.ts'
import { testKitchen } from '../testing/invented.ts'
import { factsOpenedTo } from './opened-to.ts'
import { VISIBILITIES, widthOf } from './roles.ts'
import { seedOnPaper } from './shares.ts'

/** A corn lot, seed taken from it, a batch of it and its jars; each opened as told. */
function book(corn: Visibility, other: Visibility) {
  const { author, newId, kitchenId } = testKitchen()
  const keeper = author()
  const lotId = newId()
  const seedLotId = newId()
  const batchId = newId()
  const jarsId = newId()
  const entries = [
    keeper.write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: true }, { visibility: 'open' }),
    keeper.write('corn-lot-brought-in', {
      lotId,
      name: 'Lantern flint',
      cornType: 'flint',
      form: 'shelled',
      massKg: 5,
      asTyped: '',
      treatedSeed: false,
    }),
    keeper.write('seed-lot-recorded', {
      seedLotId,
      name: 'Lantern seed',
      seasonYear: 2026,
      putByOn: '2026-10-20',
      source: 'own',
      lotId,
      kernelsCount: 900,
      containers: [],
      sourceNote: 'the ford',
    }),
    keeper.write('batch-planned', {
      batchId,
      title: 'Lantern flint, 9 lb',
      inputs: {},
      edition: 'test',
      codeVersion: '0',
      shown: {},
      corn: [{ lotId, massKg: 1 }],
    }),
    keeper.write('food-put-up', { lotId: jarsId, batchId, loadCode: 'A-1', form: 'jar', count: 7 }),
    keeper.write('visibility-set', { lotId, visibility: corn }),
    ...[seedLotId, batchId, jarsId].map((id) => keeper.write('visibility-set', { lotId: id, visibility: other })),
  ]
  return { facts: foldFacts(entries), lotId, seedLotId, batchId, jarsId }
}

const PAIRS = VISIBILITIES.flatMap((corn) => VISIBILITIES.map((other) => [corn, other] as const))

test.each(PAIRS)(
  '[J91] corn %s and the rest %s: each reader’s facts hold what is opened so far, and no more',
  (corn, other) => {
    const { facts, lotId, seedLotId, batchId, jarsId } = book(corn, other)
    for (const audience of VISIBILITIES) {
      const opened = factsOpenedTo(facts, audience)
      const sees = (...said: readonly Visibility[]) =>
        audience === 'keeper' || said.every((one) => widthOf(one) >= widthOf(audience))
      expect(Object.keys(opened.cornLots), audience).toEqual(sees(corn) ? [lotId] : [])
      // What names the corn is opened no further than the corn.
      expect(Object.keys(opened.seedLots), audience).toEqual(sees(corn, other) ? [seedLotId] : [])
      expect(Object.keys(opened.batches), audience).toEqual(sees(corn, other) ? [batchId] : [])
      expect(Object.keys(opened.foodLots), audience).toEqual(sees(other) ? [jarsId] : [])
      const named = seedOnPaper(facts.seedLots[seedLotId]!, facts, audience).name
      expect(named !== undefined, audience).toBe(opened.seedLots[seedLotId] !== undefined)
    }
  },
)

test('the keeper is given the facts as they are, and a book without a line gives none', () => {
  const { facts } = book('keeper', 'keeper')
  expect(factsOpenedTo(facts, 'keeper')).toBe(facts)
  expect(factsOpenedTo(foldFacts([]), 'open').entryCount).toBe(0)
})
