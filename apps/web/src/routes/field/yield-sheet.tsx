/** YieldSheet: what a standing crop may bring, by ears counted at several places or by a part weighed. Props: plantingId. */
import { groundOfPlot } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { ChoiceTags, Passage, Sheet } from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { YieldByEars } from './yield-by-ears.tsx'
import { YieldByPart } from './yield-by-part.tsx'

const WAYS = ['ears', 'part'] as const

export default function YieldSheet({ plantingId }: { readonly plantingId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const [way, setWay] = useHalfTyped<(typeof WAYS)[number]>(`yield:${plantingId}:way`, 'ears')
  const planting = facts.plantings[plantingId]
  if (!planting) return <NotHere />
  const plot = facts.plots[planting.plotId]
  const areaM2 = plot && groundOfPlot(plot, { planting })?.areaM2
  return (
    <Sheet
      title={say('field:screen-yield')}
      drawing="field"
      lead={say('field:screen-sown-on', { corn: planting.cornName, day: dayText(planting.plantedOn) })}
    >
      <Passage>
        <p>{say('field:screen-yield-lead')}</p>
        <ChoiceTags
          legend={say('field:screen-yield-how')}
          options={WAYS.map((value) => ({ value, label: say(`field:screen-yield-${value}`) }))}
          value={way}
          onValue={setWay}
        />
        {way === 'ears' ? (
          <YieldByEars planting={planting} areaM2={areaM2} />
        ) : (
          <YieldByPart plantingId={plantingId} areaM2={areaM2} />
        )}
      </Passage>
    </Sheet>
  )
}
