/** The walk of a batch from alkali to endings: one stage open at a time, times beside it, one pot-load at a time. */
import { lotWorked, type PotWalk, planOfBatch, potCornLiquidQt, potWalk, type WalkStep } from '@crib/planning'
import { convert } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { useMemo, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { deviceZone } from '../../book/keeper.ts'
import { ChoiceTags, Empty, Fold, MarginNote, Passage, Sheet } from '../../parts-of-the-sheet/index.ts'
import { Photos } from '../../records/photos.tsx'
import { LastTap, TapButton, TapGroup, useTaps } from '../../walk/taps.tsx'
import { useNow } from '../../walk/use-now.ts'
import { useWords } from '../../words.tsx'
import '../../walk/walk.css'
import { Endings } from './endings.tsx'
import { Noted } from './noted.tsx'
import type { PotAt } from './pot-at.ts'
import { Step } from './step.tsx'
import { Yield } from './yield.tsx'

export default function WalkScreen({ batchId }: { readonly batchId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  if (!facts.batches[batchId]) {
    return (
      <Sheet title={say('shell:part-kettle')} drawing="pot">
        <Passage>
          <Empty drawing="pot">
            <p>{say('kettle:walk-not-in-book')}</p>
          </Empty>
        </Passage>
      </Sheet>
    )
  }
  return <WalkSheet key={batchId} batchId={batchId} />
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

function WalkSheet({ batchId }: { readonly batchId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const nowMs = useNow()
  const zone = deviceZone()
  const taps = useTaps(zone)
  const batch = facts.batches[batchId]!
  const plan = useMemo(() => {
    const outcome = planOfBatch(batch)
    return outcome?.kind === 'planned' ? outcome : null
  }, [batch])
  const [chosen, setChosen] = useState<number | null>(null)
  const [opened, setOpened] = useState<string | null>(null)

  const notedCount = Math.max(0, ...[...batch.stages, ...batch.cook].map(({ potLoad }) => potLoad))
  const loadCount = Math.max(1, plan?.kettle.potLoads.length ?? 0, notedCount)
  const walks = Array.from({ length: loadCount }, (_, index) => potWalk(batch, plan, index + 1))
  const walk = walks[(chosen ?? lastTouched(walks)) - 1]!
  const at: PotAt = { batch, plan, walk, taps, zone, nowMs }
  const openId = opened ?? walk.openStepId
  const letter = (potLoad: number) => LETTERS[potLoad - 1] ?? String(potLoad)

  const behind = openId === walk.openStepId || openId === '' ? doneLongAgo(walk) : []
  const lineOf = (step: WalkStep) => (
    <Step
      key={step.stepId}
      step={step}
      at={at}
      isOpen={step.stepId === openId}
      onOpen={() => setOpened(step.stepId === openId ? '' : step.stepId)}
      onMoved={() => setOpened(null)}
    />
  )
  return (
    <Sheet title={say('shell:part-kettle')} drawing="pot" lead={say('kettle:walk-lead', { title: batch.plan.title })}>
      {loadCount > 1 && (
        <Passage margin={<MarginNote>{say('kettle:walk-pot-margin')}</MarginNote>}>
          <ChoiceTags
            legend={say('kettle:walk-pot-load')}
            options={walks.map(({ potLoad }) => {
              const cornQt = potCornLiquidQt(plan, potLoad)
              return {
                value: String(potLoad),
                label:
                  cornQt === null
                    ? say('kettle:walk-pot-tag-plain', { letter: letter(potLoad) })
                    : say('kettle:walk-pot-tag', {
                        letter: letter(potLoad),
                        corn: formatQuantity({ value: Number(cornQt.toFixed(2)), unit: 'LiquidQt' }, 'alone'),
                      }),
              }
            })}
            value={String(walk.potLoad)}
            onValue={(value) => {
              setChosen(Number(value))
              setOpened(null)
            }}
          />
        </Passage>
      )}
      {behind.length > 0 && (
        <Passage>
          <Fold title={say('kettle:walk-done-so-far', { count: behind.length })}>{behind.map(lineOf)}</Fold>
        </Passage>
      )}
      {walk.steps.filter((step) => !behind.includes(step)).map(lineOf)}
      <Passage>
        {walk.openStepId === undefined && <p className="next-words">{say('kettle:walk-done-none')}</p>}
        {!walk.steps.some(({ stepId }) => stepId === openId) && <LastTap taps={taps} />}
        {walk.waterL > 0 && (
          <p>
            {say('kettle:walk-water-so-far', {
              water: { value: Number(convert(walk.waterL, 'L', 'LiquidGal').toFixed(2)), unit: 'LiquidGal' },
            })}
          </p>
        )}
        {walk.seen.waitsAs && walk.openStepId === undefined && walk.seen.hotPackAtMs === undefined && (
          <p>{say(`kettle:walk-waits-${walk.seen.waitsAs}`)}</p>
        )}
        <Worked at={at} />
      </Passage>
      <Endings at={at} isDue={walks.some(({ openStepId }) => openStepId === undefined)} />
      {isSortedAfterCook(walk) && <Yield at={at} />}
      <Noted at={at} />
      <Passage title={say('kettle:walk-photos')} margin={<MarginNote>{say('shell:photo-margin')}</MarginNote>}>
        <Photos ofId={batchId} potLoad={walk.potLoad} elsewhere={walk.seen.rubs.map(({ entryId }) => entryId)} />
      </Passage>
    </Sheet>
  )
}

/** Stages done before the last one done: folded away, so that the open one stands near the top of a small screen. */
function doneLongAgo({ steps, openStepId }: PotWalk): readonly WalkStep[] {
  const openAt = steps.findIndex(({ stepId }) => stepId === openStepId)
  const before = steps.slice(0, openAt === -1 ? steps.length : openAt).filter(({ doneAtMs }) => doneAtMs !== undefined)
  return before.length > 2 ? before.slice(0, -1) : []
}

/** From the sort after the cook on there is hominy to weigh. */
function isSortedAfterCook({ steps, openStepId }: PotWalk): boolean {
  const begun = steps.some(({ stage, begunAtMs, doneAtMs }) => stage.kind === 'sort-wet' && (begunAtMs ?? doneAtMs))
  return begun || openStepId === undefined
}

/** The pot-load written in last, unless it is done; then the first that is not. */
function lastTouched(walks: readonly PotWalk[]): number {
  const lastMs = ({ steps, seen }: PotWalk) =>
    Math.max(
      0,
      ...steps.flatMap(({ begunAtMs, doneAtMs }) => [begunAtMs ?? 0, doneAtMs ?? 0]),
      ...seen.rubs.map(({ atMs }) => atMs),
      seen.boilAtMs ?? 0,
    )
  const open = walks.filter(({ openStepId }) => openStepId !== undefined)
  const touched = open.filter((walk) => lastMs(walk) > 0).sort((a, b) => lastMs(b) - lastMs(a))
  return (touched[0] ?? open[0] ?? walks[0]!).potLoad
}

/** Once the hulls slipped, one tap makes it the record of that ash. */
function Worked({ at }: { readonly at: PotAt }) {
  const { facts } = useBook()
  const { say } = useWords()
  const { walk, taps, plan, batch } = at
  const lot = walk.seen.alkaliLotId === undefined ? undefined : facts.alkaliLots[walk.seen.alkaliLotId]
  const worked = lotWorked(walk.seen, potCornLiquidQt(plan, walk.potLoad))
  const isTold = lot?.judgements.some(({ batchId }) => batchId === batch.batchId)
  if (lot?.alkali !== 'ash' || !worked || isTold) return null
  const words = say('kettle:walk-mark-works-word', { lot: lot.name, minutes: { value: worked.slipMin, unit: 'Min' } })
  return (
    <TapGroup>
      <TapButton
        disabled={taps.busy}
        onClick={() =>
          void taps.keep(words, [
            ['alkali-lot-judged', { alkaliLotId: lot.alkaliLotId, judged: 'works', ...worked, batchId: batch.batchId }],
          ])
        }
      >
        {say('kettle:walk-mark-works', { lot: lot.name })}
      </TapButton>
    </TapGroup>
  )
}
