/** Papers of a seed lot: its envelope, the sheet of a sprouting test, tags for its tins. Leaves out every number of its own. */
import type { SeedLotFact } from '@crib/journal'
import { germinationSheet, type PaperDocument, reserveTags, seedEnvelope } from '@crib/paper'
import { germinationRanges, seedPaper } from '@crib/planning'
import { asTyped, type Desk, settingOf } from './documents.ts'

/** Kernels to a roll of the towel; more than a roll holds are counted in parts. Project rule. */
const KERNELS_IN_A_ROLL = 25

export function seedEnvelopeDocument(desk: Desk, lot: SeedLotFact): PaperDocument {
  const [tin, ...others] = lot.containers
  // Where a tin stands is the keeper's own business.
  const isKept = desk.audience === 'keeper' && tin && others.length === 0
  return seedEnvelope(
    {
      ...seedPaper(lot, desk.facts, desk),
      putByOn: lot.putByOn,
      ...(isKept && { container: tin.container, place: tin.place }),
    },
    settingOf(desk),
    desk.words,
  )
}

/** The table of ranges is of the whole test; the kernels are laid in parts.  @param rolls 1 to 8 */
export function germinationSheetDocument(desk: Desk, lot: SeedLotFact, rolls: number): PaperDocument {
  const parts = Array.from({ length: rolls }, () => ({ ofCount: KERNELS_IN_A_ROLL }))
  const ranges = germinationRanges(rolls * KERNELS_IN_A_ROLL)
  const { name } = seedPaper(lot, desk.facts, desk)
  return germinationSheet({ ...(name !== undefined && { lot: name }), parts, ranges }, settingOf(desk), desk.words)
}

/** Null where no container is written down: there is nothing to tie a tag to. */
export function reserveTagsDocument(desk: Desk, lot: SeedLotFact): PaperDocument | null {
  if (lot.containers.length === 0) return null
  const tins = lot.containers.map(({ container, place, kernelsCount }) => ({
    container,
    place,
    ...(kernelsCount !== undefined && { kernels: asTyped(kernelsCount, 'Count') }),
  }))
  return reserveTags({ ...seedPaper(lot, desk.facts, desk), tins }, settingOf(desk), desk.words)
}
