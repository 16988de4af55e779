/** Heat: a made-up jar to play with, a run of the book as temperatures, and a logger's file told as a run. */
import './heat/heat.css'
import { lazy } from 'react'
import { Route, Switch } from 'wouter'
import { NotHere } from '../shell/not-here.tsx'
import { MadeUpJar, RunAsHeat } from './heat/heat-sheet.tsx'

const ReplaySheet = lazy(() => import('./heat/replay-sheet.tsx'))

export default function HeatScreen() {
  return (
    <Switch>
      <Route path="/" component={MadeUpJar} />
      <Route path="/run/:runId">{({ runId }) => <RunAsHeat runId={runId} />}</Route>
      <Route path="/replay">
        <ReplaySheet />
      </Route>
      <Route path="/replay/:runId">{({ runId }) => <ReplaySheet key={runId} runId={runId} />}</Route>
      <Route component={NotHere} />
    </Switch>
  )
}
