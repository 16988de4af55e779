/**
 * Copies entries between this device and the house server, both ways, by cursor (@crib/journal exchange). Idempotent:
 * whatever is sent twice is already there. The store on each side checks every hash and chain.
 */
import {
  type AppendOutcome,
  exchange,
  type JournalStore,
  type KitchenSummary,
  NOTHING_EXCHANGED,
  type ReadPage,
  type Role,
  type StoredEntry,
  type SyncState,
} from '@crib/journal'

/** A kitchen on the house server, and what this person is there; at home the server says neither. */
export interface HouseKitchen extends KitchenSummary {
  readonly role?: Role
  /** False: the server hands out a copy of what this person may read, under the id `view`. */
  readonly whole?: boolean
  readonly view?: string
}

export interface PullQuery {
  readonly kitchenId: string
  readonly after: number
  readonly deviceId: string
  readonly view?: string
}

export interface HouseServer {
  push(entries: readonly StoredEntry[]): Promise<AppendOutcome>
  /** `view`: the copy the page is of, where it is of one. */
  pull(query: PullQuery): Promise<ReadPage & { readonly view?: string }>
  kitchens(deviceId: string): Promise<readonly HouseKitchen[]>
}

/** The server asks who is there; `status` tells why not. */
export class HouseRefused extends Error {
  readonly status: number
  constructor(address: string, status: number) {
    super(`${address} answered ${status}`)
    this.name = 'HouseRefused'
    this.status = status
  }
}

export interface ExchangeSetup {
  readonly store: JournalStore
  readonly server: HouseServer
  readonly kitchenId: string
  readonly deviceId: string
  readonly state: SyncState
}

export interface Exchanged {
  readonly state: SyncState
  readonly kitchen: HouseKitchen | undefined
  /** The copy did not fit what came: it is to be dropped and taken anew. */
  readonly copyBroken: boolean
}

/**
 * One exchange; how far it came. Rejects when the server does not answer. A server that holds less than it acknowledged
 * has lost its book, or is another one: it is offered everything of this device again.
 *
 * `copyFor` gives the store for a copy, with how far it was read; it is asked only where the kitchen is not read whole.
 */
export async function exchangeWithHouse(
  setup: ExchangeSetup,
  copyFor: (
    view: string | undefined,
    pulledUpTo: number,
  ) => Promise<{ readonly store: JournalStore | null; readonly pulledUpTo: number }> = async (_, pulledUpTo) => ({
    store: null,
    pulledUpTo,
  }),
): Promise<Exchanged> {
  const { store, server, kitchenId, deviceId } = setup
  const kitchen = (await server.kitchens(deviceId)).find((each) => each.kitchenId === kitchenId)
  const onServerCount = kitchen?.entryCount ?? 0
  const afterCount = await countAfter(store, kitchenId, setup.state.pushedUpTo, () => true)
  const acknowledgedCount = setup.state.pushedUpTo === 0 ? 0 : countOf(await store.kitchens(), kitchenId) - afterCount
  const from = onServerCount < acknowledgedCount ? NOTHING_EXCHANGED : setup.state
  const view = kitchen?.whole === false ? kitchen.view : undefined
  const copy = await copyFor(view, from.pulledUpTo)
  let copyBroken = false
  const { state } = await exchange({
    // Lines of this device are read from its own book; what comes from a copy is kept apart from it.
    store: copy.store
      ? {
          ...store,
          append: async (entries) => {
            const outcome = await copy.store!.append(entries)
            copyBroken ||= outcome.results.some((each) => each.outcome === 'refused')
            return outcome
          },
        }
      : store,
    remote: {
      push: server.push,
      pull: async (query) => {
        const page = await server.pull({ ...query, deviceId, ...(view !== undefined && { view }) })
        // The role changed since the kitchens were listed: these lines are of another copy. The next exchange sorts it out.
        return page.view === view ? page : { entries: [], next: query.after }
      },
    },
    kitchenId,
    state: { ...from, pulledUpTo: copy.pulledUpTo },
    onlyDeviceId: deviceId,
  })
  return { state, kitchen, copyBroken }
}

function countOf(kitchens: readonly KitchenSummary[], kitchenId: string): number {
  return kitchens.find((kitchen) => kitchen.kitchenId === kitchenId)?.entryCount ?? 0
}

/** Entries written on this device that the server has not acknowledged. */
export function countPending(
  store: JournalStore,
  { kitchenId, deviceId, state }: Omit<ExchangeSetup, 'store' | 'server'>,
): Promise<number> {
  return countAfter(store, kitchenId, state.pushedUpTo, (entry) => entry.envelope.deviceId === deviceId)
}

async function countAfter(
  store: JournalStore,
  kitchenId: string,
  after: number,
  counts: (entry: StoredEntry) => boolean,
): Promise<number> {
  let counted = 0
  for (let cursor = after; ; ) {
    const { entries, next } = await store.read({ kitchenId, after: cursor })
    if (entries.length === 0) return counted
    counted += entries.filter(counts).length
    cursor = next
  }
}

/** The house server over HTTP: the address the screens came from. */
export const HTTP_SERVER: HouseServer = {
  push: (entries) => ask('/api/entries', { method: 'POST', body: JSON.stringify({ entries }) }),
  pull: ({ kitchenId, after, deviceId, view }) => {
    const query = new URLSearchParams({
      kitchen: kitchenId,
      after: `${after}`,
      device: deviceId,
      ...(view && { view }),
    })
    return ask(`/api/entries?${query}`)
  },
  kitchens: async (deviceId) =>
    (await ask<{ kitchens: readonly HouseKitchen[] }>(`/api/kitchens?device=${deviceId}`)).kitchens,
}

const PATIENCE_MS = 10_000

async function ask<T>(address: string, init: RequestInit = {}): Promise<T> {
  const response = await fetch(address, {
    ...init,
    headers: { 'content-type': 'application/json' },
    signal: AbortSignal.timeout(PATIENCE_MS),
  })
  if (!response.ok) throw new HouseRefused(address, response.status)
  return response.json()
}
