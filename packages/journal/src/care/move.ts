/** A kitchen's book from one store into another, of whatever engine. The old one is left as it is. */
import type { EntryFault } from '../chain.ts'
import type { JournalStore } from '../store.ts'
import { pagesOf } from './pages.ts'

export interface MoveReport {
  readonly kitchenId: string
  readonly movedCount: number
  readonly alreadyCount: number
  /** Bodies that were erased in the old store and still stood in the new one: erased there too. */
  readonly erasedCount: number
  readonly refused: readonly EntryFault[]
  /** Lines whose body stands in the old store and not in the new one: erased there before. */
  readonly withoutBodyCount: number
  /** Every line of the old store was read back from the new one and is the same. */
  readonly same: boolean
}

export async function moveKitchen(from: JournalStore, to: JournalStore, kitchenId: string): Promise<MoveReport> {
  const refused: EntryFault[] = []
  const sent = new Map<string, { hash: string; erased: boolean }>()
  let movedCount = 0
  let alreadyCount = 0
  let erasedCount = 0
  for await (const page of pagesOf(from, kitchenId)) {
    const { results } = await to.append(page)
    for (const [i, { outcome, faults = [] }] of results.entries()) {
      const entry = page[i]!
      sent.set(entry.envelope.id, { hash: entry.hash, erased: entry.body === null })
      refused.push(...faults)
      if (outcome === 'accepted') movedCount += 1
      if (outcome !== 'already') continue
      alreadyCount += 1
      if (entry.body === null && (await to.erase(entry.envelope.id, kitchenId))) erasedCount += 1
    }
  }
  let withoutBodyCount = 0
  for await (const page of pagesOf(to, kitchenId)) {
    for (const { envelope, hash, body } of page) {
      const before = sent.get(envelope.id)
      if (before?.hash !== hash) continue
      sent.delete(envelope.id)
      if (body === null && !before.erased) withoutBodyCount += 1
    }
  }
  return { kitchenId, movedCount, alreadyCount, erasedCount, withoutBodyCount, refused, same: sent.size === 0 }
}
