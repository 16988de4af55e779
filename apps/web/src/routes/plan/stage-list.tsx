/** StageList: the walk as this keeper does it: a pattern, then move, drop, add, and minutes. Props: plan, change. */
import { type BatchPlan, ownStage, type Stage, stageQuestions } from '@crib/planning'
import type { Json } from '@crib/science'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  ButtonRow,
  ChoiceTags,
  CountField,
  Fold,
  Reasons,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { type Assumed, useDraft } from './draft.tsx'

interface StageListProps {
  readonly plan: BatchPlan
  readonly change: (change: Assumed) => void
}

export function StageList({ plan, change }: StageListProps) {
  const { kitchenId } = useBook()
  const { say, sentence } = useWords()
  const { draft } = useDraft()
  const record = useRecord()
  const { input, kettle } = plan
  const { stages } = kettle
  const put = (next: readonly Stage[]) => change({ stages: next })
  const at = (index: number, part: Partial<Stage>) =>
    put(stages.map((stage, each) => (each === index ? { ...stage, ...part } : stage)))
  const move = (index: number, by: -1 | 1) => {
    const next = [...stages]
    const [stage] = next.splice(index, 1)
    if (stage) next.splice(index + by, 0, stage)
    put(next)
  }
  return (
    <>
      <ChoiceTags
        legend={say('shell:plan-pattern')}
        options={(['printed', 'common-practice'] as const).map((value) => ({
          value,
          label: say(`shell:plan-pattern-${value}`),
          note: say(`shell:plan-pattern-${value}-note`),
        }))}
        value={input.stages ? null : (input.washPattern ?? 'common-practice')}
        onValue={(washPattern) => change({ washPattern, stages: null })}
      />
      <Reasons sentences={stageQuestions(stages, (draft.parts.jars ?? 0) > 0)} />
      <ol className="stage-list">
        {stages.map((stage, index) => {
          const title = sentence(stage.title)
          return (
            <li key={stage.id}>
              <Fold title={say('shell:plan-stage-line', { title, minutes: minutesText(stage) })}>
                <p>{sentence(stage.lookFor)}</p>
                <CountField
                  label={say('shell:plan-stage-times')}
                  value={stage.timesCount}
                  onValue={(timesCount) => at(index, { timesCount })}
                  min={1}
                  max={20}
                />
                {stage.kind !== 'alkali-boil' && (
                  <CountField
                    label={say('shell:plan-stage-minutes')}
                    hint={say('shell:plan-stage-minutes-hint')}
                    value={stage.highMin}
                    onValue={(highMin) => at(index, { highMin, lowMin: Math.min(stage.lowMin, highMin) })}
                    max={600}
                  />
                )}
                {stage.waterToCornRatio > 0 && (
                  <CountField
                    label={say('shell:plan-stage-water')}
                    value={stage.waterToCornRatio}
                    onValue={(waterToCornRatio) => at(index, { waterToCornRatio })}
                    min={1}
                    max={20}
                  />
                )}
                <ButtonRow>
                  <SideAction onClick={() => move(index, -1)} disabled={index === 0}>
                    {say('shell:plan-stage-earlier')}
                  </SideAction>
                  <SideAction onClick={() => move(index, 1)} disabled={index === stages.length - 1}>
                    {say('shell:plan-stage-later')}
                  </SideAction>
                  <SideAction onClick={() => put(stages.filter((_, each) => each !== index))}>
                    {say('shell:plan-stage-drop', { title })}
                  </SideAction>
                </ButtonRow>
              </Fold>
            </li>
          )
        })}
      </ol>
      <Fold title={say('shell:plan-stage-add')}>
        <OwnStageForm
          onStage={(stage) => put([...stages.slice(0, -1), stage, ...stages.slice(-1)])}
          idFor={(count) => `own-${count}`}
          taken={stages.map(({ id }) => id)}
        />
      </Fold>
      {draft.assumed.stages && (
        <SideAction
          onClick={() =>
            kitchenId &&
            record.keep('kitchen-noted', { kitchenId, stages: stages as unknown as readonly Json[] as never })
          }
        >
          {say('shell:plan-remember')}
        </SideAction>
      )}
      <Asked record={record} />
    </>
  )
}

function minutesText({ timesCount, lowMin, highMin }: Stage): string {
  const each = lowMin === highMin ? `${highMin} min` : `${lowMin}–${highMin} min`
  return timesCount > 1 ? `${timesCount} × ${each}` : each
}

function OwnStageForm({
  onStage,
  idFor,
  taken,
}: {
  readonly onStage: (stage: Stage) => void
  readonly idFor: (count: number) => string
  readonly taken: readonly string[]
}) {
  const { say } = useWords()
  const [title, setTitle] = useState('')
  const [lookFor, setLookFor] = useState('')
  const [minutes, setMinutes] = useState(10)
  return (
    <>
      <TextField label={say('shell:plan-stage-title')} value={title} onValue={setTitle} />
      <TextField label={say('shell:plan-stage-look')} value={lookFor} onValue={setLookFor} />
      <CountField label={say('shell:plan-stage-minutes')} value={minutes} onValue={setMinutes} max={600} />
      <SideAction
        disabled={title.trim() === ''}
        onClick={() => {
          let count = 1
          while (taken.includes(idFor(count))) count++
          onStage(ownStage(idFor(count), title.trim(), lookFor.trim(), { lowMin: minutes, highMin: minutes }))
          setTitle('')
          setLookFor('')
        }}
      >
        {say('shell:plan-stage-put-in')}
      </SideAction>
    </>
  )
}
