/** The plan of a day on one sheet: seed line, the clock, amounts, jars, cards, reasons, and what was taken for granted. */
import { cautionsFor } from '@crib/guidance'
import {
  type BatchPlan,
  batchPlannedBody,
  type DayPlan,
  isStandingRead,
  type Moved,
  sheetAmounts,
  whatMoved,
} from '@crib/planning'
import type { Sentence, Unit } from '@crib/science'
import { useState } from 'react'
import { useLocation } from 'wouter'
import { useBook } from '../../book/book.tsx'
import {
  ButtonRow,
  Caution,
  Empty,
  Fold,
  MarginNote,
  NextAction,
  NumberRow,
  Passage,
  Reasons,
  Refusal,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { Assumptions } from './assumptions.tsx'
import { CardsOfThePlan } from './cards-of-the-plan.tsx'
import { type Assumed, type Draft, useDraft } from './draft.tsx'
import { Households } from './households.tsx'
import { JarsOfThePlan } from './jars-of-the-plan.tsx'
import { PlanNumber } from './plan-number.tsx'
import { SeedWords } from './seed-line.tsx'
import { TheDay } from './the-day.tsx'
import { type PlanNow, usePlan } from './use-plan.ts'

export function PlanSheet() {
  const { say } = useWords()
  const now = usePlan()
  const { outcome } = now
  if (outcome === null) {
    return (
      <Sheet title={say('shell:plan-title')} drawing="pot">
        <Passage>
          <Empty drawing="pot" action={<NextAction href="/plan">{say('shell:plan-to-answers')}</NextAction>}>
            <p>{say('shell:plan-nothing-yet')}</p>
          </Empty>
        </Passage>
      </Sheet>
    )
  }
  if (outcome.kind === 'refused') {
    return (
      <Sheet title={now.title || say('shell:plan-title')} drawing="pot">
        <Passage>
          <Refusal title={say('shell:plan-refused')} why={outcome.why} askWhom={outcome.askWhom} />
          <NextAction href="/plan">{say('shell:plan-to-answers')}</NextAction>
        </Passage>
      </Sheet>
    )
  }
  return <Planned plan={outcome} now={now} />
}

/** Every number of the sheet, the day's among them, so that one comparison finds all that moved. */
function whole(plan: BatchPlan, day: DayPlan | null): BatchPlan {
  return day ? { ...plan, values: [...plan.values, ...day.values] } : plan
}

function Planned({ plan, now }: { readonly plan: BatchPlan; readonly now: PlanNow }) {
  const { say } = useWords()
  const { draft, assume, told } = useDraft()
  /** The plan as it was before the last change; null before any. */
  const [before, setBefore] = useState<BatchPlan | null>(null)
  const moved: readonly Moved[] = before ? whatMoved(before, whole(plan, now.day)) : []
  const remembering =
    <T,>(act: (change: T) => void) =>
    (change: T) => {
      setBefore(whole(plan, now.day))
      act(change)
    }
  const amounts = sheetAmounts(plan)
  const unitOf = (id: string): Unit | null =>
    [...whole(plan, now.day).values, ...(before?.values ?? [])].find((value) => value.id === id)?.unit ?? null
  const change = remembering<Assumed>(assume)
  const changeAnswer = remembering<Partial<Draft>>(told)
  return (
    <Sheet title={now.title} drawing="pot" lead={dayText(draft.date)}>
      <Passage title={say('seed:first')}>
        <SeedWords line={plan.seed} />
      </Passage>
      {now.day && <TheDay day={now.day} moved={moved} change={changeAnswer} />}
      <Passage title={say('shell:plan-set-out')} margin={<MarginNote>{say('shell:plan-set-out-margin')}</MarginNote>}>
        <div className="plan-amounts">
          <NumberRow>
            {amounts.toSetOut.map((value) => (
              <PlanNumber key={value.id} reckoned={value} moved={moved} />
            ))}
          </NumberRow>
        </div>
        {plan.input.alkali === 'ash' && <FirstCaution moment="ash" />}
      </Passage>
      <Passage
        title={say('shell:plan-comes-out')}
        margin={<MarginNote>{say('shell:plan-comes-out-margin')}</MarginNote>}
      >
        <div className="plan-amounts">
          <NumberRow>
            {amounts.toExpect.map((value) => (
              <PlanNumber
                key={value.id}
                reckoned={value}
                moved={moved}
                size={value.id === 'hominyLiquidQt' ? 'large' : 'small'}
              />
            ))}
          </NumberRow>
        </div>
        <Reasons sentences={plan.endings.flatMap(({ sentences }) => sentences)} />
      </Passage>
      {plan.jars && <JarsOfThePlan plan={plan} jars={plan.jars} day={now.day} moved={moved} />}
      {plan.jarsClosed && (
        <Passage title={say('shell:plan-jars-title')}>
          <Refusal title={say('shell:plan-jars-closed')} why={plan.jarsClosed.why} askWhom={plan.jarsClosed.askWhom} />
          {!plan.input.isStandingRead && (
            <ButtonRow>
              <SideAction href="/plan/standing">{say('shell:plan-standing-title')}</SideAction>
            </ButtonRow>
          )}
        </Passage>
      )}
      {plan.jars && <CardsOfThePlan plan={plan} date={draft.date} />}
      {draft.householdsCount > 1 && <Households plan={plan} householdsCount={draft.householdsCount} moved={moved} />}
      <ToMind plan={plan} now={now} />
      <Assumptions plan={plan} change={change} changeAnswer={changeAnswer} moved={moved} unitOf={unitOf} />
      <Begin plan={plan} now={now} />
    </Sheet>
  )
}

/** What stands elsewhere on the sheet is not said twice. */
function ToMind({ plan, now }: { readonly plan: BatchPlan; readonly now: PlanNow }) {
  const { say } = useWords()
  const elsewhere = new Set(
    [
      ...plan.seed.sentences,
      ...plan.seed.warnings,
      ...(plan.jars ? [...plan.jars.standing, ...plan.jars.reasons] : []),
      ...(plan.jarsClosed?.why ?? []),
      ...plan.endings.flatMap(({ sentences }) => sentences),
    ].map(keyOf),
  )
  const left = (sentences: readonly Sentence[]) => sentences.filter((sentence) => !elsewhere.has(keyOf(sentence)))
  const warnings = left(plan.warnings)
  return (
    <Passage title={say('shell:plan-why')} margin={<MarginNote>{say('shell:plan-why-margin')}</MarginNote>}>
      <Reasons sentences={warnings} title={say('shell:plan-to-mind')} />
      <Fold title={say('shell:plan-why-all')}>
        <Reasons sentences={[...left(plan.reasons), ...now.remembered]} />
      </Fold>
    </Passage>
  )
}

function keyOf({ key, params }: Sentence): string {
  return `${key}${JSON.stringify(params ?? {})}`
}

function FirstCaution({ moment }: { readonly moment: 'ash' }) {
  const sentence = cautionsFor(moment)[0]
  return sentence ? <Caution sentence={sentence} /> : null
}

function Begin({ plan, now }: { readonly plan: BatchPlan; readonly now: PlanNow }) {
  const { facts, newId } = useBook()
  const { say } = useWords()
  const { draft, forget } = useDraft()
  const record = useRecord()
  const [batchId] = useState(newId)
  const [, go] = useLocation()
  const begun = () => {
    forget()
    go(`~/kettle/${batchId}`)
  }
  const begin = async () => {
    const alkaliLot = Object.values(facts.alkaliLots).find(({ name }) => name === plan.input.alkaliLot?.name)
    const names = new Set(plan.input.canners.map(({ name }) => name))
    const body = batchPlannedBody({
      batchId,
      title: now.title,
      plan,
      beside: {
        ...(now.plannedDay && { day: { ...now.plannedDay, dayCount: now.day?.twoDays ? draft.dayCount : 1 } }),
        ...(now.lot && { cornLotId: now.lot.lotId }),
        ...(draft.householdsCount > 1 && { householdsCount: draft.householdsCount }),
        ...(alkaliLot && { alkaliLotId: alkaliLot.alkaliLotId }),
        cannerIds: Object.values(facts.canners).flatMap(({ cannerId, name }) => (names.has(name) ? [cannerId] : [])),
      },
    })
    if (await record.keep('batch-planned', body)) begun()
  }
  const jarsUnread = (draft.parts.jars ?? 0) > 0 && !isStandingRead(facts, plan.input.alkali, now.seasonYear)
  return (
    <Passage margin={<MarginNote>{say('shell:plan-begin-margin')}</MarginNote>}>
      {jarsUnread && <p>{say('shell:plan-begin-without-jars')}</p>}
      <NextAction onClick={begin}>{say('shell:plan-begin')}</NextAction>
      <ButtonRow>
        <SideAction href="/plan/print">{say('shell:plan-print')}</SideAction>
        <SideAction href="/plan">{say('shell:plan-to-answers')}</SideAction>
      </ButtonRow>
      <Asked record={record} onKept={begun} />
    </Passage>
  )
}
