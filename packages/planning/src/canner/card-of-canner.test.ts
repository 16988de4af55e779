import type { CannerFact } from '@crib/journal'
import { expect, test } from 'vitest'
import { type CardWish, cardOfCanner } from './card-of-canner.ts'

const CANNER: Pick<CannerFact, 'gauges' | 'rim' | 'electric'> = { gauges: ['dial'], rim: 'gasket', electric: false }
const TESTED = [10, 11, 15].map((psi) => ({ truePsi: psi, readsPsi: psi }))
const WISH: CardWish = { today: '2026-11-03', jarSize: 'quart', alkali: 'ash', isHotPack: true, isStandingRead: true }
const test_ = (readings = TESTED, testedOn = '2026-04-12'): CannerFact['gaugeTests'] =>
  [
    { cannerId: 'c', testedOn, tester: 'bench', readings, marksEveryPsi: 1, restsAtPsi: 0 },
  ] as unknown as CannerFact['gaugeTests']
const at = (ft: number, elevationKnownBy: 'map' | 'survey' = 'map') => ({
  name: 'Ostrey Point',
  elevationM: ft * 0.3048, // exact, international foot
  elevationKnownBy,
})

test('S2: a dial tested true this spring at 820 ft is held at 11 psi for 70 min', () => {
  const card = cardOfCanner({ ...CANNER, gaugeTests: test_() }, at(820), WISH)
  if (card?.kind !== 'card') throw new Error('no card')
  expect(card.routes[0]?.holdAt?.value).toBe(11)
  expect(card.minutes?.value).toBe(70)
})

test('S3: 604 m from a map takes the higher number, a surveyed 604 m does not', () => {
  const hold = (knownBy: 'map' | 'survey') => {
    const site = { ...at(0, knownBy), elevationM: 604 }
    const card = cardOfCanner(
      { ...CANNER, gaugeTests: test_([10, 11, 12, 15].map((psi) => ({ truePsi: psi, readsPsi: psi }))) },
      site,
      WISH,
    )
    return card?.kind === 'card' ? card.routes[0]?.holdAt?.value : null
  }
  expect(hold('map')).toBe(12)
  expect(hold('survey')).toBe(11)
})

test('S6: a weight at 1,180 ft is 15 lb', () => {
  const card = cardOfCanner({ ...CANNER, gauges: ['weight'], gaugeTests: [] }, at(1180), { ...WISH, jarSize: 'pint' })
  if (card?.kind !== 'card') throw new Error('no card')
  expect(card.routes[0]?.holdAt).toMatchObject({ value: 15, unit: 'LbWeight' })
  expect(card.minutes?.value).toBe(60)
})

test('a weight the keeper does not have is not offered: a lone 10 lb weight gives no number at 1,180 ft', () => {
  const hold = (ft: number) => {
    const card = cardOfCanner({ ...CANNER, gauges: ['weight'], gaugeTests: [], weightsLb: [10] }, at(ft), WISH)
    return card?.kind === 'card' ? card.routes[0]?.holdAt?.value : 'no card'
  }
  expect(hold(1180)).toBeUndefined()
  expect(hold(820)).toBe(10)
})

test('2,440 m is off the table; no elevation, no card; unread, no minutes', () => {
  expect(cardOfCanner({ ...CANNER, gaugeTests: test_() }, { ...at(0), elevationM: 2440 }, WISH)?.kind).toBe('refused')
  expect(cardOfCanner({ ...CANNER, gaugeTests: test_() }, null, WISH)).toBeNull()
  const unread = cardOfCanner({ ...CANNER, gaugeTests: test_() }, at(820), { ...WISH, isStandingRead: false })
  expect(unread?.kind === 'card' && unread.minutes).toBeUndefined()
})
