import type { StoredEntry } from '../envelope.ts'
import type { JournalStore } from '../store.ts'

const PAGE = 2000

/** Every entry of a kitchen, some at a time, in the order the store received them. */
export async function* pagesOf(
  store: Pick<JournalStore, 'read'>,
  kitchenId: string,
  limit = PAGE,
): AsyncGenerator<readonly StoredEntry[]> {
  for (let after = 0; ; ) {
    const { entries, next } = await store.read({ kitchenId, after, limit })
    if (entries.length === 0) return
    yield entries
    after = next
  }
}
