/** Crib: corn lots by weight, how each lies in store, and bringing corn in. */
import { Route, Switch } from 'wouter'
import { NotHere } from '../shell/not-here.tsx'
import { CribList } from './crib/crib-list.tsx'
import { StoreSheet } from './crib/store-sheet.tsx'

export default function CribScreen() {
  return (
    <Switch>
      <Route path="/" component={CribList} />
      <Route path="/store/:lotId">{({ lotId }) => <StoreSheet key={lotId} lotId={lotId} />}</Route>
      <Route component={NotHere} />
    </Switch>
  )
}
