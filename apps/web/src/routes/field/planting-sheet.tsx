/** PlantingSheet: one sowing through its season: the next thing to look for, what was seen, and where it leads. Props: plantingId. */
import { nextSeasonStep, SEASON_STEPS, type SeasonStep } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Fold, NextAction, Passage, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { NotedInSeason } from './noted-in-season.tsx'
import { SeenForm } from './seen-form.tsx'
import { StandForm } from './stand-form.tsx'

export default function PlantingSheet({ plantingId }: { readonly plantingId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const planting = facts.plantings[plantingId]
  if (!planting) return <NotHere />
  const plot = facts.plots[planting.plotId]
  const next = nextSeasonStep(planting)
  const others = SEASON_STEPS.filter((step) => step !== next && step !== 'harvest')
  const form = (step: SeasonStep) =>
    step === 'stand' ? (
      <StandForm planting={planting} />
    ) : step === 'harvest' ? (
      <NextAction href={`/field/planting/${plantingId}/harvest`}>{say('field:screen-step-harvest')}</NextAction>
    ) : (
      <SeenForm planting={planting} what={step} />
    )
  return (
    <Sheet
      title={say('field:screen-sown-on', { corn: planting.cornName, day: dayText(planting.plantedOn) })}
      drawing="field"
      {...(plot && { lead: plot.name })}
    >
      {next && (
        <Passage title={say(`field:screen-step-${next}`)}>
          <p>{say(`field:screen-step-${next}-why`)}</p>
          {form(next)}
        </Passage>
      )}
      <Passage title={say('field:screen-season')}>
        <NotedInSeason planting={planting} />
      </Passage>
      <Passage title={say('field:screen-more')}>
        <ButtonRow>
          <SideAction href={`/field/planting/${plantingId}/days`}>{say('field:screen-days')}</SideAction>
          <SideAction href={`/field/plot/${planting.plotId}/crossing`}>{say('field:screen-crossing')}</SideAction>
          <SideAction href={`/field/planting/${plantingId}/yield`}>{say('field:screen-yield')}</SideAction>
          {planting.seedLotId !== undefined && (
            <SideAction href={`/seed/off-types/${planting.seedLotId}`}>{say('field:screen-off-types')}</SideAction>
          )}
          {next !== 'harvest' && (
            <SideAction href={`/field/planting/${plantingId}/harvest`}>{say('field:screen-step-harvest')}</SideAction>
          )}
          <SideAction href={`/field/plot/${planting.plotId}`}>
            {say('field:screen-open-plot', { plot: plot?.name ?? '' })}
          </SideAction>
        </ButtonRow>
        {others.map((step) => (
          <Fold key={step} title={say(`field:screen-step-${step}`)}>
            {form(step)}
          </Fold>
        ))}
      </Passage>
    </Sheet>
  )
}
