/** CompassTags: one of the eight ways, or not told. Props: legend, value (degrees from north or null), onValue, hint?. compassName: a bearing in words. */
import type { Words } from '@crib/wording'
import { ChoiceTags } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

const WAYS = ['0', '45', '90', '135', '180', '225', '270', '315'] as const
type Way = (typeof WAYS)[number]
const NOT_TOLD = 'not-told'

export function CompassTags({
  legend,
  value,
  onValue,
}: {
  readonly legend: string
  readonly value: number | null
  readonly onValue: (deg: number | null) => void
}) {
  const { say } = useWords()
  return (
    <ChoiceTags<Way | typeof NOT_TOLD>
      legend={legend}
      options={[
        { value: NOT_TOLD, label: say('field:screen-not-told') },
        ...WAYS.map((way) => ({ value: way, label: say(`field:screen-compass-${way}`) })),
      ]}
      value={value === null ? NOT_TOLD : nearestWay(value)}
      onValue={(way) => onValue(way === NOT_TOLD ? null : Number(way))}
    />
  )
}

export function compassName(deg: number, { say }: Pick<Words, 'say'>): string {
  return say(`field:screen-compass-${nearestWay(deg)}`)
}

function nearestWay(deg: number): Way {
  return WAYS[Math.round(deg / 45) % WAYS.length]!
}
