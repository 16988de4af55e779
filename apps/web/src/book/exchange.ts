/**
 * Copies entries between this device and the house server, both ways, by cursor (@crib/journal exchange). Idempotent:
 * whatever is sent twice is already there. The store on each side checks every hash and chain.
 */
import {
  exchange,
  type JournalStore,
  type KitchenSummary,
  NOTHING_EXCHANGED,
  type RemoteBook,
  type StoredEntry,
  type SyncState,
} from '@crib/journal'

export interface HouseServer extends RemoteBook {
  kitchens(): Promise<readonly KitchenSummary[]>
}

export interface ExchangeSetup {
  readonly store: JournalStore
  readonly server: HouseServer
  readonly kitchenId: string
  readonly deviceId: string
  readonly state: SyncState
}

/**
 * One exchange; how far it came. Rejects when the server does not answer. A server that holds less than it acknowledged
 * has lost its book, or is another one: it is offered everything of this device again.
 */
export async function exchangeWithHouse(setup: ExchangeSetup): Promise<SyncState> {
  const { store, server, kitchenId, deviceId } = setup
  const onServerCount = countOf(await server.kitchens(), kitchenId)
  const afterCount = await countAfter(store, kitchenId, setup.state.pushedUpTo, () => true)
  const acknowledgedCount = setup.state.pushedUpTo === 0 ? 0 : countOf(await store.kitchens(), kitchenId) - afterCount
  const state = onServerCount < acknowledgedCount ? NOTHING_EXCHANGED : setup.state
  return (await exchange({ store, remote: server, kitchenId, state, onlyDeviceId: deviceId })).state
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
  pull: ({ kitchenId, after }) => ask(`/api/entries?kitchen=${kitchenId}&after=${after}`),
  kitchens: async () => (await ask<{ kitchens: readonly KitchenSummary[] }>('/api/kitchens')).kitchens,
}

const PATIENCE_MS = 10_000

async function ask<T>(address: string, init: RequestInit = {}): Promise<T> {
  const response = await fetch(address, {
    ...init,
    headers: { 'content-type': 'application/json' },
    signal: AbortSignal.timeout(PATIENCE_MS),
  })
  if (!response.ok) throw new Error(`${address} answered ${response.status}`)
  return response.json()
}
