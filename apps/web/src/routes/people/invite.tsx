/** Making an invitation, shown as a QR code and a link, and taking one back. Props: kitchenId, me. */
import { ROLES, type Role } from '@crib/journal'
import { useCallback, useState } from 'react'
import {
  ButtonRow,
  ChoiceTags,
  FieldError,
  MarginNote,
  NextAction,
  Passage,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { askPeople, type InvitationListed, type Me } from '../../people/door.ts'
import { useAct, useAnswer } from '../../people/use-asking.ts'
import { useWords } from '../../words.tsx'
import { Qr } from './qr.tsx'
import { whenText } from './when-text.ts'

interface Made extends InvitationListed {
  readonly secret: string
}

export function Invite({ kitchenId, me }: { readonly kitchenId: string; readonly me: Me }) {
  const { say } = useWords()
  const { busy, fault, run } = useAct()
  const [role, setRole] = useState<Role>('helper')
  const [made, setMade] = useState<Made | null>(null)
  const ask = useCallback(
    async () =>
      (await askPeople<{ invitations: readonly InvitationListed[] }>(`invitations?kitchen=${kitchenId}`)).invitations,
    [kitchenId],
  )
  const { answer: open, again } = useAnswer(ask)
  const make = () =>
    run(async () => {
      setMade(await askPeople<Made>(`invitations?kitchen=${kitchenId}`, { role }))
      again()
    })
  const end = (invitationId: string) =>
    run(async () => {
      await askPeople(`invitations/${invitationId}/end?kitchen=${kitchenId}`, {})
      if (made?.invitationId === invitationId) setMade(null)
      again()
    })
  const link = made && `${me.address ?? `${location.origin}/`}join#${made.secret}`
  return (
    <Passage title={say('shell:people-invite')} margin={<MarginNote>{say('shell:people-invite-margin')}</MarginNote>}>
      {!me.asks && <p>{say('shell:people-only-at-home')}</p>}
      <ChoiceTags
        legend={say('shell:people-invite-as')}
        options={ROLES.map((value) => ({
          value,
          label: say(`shell:people-role-${value}`),
          note: say(`shell:people-role-${value}-note`),
        }))}
        value={role}
        onValue={setRole}
      />
      {fault && <div role="alert">{<FieldError>{fault}</FieldError>}</div>}
      <NextAction disabled={busy} onClick={() => void make()}>
        {say('shell:people-make-invitation')}
      </NextAction>
      {made && link && (
        <div role="status" className="passage-body">
          <p>{say('shell:people-invitation-ready', { role: say(`shell:people-role-${made.role}`) })}</p>
          <Qr content={link} label={say('shell:people-invitation-qr')} />
          <p style={{ overflowWrap: 'anywhere' }}>
            <a href={link}>{link}</a>
          </p>
          <p>{say('shell:people-invitation-until', { when: whenText(made.expiresAt) })}</p>
        </div>
      )}
      {open && open.length > 0 && (
        <ul className="reasons">
          {open.map(({ invitationId, role: as, expiresAt }) => (
            <li key={invitationId}>
              <p>
                {say('shell:people-invitation-open', {
                  role: say(`shell:people-role-${as}`),
                  when: whenText(expiresAt),
                })}
              </p>
              <ButtonRow>
                <SideAction disabled={busy} onClick={() => void end(invitationId)}>
                  {say('shell:people-invitation-end')}
                </SideAction>
              </ButtonRow>
            </li>
          ))}
        </ul>
      )}
    </Passage>
  )
}
