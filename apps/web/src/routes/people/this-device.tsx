/** Who is signed in here and where else, and a passkey for next time. Props: name. */
import { useCallback, useState } from 'react'
import { ButtonRow, FieldError, Fold, Passage, SideAction } from '../../parts-of-the-sheet/index.ts'
import { askPeople, type DeviceListed, passkeysWork } from '../../people/door.ts'
import { useAct, useAnswer } from '../../people/use-asking.ts'
import { useWords } from '../../words.tsx'
import { whenText } from './when-text.ts'

export function ThisDevice({ name }: { readonly name: string }) {
  const { say } = useWords()
  const { busy, fault, run } = useAct()
  const [hasNewPasskey, setHasNewPasskey] = useState(false)
  const ask = useCallback(async () => (await askPeople<{ sessions: readonly DeviceListed[] }>('sessions')).sessions, [])
  const { answer: devices, again } = useAnswer(ask)
  const addPasskey = async () => {
    const { startRegistration } = await import('@simplewebauthn/browser')
    const { challengeId, options } = await askPeople<{ challengeId: string; options: never }>('passkey/new', {})
    const response = await startRegistration({ optionsJSON: options })
    await askPeople('passkey/keep', { challengeId, response })
    setHasNewPasskey(true)
  }
  const signOut = async () => {
    await askPeople('sign-out', {})
    location.reload()
  }
  return (
    <Passage title={say('shell:people-this-device')}>
      <p>{say('shell:people-signed-in-as', { name })}</p>
      {fault && <div role="alert">{<FieldError>{fault}</FieldError>}</div>}
      {hasNewPasskey && <p role="status">{say('shell:people-passkey-kept')}</p>}
      <ButtonRow>
        {passkeysWork() && (
          <SideAction disabled={busy} onClick={() => void run(addPasskey)}>
            {say('shell:people-add-passkey')}
          </SideAction>
        )}
        <SideAction disabled={busy} onClick={() => void run(signOut)}>
          {say('shell:people-sign-out')}
        </SideAction>
      </ButtonRow>
      {devices && devices.length > 1 && (
        <Fold title={say('shell:people-devices')}>
          <ul className="reasons">
            {devices.map(({ sessionId, deviceWords, seenAt, here }) => (
              <li key={sessionId}>
                <p style={{ overflowWrap: 'anywhere' }}>
                  {deviceWords},{' '}
                  {here ? say('shell:people-device-here') : say('shell:people-device-seen', { when: whenText(seenAt) })}
                </p>
                {!here && (
                  <ButtonRow>
                    <SideAction
                      disabled={busy}
                      onClick={() =>
                        void run(async () => {
                          await askPeople(`sessions/${sessionId}/end`, {})
                          again()
                        })
                      }
                    >
                      {say('shell:people-device-end', { device: whenText(seenAt) })}
                    </SideAction>
                  </ButtonRow>
                )}
              </li>
            ))}
          </ul>
        </Fold>
      )}
    </Passage>
  )
}
