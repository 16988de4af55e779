import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { startServer } from '../../../server/src/index.ts'
import { createTestingTerminal, type TestingTerminal } from '../../testing/testing-terminal.ts'

const PASSPHRASE = 'ash and water and patience'
const POT = ['note', 'pot-recorded', '--set', 'volumeL=20 qt', '--set', 'material=enamel'] as const

let terminal: TestingTerminal
let others: Awaited<ReturnType<typeof openOtherHome>>[]
beforeEach(async () => {
  terminal = createTestingTerminal('2026-11-03T18:00:00Z')
  others = []
  await terminal.crib('note', 'kitchen-opened', '--set', 'name=Ostrey Point', '--set', 'demo=yes')
  await terminal.crib(...POT, '--set', 'name=Big pot')
})
afterEach(async () => {
  terminal.remove()
  for (const other of others) await other.remove()
})

async function otherHome(setup: OtherHomeSetup = {}) {
  const other = await openOtherHome(setup)
  others.push(other)
  return other
}
const linesOf = async (book: string) =>
  (JSON.parse((await terminal.crib('book', 'lines', '--json', '--book', book)).out) as { hash: string }[])
    .map(({ hash }) => hash)
    .toSorted()

test('two homes send each other what they lack, once, and end with the same lines', async () => {
  const { url, bookFile } = await otherHome()
  const first = await terminal.crib('book', 'exchange', url, '--kitchen', 'Ostrey Point')
  expect(first).toMatchObject({ exitCode: 0, out: 'Ostrey Point: lines sent 2, lines that came 0, refused 0.' })

  // Both write on by themselves.
  await terminal.crib(...POT, '--set', 'name=Small pot')
  await terminal.crib(...POT, '--set', 'name=Their pot', '--book', bookFile)
  await terminal.crib(...POT, '--set', 'name=Their other pot', '--book', bookFile)
  const second = await terminal.crib('book', 'exchange', url)
  expect(second.out).toBe('Ostrey Point: lines sent 1, lines that came 2, refused 0.')
  expect(await linesOf(terminal.bookFile)).toEqual(await linesOf(bookFile))
  expect(await linesOf(bookFile)).toHaveLength(5)
  const again = await terminal.crib('book', 'exchange', url)
  expect(again.out).toBe('Ostrey Point: lines sent 0, lines that came 0, refused 0.')
})

test('a new book fetches what is there, and another home’s kitchen stays apart until it is named', async () => {
  const { url } = await otherHome()
  await terminal.crib('book', 'exchange', url, '--kitchen', 'Ostrey Point')
  const fresh = join(terminal.folder, 'fresh.sqlite')
  const fetched = await terminal.crib('book', 'exchange', url, '--book', fresh, '--json')
  expect(JSON.parse(fetched.out)).toMatchObject({ kind: 'exchanged', url, kitchens: [{ sent: 0, came: 2 }] })
  expect(await linesOf(fresh)).toEqual(await linesOf(terminal.bookFile))

  const apart = join(terminal.folder, 'apart.sqlite')
  await terminal.crib('note', 'kitchen-opened', '--set', 'name=Hark Lake', '--set', 'demo=yes', '--book', apart)
  const refused = await terminal.crib('book', 'exchange', url, '--book', apart)
  expect(refused.exitCode).toBe(2)
  expect(refused.err).toContain('no kitchen in common')
  expect(await linesOf(apart)).toHaveLength(1)
})

test('where the server asks, a keeper signs in by name and passphrase and leaves no session open', async () => {
  const { url, bookFile, keeper } = await otherHome({
    hosted: true,
    fill: (book) => terminal.crib('book', 'move', book),
  })
  const cookie = await keeper('Ash', PASSPHRASE)
  await terminal.crib(...POT, '--set', 'name=Small pot')
  const stranger = await terminal.crib('book', 'exchange', url)
  expect(stranger.exitCode).toBe(2)
  expect(stranger.err).toContain('--name NAME --passphrase-stdin')
  const signedIn = ['book', 'exchange', url, '--name', 'Ash', '--passphrase-stdin']
  const wrong = await terminal.cribWithInput('water and ash', ...signedIn)
  expect(wrong.exitCode).toBe(2)
  expect(wrong.err).toContain(`${url} did not let Ash in`)
  const done = await terminal.cribWithInput(`${PASSPHRASE}\n`, ...signedIn)
  // What came is the line that Ash joined by.
  expect(done.out + done.err).toBe('Ostrey Point: lines sent 1, lines that came 1, refused 0.')
  expect(await linesOf(bookFile)).toEqual(await linesOf(terminal.bookFile))
  expect(await linesOf(bookFile)).toHaveLength(4)
  const { sessions } = await (await fetch(`${url}/api/people/sessions`, { headers: { cookie } })).json()
  expect(sessions).toHaveLength(1)
})

test('another home’s server takes no kitchen from somebody it did not let open one, and each line says why', async () => {
  const { url, keeper } = await otherHome({ hosted: true })
  await keeper('Ash', PASSPHRASE)
  const sent = ['book', 'exchange', url, '--name', 'Ash', '--passphrase-stdin', '--kitchen', 'Ostrey Point']
  const refused = await terminal.cribWithInput(PASSPHRASE, ...sent)
  expect(refused.exitCode).toBe(3)
  expect(refused.out).toContain('lines sent 0, lines that came 0, refused 2.')
  expect(refused.out).toContain('not-allowed')
})

test('an address that is none, and one where nobody answers, are told and leave no book behind', async () => {
  const fresh = join(terminal.folder, 'fresh.sqlite')
  const typed = await terminal.crib('book', 'exchange', 'the house', '--book', fresh)
  expect(typed.exitCode).toBe(2)
  expect(typed.err).toContain('"the house" is no address of a house server')
  const away = await terminal.crib('book', 'exchange', 'http://127.0.0.1:1', '--book', fresh)
  expect(away.exitCode).toBe(3)
  expect(away.err).toContain('http://127.0.0.1:1/api/kitchens')
  expect(existsSync(fresh)).toBe(false)
})

interface OtherHomeSetup {
  /** Everybody signs in. */
  readonly hosted?: boolean
  /** Fills the book before its server opens it. */
  readonly fill?: (bookFile: string) => Promise<unknown>
}

/** Another home's house server, on a free port, with a book of its own. */
async function openOtherHome({ hosted = false, fill }: OtherHomeSetup = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'other-home-'))
  const bookFile = join(folder, 'book.sqlite')
  await fill?.(bookFile)
  const server = await startServer({ port: 0, bookFile, hosted })
  const url = server.url.replace(/\/$/, '')
  return {
    url,
    bookFile,
    /** Somebody who may read and write everything there. */
    keeper: async (name: string, passphrase: string) => {
      const secret = new URL(await server.inviteKeeper()).hash.slice(1)
      const response = await fetch(`${url}/api/people/join`, {
        method: 'POST',
        body: JSON.stringify({ secret, name, passphrase }),
        headers: { origin: url, 'content-type': 'application/json' },
      })
      if (!response.ok) throw new Error(`${name} could not join: ${await response.text()}`)
      return response.headers.get('set-cookie')!.split(';')[0]!
    },
    remove: async () => {
      await server.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
