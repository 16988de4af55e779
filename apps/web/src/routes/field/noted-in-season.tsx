/** NotedInSeason: everything seen of a planting, by its day. Props: planting. */
import type { PlantingFact } from '@crib/journal'
import { formatWeight } from '@crib/wording'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'

export function NotedInSeason({ planting }: { readonly planting: PlantingFact }) {
  const { say } = useWords()
  const lines = [
    ...planting.stands.map(({ at, countedOn, plantsCount, ofKernelsCount }) => ({
      key: at.entryId,
      day: countedOn,
      text:
        ofKernelsCount === undefined
          ? say('field:screen-noted-stand', { plants: plantsCount })
          : say('field:screen-noted-stand-of', { plants: plantsCount, kernels: ofKernelsCount }),
    })),
    ...planting.tassels.map(({ at, seenOn, howMany }) => ({
      key: at.entryId,
      day: seenOn,
      text: say(`field:screen-noted-tassel-${howMany}`),
    })),
    ...planting.silks.map(({ at, seenOn, howMany }) => ({
      key: at.entryId,
      day: seenOn,
      text: say(`field:screen-noted-silk-${howMany}`),
    })),
    ...planting.harvests.map(({ at, harvestedOn, massKg, earsCount }) => ({
      key: at.entryId,
      day: harvestedOn,
      text: say('field:screen-noted-harvest', {
        what: [
          ...(massKg === undefined ? [] : [formatWeight(massKg)]),
          ...(earsCount === undefined ? [] : [say('field:screen-noted-ears', { count: earsCount })]),
        ].join(', '),
      }),
    })),
  ].sort((a, b) => (a.day < b.day ? -1 : 1))
  if (lines.length === 0) return <p>{say('field:screen-season-nothing')}</p>
  return (
    <dl className="facts">
      {lines.map(({ key, day, text }) => (
        <div key={key} style={{ display: 'contents' }}>
          <dt>{dayText(day)}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  )
}
