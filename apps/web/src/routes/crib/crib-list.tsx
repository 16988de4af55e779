/** Every corn lot with what is left, what its store asks for today, and bringing corn in. */
import { lotStorages } from '@crib/planning'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { localDay } from '../../local-day.ts'
import { ButtonRow, Empty, MarginNote, Passage, Reasons, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { CornLotForm } from '../../records/corn-lot-form.tsx'
import { CornLots } from '../../records/corn-lots.tsx'
import { useWords } from '../../words.tsx'
import { nextThing } from '../../year/next-thing.ts'

/** Said at every lot; on this list only what calls for something stands. */
const ALWAYS = ['keeping:insects-freeze', 'keeping:insects-freeze-seed']

export function CribList() {
  const { facts } = useBook()
  const { say } = useWords()
  const [isKept, setKept] = useState(false)
  const next = nextThing(facts, Date.now())
  const isEmpty = Object.keys(facts.cornLots).length === 0
  const stored = lotStorages(facts, localDay())
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
      {stored.length > 0 && (
        <Passage title={say('crib:store-title')} margin={<MarginNote>{say('crib:store-margin')}</MarginNote>}>
          {stored.map(({ lotId, name, storage, asks }) => (
            <div key={lotId}>
              <h3>{name}</h3>
              <Reasons sentences={[...asks, ...(storage?.warnings.filter(({ key }) => !ALWAYS.includes(key)) ?? [])]} />
              <ButtonRow>
                <SideAction href={`/crib/store/${lotId}`}>{say('crib:to-store', { name })}</SideAction>
              </ButtonRow>
            </div>
          ))}
        </Passage>
      )}
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
