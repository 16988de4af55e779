/** Asks about a clock that jumped; never guesses which was right. Times already written down stay as they are. */
import { formatDuration } from '@crib/wording'
import { useBook } from '../book/book.tsx'
import { SideAction } from '../parts-of-the-sheet/actions.tsx'
import { Slip } from '../parts-of-the-sheet/slips.tsx'
import { useWords } from '../words.tsx'

export function ClockSlip() {
  const { clockQuestion, answerClockQuestion } = useBook()
  const { say } = useWords()
  if (!clockQuestion) return null
  const { jumpMs, keptInstant, seenInstant } = clockQuestion
  const clock = (instant: string) => new Date(instant).toTimeString().slice(0, 8)
  const size =
    Math.abs(jumpMs) < 90_000 ? `${Math.round(Math.abs(jumpMs) / 1000)} s` : formatDuration(Math.abs(jumpMs) / 60_000)
  return (
    <Slip drawing="clock" role="alert">
      <p>
        {say(jumpMs > 0 ? 'shell:clock-jumped-forward' : 'shell:clock-jumped-back', {
          size,
          seen: clock(seenInstant),
          kept: clock(keptInstant),
        })}
      </p>
      <SideAction onClick={answerClockQuestion}>{say('shell:clock-looked')}</SideAction>
    </Slip>
  )
}
