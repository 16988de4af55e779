import { afterEach, beforeEach, expect, test } from 'vitest'
import type { StoredEntry } from './envelope.ts'
import { foldFacts } from './fold/fold.ts'
import type { JournalStore } from './store.ts'
import { openSqliteStore } from './stores/sqlite.ts'
import { acknowledgedBy, exchange, NOTHING_EXCHANGED, type RemoteBook, unacknowledged } from './sync.ts'
import { type TestKitchen, testKitchen } from './testing/invented.ts'

let kitchen: TestKitchen
let phone: JournalStore
let laptop: JournalStore
let server: JournalStore
beforeEach(async () => {
  kitchen = testKitchen()
  ;[phone, laptop, server] = await Promise.all([
    openSqliteStore(':memory:'),
    openSqliteStore(':memory:'),
    openSqliteStore(':memory:'),
  ])
})
afterEach(async () => {
  await Promise.all([phone, laptop, server].map((store) => store.close()))
})

const remote = (): RemoteBook => ({
  push: (entries) => server.append(entries),
  pull: (query) => server.read({ ...query, limit: 2 }),
})

function write(count: number, author = kitchen.author()): StoredEntry[] {
  return Array.from({ length: count }, () => {
    kitchen.clock.wait(1)
    return author.write('corn-lot-brought-in', {
      lotId: kitchen.newId(),
      name: 'Lantern flint',
      cornType: 'flint',
      form: 'shelled',
      massKg: 1,
      asTyped: '1 kg',
      treatedSeed: false,
    })
  })
}

const all = async (store: JournalStore): Promise<readonly StoredEntry[]> =>
  (await store.read({ kitchenId: kitchen.kitchenId })).entries

test('[J60] two devices that were apart end with the same book, and a second exchange moves nothing', async () => {
  await phone.append(write(5))
  await laptop.append(write(3))
  const { kitchenId } = kitchen
  const first = await exchange({ store: phone, remote: remote(), kitchenId, state: NOTHING_EXCHANGED, pageSize: 2 })
  expect(first).toMatchObject({ pushedCount: 5, pulled: [], refused: [] })
  const second = await exchange({ store: laptop, remote: remote(), kitchenId, state: NOTHING_EXCHANGED })
  expect(second).toMatchObject({ pushedCount: 3, refused: [] })
  expect(second.pulled).toHaveLength(5)
  const third = await exchange({ store: phone, remote: remote(), kitchenId, state: first.state })
  expect(third.pulled).toHaveLength(3)
  expect(foldFacts(await all(phone))).toEqual(foldFacts(await all(laptop)))
  expect(Object.keys(foldFacts(await all(phone)).cornLots)).toHaveLength(8)
  const again = await exchange({ store: phone, remote: remote(), kitchenId, state: third.state })
  expect(again).toMatchObject({ pushedCount: 0, pulled: [], refused: [] })
})

test('[J60] an exchange cut off anywhere is finished by the next one', async () => {
  const entries = write(7)
  await phone.append(entries)
  const { kitchenId } = kitchen
  for (let failAt = 1; failAt <= 4; failAt += 1) {
    let calls = 0
    const failing: RemoteBook = {
      push: async (page) => {
        const outcome = await server.append(page) // it arrives, and the answer is lost
        calls += 1
        if (calls === failAt) throw new Error('network away')
        return outcome
      },
      pull: remote().pull,
    }
    const attempt = exchange({ store: phone, remote: failing, kitchenId, state: NOTHING_EXCHANGED, pageSize: 2 })
    await expect(attempt).rejects.toThrow('network away')
  }
  await exchange({ store: phone, remote: remote(), kitchenId, state: NOTHING_EXCHANGED })
  expect(await all(server)).toEqual(entries)
})

test('[J60] a browser pushes its own lines alone and leaves what it was given', async () => {
  const mine = kitchen.author()
  const own = write(2, mine)
  await phone.append([...own, ...write(2)])
  const { kitchenId } = kitchen
  const onlyDeviceId = own[0]!.envelope.deviceId
  await exchange({ store: phone, remote: remote(), kitchenId, state: NOTHING_EXCHANGED, onlyDeviceId })
  expect(await all(server)).toEqual(own)
})

test('[J61] what the other side refuses stays here, is reported, and is tried again', async () => {
  const [first, second] = write(2)
  await phone.append([first!, second!])
  const { kitchenId } = kitchen
  const deaf: RemoteBook = {
    push: async (entries) => await server.append(entries.slice(1)), // loses the first of each page
    pull: remote().pull,
  }
  const report = await exchange({ store: phone, remote: deaf, kitchenId, state: NOTHING_EXCHANGED })
  expect(report.state).toEqual(NOTHING_EXCHANGED)
  expect(report.refused).toMatchObject([{ id: second!.envelope.id, faults: [{ code: 'missing-before', detail: '1' }] }])
  await exchange({ store: phone, remote: remote(), kitchenId, state: report.state })
  expect(await all(server)).toEqual([first, second])
})

test('[J61] an outbox keeps what is not acknowledged, each chain from its beginning', async () => {
  const entries = write(3)
  const outcome = await server.append([entries[0]!, { ...entries[1]!, hash: '0'.repeat(64) }])
  const acknowledged = acknowledgedBy(outcome)
  expect(acknowledged).toEqual([entries[0]!.envelope.id])
  expect(unacknowledged([entries[2]!, entries[1]!, entries[0]!], new Set(acknowledged))).toEqual(entries.slice(1))
})
