/** A lot's strength over time, worked out from the tests in the book. Leaves out strips and trial cups, which tell no equivalents. */
import type { AlkaliLotFact } from '@crib/journal'
import { type LotStrength, lotStrength } from './lot-strength.ts'

export interface TestedStrength {
  /** UTC instant. */
  readonly at: string
  readonly strength: LotStrength
  readonly gPerCup?: number
}

/** Every titration of the lot that tells what was steeped, oldest first. One whose volumes contradict each other is left out. */
export function testedStrengths({ tests }: Pick<AlkaliLotFact, 'tests'>): readonly TestedStrength[] {
  return tests.flatMap(({ found, gPerCup, at }) => {
    if (found.way !== 'vinegar' || found.boiledMl < found.coldMl) return []
    const { way: _, steepedG, steepWaterL, ...titration } = found
    if (steepedG === undefined || steepWaterL === undefined) return []
    return [
      {
        at: at.instant,
        strength: lotStrength({ ...titration, steepedG, steepWaterL }),
        ...(gPerCup !== undefined && { gPerCup }),
      },
    ]
  })
}

/** The last of them; null for a lot never titrated. */
export function testedStrength(lot: Pick<AlkaliLotFact, 'tests'>): TestedStrength | null {
  return testedStrengths(lot).at(-1) ?? null
}
