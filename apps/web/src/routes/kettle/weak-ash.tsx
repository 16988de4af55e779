/** What can be done when the hulls do not slip, in the given order, each with the tap that writes it down. */
import type { AlkaliLotFact } from '@crib/journal'
import { dayOfInstant, potCornLiquidQt, stoodOpenMonths, type WalkStep, weakAshAdvice } from '@crib/planning'
import { convert, shownValue } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { Caution, FlagTag, Reasons } from '../../parts-of-the-sheet/index.ts'
import { TapButton, TapGroup } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import type { PotAt } from './pot-at.ts'

export function WeakAsh({
  at,
  step,
  lot,
  onMoved,
}: {
  readonly at: PotAt
  readonly step: WalkStep
  readonly lot: AlkaliLotFact | undefined
  readonly onMoved: () => void
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const [isSoftening, setSoftening] = useState(false)
  const { batch, walk, taps, plan, zone, nowMs } = at
  const { seen } = walk
  if (lot?.alkali !== 'ash' || seen.boilAtMs === undefined) return null
  const last = seen.rubs.at(-1)
  const openMonths = stoodOpenMonths(lot, dayOfInstant(nowMs, zone))
  const recordLotName = plan?.input.alkaliLot?.slipMin === undefined ? undefined : plan.input.alkaliLot.name
  const advice = weakAshAdvice({
    lotName: lot.name,
    dryCornLiquidQt: potCornLiquidQt(plan, walk.potLoad) ?? 1,
    ashSoFarCups: seen.alkaliCups,
    boiledMin: ((last?.atMs ?? nowMs) - seen.boilAtMs) / 60_000,
    slippedCount: last?.slippedCount ?? 0,
    rubbedCount: last?.ofCount ?? 1,
    isSoftening,
    ...(recordLotName !== undefined && { recordLotName }),
    ...(openMonths !== undefined && { stoodOpenMonths: openMonths }),
  })
  const value = (id: string) => advice.values.find((each) => each.id === id)
  const stepCups = value('ashStepCups')
  const limeG = value('calciumHydroxideG')
  const lime = Object.values(facts.alkaliLots).findLast(({ alkali }) => alkali === 'calcium-hydroxide')
  const pot = { batchId: batch.batchId, potLoad: walk.potLoad }
  return (
    <section className="refusal" aria-label={say('kettle:walk-ash-title')}>
      <h3>{say('kettle:walk-ash-title')}</h3>
      <FlagTag label={say('kettle:walk-ash-softening')} value={isSoftening} onValue={setSoftening} />
      <Reasons sentences={advice.reasons} />
      {advice.warnings.map((sentence) => (
        <Caution key={sentence.key} sentence={sentence} />
      ))}
      <TapGroup>
        {stepCups && (
          <TapButton
            disabled={taps.busy}
            onClick={() => {
              const seenNow = { type: 'alkali-added', alkaliLotId: lot.alkaliLotId, cups: stepCups.value } as const
              void taps.keep(say('kettle:walk-ash-step', { step: formatReckoned(stepCups, 'alone'), lot: lot.name }), [
                ['cook-noted', { ...pot, seen: seenNow }],
              ])
            }}
          >
            {say('kettle:walk-ash-step', { step: formatReckoned(stepCups, 'alone'), lot: lot.name })}
          </TapButton>
        )}
        {limeG && lime && (
          <TapButton
            disabled={taps.busy}
            onClick={() => {
              const massKg = convert(shownValue(limeG), 'G', 'Kg')
              void taps.keep(say('kettle:walk-lime', { grams: formatReckoned(limeG, 'alone'), lot: lime.name }), [
                ['cook-noted', { ...pot, seen: { type: 'alkali-added', alkaliLotId: lime.alkaliLotId, massKg } }],
              ])
            }}
          >
            {say('kettle:walk-lime', { grams: formatReckoned(limeG, 'alone'), lot: lime.name })}
          </TapButton>
        )}
        <TapButton
          disabled={taps.busy}
          onClick={async () => {
            const kept = await taps.keep(say('kettle:walk-grind'), [
              // biome-ignore lint/suspicious/noThenProperty: a word of the entry, never awaited
              ['cook-noted', { ...pot, seen: { type: 'off-heat', then: 'hot' } }],
              ['stage-noted', { ...pot, stageId: step.stepId, what: 'done', note: say('kettle:walk-grind') }],
            ])
            if (kept) onMoved()
          }}
        >
          {say('kettle:walk-grind')}
        </TapButton>
        {advice.judged === 'weak' && lot.judged !== 'weak' && (
          <TapButton
            disabled={taps.busy}
            onClick={() =>
              void taps.keep(say('kettle:walk-marked-weak', { lot: lot.name }), [
                ['alkali-lot-judged', { alkaliLotId: lot.alkaliLotId, judged: 'weak', batchId: batch.batchId }],
              ])
            }
          >
            {say('kettle:walk-mark-weak', { lot: lot.name })}
          </TapButton>
        )}
      </TapGroup>
      {!lime && <p className="field-hint">{say('kettle:walk-lime-no-lot')}</p>}
    </section>
  )
}
