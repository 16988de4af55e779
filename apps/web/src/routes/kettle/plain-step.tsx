/** A stage that is begun and done: rinses and re-boils with their water, scrub, skim, sorts with a weight, the last cook. */
import { sortTails, type WalkStep } from '@crib/planning'
import { formatQuantity } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { BigNumber, ButtonRow, NumberRow, SideAction } from '../../parts-of-the-sheet/index.ts'
import { type Line, TapButton, TapGroup } from '../../walk/taps.tsx'
import { Say, useWords } from '../../words.tsx'
import type { PotAt } from './pot-at.ts'
import { useSorted } from './sort-fields.tsx'
import { StageCaution } from './stage-caution.tsx'
import { useStepTitle } from './step-title.ts'
import { MouldStop, Tails } from './tails.tsx'
import { useWater } from './water-field.tsx'

/** Longer stages are begun first; a rinse of a few minutes is only told when it is done. [min] */
const SHORT_MIN = 5
/** Stages of the wash, for which the water at hand can be laid out. */
const WASHED: ReadonlySet<string> = new Set(['hot-rinse', 'cold-rinse', 're-boil'])

interface StepProps {
  readonly step: WalkStep
  readonly at: PotAt
  readonly onMoved: () => void
}

export function PlainStep({ step, at, onMoved }: StepProps) {
  const { say } = useWords()
  const title = useStepTitle()(step)
  const { stage, stepId } = step
  const { batch, walk, taps } = at
  const water = useWater(step, stage.waterToCornRatio > 0 && step.doneAtMs === undefined)
  const sorted = useSorted(step, at)
  const pot = { batchId: batch.batchId, potLoad: walk.potLoad }

  const keep = async (words: string, lines: readonly Line[]) => {
    if (!(await taps.keep(words, lines))) return
    sorted.forget()
    onMoved()
  }
  const begin = () =>
    void taps.keep(say('kettle:walk-word-begun', { stage: title }), [
      ['stage-noted', { ...pot, stageId: stepId, what: 'begun' }],
    ])
  const doneLines = (): Line[] => [
    // First what may be refused: then nothing of it is written.
    ...sorted.lines,
    ['stage-noted', { ...pot, stageId: stepId, what: 'done', ...water.body }],
  ]
  const doneWords = () => {
    const words = say('kettle:walk-word-done', { stage: title })
    if (sorted.weightKg === null) return words
    const weight = formatQuantity({ value: sorted.weightKg, unit: 'Kg' })
    return `${words}, ${say('kettle:walk-sorted-word', { weight })}`
  }
  const done = () => void keep(doneWords(), doneLines())
  const oneMore = () =>
    void keep(say('kettle:walk-word-begun', { stage: title }), [
      ['stage-noted', { ...pot, stageId: `${stage.id}-${step.ofCount + 1}`, what: 'begun' }],
    ])

  const isBegun = step.begunAtMs !== undefined
  const isDone = step.doneAtMs !== undefined
  const beginsFirst = !isBegun && !isDone && stage.highMin > SHORT_MIN
  const isBlocked = taps.busy || !water.isRead || !sorted.isRead
  const doneTap = (isNext: boolean) => (
    <TapButton isNext={isNext} disabled={isBlocked} onClick={done}>
      {say('waterL' in water.body ? 'kettle:walk-done-with-water' : 'kettle:walk-done')}
    </TapButton>
  )
  return (
    <>
      <p>
        <Say sentence={stage.lookFor} />
      </p>
      {stage.highMin > 0 && !isDone && (
        <p className="field-hint">
          {say(stage.heatUpMin > 0 ? 'kettle:walk-minutes-boiling' : 'kettle:walk-minutes', {
            low: { value: stage.lowMin, unit: 'Min' },
            high: { value: stage.highMin, unit: 'Min' },
          })}
        </p>
      )}
      {!isDone && <StageCaution moments={stage.cautionMoments} />}
      {water.field}
      {WASHED.has(stage.kind) && (
        <ButtonRow>
          <SideAction href={`/kettle/${batch.batchId}/rinse?pot=${walk.potLoad}`}>{say('kettle:wash-open')}</SideAction>
        </ButtonRow>
      )}
      {sorted.field}
      {sorted.hasMould && <MouldStop when={stage.kind === 'sort-dry' ? 'dry' : 'wet'} />}
      {stage.kind === 'sort-dry' && !isDone && sorted.weightKg !== null && (
        <DrySorted at={at} sortedKg={sorted.weightKg} />
      )}
      {stage.kind === 'sort-wet' && <Tails at={at} />}
      <TapGroup>
        {beginsFirst && (
          <TapButton isNext disabled={taps.busy} onClick={begin}>
            {say('kettle:walk-begin')}
          </TapButton>
        )}
        {!isDone && !stage.isHotPack && doneTap(!beginsFirst)}
        {!isDone && stage.isHotPack && (
          <>
            <TapButton
              isNext={!beginsFirst}
              disabled={isBlocked}
              onClick={() =>
                void keep(say('kettle:walk-hot-pack-word'), [
                  ...doneLines(),
                  ['cook-noted', { ...pot, seen: { type: 'hot-pack-ready' } }],
                ])
              }
            >
              {say('kettle:walk-hot-pack')}
            </TapButton>
            <TapButton
              disabled={isBlocked}
              onClick={() =>
                void keep(say('kettle:walk-chill-word'), [
                  ...doneLines(),
                  // biome-ignore lint/suspicious/noThenProperty: a word of the entry, never awaited
                  ['cook-noted', { ...pot, seen: { type: 'off-heat', then: 'chilled' } }],
                ])
              }
            >
              {say('kettle:walk-chill')}
            </TapButton>
          </>
        )}
        {isDone && step.number === step.ofCount && stage.waterToCornRatio > 0 && !stage.isHotPack && (
          <TapButton disabled={taps.busy} onClick={oneMore}>
            {say('kettle:walk-one-more')}
          </TapButton>
        )}
      </TapGroup>
    </>
  )
}

/** The share sorted out, beside this kitchen's own; mould goes out whatever it comes to. */
function DrySorted({ at: { batch }, sortedKg }: { readonly at: PotAt; readonly sortedKg: number }) {
  const { facts } = useBook()
  const { say } = useWords()
  const tails = sortTails(facts, batch, sortedKg)
  if (!tails) return null
  const { removedFraction, ownFraction } = tails
  return (
    <div aria-live="polite">
      <NumberRow>
        <BigNumber label={say('kettle:sort-share')} reckoned={removedFraction} size="small" />
        {ownFraction && <BigNumber label={say('kettle:sort-own')} reckoned={ownFraction} size="small" />}
      </NumberRow>
      <p className="field-hint">{say('kettle:sort-mould')}</p>
    </div>
  )
}
