/** What became of the packs of a lot that are gone, the latest last, each with the day it was where it was told. */
import type { FoodLotFact } from '@crib/journal'
import { dayOf } from '@crib/planning'
import type { Sentence } from '@crib/science'
import type { Words } from '@crib/wording'
import { dayText } from './day-text.ts'

export function leftTheShelf({ uses, openings }: Pick<FoodLotFact, 'uses' | 'openings'>, { say }: Words): Sentence[] {
  const gone = [
    ...uses.map(({ how, count = 0, toWhom = '', at }) => ({
      at,
      key: how === 'given' && toWhom ? `pantry:used-${how}-to` : `pantry:used-${how}`,
      params: { count, toWhom, day: dayText(dayOf(at)) },
    })),
    ...openings.map(({ found, count, at }) => ({
      at,
      key: found === 'good' ? 'pantry:used-opened-good' : 'pantry:used-opened-not',
      params: { count, found: say(`pantry:found-${found}`), day: dayText(dayOf(at)) },
    })),
  ].sort((a, b) => (a.at.instant < b.at.instant ? -1 : +(a.at.instant > b.at.instant)))
  return gone.map(({ key, params }) => ({ key, params }))
}
