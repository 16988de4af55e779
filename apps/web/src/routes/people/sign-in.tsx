/** SignIn: a name and a passphrase, or a passkey. Props: none. Goes on as that person, in their kitchen. */
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  ButtonRow,
  FieldError,
  MarginNote,
  NextAction,
  Passage,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { askMe, askPeople, passkeysWork } from '../../people/door.ts'
import { useAct } from '../../people/use-asking.ts'
import { useWords } from '../../words.tsx'
import { PassphraseField } from './passphrase-field.tsx'

export default function SignIn() {
  const { kitchenId, goOnAs } = useBook()
  const { say } = useWords()
  const { busy, fault, run } = useAct()
  const [name, setName] = useState('')
  const [passphrase, setPassphrase] = useState('')

  const goOn = async () => {
    const { person, kitchens } = await askMe()
    if (!person) return
    const stays = kitchens.some((each) => each.kitchenId === kitchenId)
    await goOnAs(person.personId, stays ? kitchenId : (kitchens[0]?.kitchenId ?? null))
  }
  const byPassphrase = async () => {
    await askPeople('sign-in', { name, passphrase })
    await goOn()
  }
  const byPasskey = async () => {
    const { startAuthentication } = await import('@simplewebauthn/browser')
    const { challengeId, options } = await askPeople<{ challengeId: string; options: never }>('passkey/ask', {})
    const response = await startAuthentication({ optionsJSON: options })
    await askPeople('passkey/enter', { challengeId, response })
    await goOn()
  }
  return (
    <Passage
      title={say('shell:people-sign-in-title')}
      margin={<MarginNote>{say('shell:people-no-account')}</MarginNote>}
    >
      <p>{say('shell:people-sign-in-lead')}</p>
      <form
        className="passage-body"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void run(byPassphrase)
        }}
      >
        <TextField label={say('shell:people-name')} value={name} onValue={setName} />
        <PassphraseField value={passphrase} onValue={setPassphrase} />
        {fault && <div role="alert">{<FieldError>{fault}</FieldError>}</div>}
        <NextAction disabled={busy || name.trim() === '' || passphrase === ''}>
          {say('shell:people-sign-in')}
        </NextAction>
      </form>
      {passkeysWork() && (
        <ButtonRow>
          <SideAction disabled={busy} onClick={() => run(byPasskey)}>
            {say('shell:people-sign-in-passkey')}
          </SideAction>
        </ButtonRow>
      )}
    </Passage>
  )
}
