/** A house for tests: a real book and real tables in a folder of its own, a clock set by hand, and people with roles. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Author, createAuthor, createId, type Role, type Standing, type StoredEntry } from '@crib/journal'
import { openStore } from '@crib/journal/open'
import { openSecretTables, secretsBeside } from '@crib/journal/secrets'
import { createApp } from '../app.ts'
import { createPeople, type Reach } from './people.ts'

export const HOST = 'corn.example'
export const PAGE = `http://${HOST}`
export const PASSPHRASE = 'ash and water and patience'

export interface Answer {
  readonly status: number
  // biome-ignore lint/suspicious/noExplicitAny: what a door answers is what the test looks at
  readonly body: any
  readonly text: string
  readonly headers: Headers
}

export type TestHouse = Awaited<ReturnType<typeof openTestHouse>>

export interface TestHouseSetup {
  readonly reach?: Reach
  /** An address of PostgreSQL instead of a file. */
  readonly where?: string
  /** A kitchen another house of the same store has opened, and who opened it. */
  readonly kitchenId?: string
  readonly founderId?: string
}

export async function openTestHouse({ reach = 'network', where, ...known }: TestHouseSetup = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'house-'))
  const place = where ?? join(folder, 'book.sqlite')
  const store = await openStore(place)
  const tables = await openSecretTables(secretsBeside(place))
  const clock = { nowMs: Date.parse('2026-11-14T10:00:00.000Z'), now: () => clock.nowMs }
  const people = createPeople({ reach, store, tables, now: clock.now })
  const backups = { everyHours: 24, lastMadeAtMs: async () => clock.nowMs - 3_600_000 }
  const app = createApp({ store, people, care: { store, reach, backups }, hostNames: [] })
  const random = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) }
  const newId = () => createId(clock, random)
  const kitchenId = known.kitchenId ?? newId()
  const founderId = known.founderId ?? newId()
  const author = (personId: string, deviceId = newId()): Author =>
    createAuthor({ kitchenId, deviceId, personId, head: null, clock, random, zone: 'America/Toronto' })
  const keeper = author(founderId)
  if (!known.kitchenId)
    await store.append([keeper.write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: false })])

  async function ask(
    method: 'GET' | 'POST',
    path: string,
    { body, cookie, headers = {} }: { body?: unknown; cookie?: string; headers?: Record<string, string> } = {},
  ): Promise<Answer> {
    const response = await app.request(`${PAGE}${path}`, {
      method,
      headers: {
        host: HOST,
        ...(method === 'POST' && { origin: PAGE, 'content-type': 'application/json' }),
        ...(cookie && { cookie }),
        ...headers,
      },
      ...(body !== undefined && { body: JSON.stringify(body) }),
    })
    const text = await response.text()
    const isJson = response.headers.get('content-type')?.includes('json') ?? false
    return { status: response.status, body: isJson ? JSON.parse(text) : null, text, headers: response.headers }
  }

  const cookieOf = ({ headers }: Answer) => (headers.get('set-cookie') ?? '').split(';')[0] ?? ''

  /** Somebody who came by invitation, signed in. */
  async function joined(role: Role, name: string) {
    const { secret } = await people.invitations.make({ kitchenId, role }, 1)
    const answer = await ask('POST', '/api/people/join', { body: { secret, name, passphrase: PASSPHRASE } })
    if (answer.status !== 200) throw new Error(`${name} could not join: ${answer.text}`)
    return { cookie: cookieOf(answer), personId: answer.body.personId as string, name }
  }

  /** Signed in, without a role in the kitchen. */
  async function outsider(name: string) {
    const person = await joined('reader', name)
    await people.membership.record(kitchenId, founderId, 'person-left', { personId: person.personId })
    return person
  }

  return {
    folder,
    store,
    tables,
    people,
    app,
    clock,
    kitchenId,
    founderId,
    keeper,
    newId,
    author,
    ask,
    cookieOf,
    joined,
    somebody: (standing: Standing, name: string) => (standing === 'outsider' ? outsider(name) : joined(standing, name)),
    keep: async (...entries: StoredEntry[]) => {
      const { results } = await store.append(entries)
      const refused = results.find(({ outcome }) => outcome === 'refused')
      if (refused) throw new Error(JSON.stringify(refused))
    },
    remove: async () => {
      await store.close()
      await tables.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

export const lotBody = (lotId: string, name = 'Lantern flint') => ({
  lotId,
  name,
  cornType: 'flint' as const,
  form: 'shelled' as const,
  massKg: 9,
  asTyped: '9 kg',
  treatedSeed: false,
})
