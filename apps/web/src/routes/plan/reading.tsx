/** Where a jar process stands, read once a season and edition: what is right first, then what is known. */
import { askWhom, cautionsFor, findProcess, GUIDANCE_EDITION, headspaceRule, keepingAdvice } from '@crib/guidance'
import { standingFood } from '@crib/planning'
import { useLocation } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { Caution, MarginNote, NextAction, Passage, Reasons, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { useDraft } from './draft.tsx'
import { usePlan } from './use-plan.ts'

export function Reading() {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const { draft, told } = useDraft()
  const { outcome, seasonYear } = usePlan()
  const [, go] = useLocation()
  const alkali = outcome?.kind === 'planned' ? outcome.input.alkali : (draft.assumed.alkali ?? 'ash')
  const found = findProcess({
    food: 'hominy',
    alkali,
    hotPack: true,
    fill: 'loose',
    liquidClear: true,
    headspaceIn: headspaceRule().figure.value,
    jar: draft.assumed.jarSize ?? 'quart',
    gauge: 'dial',
    elevationFt: 0,
    standingRead: false,
  })
  const known = [
    ...(found.kind === 'found' ? [] : found.why),
    ...('standingSentences' in found ? found.standingSentences : []),
  ]
  return (
    <Sheet title={say('shell:plan-standing-title')} drawing="jar" lead={say('shell:plan-standing-lead')}>
      <Passage
        title={say('shell:plan-standing-first')}
        margin={<MarginNote>{say('shell:plan-standing-first-margin')}</MarginNote>}
      >
        <Reasons
          sentences={[
            { key: 'kettle:fresh-frozen-dried-first' },
            ...(['fresh', 'frozen', 'dried'] as const).map((form) => keepingAdvice(form).say),
          ]}
        />
      </Passage>
      <Passage
        title={say('shell:plan-standing-known')}
        margin={<MarginNote>{say('shell:plan-standing-margin', { year: String(seasonYear) })}</MarginNote>}
      >
        <Reasons sentences={known} />
        <p>{say('shell:plan-standing-opens')}</p>
        {cautionsFor('standing').map((sentence) => (
          <Caution key={sentence.key} sentence={sentence} />
        ))}
        <Reasons sentences={askWhom()} title={say('shell:ask-whom')} />
      </Passage>
      <Passage>
        <NextAction
          onClick={async () => {
            const { pathname } = location
            const kept = await record.keep('standing-read', {
              readingId: newId(),
              seasonYear,
              edition: GUIDANCE_EDITION,
              food: standingFood(alkali),
            })
            // Whoever turned to another sheet meanwhile stays there.
            if (!kept || location.pathname !== pathname) return
            // From a card there is no day to go on to: back to where the reading was asked for.
            if (outcome === null) history.back()
            else go('/sheet')
          }}
        >
          {say('shell:plan-standing-have-read')}
        </NextAction>
        {outcome !== null && (
          <SideAction
            onClick={() => {
              const { jars: _, ...others } = draft.parts
              const hasOther = Object.values(others).some((count) => count > 0)
              told({ parts: hasOther ? others : { freezer: 1 }, jarsWanted: null })
              go('/sheet')
            }}
          >
            {say('shell:plan-standing-without')}
          </SideAction>
        )}
        <Asked record={record} />
      </Passage>
    </Sheet>
  )
}
