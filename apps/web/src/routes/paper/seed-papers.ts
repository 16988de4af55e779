/** Papers of a seed lot: its envelope, the sheet of a sprouting test, tags for its tins. Leaves out every number of its own. */
import type { SeedLotFact } from '@crib/journal'
import { germinationSheet, type PaperDocument, reserveTags, seedEnvelope } from '@crib/paper'
import { germinationOfTest, germinationRanges, seedLotView } from '@crib/planning'
import { asTyped, type Desk, settingOf } from './documents.ts'

/** Kernels to a roll of the towel; more than a roll holds are counted in parts. Project rule. */
const KERNELS_IN_A_ROLL = 25

/** What every paper of a lot says: parents, the newest test with its range, and when to test again. */
function knownOf({ today }: Desk, lot: SeedLotFact) {
  const test = lot.tests.at(-1)
  return {
    name: lot.name,
    seasonYear: lot.seasonYear,
    ...(lot.parentEarsCount !== undefined && { parentEars: asTyped(lot.parentEarsCount, 'Count') }),
    ...(test && {
      germination: germinationOfTest({ sproutedCount: test.sproutedCount, testedCount: test.ofCount }),
      testAgainBy: seedLotView(lot, today).testAgainBy,
    }),
  }
}

export function seedEnvelopeDocument(desk: Desk, lot: SeedLotFact): PaperDocument {
  const [tin, ...others] = lot.containers
  return seedEnvelope(
    {
      ...knownOf(desk, lot),
      putByOn: lot.putByOn,
      source: lot.sourceNote ?? desk.words.say(`seed:screen-source-${lot.source}`),
      ...(tin && others.length === 0 && { container: tin.container, place: tin.place }),
      record: `crib:seed-lot/${lot.seedLotId}`,
    },
    settingOf(desk),
    desk.words,
  )
}

/** The table of ranges is of the whole test; the kernels are laid in parts.  @param rolls 1 to 8 */
export function germinationSheetDocument(desk: Desk, lot: SeedLotFact, rolls: number): PaperDocument {
  const parts = Array.from({ length: rolls }, () => ({ ofCount: KERNELS_IN_A_ROLL }))
  const ranges = germinationRanges(rolls * KERNELS_IN_A_ROLL)
  return germinationSheet({ lot: lot.name, parts, ranges }, settingOf(desk), desk.words)
}

/** Null where no container is written down: there is nothing to tie a tag to. */
export function reserveTagsDocument(desk: Desk, lot: SeedLotFact): PaperDocument | null {
  if (lot.containers.length === 0) return null
  const tins = lot.containers.map(({ container, place, kernelsCount }) => ({
    ...{ container, place },
    ...(kernelsCount !== undefined && { kernels: asTyped(kernelsCount, 'Count') }),
  }))
  return reserveTags({ ...knownOf(desk, lot), tins }, settingOf(desk), desk.words)
}
