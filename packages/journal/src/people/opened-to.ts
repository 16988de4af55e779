/**
 * The book as far as it is opened to somebody, from the facts alone: what a sheet for their eyes may be made from. The
 * same rules as at the doors (reading-index.ts), so that paper never says more than a screen would.
 */
import type { StoredEntry, Visibility } from '../envelope.ts'
import type { Facts, LedgerLine } from '../fold/facts.ts'
import { foldFacts } from '../fold/fold.ts'
import { isKind, KINDS } from '../kinds/index.ts'
import { createReadingIndex } from './reading-index.ts'
import { widthOf } from './roles.ts'

/** Facts of the lines opened at least so far. `keeper` gives the facts as they are. */
export function factsOpenedTo(facts: Facts, audience: Visibility): Facts {
  if (audience === 'keeper') return facts
  const entries = Object.values(facts.ledger.byEntity).flat().map(entryOf)
  const index = createReadingIndex()
  for (const entry of entries) index.add(entry)
  const from = widthOf(audience)
  return foldFacts(entries.filter(({ envelope }) => (index.widthOfLine(envelope.id) ?? 0) >= from))
}

/** An entry that reads as the line does; the chain is not proved again here. */
function entryOf({ hash, body, instant, zone, why, twin: _, ...kept }: LedgerLine): StoredEntry {
  // A line that was read holds its body at the present version.
  const kindVersion = why === undefined && isKind(kept.kind) ? KINDS[kept.kind].version : kept.kindVersion
  const envelope = { ...kept, kindVersion, happenedAt: { instant, zone }, prevHash: '', bodyHash: '' }
  return { envelope, hash, body: body === null ? null : { salt: '', value: body } }
}
