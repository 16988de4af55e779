/** Who is here, and what each may do. Props: kitchenId, members, mayChange, ownId, onChanged. */
import { ROLES } from '@crib/journal'
import { ButtonRow, ChoiceTags, FieldError, Fold, Passage, SideAction } from '../../parts-of-the-sheet/index.ts'
import { askPeople, type MemberListed } from '../../people/door.ts'
import { useAct } from '../../people/use-asking.ts'
import { useWords } from '../../words.tsx'

export function Members({
  kitchenId,
  members,
  mayChange,
  ownId,
  onChanged,
}: {
  readonly kitchenId: string
  readonly members: readonly MemberListed[]
  readonly mayChange: boolean
  readonly ownId: string | null
  readonly onChanged: () => void
}) {
  const { say } = useWords()
  const { busy, fault, run } = useAct()
  const change = (personId: string, path: string, body: object) =>
    run(async () => {
      await askPeople(`members/${personId}/${path}?kitchen=${kitchenId}`, body)
      onChanged()
    })
  return (
    <Passage title={say('shell:people-here')}>
      {members.map(({ personId, name, role }) => {
        const known = name || say('shell:people-first-keeper')
        const called = personId === ownId ? say('shell:people-you', { name: known }) : known
        const line = `${called}: ${say(`shell:people-role-${role}`)}`
        if (!mayChange || personId === ownId) return <p key={personId}>{line}</p>
        return (
          <Fold key={personId} title={line}>
            <ChoiceTags
              legend={say('shell:people-change-role', { name: known })}
              options={ROLES.map((value) => ({
                value,
                label: say(`shell:people-role-${value}`),
                note: say(`shell:people-role-${value}-note`),
              }))}
              value={role}
              onValue={(chosen) => void change(personId, 'role', { role: chosen })}
            />
            <p className="field-hint">{say('shell:people-let-go-note')}</p>
            <ButtonRow>
              <SideAction disabled={busy} onClick={() => void change(personId, 'leave', {})}>
                {say('shell:people-let-go', { name: known })}
              </SideAction>
            </ButtonRow>
          </Fold>
        )
      })}
      {members.length <= 1 && <p>{say('shell:people-nobody')}</p>}
      {fault && <div role="alert">{<FieldError>{fault}</FieldError>}</div>}
    </Passage>
  )
}
