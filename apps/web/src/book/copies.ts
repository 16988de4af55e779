/**
 * Copies of kitchens this person may not read whole: a store of its own for each, under the id the house server gave it.
 * When the server gives another id, something was closed or the role changed: the old copy is dropped, not kept.
 */
import type { JournalStore } from '@crib/journal'
import { openIdbStore } from '@crib/journal/idb'

const nameOf = (view: string) => `kettle-and-crib-copy-${view}`

export function openCopy(view: string): Promise<JournalStore> {
  return openIdbStore(nameOf(view))
}

export async function dropCopy(view: string): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    const dropping = indexedDB.deleteDatabase(nameOf(view))
    dropping.onsuccess = () => resolve()
    // Another tab still reads it: it goes when that tab lets go.
    dropping.onblocked = () => resolve()
    dropping.onerror = () => reject(dropping.error)
  })
}
