/** What can be printed now: for the batch planned last, each canner, the runs and the jars. */
import type { BatchFact } from '@crib/journal'
import { seedTitle } from '@crib/paper'
import { plannedField, yearsOf } from '@crib/planning'
import { useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Empty, MarginNote, NextAction, Passage, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

/** Loads whose temperatures are offered; an older one's are on its own sheet. */
const HEAT_COUNT = 4

export function lastBatch(batches: readonly BatchFact[]): BatchFact | undefined {
  return [...batches].sort((a, b) => (a.plan.at.instant < b.plan.at.instant ? 1 : -1))[0]
}

export function PaperList() {
  const { facts } = useBook()
  const words = useWords()
  const { say } = words
  const batch = lastBatch(Object.values(facts.batches))
  const canners = Object.values(facts.canners)
  const runs = Object.values(facts.runs).sort((a, b) => (a.begun.at.instant < b.begun.at.instant ? 1 : -1))
  const seedLots = Object.values(facts.seedLots)
  const plots = useMemo(
    () => Object.values(facts.plots).map((plot) => ({ ...plot, planned: plannedField(plot) })),
    [facts.plots],
  )
  const years = yearsOf(facts)
  const hasLabels = Object.values(facts.foodLots).some(({ remainingCount }) => remainingCount > 0)
  return (
    <Sheet title={say('shell:part-paper')} drawing="sheet" lead={say('shell:paper-lead')}>
      <Passage
        title={say('shell:print-for-the-day')}
        margin={<MarginNote>{say('shell:print-offline-margin')}</MarginNote>}
      >
        {batch ? (
          <>
            <p>{batch.plan.title}</p>
            <NextAction href={`/paper/batch-sheet/${batch.batchId}`}>{say('shell:print-batch-sheet')}</NextAction>
            <ButtonRow>
              <SideAction href={`/paper/wall-board/${batch.batchId}`}>{say('shell:print-wall-board')}</SideAction>
              <SideAction href={`/paper/class-sheet/${batch.batchId}`}>{say('shell:print-class-sheet')}</SideAction>
            </ButtonRow>
          </>
        ) : (
          <Empty drawing="sheet" action={<NextAction href="/plan">{say('shell:plan-title')}</NextAction>}>
            <p>{say('shell:print-no-batch')}</p>
          </Empty>
        )}
      </Passage>
      <Passage title={say('shell:print-cards')}>
        {canners.length === 0 ? (
          <p>{say('shell:canner-empty')}</p>
        ) : (
          <ButtonRow>
            {canners.map(({ cannerId, name }) => (
              <SideAction key={cannerId} href={`/paper/canner-card/${cannerId}`}>
                {say('shell:print-card-of', { name })}
              </SideAction>
            ))}
          </ButtonRow>
        )}
      </Passage>
      <Passage title={say('shell:print-logs')} margin={<MarginNote>{say('shell:print-logs-margin')}</MarginNote>}>
        <ButtonRow>
          <SideAction href="/paper/process-log">{say('shell:print-log-blank')}</SideAction>
          {runs.map(({ runId, begun }) => (
            <SideAction key={runId} href={`/paper/process-log/${runId}`}>
              {say('shell:print-log-of', { code: begun.loadCode })}
            </SideAction>
          ))}
        </ButtonRow>
      </Passage>
      <Passage title={say('heat:title')}>
        <ButtonRow>
          <SideAction href="/paper/jar-heat">{say('heat:paper-title')}</SideAction>
          {runs.slice(0, HEAT_COUNT).map(({ runId, begun }) => (
            <SideAction key={runId} href={`/paper/load-heat/${runId}`}>
              {say('heat:paper-run-title', { code: begun.loadCode })}
            </SideAction>
          ))}
        </ButtonRow>
      </Passage>
      <Passage title={say('shell:print-labels')}>
        {hasLabels ? (
          <ButtonRow>
            <SideAction href="/paper/labels">{say('shell:print-labels-choose')}</SideAction>
          </ButtonRow>
        ) : (
          <p>{say('shell:print-no-labels')}</p>
        )}
      </Passage>
      {seedLots.length > 0 && (
        <Passage title={say('shell:print-seed')}>
          {seedLots.map(({ seedLotId, name, seasonYear }) => (
            <div key={seedLotId} className="passage-body">
              <h3>{seedTitle({ name, seasonYear }, words)}</h3>
              <ButtonRow>
                <SideAction href={`/paper/seed-envelope/${seedLotId}`}>{say('seed:screen-print-envelope')}</SideAction>
                <SideAction href={`/paper/sprouting-test/${seedLotId}`}>{say('seed:screen-print-test')}</SideAction>
                <SideAction href={`/paper/reserve-tags/${seedLotId}`}>{say('seed:screen-print-tags')}</SideAction>
              </ButtonRow>
            </div>
          ))}
        </Passage>
      )}
      {plots.length > 0 && (
        <Passage title={say('shell:part-field')}>
          <ButtonRow>
            {plots.map(({ plotId, name, planned }) =>
              planned ? (
                <SideAction key={plotId} href={`/paper/field-sheet/${plotId}`}>
                  {say('field:screen-print-of', { plot: name, year: String(planned.seasonYear) })}
                </SideAction>
              ) : (
                <SideAction key={plotId} href={`/field/plan?plot=${plotId}`}>
                  {say('field:screen-print-plan-first', { plot: name })}
                </SideAction>
              ),
            )}
          </ButtonRow>
        </Passage>
      )}
      {years.length > 0 && (
        <Passage title={say('shell:print-years')}>
          <ButtonRow>
            {years.map((year) => (
              <SideAction key={year} href={`/paper/year/${year}`}>
                {say('shell:print-year', { year: String(year) })}
              </SideAction>
            ))}
          </ButtonRow>
        </Passage>
      )}
    </Sheet>
  )
}
