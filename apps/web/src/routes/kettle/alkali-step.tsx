/** The boil in alkali: what goes in, the boil, looks and top-ups, rub tests, and off the heat when the hulls slip. */
import { doseInEntry, potDose, type WalkStep } from '@crib/planning'
import { convert, type Quantity, shownValue, UNITS } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { BigNumber, ButtonRow, ChoiceTags, Fold, QuantityField, SideAction } from '../../parts-of-the-sheet/index.ts'
import { type Line, TapButton, TapGroup } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import { Boiling } from './boiling.tsx'
import { DoseLeft } from './dose-left.tsx'
import type { PotAt } from './pot-at.ts'
import { Rubs } from './rubs.tsx'
import { StageCaution } from './stage-caution.tsx'
import { useWater } from './water-field.tsx'

interface StepProps {
  readonly step: WalkStep
  readonly at: PotAt
  readonly onMoved: () => void
}

export function AlkaliStep({ step, at, onMoved }: StepProps) {
  const { seen } = at.walk
  if (step.doneAtMs !== undefined) return <Rubs at={at} />
  if (seen.boilAtMs !== undefined) return <Boiling step={step} at={at} onMoved={onMoved} />
  return <IntoThePot step={step} at={at} />
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
      {!isBegun && <Papers at={at} />}
      {isBegun && !isIn && <DoseIn at={at} />}
      {isBegun && isIn && (
        <Fold title={say('kettle:dose-add-rest')}>
          <DoseIn at={at} />
        </Fold>
      )}
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

/** To hang by the fire before anything burns: how alkali is handled, and where rubs are written by hand. */
function Papers({ at: { batch, plan } }: { readonly at: PotAt }) {
  const { facts } = useBook()
  const { say } = useWords()
  const lot = Object.values(facts.alkaliLots).findLast(({ name }) => name === plan?.input.alkaliLot?.name)
  return (
    <ButtonRow>
      {lot && <SideAction href={`/paper/lye-sheet/${lot.alkaliLotId}`}>{say('kettle:page-lye')}</SideAction>}
      <SideAction href={`/paper/rub-log/${batch.batchId}`}>{say('kettle:page-rub')}</SideAction>
      <SideAction href={lot ? `/kettle/dose?lot=${lot.alkaliLotId}` : '/kettle/dose'}>
        {say('kettle:dose-title')}
      </SideAction>
    </ButtonRow>
  )
}

/** The planned dose, as it is put in: another amount or lot can be told. */
function DoseIn({ at }: { readonly at: PotAt }) {
  const { facts } = useBook()
  const { say } = useWords()
  const { batch, walk, taps, plan } = at
  const dose = potDose(plan, walk.potLoad)
  // A lot that failed the list of what never goes in is not offered.
  const lots = Object.values(facts.alkaliLots).filter(
    (lot) => lot.onlyCleanWood !== false && (!plan || lot.alkali === plan.input.alkali),
  )
  const planned = lots.find(({ name }) => name === plan?.input.alkaliLot?.name)
  const [lotId, setLotId] = useState(planned?.alkaliLotId ?? lots.at(-1)?.alkaliLotId ?? null)
  // Ash is kept by the cup or by weight, a powder by weight alone: a spoon of it has no weight here.
  const isAsh = (plan?.input.alkali ?? lots.at(-1)?.alkali) === 'ash'
  const [text, setText] = useState(() => {
    if (dose && (isAsh || UNITS[dose.unit].measure === 'mass')) {
      return formatQuantity({ value: shownValue(dose), unit: dose.unit }, 'alone')
    }
    return isAsh ? '1 cup' : ''
  })
  const [amount, setAmount] = useState<Quantity | null>(null)
  const lot = lots.find(({ alkaliLotId }) => alkaliLotId === lotId)
  if (!lot) return <p>{say('kettle:walk-dose-no-lot')}</p>
  return (
    <>
      {dose && <BigNumber label={say('kettle:walk-dose')} reckoned={dose} asWeighed={dose.unit === 'G'} />}
      <DoseLeft at={at} lotId={lot.alkaliLotId} />
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
        {...(!isAsh && { hint: say('kettle:walk-dose-weigh'), bareNumberUnit: 'G' as const })}
        measures={isAsh ? ['volume', 'mass'] : 'mass'}
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
  return UNITS[amount.unit].measure === 'mass'
    ? amount
    : { value: convert(amount.value, amount.unit, 'Cup'), unit: 'Cup' }
}
