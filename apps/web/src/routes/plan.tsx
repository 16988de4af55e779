/** Planning a day: seed first, then a few answers, where jars stand if there are any, and the sheet. */
import { seasonYearOf, seedOfSeason } from '@crib/planning'
import { Route, Switch } from 'wouter'
import { useBook } from '../book/book.tsx'
import { localDay } from '../local-day.ts'
import { NotHere } from '../shell/not-here.tsx'
import { DraftProvider } from './plan/draft.tsx'
import { PlanSheet } from './plan/plan-sheet.tsx'
import { PrintPlan } from './plan/print-plan.tsx'
import { Reading } from './plan/reading.tsx'
import { SeedAsk } from './plan/seed-ask.tsx'
import { WishSheet } from './plan/wish-sheet.tsx'
import './plan/plan.css'

export default function PlanScreen() {
  const { facts } = useBook()
  const seasonYear = seasonYearOf(facts, localDay())
  const isSeedAnswered = seedOfSeason(facts, seasonYear).length > 0
  return (
    <DraftProvider>
      <Switch>
        {/* Reading where jars stand makes nothing food, so a card may lead there before seed is put by. */}
        <Route path="/standing" component={Reading} />
        {!isSeedAnswered && (
          <Route>
            <SeedAsk seasonYear={seasonYear} />
          </Route>
        )}
        <Route path="/" component={WishSheet} />
        <Route path="/sheet" component={PlanSheet} />
        <Route path="/print" component={PrintPlan} />
        <Route component={NotHere} />
      </Switch>
    </DraftProvider>
  )
}
