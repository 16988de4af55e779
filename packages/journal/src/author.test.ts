import { expect, test } from 'vitest'
import { BodyRefused } from './refusal.ts'
import { testKitchen } from './testing/invented.ts'

const kitchen = testKitchen()
const pot = () => ({ potId: kitchen.newId(), name: ' big pot ', volumeL: 18.9, material: 'stainless' as const })

test('[J1] writes when it happened, when it was written, and that only the keeper sees it unless said otherwise', () => {
  const author = kitchen.author()
  const happenedAt = { instant: '2026-11-01T09:58:00-05:00', zone: 'America/Winnipeg' }
  const late = author.write('pot-recorded', pot(), { happenedAt, visibility: 'family' })
  expect(late.envelope.happenedAt).toEqual({ instant: '2026-11-01T14:58:00.000Z', zone: 'America/Winnipeg' })
  expect(late.envelope.writtenAt).toBe('2026-11-02T13:00:00.000Z')
  expect(late.envelope.visibility).toBe('family')
  const now = author.write('pot-recorded', pot())
  expect(now.envelope.happenedAt).toEqual({ instant: '2026-11-02T13:00:00.000Z', zone: 'America/Toronto' })
  expect(now.envelope.visibility).toBe('keeper')
})

test('[J1] ids are made by the author, ordered by time', () => {
  const author = kitchen.author()
  const first = author.write('pot-recorded', pot()).envelope.id
  kitchen.clock.wait(1)
  const second = author.write('pot-recorded', pot()).envelope.id
  expect(first).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
  expect(first < second).toBe(true)
})

test('a field left undefined is left out, and a name loses the spaces around it', () => {
  const lot = {
    lotId: kitchen.newId(),
    name: ' Lantern flint',
    cornType: 'flint' as const,
    form: 'shelled' as const,
    asTyped: '9 lb',
    treatedSeed: false,
    massKg: undefined,
  }
  // A form hands in what it has; exact optional fields are a rule of the types, not of people.
  const entry = kitchen.author().write('corn-lot-brought-in', lot as never)
  expect(entry.body?.value).toEqual({
    lotId: lot.lotId,
    name: 'Lantern flint',
    cornType: 'flint',
    form: 'shelled',
    asTyped: '9 lb',
    treatedSeed: false,
  })
})

test('refuses a body its kind does not take, with every reason, and writes nothing', () => {
  const author = kitchen.author()
  const refused = (): unknown => author.write('pot-recorded', { ...pot(), volumeL: Number.NaN, material: 'x' } as never)
  expect(refused).toThrow(BodyRefused)
  expect(refused).toThrow(/not-a-number.*volumeL.*wrong-value.*material/)
  expect(author.head()).toBeNull()
})

test('refuses a moment or a zone that is none', () => {
  const author = kitchen.author()
  expect(() => author.write('pot-recorded', pot(), { happenedAt: { instant: 'noon' } })).toThrow('"noon" is no instant')
  const zone = 'Mars/Base'
  expect(() => author.write('pot-recorded', pot(), { happenedAt: { instant: 0, zone } })).toThrow(zone)
  expect(author.head()).toBeNull()
})
