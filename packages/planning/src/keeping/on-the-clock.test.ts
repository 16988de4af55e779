import type { CoolingFact, DryingFact } from '@crib/journal'
import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { onTheClock, trayDueMs } from './on-the-clock.ts'

const words = createWords()
const day = (clock: string) => `2026-11-26T${clock}:00Z`
const ms = (clock: string) => Date.parse(day(clock))
const at = (clock: string) => ({ instant: day(clock), zone: 'UTC' })
const pan = (what: string, clock: string, ...readings: readonly (readonly [string, number])[]): CoolingFact =>
  ({
    coolingId: what,
    what,
    at: at(clock),
    ended: null,
    readings: readings.map(([when, temperatureC]) => ({ temperatureC, at: at(when) })),
  }) as never
const tray = (
  name: string,
  clock: string,
  more: object,
  ...weights: readonly (readonly [string, number])[]
): DryingFact =>
  ({
    dryingId: name,
    name,
    what: 'hominy',
    massKg: 5,
    startWetFraction: 0.757,
    endWetFraction: 0.1,
    at: at(clock),
    ended: null,
    ...more,
    weights: weights.map(([when, massKg]) => ({ massKg, at: at(when) })),
  }) as never
const told = (clock: string, pans: readonly CoolingFact[], trays: readonly DryingFact[] = []) =>
  onTheClock(
    {
      coolings: Object.fromEntries(pans.map((one) => [one.coolingId, one])),
      dryings: Object.fromEntries(trays.map((one) => [one.dryingId, one])),
    },
    ms(clock),
    'UTC',
  )
const said = (clock: string, pans: readonly CoolingFact[], trays: readonly DryingFact[] = []) =>
  told(clock, pans, trays).map((one) => `${one.isDue ? 'now: ' : ''}${words.sentence(one.say)}`)

// The rule: 135 °F to 70 °F within 2 h, to 41 °F within 6 h.
test('a pan off the heat at ten has its two clock times, then its second', () => {
  expect(said('10:30', [pan('The big pot', '10:00')])).toEqual([
    'The big pot is cooling: 70 °F (21 °C) by 12:00, 41 °F (5 °C) by 16:00.',
  ])
  expect(said('12:30', [pan('The big pot', '10:00', ['11:50', 20])])).toEqual([
    'The big pot is cooling: 41 °F (5 °C) by 16:00.',
  ])
})

test('a pan past its time without a reading is to be read now; too late is said as such; a cold one is not on the clock', () => {
  expect(said('12:01', [pan('The big pot', '10:00')])).toEqual([
    'now: The big pot: read its middle now. Its first time is over.',
  ])
  expect(said('16:01', [pan('The big pot', '10:00')])[0]).toMatch(/^now: The big pot: its time ran out/)
  expect(said('14:00', [pan('The big pot', '10:00', ['13:00', 4])])).toEqual([])
})

// By hand: 2 kg in 4 h is 0.5 kg/h; (3 - 1.35)/0.5 = 3.3 h after 12:00.
test('a tray is weighed when the straight line of its last two weights is at the weight to stop at', () => {
  const hominy = tray('Tray 1', '08:00', {}, ['12:00', 3])
  expect(trayDueMs(hominy, 1.35)).toBe(ms('12:00') + 3.3 * 3_600_000)
  expect(said('13:00', [], [hominy])).toEqual(['Tray 1: weigh it at 15:18. Stop when it weighs 1.35 kg (2.98 lb).'])
  expect(said('15:19', [], [hominy])).toEqual(['now: Tray 1: weigh it now. Stop when it weighs 1.35 kg (2.98 lb).'])
})

test('an unweighed tray of hominy is due after the shortest printed time, an ear after a day, one that grew after a day', () => {
  expect(trayDueMs(tray('t', '08:00', {}), 1.35)).toBe(ms('14:00'))
  expect(trayDueMs(tray('t', '08:00', { what: 'ears' }), 1.35)).toBe(ms('08:00') + 24 * 3_600_000)
  expect(trayDueMs(tray('t', '08:00', {}, ['12:00', 3], ['13:00', 3.1]), 1.35)).toBe(ms('13:00') + 24 * 3_600_000)
  expect(trayDueMs(tray('t', '08:00', {}, ['12:00', 1.36]), 1.35)).toBe(ms('13:00'))
})

test('two weighings in the same minute give a day, not no time at all', () => {
  expect(trayDueMs(tray('t', '08:00', {}, ['08:00', 5]), 1.35)).toBe(ms('08:00') + 24 * 3_600_000)
  expect(trayDueMs(tray('t', '08:00', {}, ['08:00', 4]), 1.35)).toBe(ms('09:00'))
})

test('what is due stands first, then by its clock; ended ones are gone', () => {
  const ready = tray('Done', '06:00', {}, ['11:00', 1.35])
  const ended = { ...pan('Gone', '09:00'), ended: { how: 'fridge', at: at('10:00') } } as never
  const all = told('11:30', [pan('Later', '11:00'), pan('Sooner', '10:00'), ended], [ready])
  expect(all.map(({ id }) => id)).toEqual(['Done', 'Sooner', 'Later'])
})
