/** `crib book exchange URL`: this book and another home's over HTTP, every line both ways, each kept once. */
import { exchange, foldFacts, type JournalStore, NOTHING_EXCHANGED, type RemoteBook } from '@crib/journal'
import { ExchangeBroken, httpBook } from '@crib/journal/http'
import type { Command } from 'commander'
import { type BookFlags, chooseKitchen, readAll, withStore } from '../book.ts'
import { badInput, EXIT } from '../exit-codes.ts'
import { type Door, printJson, verb, withBook } from '../verb.ts'

interface Flags extends BookFlags {
  readonly name?: string
  readonly passphraseStdin?: true
}

/** A kitchen as the other server tells it; `whole` is false where it gives a copy only. */
interface TheirKitchen {
  readonly kitchenId: string
  readonly whole?: boolean
}

export function addExchange(parent: Command, door: Door): void {
  const { terminal, words } = door
  withBook(verb(parent, door, 'exchange <url>', 'terminal:about-book-exchange'), door)
    .option('--name <name>', words.say('terminal:flag-exchange-name'))
    .option('--passphrase-stdin', words.say('terminal:flag-passphrase-stdin'))
    .action(async (given: string, flags: Flags) => {
      const url = originOf(given)
      const session = await signIn(url, flags, door)
      try {
        const remote = httpBook(url, { headers: session })
        // Asked before the book is opened: an address that does not answer leaves no new book behind.
        const theirs: readonly TheirKitchen[] = await remote.kitchens()
        const use = (store: JournalStore) => exchangeAll({ store, remote, theirs, flags, url, door })
        await withStore(flags, terminal, use, { mayBegin: true })
      } catch (cause) {
        const asksWho = cause instanceof ExchangeBroken && cause.status === 401
        throw asksWho ? badInput('terminal:exchange-asks-who', { url }) : cause
      } finally {
        if (session.cookie) await post(url, '/api/people/sign-out', {}, session).catch(() => undefined)
      }
    })
}

interface Asked {
  readonly store: JournalStore
  readonly theirs: readonly TheirKitchen[]
  readonly flags: Flags
  readonly url: string
}

async function exchangeAll({ door, remote, ...asked }: Asked & { readonly door: Door; readonly remote: RemoteBook }) {
  const { terminal, words, end } = door
  const { store, flags, url } = asked
  const kitchens = []
  for (const kitchenId of await kitchensMeant(asked)) {
    // Nothing is remembered of earlier times: the other book may be another one by now. What is kept is not kept twice.
    const setup = { store, remote, kitchenId, state: NOTHING_EXCHANGED }
    const { pushedCount, pulled, refused } = await exchange(setup)
    const kitchen = foldFacts(await readAll(store, kitchenId)).kitchen?.name ?? kitchenId
    kitchens.push({ kitchenId, kitchen, sent: pushedCount, came: pulled.length, refused })
  }
  if (kitchens.some(({ refused }) => refused.length > 0)) end(EXIT.trouble)
  if (flags.json) return printJson(door, { kind: 'exchanged', url, kitchens })
  for (const { kitchen, sent, came, refused } of kitchens) {
    terminal.out(words.say('terminal:exchanged', { kitchen, sent, came, refused: refused.length }))
    for (const { id, faults = [] } of refused) {
      for (const { code, detail } of faults) terminal.out(`${code}  ${id}  ${detail}`)
    }
  }
}

function originOf(given: string): string {
  const url = URL.parse(given)
  if (!url || !/^https?:$/.test(url.protocol)) throw badInput('terminal:bad-address', { given })
  return url.origin
}

/** What every request carries: the page it comes from, and the session where one was asked for. */
interface Session {
  readonly [header: string]: string
}

async function signIn(url: string, { name, passphraseStdin }: Flags, { terminal }: Door): Promise<Session> {
  if ((name === undefined) !== (passphraseStdin === undefined)) throw badInput('terminal:name-and-passphrase')
  const origin = { origin: url }
  if (name === undefined) return origin
  const passphrase = (await terminal.readInput()).replace(/\r?\n$/, '')
  const response = await post(url, '/api/people/sign-in', { name, passphrase }, origin).catch((cause: Error) => {
    throw new ExchangeBroken(url, 0, cause.message)
  })
  const cookie = response.headers.get('set-cookie')?.split(';')[0]
  if (response.ok && cookie) return { ...origin, cookie }
  const { error } = (await response.json().catch(() => ({}))) as { error?: string }
  throw badInput('terminal:exchange-not-let-in', { url, name, detail: error ?? String(response.status) })
}

function post(url: string, path: string, body: unknown, headers: Session): Promise<Response> {
  return fetch(`${url}${path}`, {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { ...headers, 'content-type': 'application/json' },
    // A passphrase goes to the address that was typed and nowhere else.
    redirect: 'error',
    signal: AbortSignal.timeout(PATIENCE_MS),
  })
}

const PATIENCE_MS = 60_000

/**
 * The kitchen named; else those both books hold; else, into a book where nothing is written yet, all of theirs. A kitchen
 * of this book goes to a place that does not have it only when it is named.
 */
async function kitchensMeant({ store, theirs, flags, url }: Asked): Promise<readonly string[]> {
  const whole = ({ kitchenId, whole = true }: TheirKitchen) => {
    if (!whole) throw badInput('terminal:exchange-not-whole', { kitchen: kitchenId })
    return kitchenId
  }
  if (flags.kitchen !== undefined) {
    const isTheirs = theirs.some(({ kitchenId }) => kitchenId === flags.kitchen)
    const kitchenId = isTheirs ? flags.kitchen : await chooseKitchen(store, flags.kitchen)
    const found = theirs.find((each) => each.kitchenId === kitchenId)
    if (found) return [whole(found)]
    return kitchenId === null ? [] : [kitchenId]
  }
  const mine = (await store.kitchens()).map(({ kitchenId }) => kitchenId)
  const meant = mine.length === 0 ? theirs : theirs.filter(({ kitchenId }) => mine.includes(kitchenId))
  if (meant.length === 0) throw badInput('terminal:exchange-no-common', { url })
  return meant.map(whole)
}
