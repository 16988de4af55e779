/** Shown while the house server asks who is there. Props: none. */
import { useBook } from '../book/book.tsx'
import { SideAction } from '../parts-of-the-sheet/actions.tsx'
import { Slip } from '../parts-of-the-sheet/slips.tsx'
import { useWords } from '../words.tsx'

export function SignInSlip() {
  const { asksToSignIn } = useBook()
  const { say } = useWords()
  if (!asksToSignIn) return null
  return (
    <Slip drawing="house">
      <p>{say('shell:people-sign-in-slip')}</p>
      <SideAction href="/people">{say('shell:people-sign-in')}</SideAction>
    </Slip>
  )
}
