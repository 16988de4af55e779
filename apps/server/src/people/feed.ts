/**
 * What readers who may not read a kitchen whole are given of it. The reading index and the copies are worked out from the
 * entries, kept while they are used, and brought up to date before every answer, so several servers agree.
 */
import {
  createReaderView,
  createReadingIndex,
  type Reader,
  type ReaderView,
  type ReadingIndex,
  type ViewPage,
} from '@crib/journal'
import type { ServerStore } from '@crib/journal/open'

export interface Feed {
  page(
    reader: Reader,
    query: { readonly after: number; readonly view?: string; readonly limit: number },
  ): Promise<ViewPage>
  summary(reader: Reader): Promise<{ readonly entryCount: number; readonly view: string }>
  /** The index with everything the store has now. */
  index(kitchenId: string): Promise<ReadingIndex>
  /** Takes in what was just written, where somebody reads copies of this kitchen. */
  freshen(kitchenId: string): Promise<void>
}

interface KitchenFeed {
  readonly index: ReadingIndex
  readonly views: Map<string, ReaderView>
  readUpTo: number
  reading: Promise<void>
}

const MOST_KITCHENS = 64
const MOST_VIEWS = 256
const PAGE = 5000

export function createFeed(store: ServerStore): Feed {
  const kitchens = new Map<string, KitchenFeed>()

  async function upToDate(kitchenId: string): Promise<KitchenFeed> {
    const kept = kitchens.get(kitchenId)
    const kitchen = kept ?? {
      index: createReadingIndex(),
      views: new Map(),
      readUpTo: 0,
      reading: Promise.resolve(),
    }
    // The one used last is dropped last.
    kitchens.delete(kitchenId)
    kitchens.set(kitchenId, kitchen)
    if (kitchens.size > MOST_KITCHENS) kitchens.delete(kitchens.keys().next().value!)
    const reading = kitchen.reading.then(() => readOn(kitchenId, kitchen))
    kitchen.reading = reading.catch(() => undefined)
    await reading
    return kitchen
  }

  async function readOn(kitchenId: string, kitchen: KitchenFeed): Promise<void> {
    for (;;) {
      const { entries, next } = await store.read({ kitchenId, after: kitchen.readUpTo, limit: PAGE })
      for (const entry of entries) kitchen.index.add(entry)
      kitchen.readUpTo = next
      if (entries.length === 0) return
    }
  }

  async function viewOf(reader: Reader): Promise<ReaderView> {
    const { index, views } = await upToDate(reader.kitchenId)
    const key = [reader.from, reader.personId, reader.deviceId].join(' ')
    const view = views.get(key) ?? createReaderView(index, reader)
    views.delete(key)
    views.set(key, view)
    if (views.size > MOST_VIEWS) views.delete(views.keys().next().value!)
    view.catchUp()
    return view
  }

  return {
    async page(reader, { after, view: known, limit }) {
      const view = await viewOf(reader)
      const { view: id } = view
      const from = known === undefined || known === id ? after : 0
      const page = await view.page(from, limit, (entryId) => store.entry(reader.kitchenId, entryId))
      return { ...page, view: id }
    },
    async summary(reader) {
      const view = await viewOf(reader)
      return { entryCount: view.readableCount, view: view.view }
    },
    index: async (kitchenId) => (await upToDate(kitchenId)).index,
    async freshen(kitchenId) {
      if (!kitchens.has(kitchenId)) return
      for (const view of (await upToDate(kitchenId)).views.values()) view.catchUp()
    },
  }
}
