/**
 * Keeps one kitchen's book on this device: reads it, folds it, writes to it one tab at a time, and exchanges it with the
 * house server. Screens see it through book-provider.tsx. A line is on disk before `changed` is called.
 */
import {
  applyEntries,
  type BodyOf,
  createId,
  createRecorder,
  type Facts,
  type JournalStore,
  type Kind,
  NO_FACTS,
  type StoredEntry,
  type WriteOptions,
} from '@crib/journal'
import type { Device } from './device.ts'
import { countPending, exchangeWithHouse, type HouseServer } from './exchange.ts'

export interface KeeperState {
  readonly facts: Facts
  readonly pendingCount: number
  readonly online: boolean
}

export interface KeeperSetup {
  readonly store: JournalStore
  readonly device: Device
  readonly server: HouseServer
  readonly kitchenId: string
  readonly deviceId: string
  readonly personId: string
  /** The invented kitchen is never copied to the house server. */
  readonly staysHere: boolean
  changed(state: KeeperState): void
}

export interface Keeper {
  write<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions): Promise<StoredEntry>
  /** Exchanges now; false when the server did not answer. */
  exchangeNow(): Promise<boolean>
  close(): void
}

export const CLOCK = { now: () => Date.now() }
export const RANDOM = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) }
export const newId = () => createId(CLOCK, RANDOM)
export const deviceZone = () => Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC'

/** Tabs tell each other that the store has grown. */
const CHANNEL = 'kettle-and-crib'

export async function openKeeper(setup: KeeperSetup): Promise<Keeper> {
  const { store, device, server, kitchenId, deviceId, personId, staysHere } = setup
  const recorder = createRecorder({
    store,
    kitchenId,
    deviceId,
    personId,
    clock: CLOCK,
    random: RANDOM,
    zone: deviceZone(),
  })
  const channel = new BroadcastChannel(CHANNEL)
  let state: KeeperState = { facts: NO_FACTS, pendingCount: 0, online: true }
  let readTo = 0
  let closed = false

  const show = (change: Partial<KeeperState>) => {
    state = { ...state, ...change }
    if (!closed) setup.changed(state)
  }
  // One reading at a time, or two would fold the same page.
  const readOn = inTurn(async () => {
    let { facts } = state
    for (;;) {
      const { entries, next } = await store.read({ kitchenId, after: readTo })
      if (entries.length === 0) break
      facts = applyEntries(facts, entries)
      readTo = next
    }
    const exchanged = await device.exchange(kitchenId)
    const pendingCount = staysHere ? 0 : await countPending(store, { kitchenId, deviceId, state: exchanged })
    show({ facts, pendingCount })
  })

  const exchangeNow = inTurn(async () => {
    if (staysHere) return true
    try {
      await oneTabOnly('kettle-and-crib-exchange', async () => {
        const from = await device.exchange(kitchenId)
        await device.setExchange(
          kitchenId,
          await exchangeWithHouse({ store, server, kitchenId, deviceId, state: from }),
        )
      })
      await readOn()
      show({ online: true })
      channel.postMessage(kitchenId)
      return true
    } catch {
      show({ online: false })
      return false
    }
  })

  channel.onmessage = ({ data }) => {
    if (data === kitchenId) void readOn()
  }
  await readOn()

  return {
    exchangeNow,
    write: async (kind, body, options) => {
      const entry = await oneTabOnly('kettle-and-crib-chain', () => recorder.record(kind, body, options))
      await readOn()
      channel.postMessage(kitchenId)
      return entry
    },
    close: () => {
      closed = true
      channel.close()
    },
  }
}

/** Runs the calls of one function one after another. */
function inTurn<T>(act: () => Promise<T>): () => Promise<T> {
  let last: Promise<unknown> = Promise.resolve()
  return () => {
    const next = last.then(act, act)
    last = next
    return next
  }
}

/**
 * Holds a lock over all tabs. There are no Web Locks on plain HTTP from another machine: there the store itself refuses
 * a forked chain and the recorder writes the line again.
 */
export async function oneTabOnly<T>(name: string, act: () => Promise<T>): Promise<T> {
  if (!('locks' in navigator)) return act()
  return navigator.locks.request(name, act)
}
