/** People: who belongs to the kitchen, inviting, who may see what, and signing in where the house server asks. */
import { mayDo, type Standing } from '@crib/journal'
import { useCallback } from 'react'
import { useBook } from '../book/book.tsx'
import { ButtonRow, Loading, Passage, Sheet, SideAction } from '../parts-of-the-sheet/index.ts'
import { askMe, type Me, membersOf } from '../people/door.ts'
import { useAnswer } from '../people/use-asking.ts'
import { useWords } from '../words.tsx'
import { Invite } from './people/invite.tsx'
import { Members } from './people/members.tsx'
import { Shares } from './people/shares.tsx'
import SignIn from './people/sign-in.tsx'
import { ThisDevice } from './people/this-device.tsx'

export default function PeopleScreen() {
  const { kitchenId, staysHere } = useBook()
  const { say } = useWords()
  // Asked for together, so that what stands below the members does not move once they are there.
  const ask = useCallback(async () => {
    const me = await askMe()
    const belongs = kitchenId !== null && !staysHere && (!me.asks || me.person !== null)
    const seesPeople = belongs && mayDo(standingOf(me, kitchenId), 'see-people')
    return { me, belongs, members: seesPeople ? await membersOf(kitchenId).catch(() => null) : null }
  }, [kitchenId, staysHere])
  const { answer, again } = useAnswer(ask)
  if (answer === undefined) return <Loading />
  const me = answer?.me ?? null
  const standing = standingOf(me, kitchenId)
  const may = (act: Parameters<typeof mayDo>[1]) => mayDo(standing, act)
  return (
    <Sheet title={say('shell:people-title')} drawing="house" lead={say('shell:people-lead')}>
      {me === null && (
        <Passage>
          <p role="status">{say('shell:people-unreached')}</p>
          <ButtonRow>
            <SideAction onClick={again}>{say('shell:error-retry')}</SideAction>
          </ButtonRow>
        </Passage>
      )}
      {me?.asks && !me.person && <SignIn />}
      {answer?.members && kitchenId && (
        <Members
          kitchenId={kitchenId}
          members={answer.members}
          mayChange={may('people')}
          ownId={me?.person?.personId ?? null}
          onChanged={again}
        />
      )}
      {me && kitchenId && answer?.belongs && may('people') && <Invite kitchenId={kitchenId} me={me} />}
      {may('share') && <Shares />}
      {me?.person && <ThisDevice name={me.person.name} />}
    </Sheet>
  )
}

/** At home, and in the demo of this device, whoever sits here keeps the book. */
function standingOf(me: Me | null, kitchenId: string | null): Standing {
  if (!me) return 'outsider'
  if (!me.asks) return 'keeper'
  return me.kitchens.find((each) => each.kitchenId === kitchenId)?.role ?? 'outsider'
}
