/** Keeping: pans that cool, trays that dry, what is kept otherwise than in jars; the freezer, the mill and the roast. */
import { Route, Switch } from 'wouter'
import { NotHere } from '../shell/not-here.tsx'
import { ColdSheet } from './keeping/cold-sheet.tsx'
import { CoolingSheet } from './keeping/cooling-sheet.tsx'
import { DryingSheet } from './keeping/drying-sheet.tsx'
import { KeepingList } from './keeping/keeping-list.tsx'
import { PowerCutSheet } from './keeping/power-cut-sheet.tsx'
import { MillSheet, RoastSheet } from './keeping/work-sheets.tsx'
import './pantry/pantry.css'

export default function KeepingScreen() {
  return (
    <Switch>
      <Route path="/" component={KeepingList} />
      <Route path="/cooling" component={CoolingSheet} />
      <Route path="/drying" component={DryingSheet} />
      <Route path="/freezer" component={ColdSheet} />
      <Route path="/power-cut" component={PowerCutSheet} />
      <Route path="/mill" component={MillSheet} />
      <Route path="/roast" component={RoastSheet} />
      <Route component={NotHere} />
    </Switch>
  )
}
