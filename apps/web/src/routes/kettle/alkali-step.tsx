/** The boil in alkali: what goes in, the boil, looks and top-ups, rub tests, and off the heat when the hulls slip. */
import type { AlkaliLotFact } from '@crib/journal'
import {
  alkaliBoilRangeMin,
  asksForAshAdvice,
  doseInEntry,
  firstLook,
  planValue,
  potDose,
  rubAgainAtMs,
  rubTest,
  type WalkStep,
} from '@crib/planning'
import { convert, type Quantity, shownValue } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { BigNumber, ChoiceTags, Fold, QuantityField, Reasons } from '../../parts-of-the-sheet/index.ts'
import { type Line, TapButton, TapGroup } from '../../walk/taps.tsx'
import { Say, useWords } from '../../words.tsx'
import { StageCaution } from './plain-step.tsx'
import { clockText, dueText, type PotAt } from './pot-at.ts'
import { RubTestForm } from './rub-test.tsx'
import { useWater } from './water-field.tsx'
import { WeakAsh } from './weak-ash.tsx'

interface StepProps {
  readonly step: WalkStep
  readonly at: PotAt
  readonly onMoved: () => void
}

const WATER_LIMIT = { min: 0, max: 400, unit: 'L', source: 'project rule' } as const

export function AlkaliStep({ step, at, onMoved }: StepProps) {
  const { seen } = at.walk
  if (step.doneAtMs !== undefined) return <Boiled at={at} />
  if (seen.boilAtMs !== undefined) return <Boiling step={step} at={at} onMoved={onMoved} />
  return <IntoThePot step={step} at={at} />
}

function Boiled({ at }: { readonly at: PotAt }) {
  const { walk } = at
  return <Reasons sentences={walk.seen.rubs.slice(-1).flatMap((rub) => rubTest(rub).sentences.slice(0, 1))} />
}

/** Said while the pot is filled; the others when the alkali goes in; foam once it boils. */
const AT_THE_WATER: ReadonlySet<string> = new Set(['pot'])
const AT_THE_BOIL: ReadonlySet<string> = new Set(['foam'])

/** Water, then alkali, then the boil: one tap each. */
function IntoThePot({ step, at }: { readonly step: WalkStep; readonly at: PotAt }) {
  const { say } = useWords()
  const { batch, walk, taps } = at
  const pot = { batchId: batch.batchId, potLoad: walk.potLoad }
  const isBegun = step.begunAtMs !== undefined
  const isIn = walk.seen.alkaliLotId !== undefined
  const water = useWater(step, !isBegun)
  const note = (words: string, line: Line) => void taps.keep(words, [line])
  return (
    <>
      <StageCaution
        moments={step.stage.cautionMoments.filter((moment) =>
          isBegun ? !AT_THE_WATER.has(moment) && !AT_THE_BOIL.has(moment) : AT_THE_WATER.has(moment),
        )}
      />
      {water.field}
      {isBegun && !isIn && <DoseIn at={at} />}
      <TapGroup>
        {!isBegun && (
          <TapButton
            isNext
            disabled={taps.busy || !water.isRead}
            onClick={() =>
              note(say('kettle:walk-word-begun', { stage: say('kettle:stage-alkali-boil') }), [
                'stage-noted',
                { ...pot, stageId: step.stepId, what: 'begun', ...water.body },
              ])
            }
          >
            {say('waterL' in water.body ? 'kettle:walk-begin-water' : 'kettle:walk-begin')}
          </TapButton>
        )}
        {isBegun && (
          <TapButton
            isNext={isIn}
            disabled={taps.busy}
            onClick={() => note(say('kettle:walk-boil-word'), ['cook-noted', { ...pot, seen: { type: 'boil' } }])}
          >
            {say('kettle:walk-boil')}
          </TapButton>
        )}
      </TapGroup>
    </>
  )
}

