/** What this installation knows of itself, apart from any book: its id, who writes here, which kitchen is open. */
interface DeviceNotes {
  readonly deviceId: string
  readonly personId: string
  readonly kitchenId: string | null
  readonly demoKitchenId: string | null
  /** The wall clock when the book was last seen open. [ms since 1970] */
  readonly lastWallMs: number
}

/** How far the exchange with the house server has come, per kitchen. */
export interface ExchangeNotes {
  /** Cursor in this device's store: everything up to it is on the server. */
  readonly pushedTo: number
  /** Cursor in the server's store. */
  readonly pulledTo: number
}

const STORE = 'note'

export interface Device {
  get<K extends keyof DeviceNotes>(key: K): Promise<DeviceNotes[K] | undefined>
  set<K extends keyof DeviceNotes>(key: K, value: DeviceNotes[K]): Promise<void>
  exchange(kitchenId: string): Promise<ExchangeNotes>
  setExchange(kitchenId: string, notes: ExchangeNotes): Promise<void>
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
    exchange: async (kitchenId) => (await get(`exchange:${kitchenId}`)) ?? { pushedTo: 0, pulledTo: 0 },
    setExchange: (kitchenId, notes) => set(`exchange:${kitchenId}`, notes),
  }
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
}
