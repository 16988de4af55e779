import { NO_FACTS, type RunFact } from '@crib/journal'
import { expect, test } from 'vitest'
import { nextKettleCode, nextLoadCode, runBegunBody, runSetupOf } from './begin-run.ts'
import { type CardInput, cannerCard } from './card.ts'
import { confirmHold } from './confirm-hold.ts'

/** Hark Lake landing, 2,150 ft, nine pints (scenario S5, invented). */
const HARK_LAKE: CardInput = {
  elevationFt: 2150,
  elevationKnownBy: 'map',
  dial: {
    marksEveryPsi: 1,
    restsAtPsi: 0,
    test: { readings: [11, 12, 15].map((psi) => ({ truePsi: psi, readsPsi: psi })), testedDaysAgo: 30 },
  },
  conditions: {
    food: 'hominy',
    alkali: 'ash',
    hotPack: true,
    fill: 'loose',
    liquidClear: true,
    headspaceIn: 1,
    jar: 'pint',
    standingRead: true,
  },
}
const CANNERS = { 'c-1': {}, 'c-2': {} } as never
const run = (loadCode: string) => ({ [loadCode]: { begun: { loadCode } } as unknown as RunFact })
const book = (runs = {}) => ({ ...NO_FACTS, kitchen: { name: 'Hark Lake' } as never, canners: CANNERS, runs })

test('a load takes the letter of its canner and the first round nobody has taken', () => {
  expect(nextLoadCode(book(), 'c-1', '2026-10-03')).toBe('HARK-261003-A1')
  expect(nextLoadCode(book(run('HARK-261003-B1')), 'c-2', '2026-10-03')).toBe('HARK-261003-B2')
  expect(nextLoadCode(book(run('HARK-261003-B1')), 'c-2', '2026-10-04')).toBe('HARK-261004-B1')
  expect(nextKettleCode(book(), '2026-10-03')).toBe('HARK-261003-K1')
})

function begin(input: CardInput) {
  const card = cannerCard(input)
  if (card.kind !== 'card') throw new Error('no card')
  const held = confirmHold(card.routes[0]!, 12)
  if (!held.ok) throw new Error('not held')
  return runBegunBody(book(), {
    runId: 'r-1',
    canner: { cannerId: 'c-1', name: 'yard canner' },
    jarSize: 'pint',
    jarCount: 9,
    card,
    route: card.routes[0]!,
    requiredReadingPsi: held.requiredReadingPsi,
    atMs: Date.parse('2026-10-03T13:30:00Z'),
    zone: 'America/Toronto',
  })
}

test('S5: a run is begun with 12 psi, 10 min of venting and 60 min, and is measured against them', () => {
  const body = begin(HARK_LAKE)
  expect(body).toMatchObject({ loadCode: 'HARK-261003-A1', requiredReadingPsi: 12, ventMin: 10, processMin: 60 })
  const setup = runSetupOf({ begun: { ...body, at: { zone: 'America/Toronto' } } as unknown as RunFact['begun'] })
  expect(setup).toMatchObject({ gauge: 'dial', requiredReadingPsi: 12, processMin: 60, zone: 'America/Toronto' })
  expect(setup.rules.lidWaitMin).toBe(10)
})

test('no run is begun from a card whose minutes are withheld', () => {
  expect(() => begin({ ...HARK_LAKE, conditions: { ...HARK_LAKE.conditions, standingRead: false } })).toThrow(
    'no published minutes',
  )
})
