/** Canner: the canners at hand and their gauges; the card of each at /canner/card/<cannerId>. */
import { lazy } from 'react'
import { Route, Switch } from 'wouter'
import { useBook } from '../book/book.tsx'
import {
  ButtonRow,
  Empty,
  Fold,
  MarginNote,
  NextAction,
  Passage,
  Sheet,
  SideAction,
} from '../parts-of-the-sheet/index.ts'
import { CannerTimingsForm } from '../records/canner-timings.tsx'
import { CannerForm, Canners } from '../records/canners.tsx'
import { GaugeTestForm } from '../records/gauge-test-form.tsx'
import { useWords } from '../words.tsx'
import { LoadsDone } from './canner/loads-done.tsx'
import { OnTheFire } from './canner/on-the-fire.tsx'
import { isOpen } from './canner/run-of.ts'

const CardSheet = lazy(() => import('./card/card-sheet.tsx').then(({ CardSheet: Card }) => ({ default: Card })))

const RunBegin = lazy(() => import('./canner/run-begin.tsx'))
const RunScreen = lazy(() => import('./canner/run-sheet.tsx'))

export default function CannerScreen() {
  return (
    <Switch>
      <Route path="/run" component={RunBegin} />
      <Route path="/run/:runId">{({ runId }) => <RunScreen runId={runId} />}</Route>
      <Route path="/card/:cannerId">{({ cannerId }) => <CardSheet cannerId={cannerId} />}</Route>
      <Route component={CannerList} />
    </Switch>
  )
}

function CannerList() {
  const { facts } = useBook()
  const { say } = useWords()
  const canners = Object.values(facts.canners)
  return (
    <Sheet title={say('shell:part-canner')} drawing="canner" lead={say('shell:canner-lead')}>
      <OnTheFire title={say('canner:run-screen-list-title')} />
      {canners.length > 0 && (
        <Passage>
          {Object.values(facts.runs).some(isOpen) ? (
            <SideAction href="/canner/run">{say('canner:run-screen-begin')}</SideAction>
          ) : (
            <NextAction href="/canner/run">{say('canner:run-screen-begin')}</NextAction>
          )}
        </Passage>
      )}
      <LoadsDone />
      <Passage title={say('shell:canners-title')}>
        {canners.length === 0 && (
          <Empty drawing="canner">
            <p>{say('shell:canner-empty')}</p>
          </Empty>
        )}
        <Canners />
        <ButtonRow>
          {canners.map(({ cannerId, name }) => (
            <SideAction key={cannerId} href={`/canner/card/${cannerId}`}>
              {say('shell:card-of', { name })}
            </SideAction>
          ))}
        </ButtonRow>
      </Passage>
      <Passage title={say('shell:canners-more-title')} margin={<MarginNote>{say('shell:gauge-margin')}</MarginNote>}>
        <p>{say('heat:canner-lead')}</p>
        <ButtonRow>
          <SideAction href="/heat">{say('heat:title')}</SideAction>
          <SideAction href="/heat/replay">{say('heat:to-replay')}</SideAction>
        </ButtonRow>
        {canners.some(({ gauges }) => gauges.includes('dial')) && (
          <Fold title={say('shell:gauge-one-more')}>
            <GaugeTestForm />
          </Fold>
        )}
        {canners.length > 0 && (
          <Fold title={say('canner:timing-one')}>
            <CannerTimingsForm />
          </Fold>
        )}
        <Fold title={say('shell:canner-one-more')} open={canners.length === 0}>
          <CannerForm />
        </Fold>
      </Passage>
    </Sheet>
  )
}
