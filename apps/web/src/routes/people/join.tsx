/** The page an invitation opens: its secret stands behind the hash, which no browser sends anywhere. */
import type { Role } from '@crib/journal'
import { useCallback, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  ButtonRow,
  FieldError,
  Loading,
  NextAction,
  Passage,
  Sheet,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { askMe, askPeople, type Joined, passkeysWork } from '../../people/door.ts'
import { useAct, useAnswer } from '../../people/use-asking.ts'
import { useWords } from '../../words.tsx'
import { PASSPHRASE_LEAST, PassphraseField } from './passphrase-field.tsx'

interface Looked {
  readonly role: Role
  readonly whole: boolean
}

export default function JoinScreen() {
  const { say } = useWords()
  // Read once: a reload after joining must not try again.
  const [secret] = useState(() => location.hash.slice(1))
  const look = useCallback(async () => {
    const [me, invitation] = await Promise.all([askMe(), askPeople<Looked>('join/look', { secret })])
    return { me, invitation }
  }, [secret])
  const { answer, again } = useAnswer(look)
  if (answer === undefined) {
    return (
      <main className="page threshold">
        <Loading />
      </main>
    )
  }
  return (
    <main className="page threshold">
      <Sheet title={say('shell:people-join-title')} drawing="house">
        {answer === null && (
          <Passage>
            <p role="alert">{say('shell:people-invitation-gone')}</p>
            <ButtonRow>
              <SideAction onClick={again}>{say('shell:error-retry')}</SideAction>
              <SideAction onClick={() => location.replace('/')}>{say('shell:to-the-year')}</SideAction>
            </ButtonRow>
          </Passage>
        )}
        {answer && (
          <JoinForm secret={secret} invitation={answer.invitation} signedInAs={answer.me.person?.name ?? null} />
        )}
      </Sheet>
    </main>
  )
}

function JoinForm({
  secret,
  invitation,
  signedInAs,
}: {
  readonly secret: string
  readonly invitation: Looked
  readonly signedInAs: string | null
}) {
  const { goOnAs } = useBook()
  const { say } = useWords()
  const { busy, fault, run } = useAct()
  const [name, setName] = useState('')
  const [passphrase, setPassphrase] = useState('')
  const [tried, setTried] = useState(false)

  const take = async (asked: object) => {
    const { personId, kitchens } = await askPeople<Joined>('join', { secret, ...asked })
    await goOnAs(personId, kitchens[0]?.kitchenId ?? null)
  }
  const byPassphrase = () => {
    setTried(true)
    if (passphrase.length >= PASSPHRASE_LEAST && name.trim() !== '') void run(() => take({ name, passphrase }))
  }
  const byPasskey = async () => {
    const { startRegistration } = await import('@simplewebauthn/browser')
    const asked = await askPeople<{ personId: string; challengeId: string; options: never }>('join/passkey', {
      secret,
      name,
    })
    const response = await startRegistration({ optionsJSON: asked.options })
    await take({ name, passkey: { personId: asked.personId, challengeId: asked.challengeId, response } })
  }
  const lead = invitation.whole
    ? say('shell:people-join-lead-house')
    : say('shell:people-join-lead', { role: say(`shell:people-role-${invitation.role}`) })
  return (
    <Passage>
      <p>{lead}</p>
      <p>{say(`shell:people-role-${invitation.role}-note`)}</p>
      {signedInAs === null ? (
        <form
          className="passage-body"
          noValidate
          onSubmit={(event) => {
            event.preventDefault()
            byPassphrase()
          }}
        >
          <TextField
            label={say('shell:people-name')}
            hint={say('shell:people-name-hint')}
            value={name}
            onValue={setName}
            maxLength={100}
            error={tried && name.trim() === '' ? say('shell:name-missing') : null}
          />
          <PassphraseField fresh missing={tried} value={passphrase} onValue={setPassphrase} />
          {fault && <div role="alert">{<FieldError>{fault}</FieldError>}</div>}
          <NextAction disabled={busy}>{say('shell:people-join')}</NextAction>
          {passkeysWork() && (
            <ButtonRow>
              <SideAction disabled={busy || name.trim() === ''} onClick={() => run(byPasskey)}>
                {say('shell:people-join-passkey')}
              </SideAction>
            </ButtonRow>
          )}
        </form>
      ) : (
        <>
          {fault && <div role="alert">{<FieldError>{fault}</FieldError>}</div>}
          <NextAction disabled={busy} onClick={() => run(() => take({}))}>
            {say('shell:people-join-as', { name: signedInAs })}
          </NextAction>
        </>
      )}
    </Passage>
  )
}
