/** Kettle: batches, pots, ash and other alkali lots, and how each worked; the walk of a batch at /kettle/<batchId>. */
import { lazy } from 'react'
import { Route, Switch } from 'wouter'
import { useBook } from '../book/book.tsx'
import { Empty, Fold, MarginNote, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { AlkaliJudgementForm, AlkaliLotForm, AlkaliLots } from '../records/alkali-lots.tsx'
import { PotForm, Pots } from '../records/pots.tsx'
import { useWords } from '../words.tsx'
import { Batches } from './kettle/batches.tsx'

const WalkScreen = lazy(() => import('./kettle/walk-sheet.tsx'))

export default function KettleScreen() {
  return (
    <Switch>
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
