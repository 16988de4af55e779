/** What this installation knows of itself, apart from any book: its id, who writes here, which kitchen is open. */
import { NOTHING_EXCHANGED, type Role, type SyncState } from '@crib/journal'

interface DeviceNotes {
  readonly deviceId: string
  readonly personId: string
  readonly kitchenId: string | null
  readonly demoKitchenId: string | null
  /** The wall clock when the book was last seen open. [ms since 1970] */
  readonly lastWallMs: number
}

/** What this device may do in a kitchen of the house server, as the server said last. */
export interface HouseStanding {
  /** Undefined at home, where nobody signs in. */
  readonly role?: Role
  /** Id of the copy kept here, where this person may not read the kitchen whole. */
  readonly view?: string
}

const STORE = 'note'

export interface Device {
  get<K extends keyof DeviceNotes>(key: K): Promise<DeviceNotes[K] | undefined>
  set<K extends keyof DeviceNotes>(key: K, value: DeviceNotes[K]): Promise<void>
  exchange(kitchenId: string): Promise<SyncState>
  /** How far the exchange with the house server has come. */
  setExchange(kitchenId: string, state: SyncState): Promise<void>
  standing(kitchenId: string): Promise<HouseStanding>
  setStanding(kitchenId: string, standing: HouseStanding): Promise<void>
}

export async function openDevice(name = 'kettle-and-crib-device'): Promise<Device> {
  const opening = indexedDB.open(name, 1)
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE)
  const db = await settled(opening)
  db.onversionchange = () => db.close()

  const get = (key: string) => settled(db.transaction(STORE).objectStore(STORE).get(key))
  const set = (key: string, value: unknown) =>
    new Promise<void>((resolve, reject) => {
      const tx = db.transaction(STORE, 'readwrite')
      tx.objectStore(STORE).put(value, key)
      tx.oncomplete = () => resolve()
      tx.onabort = tx.onerror = () => reject(tx.error)
    })
  return {
    get,
    set,
    exchange: async (kitchenId) => (await get(`exchange:${kitchenId}`)) ?? NOTHING_EXCHANGED,
    setExchange: (kitchenId, state) => set(`exchange:${kitchenId}`, state),
    standing: async (kitchenId) => (await get(`standing:${kitchenId}`)) ?? {},
    setStanding: (kitchenId, standing) => set(`standing:${kitchenId}`, standing),
  }
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
}
