/** The few answers only the keeper can give: how much of which corn, which ends, when, with whom. */
import { cornTakenKg, type Ending, isStandingRead } from '@crib/planning'
import { convert } from '@crib/science'
import { formatWeight } from '@crib/wording'
import { useState } from 'react'
import { useLocation } from 'wouter'
import { useBook } from '../../book/book.tsx'
import {
  Caution,
  ChoiceTags,
  ClockField,
  CountField,
  clockMinutes,
  DateField,
  FieldError,
  FlagTag,
  Fold,
  MarginNote,
  NextAction,
  Passage,
  QuantityField,
  Reasons,
  Refusal,
  Sheet,
} from '../../parts-of-the-sheet/index.ts'
import { CornLotForm } from '../../records/corn-lot-form.tsx'
import { upperFirst } from '../../upper-first.ts'
import { useWords } from '../../words.tsx'
import { useDraft } from './draft.tsx'
import { SeedLineOf } from './seed-line.tsx'
import { chosenLot, usePlan } from './use-plan.ts'

/** Fresh, frozen and dried first; jars last. */
const ENDS: readonly Ending[] = ['tonight', 'freezer', 'dried', 'flour', 'roasted', 'jars']
/** A scale's last digit is no question. */
const DUST_KG = 0.001
const LIMIT = { min: 0.01, max: 2000, unit: 'Lb', source: 'project rule' } as const

export function WishSheet() {
  const { say } = useWords()
  const { draft, told } = useDraft()
  const { outcome, seasonYear } = usePlan()
  const { facts } = useBook()
  const [, go] = useLocation()
  const [missing, setMissing] = useState(false)

  const lot = chosenLot(facts, draft)
  const wantsJars = (draft.parts.jars ?? 0) > 0
  const alkali = outcome?.kind === 'planned' ? outcome.input.alkali : (draft.assumed.alkali ?? 'ash')
  // Bringing corn in is then the one next thing.
  const hasCorn = Object.keys(facts.cornLots).length > 0
  const isWhole = outcome !== null && clockMinutes(draft.clock) !== null
  const layOut = () => {
    if (!isWhole) return setMissing(true)
    go(wantsJars && !isStandingRead(facts, alkali, seasonYear) ? '/standing' : '/sheet')
  }
  return (
    <Sheet title={say('shell:plan-title')} drawing="pot" lead={say('shell:plan-lead')}>
      <Passage title={say('seed:first')}>
        <SeedLineOf seasonYear={seasonYear} cornLotId={lot?.lotId} />
      </Passage>
      <Passage title={say('shell:plan-how-much')} margin={<MarginNote>{say('shell:plan-how-much-margin')}</MarginNote>}>
        <HowMuch />
      </Passage>
      {hasCorn && (
        <>
          <Passage title={say('shell:plan-ends')} margin={<MarginNote>{say('shell:plan-ends-margin')}</MarginNote>}>
            <fieldset className="field ends">
              <legend>{say('shell:plan-ends-legend')}</legend>
              <div className="tags">
                {ENDS.map((ending) => (
                  <FlagTag
                    key={ending}
                    label={say(`shell:plan-end-${ending}`)}
                    value={(draft.parts[ending] ?? 0) > 0}
                    onValue={(isWanted) => told({ parts: { ...draft.parts, [ending]: isWanted ? 1 : 0 } })}
                  />
                ))}
              </div>
            </fieldset>
            {wantsJars && !isStandingRead(facts, alkali, seasonYear) && <p>{say('shell:plan-end-jars-note')}</p>}
          </Passage>
          <Passage title={say('shell:plan-when')}>
            <DateField label={say('shell:plan-date')} value={draft.date} onValue={(date) => date && told({ date })} />
            <ChoiceTags
              legend={say('shell:plan-clock-from')}
              options={(['start', 'finish'] as const).map((value) => ({
                value,
                label: say(`shell:plan-clock-${value}`),
              }))}
              value={draft.clockFrom}
              onValue={(clockFrom) => told({ clockFrom })}
            />
            <ClockField
              label={say(`shell:plan-clock-${draft.clockFrom}-at`)}
              value={draft.clock}
              onValue={(clock) => told({ clock })}
              error={clockMinutes(draft.clock) === null ? say('shell:plan-clock-missing') : null}
            />
            <CountField
              label={say('shell:plan-people')}
              hint={say('shell:plan-people-hint')}
              value={draft.peopleCount}
              onValue={(peopleCount) => told({ peopleCount })}
              min={1}
              max={500}
            />
          </Passage>
          <Passage>
            {outcome?.kind === 'refused' && (
              <Refusal title={say('shell:plan-refused')} why={outcome.why} askWhom={outcome.askWhom} />
            )}
            {missing && !isWhole && <StillMissing />}
            <NextAction onClick={layOut} disabled={outcome?.kind === 'refused'}>
              {say('shell:plan-lay-out')}
            </NextAction>
          </Passage>
        </>
      )}
    </Sheet>
  )
}