/** The planned dose, as it is put in: another amount or lot can be told. */
function DoseIn({ at }: { readonly at: PotAt }) {
  const { facts } = useBook()
  const { say } = useWords()
  const { batch, walk, taps, plan } = at
  const dose = potDose(plan, walk.potLoad)
  const lots = Object.values(facts.alkaliLots).filter((lot) => !plan || lot.alkali === plan.input.alkali)
  const planned = lots.find(({ name }) => name === plan?.input.alkaliLot?.name)
  const [lotId, setLotId] = useState(planned?.alkaliLotId ?? lots.at(-1)?.alkaliLotId ?? null)
  const [text, setText] = useState(() =>
    dose ? formatQuantity({ value: shownValue(dose), unit: dose.unit }, 'alone') : '1 cup',
  )
  const [amount, setAmount] = useState<Quantity | null>(null)
  const lot = lots.find(({ alkaliLotId }) => alkaliLotId === lotId)
  if (!lot) return <p>{say('kettle:walk-dose-no-lot')}</p>
  return (
    <>
      {dose && <BigNumber label={say('kettle:walk-dose')} reckoned={dose} />}
      {lots.length > 1 && (
        <ChoiceTags
          legend={say('kettle:walk-dose-lot')}
          options={lots.map(({ alkaliLotId: value, name }) => ({ value, label: name }))}
          value={lotId}
          onValue={setLotId}
        />
      )}
      <QuantityField
        label={say('kettle:walk-dose-amount')}
        measures={['volume', 'mass']}
        text={text}
        onText={setText}
        onQuantity={setAmount}
      />
      <TapGroup>
        <TapButton
          isNext
          disabled={taps.busy || amount === null}
          onClick={() => {
            if (!amount) return
            void taps.keep(
              say('kettle:walk-dose-in-word', { amount: formatQuantity(amount, 'alone'), lot: lot.name }),
              [
                [
                  'cook-noted',
                  {
                    batchId: batch.batchId,
                    potLoad: walk.potLoad,
                    seen: { type: 'alkali-added', alkaliLotId: lot.alkaliLotId, ...doseInEntry(asDose(amount)) },
                  },
                ],
              ],
            )
          }}
        >
          {say('kettle:walk-dose-in')}
        </TapButton>
      </TapGroup>
    </>
  )
}

/** Any kitchen volume as cups, which is how ash is kept. */
function asDose(amount: Quantity): Quantity {
  const isMass = ['G', 'Kg', 'Oz', 'Lb'].includes(amount.unit)
  return isMass ? amount : { value: convert(amount.value, amount.unit, 'Cup'), unit: 'Cup' }
}

function Boiling({ step, at, onMoved }: StepProps) {
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
  const isSlipping = read?.says === 'begin-wash'
  const isWeak = asksForAshAdvice(seen, range.low, ownSlipMin)
  const [topsUp, setTopsUp] = useState(false)
  const note = (words: string, line: Line) => void taps.keep(words, [line])
  const offHeat = async () => {
    const kept = await taps.keep(say('kettle:walk-off-heat-word'), [
      // biome-ignore lint/suspicious/noThenProperty: a word of the entry, never awaited
      ['cook-noted', { ...pot, seen: { type: 'off-heat', then: 'hot' } }],
      ['stage-noted', { ...pot, stageId: step.stepId, what: 'done' }],
    ])
    if (kept) onMoved()
  }
  return (
    <>
      <BoilingSince at={at} lot={lot} ownSlipMin={ownSlipMin} />
      {!last && <StageCaution moments={step.stage.cautionMoments.filter((moment) => AT_THE_BOIL.has(moment))} />}
      {last && read && (
        <div className="passage-body">
          <Reasons sentences={isWeak ? read.sentences.slice(0, 1) : read.sentences} />
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
            {say('kettle:walk-off-heat')}
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
      {isWeak ? (
        <WeakAsh at={at} step={step} lot={lot} onMoved={onMoved} />
      ) : (
        lot?.alkali === 'ash' && (
          <Fold title={say('kettle:walk-ash-title')}>
            <WeakAsh at={at} step={step} lot={lot} onMoved={onMoved} />
          </Fold>
        )
      )}
      {plan === null && <Say sentence={{ key: 'kettle:rub-not-clock' }} />}
    </>
  )
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
