/** Paper: everything that can be printed for the day at hand, and each sheet to look at before it is printed. */
import { lazy } from 'react'
import { Route, Switch } from 'wouter'
import { NotHere } from '../shell/not-here.tsx'
import { CallListPage, ClassSheetPage, RecallNoticePage, YearPage } from './paper/book-pages.tsx'
import { FieldSheetPage } from './paper/field-page.tsx'
import { LyeSheetPage, RubLogPage, TitrationSheetPage } from './paper/kettle-pages.tsx'
import { BatchSheetPage, BlankLogPage, CannerCardPage, LabelsPage, RunLogPage, WallBoardPage } from './paper/pages.tsx'
import { PaperList } from './paper/paper-list.tsx'
import { ReserveTagsPage, SeedEnvelopePage, SproutingTestPage } from './paper/seed-pages.tsx'

const JarHeatPage = lazy(() => import('./paper/heat-pages.tsx').then(({ JarHeatPage: Jar }) => ({ default: Jar })))
const RunHeatPage = lazy(() => import('./paper/heat-pages.tsx').then(({ RunHeatPage: Run }) => ({ default: Run })))

export default function PaperScreen() {
  return (
    <Switch>
      <Route path="/" component={PaperList} />
      <Route path="/batch-sheet/:batchId">{({ batchId }) => <BatchSheetPage batchId={batchId} />}</Route>
      <Route path="/canner-card/:cannerId">{({ cannerId }) => <CannerCardPage cannerId={cannerId} />}</Route>
      <Route path="/process-log" component={BlankLogPage} />
      <Route path="/process-log/:runId">{({ runId }) => <RunLogPage runId={runId} />}</Route>
      <Route path="/jar-heat" component={JarHeatPage} />
      <Route path="/load-heat/:runId">{({ runId }) => <RunHeatPage runId={runId} />}</Route>
      <Route path="/field-sheet/:plotId">{({ plotId }) => <FieldSheetPage plotId={plotId} />}</Route>
      <Route path="/labels" component={LabelsPage} />
      <Route path="/wall-board/:batchId">{({ batchId }) => <WallBoardPage batchId={batchId} />}</Route>
      <Route path="/class-sheet/:batchId">{({ batchId }) => <ClassSheetPage batchId={batchId} />}</Route>
      <Route path="/year/:year">{({ year }) => <YearPage year={year} />}</Route>
      <Route path="/recall-notice/:by/:id">{({ by, id }) => <RecallNoticePage by={by} id={id} />}</Route>
      <Route path="/call-list/:by/:id">{({ by, id }) => <CallListPage by={by} id={id} />}</Route>
      <Route path="/seed-envelope/:seedLotId">{({ seedLotId }) => <SeedEnvelopePage seedLotId={seedLotId} />}</Route>
      <Route path="/sprouting-test/:seedLotId">{({ seedLotId }) => <SproutingTestPage seedLotId={seedLotId} />}</Route>
      <Route path="/reserve-tags/:seedLotId">{({ seedLotId }) => <ReserveTagsPage seedLotId={seedLotId} />}</Route>
      <Route path="/lye-sheet/:alkaliLotId">{({ alkaliLotId }) => <LyeSheetPage alkaliLotId={alkaliLotId} />}</Route>
      <Route path="/titration/:alkaliLotId">
        {({ alkaliLotId }) => <TitrationSheetPage alkaliLotId={alkaliLotId} />}
      </Route>
      <Route path="/rub-log/:batchId">{({ batchId }) => <RubLogPage batchId={batchId} />}</Route>
      <Route component={NotHere} />
    </Switch>
  )
}
