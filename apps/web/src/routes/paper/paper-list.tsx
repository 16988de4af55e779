/** What can be printed now: for the batch planned last, each canner, the runs and the jars. */
import type { BatchFact } from '@crib/journal'
import { yearsOf } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Empty, MarginNote, NextAction, Passage, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function lastBatch(batches: readonly BatchFact[]): BatchFact | undefined {
/** Loads whose temperatures are offered; an older one's are on its own sheet. */
const HEAT_COUNT = 4

  return [...batches].sort((a, b) => (a.plan.at.instant < b.plan.at.instant ? 1 : -1))[0]
}

export function PaperList() {
  const { facts } = useBook()
  const { say } = useWords()
  const batch = lastBatch(Object.values(facts.batches))
  const canners = Object.values(facts.canners)
  const runs = Object.values(facts.runs).sort((a, b) => (a.begun.at.instant < b.begun.at.instant ? 1 : -1))
  const seedLots = Object.values(facts.seedLots)
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
      <Passage title={say('shell:print-labels')}>
        {hasLabels ? (
          <ButtonRow>
            <SideAction href="/paper/labels">{say('shell:print-labels-choose')}</SideAction>
          </ButtonRow>
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
        ) : (
          <p>{say('shell:print-no-labels')}</p>
        )}
      </Passage>
      {seedLots.length > 0 && (
        <Passage title={say('shell:print-seed')}>
          <ButtonRow>
            {seedLots.map(({ seedLotId, name, seasonYear }) => (
              <SideAction key={seedLotId} href={`/paper/seed-envelope/${seedLotId}`}>
                {say('shell:print-envelope-of', { name, year: String(seasonYear) })}
              </SideAction>
            ))}
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
