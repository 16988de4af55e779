/** What can be done when the hulls do not slip, in the given order, each with the tap that writes it down. */
import type { AlkaliLotFact } from '@crib/journal'
import { ASH_STEP_CUPS, dayOfInstant, type WalkStep, weakPotAdvice } from '@crib/planning'
import { convert, shownValue } from '@crib/science'
import { formatQuantity, formatReckoned, type MessageKey } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  BigNumber,
  ButtonRow,
  Caution,
  FlagTag,
  Fold,
  NumberRow,
  Reasons,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { TapButton, TapGroup } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import { DoseLeft } from './dose-left.tsx'
import type { PotAt } from './pot-at.ts'

/** What was found and what each rescue takes; what each brings stands behind a tap, so that the taps stay near. */
const FIRST = ['lotEqPerKg', 'moreAshCups', 'ashInAllCups', 'calciumHydroxideG']
const BEHIND = [
  ...['inPotEqPerKg', 'wantedEqPerKg', 'stepEqPerKg', 'moreAshG'],
  ...['calciumHydroxideEqPerKg', 'hydroxideNowMolPerL', 'hydroxideWithLimeMolPerL'],
]

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
  const advice = weakPotAdvice({ facts, plan, walk, lot, nowMs, today: dayOfInstant(nowMs, zone), isSoftening })
  if (!advice) return null
  const value = (id: string) => advice.values.find((each) => each.id === id)
  const stepWords = say('kettle:walk-ash-step', {
    step: formatQuantity({ value: ASH_STEP_CUPS, unit: 'Cup' }, 'alone'),
    lot: lot.name,
  })
  const limeG = value('calciumHydroxideG')
  const lime = Object.values(facts.alkaliLots).findLast(({ alkali }) => alkali === 'calcium-hydroxide')
  const pot = { batchId: batch.batchId, potLoad: walk.potLoad }
  const numbers = (ids: readonly string[]) => (
    <NumberRow>
      {ids.map((id) => {
        const reckoned = value(id)
        const label = say(`kettle:weak-value-${id}` as MessageKey)
        return (
          reckoned && (
            <BigNumber key={id} label={label} reckoned={reckoned} size="small" asWeighed={reckoned.unit === 'G'} />
          )
        )
      })}
    </NumberRow>
  )
  return (
    <section className="refusal" aria-label={say('kettle:walk-ash-title')}>
      <h3>{say('kettle:walk-ash-title')}</h3>
      <FlagTag label={say('kettle:walk-ash-softening')} value={isSoftening} onValue={setSoftening} />
      {advice.lacks.length === 0 && (
        <>
          {numbers(FIRST)}
          <Fold title={say('kettle:weak-numbers')}>{numbers(BEHIND)}</Fold>
        </>
      )}
      <Reasons sentences={advice.reasons} />
      {advice.warnings.map((sentence) => (
        <Caution key={sentence.key} sentence={sentence} />
      ))}
      <DoseLeft at={at} lotId={lot.alkaliLotId} />
      <TapGroup>
        <TapButton
          disabled={taps.busy}
          onClick={() => {
            const seenNow = { type: 'alkali-added', alkaliLotId: lot.alkaliLotId, cups: ASH_STEP_CUPS } as const
            void taps.keep(stepWords, [['cook-noted', { ...pot, seen: seenNow }]])
          }}
        >
          {stepWords}
        </TapButton>
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
      {advice.lacks.length > 0 && (
        <>
          <p>
            {say(
              advice.lacks.includes('titration') || advice.lacks.includes('cup')
                ? 'kettle:weak-lacks'
                : 'kettle:weak-lacks-water',
            )}
          </p>
          <ButtonRow>
            <SideAction href={`/kettle/alkali/${lot.alkaliLotId}/test?batch=${batch.batchId}`}>
              {say('kettle:weak-titrate', { lot: lot.name })}
            </SideAction>
          </ButtonRow>
        </>
      )}
      {!lime && <p className="field-hint">{say('kettle:walk-lime-no-lot')}</p>}
    </section>
  )
}
