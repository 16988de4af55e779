/** PlotSheet: one plot: what is planned, what stands, its drawing, and the one next thing. Props: plotId. */
import { groundOfPlot, nextSeasonStep, plannedField, plantingsOfPlot } from '@crib/planning'
import { useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, NextAction, Passage, Reasons, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { PlanNumbers } from './plan-numbers.tsx'
import { PlotDrawing } from './plot-drawing.tsx'

export default function PlotSheet({ plotId }: { readonly plotId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const plot = facts.plots[plotId]
  const plantings = plantingsOfPlot(facts.plantings, plotId)
  const planned = useMemo(() => plot && plannedField(plot), [plot])
  const standing = plantings.find((planting) => nextSeasonStep(planting) !== null)
  // A plan for a year already sown is done with.
  const isAhead =
    planned !== null &&
    planned !== undefined &&
    !plantings.some(({ plantedOn }) => plantedOn >= `${planned.seasonYear}`)
  const drawn = isAhead ? undefined : plantings[0]
  const ground = useMemo(
    () => (plot ? groundOfPlot(plot, { planting: drawn, planned: planned ?? null }) : null),
    [plot, drawn, planned],
  )
  if (!plot) return <NotHere />
  return (
    <Sheet title={plot.name} drawing="field">
      <Passage>
        {standing ? (
          <NextAction href={`/field/planting/${standing.plantingId}`}>
            {say('field:screen-go-on', { corn: standing.cornName })}
          </NextAction>
        ) : isAhead ? (
          <NextAction href={`/field/plot/${plotId}/sow`}>{say('field:screen-sow')}</NextAction>
        ) : (
          <NextAction href={`/field/plan?plot=${plotId}`}>{say('field:screen-plan')}</NextAction>
        )}
        <ButtonRow>
          <SideAction href={`/field/plot/${plotId}/crossing`}>{say('field:screen-crossing')}</SideAction>
          <SideAction href={`/paper/field-sheet/${plotId}`}>{say('field:screen-print')}</SideAction>
          {!isAhead && <SideAction href={`/field/plot/${plotId}/sow`}>{say('field:screen-sow')}</SideAction>}
          {(standing || isAhead) && (
            <SideAction href={`/field/plan?plot=${plotId}`}>{say('field:screen-plan')}</SideAction>
          )}
        </ButtonRow>
      </Passage>
      {planned && isAhead && (
        <Passage title={say('field:screen-planned-for', { year: String(planned.seasonYear), corn: planned.cornName })}>
          <PlanNumbers plan={planned.plan} />
          <Reasons sentences={[...planned.plan.reasons, ...planned.plan.warnings]} />
        </Passage>
      )}
      <Passage>
        {ground ? (
          <PlotDrawing
            ground={ground}
            caption={`${say('field:screen-drawing')}. ${
              ground.from === 'planned'
                ? say('field:screen-drawing-planned', { year: String(planned?.seasonYear) })
                : ground.from === 'sown'
                  ? say('field:screen-drawing-sown', { day: dayText(drawn?.plantedOn ?? '') })
                  : say('field:screen-drawing-bare')
            }`}
          />
        ) : (
          <p>{say('field:screen-drawing-none')}</p>
        )}
      </Passage>
      {plantings.length > 0 && (
        <Passage title={say('field:screen-plantings')}>
          <ButtonRow>
            {plantings.map((planting) => (
              <SideAction key={planting.plantingId} href={`/field/planting/${planting.plantingId}`}>
                {say('field:screen-sown-on', { corn: planting.cornName, day: dayText(planting.plantedOn) })}
              </SideAction>
            ))}
          </ButtonRow>
        </Passage>
      )}
    </Sheet>
  )
}
