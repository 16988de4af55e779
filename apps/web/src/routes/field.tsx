/** Field: plots and what stands on them, from next year's plan to the corn brought in; each with a sheet of its own. */
import { lazy } from 'react'
import { Route, Switch } from 'wouter'
import { NotHere } from '../shell/not-here.tsx'
import { FieldList } from './field/field-list.tsx'

const PlanSheet = lazy(() => import('./field/plan-sheet.tsx'))
const PlotSheet = lazy(() => import('./field/plot-sheet.tsx'))
const CrossingSheet = lazy(() => import('./field/crossing-sheet.tsx'))
const SowSheet = lazy(() => import('./field/sow-sheet.tsx'))
const PlantingSheet = lazy(() => import('./field/planting-sheet.tsx'))
const DaysSheet = lazy(() => import('./field/days-sheet.tsx'))
const YieldSheet = lazy(() => import('./field/yield-sheet.tsx'))
const HarvestSheet = lazy(() => import('./field/harvest-sheet.tsx'))
const ShellingSheet = lazy(() => import('./field/shelling-sheet.tsx'))

export default function FieldScreen() {
  return (
    <Switch>
      <Route path="/" component={FieldList} />
      <Route path="/plan" component={PlanSheet} />
      <Route path="/shelling" component={ShellingSheet} />
      <Route path="/plot/:plotId">{({ plotId }) => <PlotSheet plotId={plotId} />}</Route>
      <Route path="/plot/:plotId/sow">{({ plotId }) => <SowSheet plotId={plotId} />}</Route>
      <Route path="/plot/:plotId/crossing">{({ plotId }) => <CrossingSheet plotId={plotId} />}</Route>
      <Route path="/planting/:plantingId">{({ plantingId }) => <PlantingSheet plantingId={plantingId} />}</Route>
      <Route path="/planting/:plantingId/days">{({ plantingId }) => <DaysSheet plantingId={plantingId} />}</Route>
      <Route path="/planting/:plantingId/yield">{({ plantingId }) => <YieldSheet plantingId={plantingId} />}</Route>
      <Route path="/planting/:plantingId/harvest">{({ plantingId }) => <HarvestSheet plantingId={plantingId} />}</Route>
      <Route component={NotHere} />
    </Switch>
  )
}
