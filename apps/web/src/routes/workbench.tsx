/** Workbench: every calculation of the catalogue by itself, worked out on this device. */
import './workbench/workbench.css'
import { findCalc } from '@crib/catalogue'
import { Route, Switch } from 'wouter'
import { NextAction, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'
import { Bench } from './workbench/bench.tsx'
import { BenchList } from './workbench/bench-list.tsx'

export default function WorkbenchScreen() {
  return (
    <Switch>
      <Route path="/">
        <BenchList />
      </Route>
      <Route path="/:id">{({ id }) => <Calculation id={decodeURIComponent(id)} />}</Route>
      <Route>
        <Calculation id="" />
      </Route>
    </Switch>
  )
}

function Calculation({ id }: { readonly id: string }) {
  const { say } = useWords()
  const calc = findCalc(id)
  if (calc) return <Bench key={calc.id} calc={calc} />
  return (
    <Sheet title={say('workbench:title')} drawing="scale">
      <Passage>
        <p role="alert">{say('workbench:unknown-calc', { id })}</p>
        <NextAction href="/workbench">{say('workbench:back')}</NextAction>
      </Passage>
    </Sheet>
  )
}
