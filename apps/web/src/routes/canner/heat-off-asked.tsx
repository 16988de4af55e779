/** Two people told two times of heat off: whoever knows says which one holds, and the others are taken out. */
import { formatClock } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, MarginNote, Passage, SideAction } from '../../parts-of-the-sheet/index.ts'
import { askedSentence } from '../../records/asked-sentence.ts'
import { clockAt } from '../../walk/clock-at.ts'
import { useWords } from '../../words.tsx'
import type { RunNow } from './run-of.ts'

export function HeatOffAsked({ at }: { readonly at: RunNow }) {
  const { facts, write } = useBook()
  const words = useWords()
  const { say } = words
  const [writing, setWriting] = useState(false)
  const asked = facts.questions.find(
    ({ code, entities }) => code === 'question-two-heat-off-times' && entities.includes(`run:${at.run.runId}`),
  )
  if (!asked) return null
  const told = at.run.events.filter(({ entryId }) => asked.entryIds.includes(entryId))
  const holds = async (keptId: string) => {
    setWriting(true)
    try {
      for (const { entryId } of told) {
        if (entryId !== keptId)
          await write('entry-withdrawn', { withdrawsId: entryId, reason: say('canner:run-screen-heat-off-reason') })
      }
    } finally {
      setWriting(false)
    }
  }
  return (
    <Passage
      title={say('canner:run-screen-asks-title')}
      margin={<MarginNote>{say('canner:run-screen-heat-off-margin')}</MarginNote>}
    >
      <p>{words.sentence(askedSentence(asked, words))}</p>
      <ButtonRow>
        {told.map(({ entryId, instant }) => (
          <SideAction key={entryId} disabled={writing} onClick={() => void holds(entryId)}>
            {say('canner:run-screen-heat-off-holds', { clock: formatClock(clockAt(Date.parse(instant), at.zone)) })}
          </SideAction>
        ))}
      </ButtonRow>
    </Passage>
  )
}
