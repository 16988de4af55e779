/**
 * Keeps one kitchen's book on this device: reads it, folds it, writes to it one tab at a time, and exchanges it with the
 * house server. Screens see it through book-provider.tsx. A line is on disk before `changed` is called.
 */
import {
  actOfKind,
  applyEntries,
  type BodyOf,
  BodyRefused,
  createId,
  createRecorder,
  type Facts,
  type JournalStore,
  type Kind,
  mayDo,
  NO_FACTS,
  type StoredEntry,
  type WriteOptions,
} from '@crib/journal'
import { dropCopy, openCopy } from './copies.ts'
import type { Device, HouseStanding } from './device.ts'
import { countPending, exchangeWithHouse, HouseRefused, type HouseServer } from './exchange.ts'

export interface KeeperState {
  readonly facts: Facts
  readonly pendingCount: number
  readonly online: boolean
  readonly standing: HouseStanding
  /** The house server answered and asked who is there. */
  readonly asksToSignIn: boolean
  /** No line of it is on this device, and the house server has not answered yet: what it holds is not known. */
  readonly isAwaited: boolean
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
  let standing = await device.standing(kitchenId)
  let copy = standing.view === undefined ? null : await openCopy(standing.view)
  let state: KeeperState = {
    facts: NO_FACTS,
    pendingCount: 0,
    online: true,
    standing,
    asksToSignIn: false,
    isAwaited: !staysHere,
  }
  let readTo = 0
  let copyReadTo = 0
  let closed = false

  const show = (change: Partial<KeeperState>) => {
    state = { ...state, ...change }
    if (!closed) setup.changed(state)
  }
  // One reading at a time, or two would fold the same page.
  const readOn = inTurn(async () => {
    await takeUpCopy()
    // A copy that was dropped leaves the facts with it.
    let facts = readTo === 0 && copyReadTo === 0 ? NO_FACTS : state.facts
    for (;;) {
      const { entries, next } = await store.read({ kitchenId, after: readTo })
      if (entries.length === 0) break
      facts = applyEntries(facts, entries)
      readTo = next
    }
    for (;;) {
      // It may be dropped meanwhile: then the next reading takes up the new one.
      const page = await copy?.read({ kitchenId, after: copyReadTo }).catch(() => undefined)
      if (!page || page.entries.length === 0) break
      facts = applyEntries(facts, page.entries)
      copyReadTo = page.next
    }
    const exchanged = await device.exchange(kitchenId)
    const pendingCount = staysHere ? 0 : await countPending(store, { kitchenId, deviceId, state: exchanged })
    show({ facts, pendingCount, standing, isAwaited: state.isAwaited && readTo === 0 && copyReadTo === 0 })
  })

  /** Another tab may have taken a new copy: what is read follows what the device keeps. */
  async function takeUpCopy(): Promise<void> {
    const kept = await device.standing(kitchenId)
    const changed = kept.view !== standing.view
    standing = kept
    if (!changed) return
    await copy?.close()
    copy = kept.view === undefined ? null : await openCopy(kept.view)
    readTo = 0
    copyReadTo = 0
  }

  /** Makes room for the copy the server gives now; how far it was read. */
  async function copyFor(view: string | undefined, pulledUpTo: number) {
    await takeUpCopy()
    if (standing.view === view) return { store: copy, pulledUpTo }
    const old = standing.view
    await copy?.close()
    copy = null
    if (old !== undefined) await dropCopy(old)
    copy = view === undefined ? null : await openCopy(view)
    standing = { ...standing, ...(view !== undefined && { view }) }
    if (view === undefined) standing = standing.role === undefined ? {} : { role: standing.role }
    await device.setStanding(kitchenId, standing)
    readTo = 0
    copyReadTo = 0
    return { store: copy, pulledUpTo: 0 }
  }

  const exchangeNow = inTurn(async () => {
    if (staysHere) return true
    try {
      await oneTabOnly('kettle-and-crib-exchange', async () => {
        const from = await device.exchange(kitchenId)
        const done = await exchangeWithHouse({ store, server, kitchenId, deviceId, state: from }, copyFor)
        if (done.kitchen?.role !== standing.role) {
          const { role: _, ...rest } = standing
          standing = done.kitchen?.role === undefined ? rest : { ...rest, role: done.kitchen.role }
          await device.setStanding(kitchenId, standing)
        }
        if (done.copyBroken && standing.view !== undefined) {
          // Taken anew from the beginning at the next exchange.
          await copyFor(undefined, 0)
          await device.setExchange(kitchenId, { ...done.state, pulledUpTo: 0 })
        } else {
          await device.setExchange(kitchenId, done.state)
        }
      })
      await readOn()
      show({ online: true, asksToSignIn: false, isAwaited: false })
      channel.postMessage(kitchenId)
      return true
    } catch (cause) {
      const asksToSignIn = cause instanceof HouseRefused && cause.status === 401
      show({ online: asksToSignIn, asksToSignIn, isAwaited: false })
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
      // The server would refuse it, and every later line of this device with it.
      if (!mayWrite(standing, kind)) throw new BodyRefused(kind, [{ code: 'not-yours-to-write', params: {} }])
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

function mayWrite({ role }: HouseStanding, kind: Kind): boolean {
  const act = actOfKind(kind)
  // Whose line is taken back the server looks up itself.
  return role === undefined || (act !== null && mayDo(role, act === 'amend' ? 'amend-own' : act))
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
