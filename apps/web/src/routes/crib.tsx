/** Crib: corn lots by weight, and bringing corn in. */
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { ButtonRow, Empty, MarginNote, Passage, Sheet, SideAction } from '../parts-of-the-sheet/index.ts'
import { CornLotForm } from '../records/corn-lot-form.tsx'
import { CornLots } from '../records/corn-lots.tsx'
import { useWords } from '../words.tsx'
import { nextThing } from '../year/next-thing.ts'

export default function CribScreen() {
  const { facts } = useBook()
  const { say } = useWords()
  const [isKept, setKept] = useState(false)
  const next = nextThing(facts, Date.now())
  const isEmpty = Object.keys(facts.cornLots).length === 0
  return (
    <Sheet title={say('shell:part-crib')} drawing="braid" lead={say('shell:crib-lead')}>
      <Passage title={say('shell:crib-lots-title')}>
        {isEmpty ? (
          <Empty drawing="ear">
            <p>{say('shell:crib-empty')}</p>
          </Empty>
        ) : (
          <CornLots />
        )}
      </Passage>
      <Passage title={say('shell:bring-in')} margin={<MarginNote>{say('shell:bring-in-margin')}</MarginNote>}>
        <CornLotForm onKept={() => setKept(true)} />
        {isKept && (
          <ButtonRow>
            <SideAction href={next.href}>{say(next.say)}</SideAction>
          </ButtonRow>
        )}
      </Passage>
    </Sheet>
  )
}
