/** Before a kitchen is chosen: open one's own book, join one the server holds, or look at the invented demo kitchen. */
import type { KitchenSummary } from '@crib/journal'
import { type FormEvent, lazy, Suspense, useEffect, useState } from 'react'
import { useBook } from '../book/book.tsx'
import { HouseRefused } from '../book/exchange.ts'
import { ButtonRow, NextAction, SideAction } from '../parts-of-the-sheet/actions.tsx'
import { TextField } from '../parts-of-the-sheet/fields.tsx'
import { Fold } from '../parts-of-the-sheet/fold.tsx'
import { MarginNote, Passage, Sheet } from '../parts-of-the-sheet/sheet.tsx'
import { useWords } from '../words.tsx'

const SignIn = lazy(() => import('../routes/people/sign-in.tsx'))

export function Threshold() {
  const { openOwnKitchen, openDemoKitchen, joinKitchen, kitchensOnServer } = useBook()
  const { say } = useWords()
  const [name, setName] = useState('')
  const [opening, setOpening] = useState(false)
  const [asksToSignIn, setAsksToSignIn] = useState(false)
  const [onServer, setOnServer] = useState<readonly KitchenSummary[]>([])

  useEffect(() => {
    let stale = false
    kitchensOnServer().then(
      (kitchens) => {
        if (!stale) setOnServer(kitchens)
      },
      // No server answers: one's own book opens all the same.
      (cause) => !stale && setAsksToSignIn(cause instanceof HouseRefused && cause.status === 401),
    )
    return () => {
      stale = true
    }
  }, [kitchensOnServer])

  const open = (act: () => Promise<void>) => {
    setOpening(true)
    act().finally(() => setOpening(false))
  }
  const openOwn = (event: FormEvent) => {
    event.preventDefault()
    open(() => openOwnKitchen(name.trim() || say('shell:book-without-name')))
  }

  const ownForm = (
    <form className="passage-body" onSubmit={openOwn}>
      <TextField
        label={say('shell:kitchen-name')}
        hint={say('shell:kitchen-name-hint')}
        value={name}
        onValue={setName}
      />
      <NextAction disabled={opening}>{say('shell:open-own')}</NextAction>
    </form>
  )

  return (
    <main className="page threshold">
      <Sheet title={say('shell:threshold-title')} drawing="pot" lead={say('shell:threshold-lead')}>
        {asksToSignIn && (
          <Suspense fallback={null}>
            <SignIn />
          </Suspense>
        )}
        <Passage title={say('shell:open-own-title')} margin={<MarginNote>{say('shell:open-own-margin')}</MarginNote>}>
          {/* One handle on a sheet: where somebody signs in first, their own book waits behind a fold. */}
          {asksToSignIn ? <Fold title={say('shell:open-own')}>{ownForm}</Fold> : ownForm}
        </Passage>
        {onServer.length > 0 && (
          <Passage title={say('shell:join-title')}>
            <ButtonRow>
              {onServer.map(({ kitchenId, entryCount }) => (
                <SideAction key={kitchenId} disabled={opening} onClick={() => open(() => joinKitchen(kitchenId))}>
                  {say('shell:join', { code: kitchenId.slice(-4), count: entryCount })}
                </SideAction>
              ))}
            </ButtonRow>
          </Passage>
        )}
        <Passage title={say('shell:demo-title')} margin={<MarginNote>{say('common:invented')}</MarginNote>}>
          <p>{say('shell:demo-lead')}</p>
          <ButtonRow>
            <SideAction disabled={opening} onClick={() => open(openDemoKitchen)}>
              {say('shell:open-demo')}
            </SideAction>
          </ButtonRow>
        </Passage>
      </Sheet>
    </main>
  )
}
