/** What a recall is about, in words that may hang in public: no person, and no lot that is not opened so far. */
import { type Facts, mayNameOrigin } from '@crib/journal'
import type { Sentence } from '@crib/science'
import type { RecallOrigin } from '../keeping/recall.ts'
import { say } from '../shared/say.ts'

export function recallAbout(origin: RecallOrigin, facts: Facts): Sentence {
  switch (origin.by) {
    case 'load':
      return say('pantry:recall-about-load', { code: origin.loadCode })
    case 'canner':
      return say('pantry:recall-about-canner', { name: facts.canners[origin.cannerId]?.name ?? '' })
    case 'gauge':
      return say(`pantry:recall-about-${origin.gauge}`, { name: facts.canners[origin.cannerId]?.name ?? '' })
    case 'batch':
      return say('pantry:recall-about-batch')
    case 'alkali-lot':
      return say('pantry:recall-about-alkali')
    case 'corn-lot': {
      const name = mayNameOrigin(facts, origin.lotId) ? facts.cornLots[origin.lotId]?.name : undefined
      return name === undefined ? say('pantry:recall-about-corn') : say('pantry:recall-about-corn-of', { name })
    }
  }
}
