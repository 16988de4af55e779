/** Where a jar process stands, read once a season before any minutes are shown. */
import { askWhom, GUIDANCE_EDITION } from '@crib/guidance'
import { type CannerCard, type HullingAlkali, standingFood } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { MarginNote, NextAction, Passage, Reasons } from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

export function StandingRead({
  card,
  alkali,
  seasonYear,
}: {
  readonly card: CannerCard
  readonly alkali: HullingAlkali
  readonly seasonYear: number
}) {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  return (
    <Passage
      title={say('canner:run-screen-standing-title')}
      margin={<MarginNote>{say('canner:run-screen-standing-once')}</MarginNote>}
    >
      <Reasons sentences={[{ key: 'kettle:fresh-frozen-dried-first' }, ...card.withheld, ...card.standing]} />
      <Reasons sentences={askWhom()} title={say('shell:ask-whom')} />
      <NextAction
        onClick={() =>
          void record.keep('standing-read', {
            readingId: newId(),
            seasonYear,
            edition: GUIDANCE_EDITION,
            food: standingFood(alkali),
          })
        }
      >
        {say('canner:run-screen-have-read')}
      </NextAction>
      <Asked record={record} />
    </Passage>
  )
}
