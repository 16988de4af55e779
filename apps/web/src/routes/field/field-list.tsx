/** FieldList: every plot with what stands or is planned there, and the one next thing. */
import type { PlotFact } from '@crib/journal'
import { nextSeasonStep, plannedField, plantingsOfPlot } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Empty, Fold, NextAction, Passage, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { PlotForm } from './plot-form.tsx'

export function FieldList() {
  const { facts } = useBook()
  const { say } = useWords()
  const plots = Object.values(facts.plots)
  const standing = Object.values(facts.plantings).filter((planting) => nextSeasonStep(planting) !== null)
  const next = standing.at(-1)
  const hasEars = Object.values(facts.cornLots).some(({ form }) => form === 'ears')
  return (
    <Sheet title={say('shell:part-field')} drawing="field" lead={say('field:screen-lead')}>
      {plots.length === 0 ? (
        <Passage>
          <Empty drawing="field" action={<NextAction href="/field/plan">{say('field:screen-plan')}</NextAction>}>
            <p>{say('field:screen-empty')}</p>
          </Empty>
        </Passage>
      ) : (
        <>
          <Passage>
            {next ? (
              <>
                <NextAction href={`/field/planting/${next.plantingId}`}>
                  {say('field:screen-go-on', { corn: next.cornName })}
                </NextAction>
                <ButtonRow>
                  <SideAction href="/field/plan">{say('field:screen-plan')}</SideAction>
                </ButtonRow>
              </>
            ) : (
              <NextAction href="/field/plan">{say('field:screen-plan')}</NextAction>
            )}
          </Passage>
          <Passage title={say('field:screen-plots')}>
            {plots.map((plot) => (
              <PlotRow key={plot.plotId} plot={plot} />
            ))}
          </Passage>
        </>
      )}
      <Passage>
        <Fold title={say('field:screen-plot-one-more')}>
          <PlotForm />
        </Fold>
        {hasEars && (
          <ButtonRow>
            <SideAction href="/field/shelling">{say('field:screen-shell')}</SideAction>
          </ButtonRow>
        )}
      </Passage>
    </Sheet>
  )
}

function PlotRow({ plot }: { readonly plot: PlotFact }) {
  const { facts } = useBook()
  const { say } = useWords()
  const [planting] = plantingsOfPlot(facts.plantings, plot.plotId)
  const planned = plannedField(plot)
  const lines = [
    ...(planned ? [say('field:screen-planned-for', { year: String(planned.seasonYear), corn: planned.cornName })] : []),
    ...(planting
      ? [
          say(planting.harvests.length > 0 ? 'field:screen-came-in' : 'field:screen-sown-on', {
            corn: planting.cornName,
            day: dayText(planting.plantedOn),
          }),
        ]
      : []),
  ]
  return (
    <div>
      <h3>{plot.name}</h3>
      {lines.length === 0 ? <p>{say('field:screen-plot-bare')}</p> : lines.map((line) => <p key={line}>{line}</p>)}
      <ButtonRow>
        <SideAction href={`/field/plot/${plot.plotId}`}>
          {say('field:screen-open-plot', { plot: plot.name })}
        </SideAction>
      </ButtonRow>
    </div>
  )
}
