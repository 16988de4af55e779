/** While it boils in alkali: since when, when to look, darkening, top-ups, rub tests, and off the heat when the hulls slip. */
import type { AlkaliLotFact } from '@crib/journal'
import {
  alkaliBoilRangeMin,
  asksForAshAdvice,
  enoughSlipped,
  firstLook,
  planValue,
  rubAgainAtMs,
  rubTest,
  type WalkStep,
} from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { Fold, QuantityField, Reasons } from '../../parts-of-the-sheet/index.ts'
import { type Line, TapButton, TapGroup } from '../../walk/taps.tsx'
import { Say, useWords } from '../../words.tsx'
import { CauseTree } from './cause-tree.tsx'
import { clockText, dueText, type PotAt } from './pot-at.ts'
import { RubTestForm } from './rub-test.tsx'
import { Rubs } from './rubs.tsx'
import { SlipRange, type SlipUse } from './slip-range.tsx'
import { StageCaution } from './stage-caution.tsx'
import { WeakAsh } from './weak-ash.tsx'

interface StepProps {
  readonly step: WalkStep
  readonly at: PotAt
  readonly onMoved: () => void
}

const WATER_LIMIT = { min: 0, max: 400, unit: 'L', source: 'project rule' } as const

export function Boiling({ step, at, onMoved }: StepProps) {
  const { facts } = useBook()
  const { say } = useWords()
  const { batch, walk, taps, plan } = at
  const { seen } = walk
  const pot = { batchId: batch.batchId, potLoad: walk.potLoad }
  const lot = seen.alkaliLotId === undefined ? undefined : facts.alkaliLots[seen.alkaliLotId]
  const range = rangeOf(at)
  const ownSlipMin = ownSlip(lot)
  const last = seen.rubs.at(-1)
  const boiledMin = last && (last.atMs - seen.boilAtMs!) / 60_000
  const read = last && rubTest({ ...last, boiledMin: boiledMin!, rangeHighMin: range.high })
  const [use, setUse] = useHalfTyped<SlipUse>(`slip-use:${batch.batchId}`, wishedUse(at))
  const enough = last && enoughSlipped(last, use)
  const isSlipping = read?.says === 'begin-wash' || enough?.isEnough === true
  const isWeak = asksForAshAdvice(seen, range.low, ownSlipMin)
  const [topsUp, setTopsUp] = useState(false)
  const note = (words: string, line: Line) => void taps.keep(words, [line])
  const isToGrind = isSlipping && read?.says !== 'begin-wash'
  const offHeatWords = say(isToGrind ? 'kettle:slip-off-heat-grind' : 'kettle:walk-off-heat')
  const offHeat = async () => {
    const kept = await taps.keep(say('kettle:walk-off-heat-word'), [
      // biome-ignore lint/suspicious/noThenProperty: a word of the entry, never awaited
      ['cook-noted', { ...pot, seen: { type: 'off-heat', then: 'hot' } }],
      [
        'stage-noted',
        { ...pot, stageId: step.stepId, what: 'done', ...(isToGrind && { note: say('kettle:walk-grind') }) },
      ],
    ])
    if (kept) onMoved()
  }
  return (
    <>
      <BoilingSince at={at} lot={lot} ownSlipMin={ownSlipMin} />
      <SlipRange at={at} use={use} onUse={setUse} />
      {!last && <StageCaution moments={step.stage.cautionMoments.filter((moment) => moment === 'foam')} />}
      {last && read && (
        <div className="passage-body">
          <Reasons
            sentences={[
              ...(isWeak || isToGrind ? read.sentences.slice(0, 1) : read.sentences),
              ...(isToGrind && enough ? enough.sentences : []),
            ]}
          />
          {!isSlipping && (
            <p className="next-words">
              {say('kettle:walk-rub-again', { clock: dueText(rubAgainAtMs(last.atMs), at) })}
            </p>
          )}
        </div>
      )}
      {isSlipping && (
        <TapGroup>
          <TapButton isNext disabled={taps.busy} onClick={() => void offHeat()}>
            {offHeatWords}
          </TapButton>
        </TapGroup>
      )}
      <TapGroup label={say('kettle:walk-look-now')}>
        {seen.darkeningAtMs === undefined && (
          <TapButton
            disabled={taps.busy}
            onClick={() =>
              note(say('kettle:walk-darkening-word'), ['cook-noted', { ...pot, seen: { type: 'darkening' } }])
            }
          >
            {say('kettle:walk-darkening')}
          </TapButton>
        )}
        <TapButton disabled={taps.busy} onClick={() => setTopsUp(!topsUp)}>
          {say('kettle:walk-top-up')}
        </TapButton>
        {!isSlipping && (
          <TapButton disabled={taps.busy} onClick={() => void offHeat()}>
            {say('kettle:walk-off-heat')}
          </TapButton>
        )}
      </TapGroup>
      {topsUp && <TopUp at={at} onKept={() => setTopsUp(false)} />}
      <RubTestForm at={at} isNext={!isSlipping} />
      <Rubs at={at} />
      {isWeak ? (
        <WeakAsh at={at} step={step} lot={lot} onMoved={onMoved} />
      ) : (
        lot?.alkali === 'ash' && (
          <Fold title={say('kettle:walk-ash-title')}>
            <WeakAsh at={at} step={step} lot={lot} onMoved={onMoved} />
          </Fold>
        )
      )}
      {isWeak && lot && <CauseTree at={at} lot={lot} rangeLowMin={range.low} />}
      {plan === null && <Say sentence={{ key: 'kettle:rub-not-clock' }} />}
    </>
  )
}

