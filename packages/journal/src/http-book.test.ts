import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { gunzipSync, gzipSync } from 'node:zlib'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { StoredEntry } from './envelope.ts'
import { httpBook, requestText } from './http-book.ts'
import type { JournalStore } from './store.ts'
import { openSqliteStore } from './stores/sqlite.ts'
import { exchange, NOTHING_EXCHANGED, type SyncState } from './sync.ts'
import { testKitchen } from './testing/invented.ts'

let house: JournalStore
let server: Server
let base: string
/** Bytes of an answer that get through before the line is cut; every one once it is null. */
let cutAfter: number | null
let sentBytes: { packed: number; plain: number }[]

/** The two addresses of the exchange, on a real socket that can be cut at any byte. */
async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
  const url = new URL(request.url!, 'http://house')
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk as Buffer)
  const given = Buffer.concat(chunks)
  let told: unknown
  if (request.method === 'POST') {
    const plain = request.headers['content-encoding'] === 'gzip' ? gunzipSync(given) : given
    sentBytes.push({ packed: given.length, plain: plain.length })
    told = await house.append((JSON.parse(plain.toString()) as { entries: StoredEntry[] }).entries)
  } else {
    const { searchParams } = url
    const after = Number(searchParams.get('after'))
    const limit = Math.min(Number(searchParams.get('limit')), 3)
    told = await house.read({ kitchenId: searchParams.get('kitchen')!, after, limit })
  }
  const packed = gzipSync(JSON.stringify(told))
  response.writeHead(200, {
    'content-type': 'application/json',
    'content-encoding': 'gzip',
    'content-length': packed.length,
  })
  if (cutAfter === null || cutAfter >= packed.length) response.end(packed)
  else response.write(packed.subarray(0, cutAfter), () => response.destroy())
}

beforeEach(async () => {
  house = await openSqliteStore(':memory:')
  sentBytes = []
  cutAfter = null
  server = createServer((request, response) => {
    answer(request, response).catch(() => response.destroy())
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
})
afterEach(async () => {
  server.closeAllConnections()
  await new Promise((resolve) => server.close(resolve))
  await house.close()
})

const kitchen = testKitchen()
const author = kitchen.author()
const entries = Array.from({ length: 7 }, (_, i) =>
  author.write('pot-recorded', { potId: kitchen.newId(), name: `pot ${i}`, volumeL: 10, material: 'enamel' }),
)
const { kitchenId } = kitchen
const all = async (store: JournalStore) => (await store.read({ kitchenId })).entries

describe('a book over HTTP', () => {
  test('[J62] is exchanged packed both ways', async () => {
    const phone = await openSqliteStore(':memory:')
    await phone.append(entries)
    await exchange({ store: phone, remote: httpBook(base), kitchenId, state: NOTHING_EXCHANGED })
    expect(await all(house)).toEqual(entries)
    expect(sentBytes[0]!.packed).toBeLessThan(sentBytes[0]!.plain / 2)
    await phone.close()
  })

  test('[J62] goes on where it was cut, at whatever byte of whichever answer', { timeout: 60_000 }, async () => {
    await house.append(entries)
    const page = gzipSync(JSON.stringify(await house.read({ kitchenId, limit: 3 }))).length
    expect(page).toBeGreaterThan(700)
    // Every byte of one page, in steps that reach each of its parts; the full count on demand.
    const step = process.env.FAULT_RUNS === '1000' ? 1 : 29
    for (let cut = 0; cut < page; cut += step) {
      const tablet = await openSqliteStore(':memory:')
      let state: SyncState = NOTHING_EXCHANGED
      const setup = {
        store: tablet,
        remote: httpBook(base),
        kitchenId,
        onProgress: (now: SyncState) => {
          state = now
        },
      }
      cutAfter = cut
      await expect(exchange({ ...setup, state }), `cut at byte ${cut}`).rejects.toThrow('/api/entries')
      expect(await all(tablet)).toEqual([])
      // One page gets through, then the line is cut again.
      cutAfter = null
      const counting = {
        ...setup.remote,
        pull: async (query: Parameters<typeof setup.remote.pull>[0]) => {
          const got = await setup.remote.pull(query)
          cutAfter = cut
          return got
        },
      }
      await expect(exchange({ ...setup, remote: counting, state })).rejects.toThrow('/api/entries')
      expect(state).toEqual({ pushedUpTo: 0, pulledUpTo: 3 })
      cutAfter = null
      const rest = await exchange({ ...setup, state })
      expect(rest.pulled.map(({ envelope }) => envelope.id)).toEqual(
        entries.slice(3).map(({ envelope }) => envelope.id),
      )
      expect(await all(tablet)).toEqual(entries)
      await tablet.close()
    }
  })

  test('[J62] an answer that never came whole is told apart from one that says no', async () => {
    await expect(httpBook('http://127.0.0.1:1').kitchens()).rejects.toMatchObject({ name: 'ExchangeBroken', status: 0 })
    const refusing = httpBook('', { fetch: async () => new Response('{}', { status: 403 }) })
    await expect(refusing.kitchens()).rejects.toMatchObject({ status: 403 })
  })

  test('[J63] a packed request is unpacked only as far as its limit', async () => {
    const request = (body: BodyInit, encoding?: string) =>
      new Request('http://house/api/entries', {
        method: 'POST',
        body,
        headers: encoding ? { 'content-encoding': encoding } : {},
      })
    expect(await requestText(request(gzipSync('{"entries":[]}'), 'gzip'), 100)).toBe('{"entries":[]}')
    expect(await requestText(request('玉'), 3)).toBe('玉')
    const bomb = gzipSync(Buffer.alloc(50_000_000))
    expect(bomb.length).toBeLessThan(60_000)
    await expect(requestText(request(bomb, 'gzip'), 1_000_000)).rejects.toThrow('longer than 1000000 bytes')
    await expect(requestText(request('x'.repeat(11)), 10)).rejects.toThrow('longer than 10 bytes')
    await expect(requestText(request('x', 'br'), 10)).rejects.toThrow('cannot unpack br')
  })
})
