import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { demoKitchen, type JournalStore } from '@crib/journal'
import { openSqliteStore } from '@crib/journal/sqlite'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { createApp } from './app.ts'
import { startServer } from './start-server.ts'

let folder: string
let store: JournalStore
let app: ReturnType<typeof createApp>

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'book-'))
  store = await openSqliteStore(join(folder, 'book.sqlite'))
  app = createApp({ store, hostNames: ['localhost'] })
})

afterEach(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

const demo = () => {
  let next = 1
  return demoKitchen({
    clock: { now: () => Date.UTC(2026, 0, 10) + next++ },
    random: { bytes: (count) => Uint8Array.from({ length: count }, () => (next++ * 37) % 256) },
    zone: 'America/New_York',
  })
}

const post = (path: string, body: unknown, headers: Record<string, string> = {}) =>
  app.request(`http://localhost${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', host: 'localhost', ...headers },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  })
const get = (path: string, headers: Record<string, string> = {}) =>
  app.request(`http://localhost${path}`, { headers: { host: 'localhost', ...headers } })

describe('calculations over HTTP', () => {
  test('a calculation answers with worded, reckoned values', async () => {
    const answer = await post('/api/calculations/pressure-band', { gauge: 'dial', elevationFt: '612 m' })
    expect(answer.status).toBe(200)
    const { kind, values } = await answer.json()
    expect(kind).toBe('reckoned')
    expect(values[0].text).toBe('12 psi (83 kPa)')
  })

  test('a fault in the inputs is a 400 that names field and limit, and an unknown calculation a 404', async () => {
    const faulty = await post('/api/calculations/pressure-band', { gauge: 'dial', elevationFt: 'high' })
    expect(faulty.status).toBe(400)
    expect((await faulty.json()).faults[0].field).toBe('elevationFt')
    expect((await post('/api/calculations/no-such', {})).status).toBe(404)
  })

  test('what is not JSON is said so', async () => {
    const answer = await post('/api/calculations/pressure-band', 'dial at 612 m')
    expect(answer.status).toBe(400)
    expect(await answer.json()).toEqual({ error: 'What was sent is not JSON.' })
  })

  test('the list leaves out nothing that a form needs', async () => {
    const list = await (await get('/api/calculations')).json()
    expect(list.find(({ id }: { id: string }) => id === 'canner-card').inputs).toBeTypeOf('object')
  })
})

describe('entries over HTTP', () => {
  test('pushed entries are kept once, and read back by cursor', async () => {
    const { kitchenId, entries } = demo()
    const first = await (await post('/api/entries', { entries })).json()
    const again = await (await post('/api/entries', { entries })).json()
    expect(first.results.every(({ outcome }: { outcome: string }) => outcome === 'accepted')).toBe(true)
    expect(again.results.every(({ outcome }: { outcome: string }) => outcome === 'already')).toBe(true)

    const page = await (await get(`/api/entries?kitchen=${kitchenId}&limit=2`)).json()
    expect(page.entries).toHaveLength(2)
    const rest = await (await get(`/api/entries?kitchen=${kitchenId}&after=${page.next}`)).json()
    expect(page.entries.length + rest.entries.length).toBe(entries.length)
  })

  test('an altered entry is refused by itself and the rest lands', async () => {
    const { entries } = demo()
    const last = entries.at(-1)!
    const altered = { ...last, body: { ...last.body, value: { forged: true } } }
    const { results } = await (await post('/api/entries', { entries: [...entries.slice(0, -1), altered] })).json()
    expect(results.at(-1).outcome).toBe('refused')
    expect(results.filter(({ outcome }: { outcome: string }) => outcome === 'accepted')).toHaveLength(
      entries.length - 1,
    )
  })

  test('a request of the wrong shape is a 400 and changes nothing', async () => {
    expect((await post('/api/entries', { entries: 'all of them' })).status).toBe(400)
    expect((await get('/api/entries')).status).toBe(400)
    expect(await (await get('/api/kitchens')).json()).toEqual({ kitchens: [] })
  })
})

describe('who may ask', () => {
  test('a foreign name in Host or Origin is refused, so another page cannot read the book', async () => {
    expect((await get('/api/kitchens', { host: 'elsewhere.example' })).status).toBe(403)
    expect((await get('/api/kitchens', { origin: 'https://elsewhere.example' })).status).toBe(403)
    expect((await get('/api/kitchens')).status).toBe(200)
  })

  test('a page may compile a kernel, and may run no text as script', async () => {
    const policy = (await get('/api/health')).headers.get('content-security-policy')!
    const script = policy.split(';').find((part) => part.trim().startsWith('script-src '))
    expect(script?.trim().split(' ')).toEqual(['script-src', "'self'", "'wasm-unsafe-eval'"])
  })

  test('an unknown address of the API is a JSON 404, not a page', async () => {
    const answer = await get('/api/nothing')
    expect(answer.status).toBe(404)
    expect((await answer.json()).error).toContain('/api/nothing')
  })
})

describe('paper over HTTP', () => {
  test('a document becomes a PDF; anything else is refused', async () => {
    const document = {
      title: 'A sheet',
      paper: 'a4',
      marginMm: 15,
      invented: true,
      madeAt: '2026-01-10T12:00:00.000Z',
      footer: { pageOf: 'page {page} of {pages}', edition: '', inventedLine: 'Invented', missingLetters: '' },
      blocks: [{ kind: 'line', text: 'Twelve psi.' }],
    }
    const pdf = await post('/api/paper', document)
    expect(pdf.status).toBe(200)
    expect(pdf.headers.get('content-type')).toBe('application/pdf')
    expect(
      Buffer.from(await pdf.arrayBuffer())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-')
    const bytes = async (path: string) => Buffer.from(await (await post(path, document)).arrayBuffer())
    expect((await bytes('/api/paper?print=large')).equals(await bytes('/api/paper'))).toBe(false)
    expect((await post('/api/paper?print=huge', document)).status).toBe(400)
    expect((await post('/api/paper', { title: 'no blocks' })).status).toBe(400)
    expect((await post('/api/paper', { ...document, madeAt: 'yesterday' })).status).toBe(400)
  })
})

describe('the care of the book', () => {
  const careOf = async (url: string) => (await fetch(`${url}api/care`)).json()
  const when = async (is: () => Promise<boolean>) => {
    for (let tried = 0; tried < 200 && !(await is()); tried += 1) await new Promise((next) => setTimeout(next, 10))
  }

  test('a server told to back up makes one at its start, and says when and where the book lies', async () => {
    const bookFile = join(folder, 'kept.sqlite')
    const kept = await openSqliteStore(bookFile)
    await kept.append(demo().entries)
    await kept.close()
    const into = join(folder, 'stick')
    const told: string[] = []
    const backup = { into, everyHours: 24, keepCount: 2, told: ({ kind }: { kind: string }) => void told.push(kind) }
    const server = await startServer({ port: 0, bookFile, backup })
    await when(async () => told.length > 0)
    expect(told).toEqual(['made'])
    const [name] = readdirSync(into)
    expect(name).toMatch(/^backup-/)
    const { where, bytes, backups } = await careOf(server.url)
    expect(where).toBe(bookFile)
    expect(bytes).toBeGreaterThan(0)
    expect(backups.everyHours).toBe(24)
    expect(backups.lastMadeAt.slice(0, 10)).toBe(name!.slice(7, 17))
    await server.close()
  })

  test('a server told nothing makes none, and says so', async () => {
    const server = await startServer({ port: 0, bookFile: join(folder, 'alone.sqlite') })
    expect((await careOf(server.url)).backups).toBeNull()
    await server.close()
  })
})

test('a taken port is passed over for the next free one', async () => {
  const first = await startServer({ port: 0, bookFile: join(folder, 'one.sqlite') })
  const taken = Number(new URL(first.url).port)
  const second = await startServer({ port: taken, bookFile: join(folder, 'two.sqlite') })
  expect(Number(new URL(second.url).port)).toBeGreaterThan(taken)
  expect((await fetch(`${second.url}api/health`)).status).toBe(200)
  await first.close()
  await second.close()
})
