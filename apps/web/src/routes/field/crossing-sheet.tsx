/** CrossingSheet: other corn near a plot, what it may father, and what each remedy would leave. Props: plotId. */
import type { PlotFact } from '@crib/journal'
import { crossingOfPlot, type IsolationOutcome, neighboursOf, plannedField, plantingsOfPlot } from '@crib/planning'
import { formatQuantity, formatReckoned } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { localDay } from '../../local-day.ts'
import {
  BigNumber,
  Fold,
  Ledger,
  MarginNote,
  NumberRow,
  Passage,
  Reasons,
  Refusal,
  Sheet,
} from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { CompassTags, compassName } from './compass.tsx'
import { NeighbourForm } from './neighbour-form.tsx'

export default function CrossingSheet({ plotId }: { readonly plotId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const [windFromDeg, setWind] = useState<number | null>(null)
  const plot = facts.plots[plotId]
  if (!plot) return <NotHere />
  const [newest] = plantingsOfPlot(facts.plantings, plotId)
  const seasonYear = yearOf(newest?.plantedOn, plannedField(plot)?.seasonYear)
  const planting = newest?.plantedOn.startsWith(String(seasonYear)) ? newest : undefined
  const neighbours = neighboursOf(plot, seasonYear)
  const outcome = crossingOfPlot(plot, { seasonYear, planting, ...(windFromDeg !== null && { windFromDeg }) })
  return (
    <Sheet
      title={say('field:screen-crossing')}
      drawing="field"
      lead={say('field:screen-crossing-year', { plot: plot.name, year: String(seasonYear) })}
    >
      <Passage title={say('field:screen-neighbours', { year: String(seasonYear) })}>
        {neighbours.length === 0 ? (
          <>
            <p>{say('field:screen-neighbours-none', { year: String(seasonYear) })}</p>
            <NeighbourForm plotId={plotId} seasonYear={seasonYear} />
          </>
        ) : (
          <>
            <Neighbours neighbours={neighbours} />
            {neighbours.map((one) => (
              <Fold key={one.neighbourId} title={say('field:screen-neighbour-again', { name: one.name })}>
                <NeighbourForm key={one.at.entryId} plotId={plotId} seasonYear={seasonYear} known={one} />
              </Fold>
            ))}
            <Fold title={say('field:screen-neighbour-add')}>
              <NeighbourForm key={neighbours.length} plotId={plotId} seasonYear={seasonYear} />
            </Fold>
          </>
        )}
      </Passage>
      {neighbours.length > 0 && (
        <Passage
          title={say('field:screen-band')}
          margin={<MarginNote>{say('field:screen-crossing-margin')}</MarginNote>}
        >
          <CompassTags legend={say('field:screen-wind')} value={windFromDeg} onValue={setWind} />
          <div aria-live="polite" className="passage-body" id="crossing">
            <Crossing outcome={outcome} />
          </div>
        </Passage>
      )}
    </Sheet>
  )
}

/** Of what stands or is planned, whichever is later; else this year. */
function yearOf(plantedOn: string | undefined, plannedYear: number | undefined): number {
  const years = [...(plantedOn ? [Number(plantedOn.slice(0, 4))] : []), ...(plannedYear ? [plannedYear] : [])]
  return years.length > 0 ? Math.max(...years) : Number(localDay().slice(0, 4))
}

function Neighbours({ neighbours }: { readonly neighbours: PlotFact['neighbours'] }) {
  const words = useWords()
  const { say } = words
  return (
    <dl className="facts">
      {neighbours.map(({ neighbourId, name, distanceM, bearingDeg, tasselledOn }) => (
        <div key={neighbourId} style={{ display: 'contents' }}>
          <dt>{name}</dt>
          <dd>
            {[
              formatQuantity({ value: Math.round(distanceM), unit: 'M' }),
              ...(bearingDeg === undefined ? [] : [compassName(bearingDeg, words)]),
              tasselledOn === undefined
                ? say('field:screen-neighbour-no-tassel')
                : say('field:screen-neighbour-tasselled', { day: dayText(tasselledOn) }),
            ].join(', ')}
          </dd>
        </div>
      ))}
    </dl>
  )
}

function Crossing({ outcome }: { readonly outcome: IsolationOutcome }) {
  const { say, sentence } = useWords()
  if (outcome.kind === 'refused') return <Refusal title={say('field:screen-crossing')} why={outcome.why} />
  const value = (id: string) => outcome.values.find((one) => one.id === id)
  const share = value('offKernelFraction')
  const perEar = value('offKernelsInEar')
  return (
    <>
      <NumberRow>
        {share && <BigNumber label={say('field:screen-band')} reckoned={share} />}
        {perEar && <BigNumber label={say('field:screen-per-ear')} reckoned={perEar} size="small" />}
      </NumberRow>
      <Ledger
        caption={say('field:screen-remedies')}
        head={[say('field:screen-remedy'), say('field:screen-remedy-left')]}
        rows={outcome.changes.map(({ said, share: left }) => ({
          key: left.id,
          cells: [sentence(said), formatReckoned(left)],
        }))}
      />
      <Reasons sentences={[...outcome.reasons, ...outcome.warnings]} />
    </>
  )
}