/** Whole kernels, unless all of the batch is to become flour. */
function wishedUse({ plan }: PotAt): SlipUse {
  const endings = plan?.input.endings ?? []
  return endings.length > 0 && endings.every(({ ending }) => ending === 'flour') ? 'ground' : 'whole'
}

function rangeOf({ plan }: PotAt): { readonly low: number; readonly high: number } {
  const planned = plan && planValue(plan, 'alkaliBoilMin')
  if (planned?.low !== undefined && planned.high !== undefined) return { low: planned.low, high: planned.high }
  return alkaliBoilRangeMin('unknown', undefined, 'ash')
}

/** The minute this very lot last slipped at; another lot's record does not carry over. */
function ownSlip(lot: AlkaliLotFact | undefined): number | undefined {
  return lot?.judgements.findLast(({ slipMin }) => slipMin !== undefined)?.slipMin
}

function BoilingSince({
  at,
  lot,
  ownSlipMin,
}: {
  readonly at: PotAt
  readonly lot: AlkaliLotFact | undefined
  readonly ownSlipMin: number | undefined
}) {
  const { say } = useWords()
  const boilAtMs = at.walk.seen.boilAtMs!
  const range = rangeOf(at)
  const look = firstLook(boilAtMs, range.low, ownSlipMin)
  const shared = { boil: clockText(boilAtMs, at), from: dueText(look.fromMs, at) }
  const so = at.walk.seen
  const soFar =
    so.alkaliCups > 0
      ? formatQuantity({ value: so.alkaliCups, unit: 'Cup' }, 'alone')
      : so.alkaliKg > 0
        ? formatQuantity({ value: Number(convert(so.alkaliKg, 'Kg', 'G').toFixed(1)), unit: 'G' }, 'alone')
        : null
  return (
    <>
      <p className="next-words" role="status">
        {look.ownSlipAtMs === undefined || ownSlipMin === undefined
          ? say('kettle:walk-boiling-range', {
              ...shared,
              low: { value: range.low, unit: 'Min' },
              high: { value: range.high, unit: 'Min' },
            })
          : say('kettle:walk-boiling-own', {
              ...shared,
              own: { value: ownSlipMin, unit: 'Min' },
              slip: clockText(look.ownSlipAtMs, at),
            })}
      </p>
      {soFar && (
        <p>
          {say('kettle:walk-so-far', { amount: soFar })}
          {lot && ` (${lot.name})`}
        </p>
      )}
    </>
  )
}

function TopUp({ at, onKept }: { readonly at: PotAt; readonly onKept: () => void }) {
  const { say } = useWords()
  const [text, setText] = useState('')
  const [water, setWater] = useState<Quantity | null>(null)
  const { batch, walk, taps } = at
  return (
    <>
      <QuantityField
        label={say('kettle:walk-top-up-how-much')}
        measures="volume"
        text={text}
        onText={setText}
        onQuantity={setWater}
        limits={WATER_LIMIT}
        required
      />
      <TapGroup>
        <TapButton
          disabled={taps.busy || water === null}
          onClick={async () => {
            if (!water) return
            const waterL = convert(water.value, water.unit, 'L')
            const kept = await taps.keep(say('kettle:walk-top-up-word', { water: formatQuantity(water, 'alone') }), [
              ['cook-noted', { batchId: batch.batchId, potLoad: walk.potLoad, seen: { type: 'topped-up', waterL } }],
            ])
            if (kept) onKept()
          }}
        >
          {say('kettle:walk-top-up-keep')}
        </TapButton>
      </TapGroup>
    </>
  )
}
