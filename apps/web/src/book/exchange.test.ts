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
  const kitchenId = id()
  const deviceId = id()
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
  const { state } = await exchangeWithHouse({ ...device, server: serverOf(house), state: NOTHING_EXCHANGED })
  expect(await countPending(device.store, { ...device, state })).toBe(0)
  expect(await house.kitchens()).toEqual([{ kitchenId: device.kitchenId, entryCount: 3 }])
})

test('a server that lost its book is offered everything again', async () => {
  const device = await aDevice(3)
  const house = await openIdbStore(`house-${id()}`)
  const { state } = await exchangeWithHouse({ ...device, server: serverOf(house), state: NOTHING_EXCHANGED })
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

test('what this person may not read whole is kept apart, as a copy, and a copy that does not fit is told', async () => {
  const device = await aDevice(2)
  const house = await openIdbStore(`house-${id()}`)
  const copy = await openIdbStore(`copy-${id()}`)
  const other = createAuthor({
    kitchenId: device.kitchenId,
    deviceId: id(),
    personId: id(),
    head: null,
    clock,
    random,
    zone: 'UTC',
  })
  const shown = other.write('kitchen-noted', { kitchenId: device.kitchenId, jarFill: 'third' })
  const asked: unknown[] = []
  const server: HouseServer = {
    push: (entries) => house.append(entries),
    pull: async (query) => {
      asked.push(query)
      return { ...(query.after === 0 ? { entries: [shown], next: 1 } : { entries: [], next: query.after }), view: 'v1' }
    },
    kitchens: async () => [{ kitchenId: device.kitchenId, entryCount: 3, role: 'helper', whole: false, view: 'v1' }],
  }
  const copyFor = async () => ({ store: copy, pulledUpTo: 0 })
  const done = await exchangeWithHouse({ ...device, server, state: NOTHING_EXCHANGED }, copyFor)
  expect(done).toMatchObject({ copyBroken: false, kitchen: { role: 'helper' }, state: { pulledUpTo: 1 } })
  expect(asked[0]).toMatchObject({ deviceId: device.deviceId, view: 'v1' })
  expect((await device.store.read({ kitchenId: device.kitchenId })).entries).toHaveLength(2)
  expect((await copy.read({ kitchenId: device.kitchenId })).entries).toEqual([shown])
  expect(await house.kitchens()).toEqual([{ kitchenId: device.kitchenId, entryCount: 2 }])

  const skipped = other.write('kitchen-noted', { kitchenId: device.kitchenId, jarFill: 'half' })
  const unfit = other.write('kitchen-noted', { kitchenId: device.kitchenId, jarFill: 'third' })
  expect(skipped.envelope.deviceSeq).toBe(2)
  const gap: HouseServer = { ...server, pull: async () => ({ entries: [unfit], next: 2, view: 'v1' }) }
  const broken = await exchangeWithHouse({ ...device, server: gap, state: done.state }, copyFor)
  expect(broken.copyBroken).toBe(true)
})

test('lines of a copy never come among this device’s own, even when the role changed a moment ago', async () => {
  const device = await aDevice(2)
  const house = await openIdbStore(`house-${id()}`)
  const author = createAuthor({
    kitchenId: device.kitchenId,
    deviceId: id(),
    personId: id(),
    head: null,
    clock,
    random,
    zone: 'UTC',
  })
  const ofACopy = author.write('kitchen-noted', { kitchenId: device.kitchenId, jarFill: 'third' })
  const server: HouseServer = {
    push: (entries) => house.append(entries),
    pull: async ({ after }) => ({ entries: after === 0 ? [ofACopy] : [], next: 1, view: 'v1' }),
    kitchens: () => house.kitchens(),
  }
  const done = await exchangeWithHouse({ ...device, server, state: NOTHING_EXCHANGED })
  expect(done.state.pulledUpTo).toBe(0)
  expect((await device.store.read({ kitchenId: device.kitchenId })).entries).toHaveLength(2)
})
