/** PlanSheet: from the food and the seed wanted back to plants, kernels and ground; kept for a plot when it is right. */
import { checkBody } from '@crib/journal'
import {
  type FieldPlan,
  type FieldPlanInput,
  fieldPlan,
  fieldPlannedBody,
  fieldPlanTooLarge,
  fieldYears,
  groundOfPlot,
} from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { useMemo, useState } from 'react'
import { useLocation, useSearch } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { localDay } from '../../local-day.ts'
import { ChoiceTags, CountField, Passage, Reasons, Refusal, Sheet, TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { PlanMore } from './plan-more.tsx'
import { PlanNumbers } from './plan-numbers.tsx'
import { FRESH, inputOf, type Wish } from './plan-wish.ts'
import { PlanWishes } from './plan-wishes.tsx'
import { PlotDrawing } from './plot-drawing.tsx'

const NEW_PLOT = ''

export default function PlanSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const [wish, setWish] = useHalfTyped<Wish>('field-plan', FRESH)
  const [food, setFood] = useState<Quantity | null>(null)
  const [betweenM, setBetweenM] = useState<number | null>(null)
  const [inRowM, setInRowM] = useState<number | null>(null)
  const change = (part: Partial<Wish>) => setWish({ ...wish, ...part })
  const lot = facts.seedLots[wish.seedLotId] ?? null
  const corn = wish.corn.trim() || (lot?.name ?? '')
  const years = useMemo(() => fieldYears(facts, corn), [facts, corn])
  const foodLb = food && convert(food.value, food.unit, 'Lb')
  const input = inputOf(wish, { foodLb, betweenM, inRowM, lot, years })
  const tooLarge = input && fieldPlanTooLarge(input)
  const plan = input && !tooLarge ? fieldPlan(input) : null
  return (
    <Sheet title={say('field:screen-plan')} drawing="field" lead={say('field:screen-plan-lead')}>
      <Passage>
        <PlanWishes wish={wish} change={change} onFood={setFood} onBetweenM={setBetweenM} onInRowM={setInRowM} />
        <PlanMore wish={wish} change={change} lot={lot} years={years} />
      </Passage>
      <Passage title={say('field:screen-plan-result')}>
        <div aria-live="polite" className="passage-body" id="field-plan">
          {tooLarge && <Refusal title={say('field:screen-plan-result')} why={[tooLarge]} />}
          {!input && <p>{say('field:screen-plan-needs')}</p>}
          {plan && <PlanNumbers plan={plan} />}
          {plan && <PlannedDrawing plan={plan} input={input!} />}
          {plan && <Reasons sentences={[...plan.reasons, ...plan.warnings]} />}
        </div>
      </Passage>
      {plan && (
        <KeepPlan
          plan={plan}
          input={input!}
          corn={corn}
          seedLotId={lot?.seedLotId}
          onCorn={(text) => change({ corn: text })}
        />
      )}
    </Sheet>
  )
}

function PlannedDrawing({ plan, input }: { readonly plan: FieldPlan; readonly input: FieldPlanInput }) {
  const { say } = useWords()
  const ground = useMemo(
    () => groundOfPlot({}, { planned: { seasonYear: 0, cornName: '', input, plan } }),
    [input, plan],
  )
  return ground && <PlotDrawing ground={ground} caption={say('field:screen-drawing')} />
}

interface Keep {
  readonly plan: FieldPlan
  readonly input: FieldPlanInput
  readonly corn: string
  readonly seedLotId: string | undefined
  readonly onCorn: (text: string) => void
}

function KeepPlan({ plan, input, corn, seedLotId, onCorn }: Keep) {
  const { facts, newId, write } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [, navigate] = useLocation()
  const asked = new URLSearchParams(useSearch()).get('plot') ?? ''
  const plots = Object.values(facts.plots)
  const [plotId, setPlotId] = useState(facts.plots[asked] ? asked : NEW_PLOT)
  const [name, setName, forgetName] = useHalfTyped('field-plan:plot', '')
  const [seasonYear, setYear] = useState(nextSeason(localDay()))
  const [missing, setMissing] = useState(false)
  const keep = async () => {
    const isNew = plotId === NEW_PLOT
    if (corn === '' || (isNew && name.trim() === '')) return setMissing(true)
    const { lengthM, widthM } = plan.block
    const kept = isNew ? newId() : plotId
    const planned = { seasonYear, cornName: corn, input, plan, ...(seedLotId !== undefined && { seedLotId }) }
    const body = fieldPlannedBody(planned, kept)
    if (isNew && checkBody('field-planned', body).ok) {
      if (!(await record.keep('plot-recorded', { plotId: kept, name: name.trim(), lengthM, widthM }))) return
      await write('field-planned', body)
    } else if (!(await record.keep('field-planned', body))) return
    forgetName()
    navigate(`~/field/plot/${kept}`)
  }
  return (
    <Passage title={say('field:screen-plan-keep-title')}>
      <Form action={say('field:screen-plan-keep')} onSubmit={keep}>
        {corn === '' && (
          <TextField
            label={say('field:screen-plan-corn')}
            value={corn}
            onValue={onCorn}
            error={missing ? say('shell:name-missing') : null}
          />
        )}
        {plots.length > 0 && (
          <ChoiceTags
            legend={say('field:screen-plan-for-plot')}
            options={[
              ...plots.map((plot) => ({ value: plot.plotId, label: plot.name })),
              { value: NEW_PLOT, label: say('field:screen-plan-new-plot') },
            ]}
            value={plotId}
            onValue={setPlotId}
          />
        )}
        {plotId === NEW_PLOT && (
          <TextField
            label={say('field:screen-plot-name')}
            hint={say('field:screen-plot-name-hint')}
            value={name}
            onValue={setName}
            error={missing && name.trim() === '' ? say('shell:name-missing') : null}
          />
        )}
        <CountField label={say('field:screen-plan-year')} value={seasonYear} onValue={setYear} max={2200} />
        <Asked record={record} />
      </Form>
    </Passage>
  )
}

/** From August on a field is planned for the next year. Common practice, no source. */
function nextSeason(today: string): number {
  const [year, month] = today.split('-').map(Number) as [number, number]
  return month >= 8 ? year + 1 : year
}
