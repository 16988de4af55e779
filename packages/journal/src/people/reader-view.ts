/**
 * What one reader's device is given of a book it may not read whole: the lines that person may read, copied onto a chain
 * of their own. Numbers, links and hashes of the copy depend on nothing the reader may not read, so two books that
 * differ in hidden lines alone give the same copy to the last letter; bodies keep salt and `bodyHash` of the original.
 * When something shown is closed again, the copy begins anew under another id, and the device drops the old one.
 */
import { type Envelope, envelopeHash, NO_PREVIOUS_HASH, type StoredEntry, sha256Hex } from '../envelope.ts'
import type { IndexedLine, ReadingIndex } from './reading-index.ts'
import type { Width } from './roles.ts'

export interface Reader {
  readonly kitchenId: string
  /** Reads lines opened at least so far, and what they wrote themselves. */
  readonly from: Width
  readonly personId: string
  /** Lines of this device are left out: it has them. */
  readonly deviceId: string
}

export interface ViewPage {
  readonly entries: readonly StoredEntry[]
  /** Cursor: so many lines of the copy are read. */
  readonly next: number
  /** Id of the copy; a cursor holds for this copy alone. */
  readonly view: string
}

export interface ReaderView {
  /** Takes in what the index has learnt since. */
  catchUp(): void
  readonly view: string
  /** Lines the reader may read, with those of the reader's own device. */
  readonly readableCount: number
  /** Entries after a cursor; `fetch` reads one of the kitchen's entries by id. */
  page(
    after: number,
    limit: number,
    fetch: (entryId: string) => Promise<StoredEntry | null>,
  ): Promise<Omit<ViewPage, 'view'>>
}

export function createReaderView(index: ReadingIndex, reader: Reader): ReaderView {
  let taken = 0
  let beginnings = 1
  const shown = new Set<IndexedLine>()
  let list: IndexedLine[] = []
  /** Hash of each line of the copy worked out so far. */
  let hashes: string[] = []
  let onReadersDevice = 0
  let view = viewId(reader, beginnings)

  const mayRead = (line: IndexedLine): boolean => line.width >= reader.from || line.personId === reader.personId

  return {
    get view() {
      return view
    },
    get readableCount() {
      return list.length + onReadersDevice
    },
    catchUp() {
      for (; taken < index.changes.length; taken += 1) {
        const { line, width } = index.changes[taken]!
        if (line.deviceId === reader.deviceId) {
          if (!shown.has(line)) onReadersDevice += 1
          shown.add(line)
          continue
        }
        const readable = width >= reader.from || line.personId === reader.personId
        if (readable && !shown.has(line)) {
          shown.add(line)
          list.push(line)
        } else if (!readable && shown.has(line)) {
          shown.delete(line)
          list = list.filter((each) => each !== line)
          hashes = []
          beginnings += 1
          view = viewId(reader, beginnings)
        }
      }
    },
    async page(after, limit, fetch) {
      const entries: StoredEntry[] = []
      const copied = list
      const kept = hashes
      const to = Math.min(after + limit, copied.length)
      for (let at = Math.min(after, kept.length); at < to; at += 1) {
        const line = copied[at]!
        const entry = await fetch(line.id)
        if (!entry) throw new Error(`entry ${line.id} is indexed and not in the store`)
        const copy = copyOf(entry, { deviceId: view, deviceSeq: at + 1, prevHash: kept[at - 1] ?? NO_PREVIOUS_HASH })
        kept[at] = copy.hash
        // It may have been closed while others were fetched.
        if (at >= after && mayRead(line)) entries.push(copy)
      }
      return { entries, next: Math.max(to, Math.min(after, copied.length)) }
    },
  }
}

type Place = Pick<Envelope, 'deviceId' | 'deviceSeq' | 'prevHash'>

function copyOf({ envelope, body }: StoredEntry, place: Place): StoredEntry {
  const copied: Envelope = { ...envelope, ...place }
  return { envelope: copied, hash: envelopeHash(copied), body }
}

/** The name of the copy's chain, in the shape of a device's id. */
function viewId({ kitchenId, from, personId, deviceId }: Reader, beginnings: number): string {
  const hex = sha256Hex(['reader view', kitchenId, from, personId, deviceId, beginnings].join('\n'))
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20, 32)].join('-')
}
