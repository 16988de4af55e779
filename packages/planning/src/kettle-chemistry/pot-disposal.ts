/** The spent liquor of one pot: how it is made harmless, and the vinegar that takes at most, where its alkali was measured. */
import type { BatchFact, Facts } from '@crib/journal'
import { neutralisingVinegarL, type Reckoned, type Sentence, vinegarMolPerL } from '@crib/science'
import { up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { valuesOf } from './fields.ts'
import { alkaliInPot } from './own-strengths.ts'

export interface PotDisposal {
  /** Absent where an ash was not titrated, or nothing was put in. */
  readonly vinegarL?: Reckoned
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/** @param acidityGPer100Ml on the vinegar's label. Valid: 1 to 12. */
export function potDisposal(facts: Facts, batch: BatchFact, potLoad: number, acidityGPer100Ml: number): PotDisposal {
  const eq = alkaliInPot(facts, batch, potLoad)
  const value = valuesOf({ batchId: batch.batchId, potLoad, acidityGPer100Ml }, [
    'iupac-weights-2021',
    'vinegar-titration-worked',
  ])
  const isKnown = eq !== null && eq.value > 0
  return {
    ...(isKnown && {
      // The high end: at most that much.
      vinegarL: value('vinegarL', neutralisingVinegarL(eq.high, vinegarMolPerL(acidityGPer100Ml)), 'L', 0.1, {
        rounding: up(0.1),
      }),
    }),
    reasons: [...(isKnown ? [say('kettle:chem-disposal-most')] : []), say('kettle:chem-disposal-how')],
    warnings: [say('cautions:wash-caustic'), say('cautions:wash-no-drain'), say('kettle:chem-disposal-not-skin')],
  }
}
