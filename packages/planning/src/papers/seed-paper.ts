/** What an envelope, a tag or a test sheet says of a seed lot, by whose eyes it is for. */
import { type Facts, recordAddress, type SeedLotFact, seedOnPaper, type Visibility } from '@crib/journal'
import type { Reckoned, Sentence } from '@crib/science'
import { germinationOfTest } from '../seed/germination.ts'
import { seedLotView } from '../seed/seed-lot-view.ts'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface SeedPaper {
  /** Absent: those eyes may not know it. */
  readonly name?: string
  /** From whom or where; absent with the name. */
  readonly source?: Sentence | string
  readonly seasonYear: number
  /** `Count`. */
  readonly parentEars?: Reckoned
  /** Of the newest test, with its range. */
  readonly germination?: Reckoned
  /** YYYY-MM-DD */
  readonly testAgainBy?: string
  readonly conditions: readonly string[]
  readonly record: string
}

/** `today` as YYYY-MM-DD. */
export function seedPaper(
  lot: SeedLotFact,
  facts: Facts,
  { today, audience }: { readonly today: string; readonly audience: Visibility },
): SeedPaper {
  const { name, sourceNote, conditions } = seedOnPaper(lot, facts, audience)
  const test = lot.tests.at(-1)
  return {
    ...(name !== undefined && { name, source: sourceNote ?? say(`seed:screen-source-${lot.source}`) }),
    seasonYear: lot.seasonYear,
    ...(lot.parentEarsCount !== undefined && { parentEars: earsOf(lot.parentEarsCount) }),
    ...(test && {
      germination: germinationOfTest({ sproutedCount: test.sproutedCount, testedCount: test.ofCount }),
      testAgainBy: seedLotView(lot, today).testAgainBy,
    }),
    conditions,
    record: recordAddress('seed-lot', lot.seedLotId),
  }
}

function earsOf(value: number): Reckoned {
  return reckon({ id: 'parentEars', value, unit: 'Count', rounding: nearest(1), basis: 'own-record' })
}
