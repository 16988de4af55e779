/** An entry with everything that was later said about it: nothing corrected or withdrawn becomes unreadable. */
import type { Facts, LedgerLine } from './facts.ts'
import { amend, amendmentsOf } from './ledger.ts'

export interface EntryHistory {
  /** As it was written. */
  readonly entry: LedgerLine
  /** Corrections and withdrawals that name it, in order. */
  readonly amendments: readonly LedgerLine[]
  /** As the facts take it: null when withdrawn. */
  readonly standing: LedgerLine | null
}

/** Null when the book has no such entry. */
export function history({ ledger }: Facts, entryId: string): EntryHistory | null {
  const entity = Object.hasOwn(ledger.entityOf, entryId) ? ledger.entityOf[entryId]! : undefined
  const entry = entity && ledger.byEntity[entity]?.find(({ id }) => id === entryId)
  if (!entry) return null
  const standing = entry.why ? null : amend(ledger, entry).line
  return { entry, amendments: amendmentsOf(ledger, entryId), standing }
}
