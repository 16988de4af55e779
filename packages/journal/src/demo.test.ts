import { expect, test } from 'vitest'
import { verifyChain } from './chain.ts'
import { demoKitchen } from './demo.ts'
import { foldFacts } from './fold/fold.ts'
import { handClock, repeatingRandom } from './testing/invented.ts'

const setup = (instant: string) => ({ clock: handClock(instant), random: repeatingRandom(), zone: 'America/Toronto' })

test('the demo kitchen is the invented Ostrey Point: 9 lb, two ash lots, one pot, one canner tested true', () => {
  const { entries, kitchenId } = demoKitchen(setup('2026-11-02T13:00:00.000Z'))
  expect(verifyChain(entries).ok).toBe(true)
  const facts = foldFacts(entries)
  expect(facts.questions).toEqual([])
  expect(facts.unread).toEqual([])
  expect(facts.kitchen).toMatchObject({ kitchenId, name: 'Ostrey Point', demo: true })
  expect(facts.kitchen!.elevationM).toBeCloseTo(249.936, 9) // 820 ft
  const [lot, ...otherLots] = Object.values(facts.cornLots)
  expect(otherLots).toEqual([])
  expect(lot).toMatchObject({ name: 'Lantern flint', form: 'shelled', asTyped: '9 lb' })
  expect(lot!.balance!.leftKg).toBeCloseTo(4.08233133, 9) // 9 x 0.45359237
  const ashes = Object.values(facts.alkaliLots)
  expect(ashes.map(({ name, judged, lidded }) => [name, judged, lidded]).sort()).toEqual([
    ['M-0', 'unknown', false],
    ['M-1', 'works', true],
  ])
  const good = ashes.find(({ name }) => name === 'M-1')
  expect(good!.judgements).toMatchObject([{ cupsPerLiquidQt: 1, slipMin: 55 }])
  expect(Object.values(facts.pots)).toMatchObject([{ material: 'stainless' }])
  expect(Object.values(facts.pots)[0]!.volumeL).toBeCloseTo(18.92705892, 9) // 20 US liquid quarts
  expect(Object.values(facts.canners)).toMatchObject([{ capacityQuarts: 7, gauges: ['dial'] }])
  const [gaugeTest] = Object.values(facts.canners)[0]!.gaugeTests
  expect(gaugeTest).toMatchObject({ testedOn: '2026-04-12', restsAtPsi: 0 })
  expect(gaugeTest!.readings.every(({ truePsi, readsPsi }) => truePsi === readsPsi)).toBe(true)
})

test('opened in February, its gauge was tested the spring before and its open ash is fourteen months old', () => {
  const { entries } = demoKitchen(setup('2027-02-10T13:00:00.000Z'))
  const facts = foldFacts(entries)
  expect(facts.questions).toEqual([])
  expect(Object.values(facts.canners)[0]!.gaugeTests[0]!.testedOn).toBe('2026-04-12')
  const open = Object.values(facts.alkaliLots).find(({ lidded }) => !lidded)
  expect(open!.gatheredOn).toBe('2025-12-12')
})
