/** Before a kitchen is chosen: open one's own book, join one the server holds, or look at the invented demo kitchen. */
import { type FormEvent, useState } from 'react'
import { useBook } from '../book/book.tsx'
import { ButtonRow, NextAction, SideAction } from '../parts-of-the-sheet/actions.tsx'
import { TextField } from '../parts-of-the-sheet/fields.tsx'
import { Fold } from '../parts-of-the-sheet/fold.tsx'
import { MarginNote, Passage, Sheet } from '../parts-of-the-sheet/sheet.tsx'
import { Loading } from '../parts-of-the-sheet/standstill.tsx'
import { useWords } from '../words.tsx'
import { useHouse } from './use-house.ts'

export function Threshold() {
  const { openOwnKitchen, openDemoKitchen, joinKitchen } = useBook()
  const { say } = useWords()
  const [name, setName] = useState('')
  const [opening, setOpening] = useState(false)
  const house = useHouse()

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

  if (!house) {
    return (
      <main className="page threshold">
        <Loading />
      </main>
    )
  }
  const { kitchens, SignIn } = house
  return (
    <main className="page threshold">
      <Sheet title={say('shell:threshold-title')} drawing="pot" lead={say('shell:threshold-lead')}>
        {SignIn && <SignIn />}
        <Passage title={say('shell:open-own-title')} margin={<MarginNote>{say('shell:open-own-margin')}</MarginNote>}>
          {/* One handle on a sheet: where somebody signs in first, their own book waits behind a fold. */}
          {SignIn ? <Fold title={say('shell:open-own')}>{ownForm}</Fold> : ownForm}
        </Passage>
        {kitchens.length > 0 && (
          <Passage title={say('shell:join-title')}>
            <ButtonRow>
              {kitchens.map(({ kitchenId, entryCount }) => (
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
