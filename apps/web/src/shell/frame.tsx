/** The frame round every page: the kitchen's name, what the connection is doing, slips, the sheet, the shelf of tags. */
import { type ReactNode, Suspense, useEffect, useRef } from 'react'
import { useLocation } from 'wouter'
import { useBook } from '../book/book.tsx'
import { InventedSlip } from '../parts-of-the-sheet/slips.tsx'
import { Loading } from '../parts-of-the-sheet/standstill.tsx'
import { useWords, WithAllWords } from '../words.tsx'
import { ClockSlip } from './clock-slip.tsx'
import { ErrorFence } from './error-fence.tsx'
import { NewerSlip } from './newer-slip.tsx'
import { OfflineLine } from './offline-line.tsx'
import { Shelf } from './shelf.tsx'
import { SignInSlip } from './sign-in-slip.tsx'

export function Frame({ children }: { readonly children: ReactNode }) {
  const { facts } = useBook()
  const { say } = useWords()
  const [location] = useLocation()
  const page = useRef<HTMLElement>(null)
  const shown = useRef(location)
  useEffect(() => {
    if (shown.current === location) return
    shown.current = location
    window.scrollTo(0, 0)
    page.current?.focus({ preventScroll: true })
  }, [location])
  return (
    <div className="frame">
      <a className="jump" href="#page">
        {say('shell:jump-to-page')}
      </a>
      <header className="strip">
        <span className="strip-name">{facts.kitchen?.name || say('shell:book')}</span>
        <OfflineLine />
      </header>
      <main className="page" id="page" tabIndex={-1} ref={page}>
        <div className="slips">
          {facts.kitchen?.demo && <InventedSlip />}
          <ClockSlip />
          <NewerSlip />
          <SignInSlip />
        </div>
        {location === '/' ? (
          children
        ) : (
          <ErrorFence>
            <Suspense fallback={<Loading />}>
              <WithAllWords>{children}</WithAllWords>
            </Suspense>
          </ErrorFence>
        )}
      </main>
      <Shelf />
    </div>
  )
}
