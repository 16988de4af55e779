/** The whole of it: the book, its words, and a sheet for the address. */
import { lazy, Suspense, useMemo } from 'react'
import { Route, Switch, useLocation } from 'wouter'
import { useBook } from './book/book.tsx'
import { ErrorState, Loading } from './parts-of-the-sheet/standstill.tsx'
import { PreferencesProvider } from './preferences.tsx'
import { ErrorFence } from './shell/error-fence.tsx'
import { Frame } from './shell/frame.tsx'
import { NotHere } from './shell/not-here.tsx'
import { PARTS, PLACES } from './shell/parts.ts'
import { Threshold } from './shell/threshold.tsx'
import { WordsProvider } from './words.tsx'

const JoinScreen = lazy(() => import('./routes/people/join.tsx'))

export function App() {
  const [address] = useLocation()
  const { facts, ready, failure, kitchenId } = useBook()
  const nouns = useMemo(() => ({ ...facts.kitchen?.nouns }), [facts.kitchen?.nouns])
  return (
    <WordsProvider nouns={nouns}>
      <PreferencesProvider>
        {failure ? (
          <main className="page">
            <ErrorState error={failure} onRetry={() => location.reload()} />
          </main>
        ) : !ready ? (
          <main className="page">
            <Loading />
          </main>
        ) : address === '/join' ? (
          <Suspense fallback={<Loading />}>
            <JoinScreen />
          </Suspense>
        ) : kitchenId === null ? (
          <Threshold />
        ) : (
          <Frame>
            <Screens />
          </Frame>
        )}
      </PreferencesProvider>
    </WordsProvider>
  )
}

function Screens() {
  return (
    <ErrorFence>
      <Suspense fallback={<Loading />}>
        <Switch>
          {[...PARTS, ...PLACES].map(({ path, Screen }) => (
            <Route key={path} path={path} nest={path !== '/'}>
              <Screen />
            </Route>
          ))}
          <Route>
            <NotHere />
          </Route>
        </Switch>
      </Suspense>
    </ErrorFence>
  )
}
