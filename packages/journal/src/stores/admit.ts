/** Whether an arriving entry may be kept: the one decision all stores share. */
import type { EntryFault, Sha256Hex } from '../chain.ts'
import { examineEntry, faultOf, missingNumbers } from '../chain.ts'
import { NO_PREVIOUS_HASH, type StoredEntry, sha256Hex } from '../envelope.ts'
import type { EntryOutcome } from '../store.ts'

/** Longest body kept, as canonical JSON. */
export const MOST_BODY_CHARACTERS = 262_144

/** What a store knows that bears on one entry. */
export interface Surroundings {
  /** Hash of the entry kept under the same id. */
  readonly sameIdHash: string | null
  /** Id of the entry kept at the same place of the same chain. */
  readonly samePlaceId: string | null
  /** The chain's last line. */
  readonly head: { readonly deviceSeq: number; readonly hash: string } | null
}

/** An entry with what only it can be refused for, and the text its body is kept as. */
export interface Examined {
  readonly fault: EntryFault | null
  /** Canonical JSON; null once erased. */
  readonly bodyText: string | null
}

/** Looks at the entry by itself; the store need not look anything up for it. */
export function examine(entry: unknown, sha256: Sha256Hex = sha256Hex): Examined {
  const examined = examineEntry(entry, sha256)
  const length = examined.bodyText?.length ?? 0
  if (examined.fault || length <= MOST_BODY_CHARACTERS) return examined
  return { ...examined, fault: faultOf(entry as StoredEntry, 'too-large', `${length} of ${MOST_BODY_CHARACTERS}`) }
}

/** The outcome for an entry that is whole by itself. Accepted ones continue their chain exactly. */
export function admit(entry: StoredEntry, { sameIdHash, samePlaceId, head }: Surroundings): EntryOutcome {
  const { id, deviceSeq, prevHash } = entry.envelope
  const refused = (fault: EntryFault): EntryOutcome => ({ id, outcome: 'refused', faults: [fault] })
  if (sameIdHash === entry.hash) return { id, outcome: 'already' }
  if (sameIdHash !== null) return refused(faultOf(entry, 'altered-copy', sameIdHash))
  if (samePlaceId !== null) return refused(faultOf(entry, 'fork', samePlaceId))
  const lastSeq = head?.deviceSeq ?? 0
  if (deviceSeq > lastSeq + 1) return refused(faultOf(entry, 'missing-before', missingNumbers(lastSeq, deviceSeq)))
  if (prevHash !== (head?.hash ?? NO_PREVIOUS_HASH)) return refused(faultOf(entry, 'broken-link', `${lastSeq}`))
  return { id, outcome: 'accepted' }
}

/** Entries with their place in the batch, in an order in which each chain can be continued. */
export function inChainOrder(entries: readonly StoredEntry[]): readonly { entry: unknown; index: number }[] {
  const seqOf = (entry: unknown): number => {
    const seq = (entry as StoredEntry | null)?.envelope?.deviceSeq
    return typeof seq === 'number' ? seq : 0
  }
  return entries.map((entry, index) => ({ entry, index })).sort((a, b) => seqOf(a.entry) - seqOf(b.entry))
}

export function refusedAlone(fault: EntryFault): EntryOutcome {
  return { id: fault.entryId, outcome: 'refused', faults: [fault] }
}

const MOST_PAGE = 10_000
const USUAL_PAGE = 1000

export function pageLimit(limit = USUAL_PAGE): number {
  if (!(limit >= 1 && limit <= MOST_PAGE))
    throw new RangeError(`limit is ${limit} entries; a page holds 1 to ${MOST_PAGE}`)
  return Math.floor(limit)
}
