/**
 * Where chains stand, as last seen on disk. A line never changes once it is kept, so a head seen once stays evidence for
 * ever: a line that continues it exactly can be refused only because it is there already, and that the table's own
 * unique places say. Another program's newer lines make the head old, never wrong.
 */
import { chainKey } from '../chain.ts'
import { NO_PREVIOUS_HASH, type StoredEntry } from '../envelope.ts'

export interface SeenHead {
  readonly deviceSeq: number
  readonly hash: string
}

export const NOTHING_YET: SeenHead = { deviceSeq: 0, hash: NO_PREVIOUS_HASH }

/** Devices that write at one server are few; this many chains take about 20 MB. */
const MOST_KEPT = 100_000

export function createHeads() {
  const kept = new Map<string, SeenHead>()
  return {
    of: ({ envelope }: StoredEntry): SeenHead | undefined => kept.get(chainKey(envelope)),
    /** Call only for what is committed. */
    saw({ envelope, hash }: StoredEntry): void {
      const key = chainKey(envelope)
      if ((kept.get(key)?.deviceSeq ?? 0) >= envelope.deviceSeq) return
      if (kept.size >= MOST_KEPT) kept.clear()
      kept.set(key, { deviceSeq: envelope.deviceSeq, hash })
    },
    forget: (): void => kept.clear(),
  }
}

export function continues({ envelope }: StoredEntry, head: SeenHead | undefined): boolean {
  return head !== undefined && envelope.deviceSeq === head.deviceSeq + 1 && envelope.prevHash === head.hash
}
