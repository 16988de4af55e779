/** Pantry: what is put up, what goes first, what left the shelf; reading a label, and finding every jar a doubt reaches. */
import { Route, Switch } from 'wouter'
import { NotHere } from '../shell/not-here.tsx'
import { BuySheet } from './pantry/buy-sheet.tsx'
import { DrillSheet } from './pantry/drill-sheet.tsx'
import { LotSheet } from './pantry/lot-sheet.tsx'
import { PantryShelfSheet } from './pantry/pantry-shelf-sheet.tsx'
import { RecallSheet } from './pantry/recall-sheet.tsx'
import { ScanSheet } from './pantry/scan-sheet.tsx'
import { WentSheet } from './pantry/went-sheet.tsx'
import './pantry/pantry.css'

export default function PantryScreen() {
  return (
    <Switch>
      <Route path="/" component={PantryShelfSheet} />
      <Route path="/scan" component={ScanSheet} />
      <Route path="/lot/:lotId">{({ lotId }) => <LotSheet key={lotId} lotId={lotId} />}</Route>
      <Route path="/recall" component={RecallSheet} />
      <Route path="/recall/drill" component={DrillSheet} />
      <Route path="/went" component={WentSheet} />
      <Route path="/buy" component={BuySheet} />
      <Route component={NotHere} />
    </Switch>
  )
}
