import 'fake-indexeddb/auto'
import { createAuthor, createId, type JournalStore, NOTHING_EXCHANGED } from '@crib/journal'
import { openIdbStore } from '@crib/journal/idb'
import { expect, test } from 'vitest'
import { countPending, exchangeWithHouse, type HouseServer } from './exchange.ts'

const clock = { now: () => Date.now() }
const random = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) }
const id = () => createId(clock, random)

/** A house server that is a real store behind the same three calls. */
const serverOf = (store: JournalStore): HouseServer => ({
  push: (entries) => store.append(entries),
  pull: (query) => store.read(query),
  kitchens: () => store.kitchens(),
})

async function aDevice(entriesCount: number) {
  const store = await openIdbStore(`device-${id()}`)
  const [kitchenId, deviceId] = [id(), id()]
  const author = createAuthor({ kitchenId, deviceId, personId: id(), head: null, clock, random, zone: 'UTC' })
  const entries = [author.write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: true })]
  while (entries.length < entriesCount) entries.push(author.write('kitchen-noted', { kitchenId, jarFill: 'half' }))
  await store.append(entries)
  return { store, kitchenId, deviceId }
}

test('entries wait until the server has acknowledged them', async () => {
  const device = await aDevice(3)
  const house = await openIdbStore(`house-${id()}`)
  expect(await countPending(device.store, { ...device, state: NOTHING_EXCHANGED })).toBe(3)
  const state = await exchangeWithHouse({ ...device, server: serverOf(house), state: NOTHING_EXCHANGED })
  expect(await countPending(device.store, { ...device, state })).toBe(0)
  expect(await house.kitchens()).toEqual([{ kitchenId: device.kitchenId, entryCount: 3 }])
})

test('a server that lost its book is offered everything again', async () => {
  const device = await aDevice(3)
  const house = await openIdbStore(`house-${id()}`)
  const state = await exchangeWithHouse({ ...device, server: serverOf(house), state: NOTHING_EXCHANGED })
  const emptied = await openIdbStore(`house-${id()}`)
  await exchangeWithHouse({ ...device, server: serverOf(emptied), state })
  expect(await emptied.kitchens()).toEqual([{ kitchenId: device.kitchenId, entryCount: 3 }])
})

test('a server that does not answer leaves everything waiting', async () => {
  const device = await aDevice(2)
  const silent: HouseServer = {
    push: () => Promise.reject(new Error('no answer')),
    pull: () => Promise.reject(new Error('no answer')),
    kitchens: () => Promise.reject(new Error('no answer')),
  }
  const exchanging = exchangeWithHouse({ ...device, server: silent, state: NOTHING_EXCHANGED })
  await expect(exchanging).rejects.toThrow('no answer')
  expect(await countPending(device.store, { ...device, state: NOTHING_EXCHANGED })).toBe(2)
})
