/**
 * Kettle: batches, pots, ash and other alkali lots, and how each worked. Behind it: the walk of a batch (/kettle/<batchId>),
 * its rinse, a lot of alkali and how strong it is (/kettle/alkali/<id>), and the dose (/kettle/dose).
 */
import { lazy } from 'react'
import { Route, Switch } from 'wouter'
import { useBook } from '../book/book.tsx'
import { ButtonRow, Empty, Fold, MarginNote, Passage, Sheet, SideAction } from '../parts-of-the-sheet/index.ts'
import { AlkaliLotForm } from '../records/alkali-lot-form.tsx'
import { AlkaliJudgementForm, AlkaliLots } from '../records/alkali-lots.tsx'
import { PotForm, Pots } from '../records/pots.tsx'
import { useWords } from '../words.tsx'
import { Batches } from './kettle/batches.tsx'

const WalkScreen = lazy(() => import('./kettle/walk-sheet.tsx'))
const RinsePage = lazy(() => import('./kettle/rinse/rinse-page.tsx'))
const LotPage = lazy(() => import('./kettle/alkali/lot-page.tsx'))
const TestPage = lazy(() => import('./kettle/alkali/test-page.tsx'))
const DosePage = lazy(() => import('./kettle/dose/dose-page.tsx'))

export default function KettleScreen() {
  return (
    <Switch>
      <Route path="/dose">
        <DosePage />
      </Route>
      <Route path="/alkali/:alkaliLotId">
        {({ alkaliLotId }) => <LotPage key={alkaliLotId} alkaliLotId={alkaliLotId} />}
      </Route>
      <Route path="/alkali/:alkaliLotId/test">
        {({ alkaliLotId }) => <TestPage key={alkaliLotId} alkaliLotId={alkaliLotId} />}
      </Route>
      <Route path="/:batchId/rinse">{({ batchId }) => <RinsePage batchId={batchId} />}</Route>
      <Route path="/:batchId">{({ batchId }) => <WalkScreen batchId={batchId} />}</Route>
      <Route component={KettleSheet} />
    </Switch>
  )
}

function KettleSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const hasLots = Object.keys(facts.alkaliLots).length > 0
  return (
    <Sheet title={say('shell:part-kettle')} drawing="pot" lead={say('shell:kettle-lead')}>
      <Batches />
      {Object.keys(facts.batches).length === 0 && (
        <Passage>
          <Empty drawing="kernel">
            <p>{say('shell:kettle-empty')}</p>
          </Empty>
        </Passage>
      )}
      <Passage title={say('shell:alkali-title')} margin={<MarginNote>{say('shell:alkali-margin')}</MarginNote>}>
        <AlkaliLots />
        <Fold title={say('shell:alkali-one-more')}>
          <AlkaliLotForm />
        </Fold>
        {hasLots && (
          <Fold title={say('shell:alkali-judge')}>
            <AlkaliJudgementForm />
          </Fold>
        )}
        <ButtonRow>
          <SideAction href="/kettle/dose">{say('kettle:dose-title')}</SideAction>
        </ButtonRow>
      </Passage>
      <Passage title={say('shell:pots-title')}>
        <Pots />
        <Fold title={say('shell:pot-one-more')}>
          <PotForm />
        </Fold>
      </Passage>
    </Sheet>
  )
}
