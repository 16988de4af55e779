/** Reminders of the first page: each pan that cools and each tray to be weighed, as a sentence and the way to its sheet. */
import { onTheClock } from '@crib/planning'
import { useBook } from '../book/book.tsx'
import { deviceZone } from '../book/keeper.ts'
import { ButtonRow, Passage, SideAction } from '../parts-of-the-sheet/index.ts'
import { useNow } from '../walk/use-now.ts'
import { useWords, WithAllWords } from '../words.tsx'

export default function OnTheClockPassage() {
  return (
    <WithAllWords>
      <Reminders />
    </WithAllWords>
  )
}

function Reminders() {
  const { facts } = useBook()
  const { say, sentence } = useWords()
  const running = onTheClock(facts, useNow(), deviceZone())
  if (running.length === 0) return null
  const has = (what: 'pan' | 'tray') => running.some((one) => one.what === what)
  return (
    <Passage title={say('keeping:screen-clock-title')}>
      <ul className="reasons">
        {running.map((one) => (
          <li key={one.id}>{one.isDue ? <strong>{sentence(one.say)}</strong> : sentence(one.say)}</li>
        ))}
      </ul>
      <ButtonRow>
        {has('pan') && <SideAction href="/keeping/cooling">{say('keeping:screen-to-cooling')}</SideAction>}
        {has('tray') && <SideAction href="/keeping/drying">{say('keeping:screen-to-drying')}</SideAction>}
      </ButtonRow>
    </Passage>
  )
}