function StillMissing() {
  const { facts } = useBook()
  const { draft } = useDraft()
  const { say } = useWords()
  const missing = [
    ...(chosenLot(facts, draft) ? [] : [{ key: 'shell:plan-missing-corn' }]),
    ...(Object.values(draft.parts).some((count) => count > 0) ? [] : [{ key: 'shell:plan-missing-ends' }]),
    { key: 'shell:plan-missing-amount' },
  ]
  return (
    <div role="alert">
      <Reasons sentences={missing.slice(0, Math.max(1, missing.length - 1))} title={say('shell:plan-missing')} />
    </div>
  )
}

function HowMuch() {
  const { facts } = useBook()
  const { say } = useWords()
  const { draft, told, assume } = useDraft()
  const lots = Object.values(facts.cornLots)
  const lot = chosenLot(facts, draft)
  const leftKg = lot?.balance ? Math.max(0, lot.balance.leftKg - lot.balance.setAsideKg) : null
  if (lots.length === 0) return <CornLotForm onKept={(lotId) => told({ lotId })} />
  return (
    <>
      <ChoiceTags
        legend={say('shell:plan-which-corn')}
        options={lots.map(({ lotId, name, balance, asTyped, treatedSeed }) => ({
          value: lotId,
          label: name,
          note: treatedSeed
            ? say('shell:corn-treated-short')
            : say('shell:plan-lot-left', {
                weight: balance ? formatWeight(balance.leftKg - balance.setAsideKg) : asTyped,
              }),
        }))}
        value={lot?.lotId ?? null}
        onValue={(lotId) => told({ lotId, amountText: '' })}
      />
      {lot?.treatedSeed && <Caution>{say('shell:corn-treated-care')}</Caution>}
      {lot && !lot.treatedSeed && (
        <ChoiceTags
          legend={say('shell:plan-from')}
          options={[
            { value: 'corn', label: say('shell:plan-from-corn') },
            { value: 'jars', label: say('shell:plan-from-jars') },
          ]}
          value={draft.jarsWanted === null ? 'corn' : 'jars'}
          onValue={(from) =>
            told({
              jarsWanted: from === 'jars' ? 7 : null,
              ...(from === 'jars' && { parts: { ...draft.parts, jars: draft.parts.jars || 1 } }),
            })
          }
        />
      )}
      {lot && !lot.treatedSeed && draft.jarsWanted === null && (
        <QuantityField
          label={say('shell:amount')}
          hint={
            leftKg === null
              ? say('shell:plan-amount-hint')
              : say('shell:plan-amount-or-all', { weight: formatWeight(leftKg) })
          }
          measures={['mass', 'volume']}
          text={draft.amountText}
          onText={(amountText) => told({ amountText })}
          limits={LIMIT}
        />
      )}
      {draft.jarsWanted !== null && (
        <>
          <CountField
            label={say('shell:plan-jars-wanted')}
            value={draft.jarsWanted}
            onValue={(jarsWanted) => told({ jarsWanted })}
            min={1}
            max={2000}
          />
          <ChoiceTags
            legend={say('shell:plan-assume-jar')}
            options={(['half-pint', 'pint', 'quart'] as const).map((value) => ({
              value,
              label: upperFirst(say(`season:screen-jar-${value}`)),
            }))}
            value={draft.assumed.jarSize ?? 'quart'}
            onValue={(jarSize) => assume({ jarSize })}
          />
        </>
      )}
      {leftKg !== null && <BeyondTheLot leftKg={leftKg} />}
      <Fold title={say('shell:plan-another-corn')}>
        <CornLotForm onKept={(lotId) => told({ lotId, amountText: '' })} />
      </Fold>
    </>
  )
}

/** More than the lot holds is asked about here, and once more when the day begins. */
function BeyondTheLot({ leftKg }: { readonly leftKg: number }) {
  const { say } = useWords()
  const { outcome, lot } = usePlan()
  if (outcome?.kind !== 'planned' || cornTakenKg(outcome) <= leftKg + DUST_KG) return null
  const inLb = (kg: number) => ({ value: Number(convert(kg, 'Kg', 'Lb').toFixed(2)), unit: 'Lb' }) as const
  return (
    <div role="alert">
      <FieldError>
        {say('errors:used-more-than-held', {
          name: lot?.name ?? '',
          value: inLb(cornTakenKg(outcome)),
          max: inLb(leftKg),
        })}
      </FieldError>
    </div>
  )
}
