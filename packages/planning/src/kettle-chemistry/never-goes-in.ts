/**
 * What never goes into a pot of food: the list that is gone through before a lot is written down, and that stops. Leaves out
 * how much of it would matter: none is known to be little enough.
 */
import type { AlkaliLotFact } from '@crib/journal'
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'

/** In the fire the ash came from. @source health-wa-cca for treated timber; common practice, no source for the others */
const IN_THE_FIRE = ['treated', 'painted', 'coal', 'briquettes', 'glossy-paper', 'driftwood', 'oil'] as const
/** What a bought alkali is sold as. Common practice, no source. */
const SOLD_AS = {
  'calcium-hydroxide': ['garden', 'builders', 'no-grade'],
  'sodium-hydroxide': ['drain-cleaner', 'no-grade'],
  'potassium-hydroxide': ['drain-cleaner', 'no-grade'],
  'baking-soda': [],
  'sodium-carbonate': ['washing-soda'],
} as const

export type NeverIn = (typeof IN_THE_FIRE)[number] | (typeof SOLD_AS)[keyof typeof SOLD_AS][number]

/** What to ask of a lot of this alkali. */
export function neverGoesIn(alkali: AlkaliLotFact['alkali']): readonly NeverIn[] {
  return alkali === 'ash' ? IN_THE_FIRE : SOLD_AS[alkali]
}

/** Why a lot is stopped, one sentence each, then what to do with it; empty where nothing was found. */
export function stoppedBy(alkali: AlkaliLotFact['alkali'], found: readonly NeverIn[]): readonly Sentence[] {
  const reasons = neverGoesIn(alkali).filter((each) => found.includes(each))
  if (reasons.length === 0) return []
  return [
    ...reasons.map((each) => say(`kettle:never-why-${each}`)),
    say(alkali === 'ash' ? 'kettle:never-then-ash' : 'kettle:never-then-bought'),
  ]
}
