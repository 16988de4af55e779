/** SowSheet: what was sown where and when; filled in from the plan of the plot, and taken out of its seed lot. Props: plotId. */
import { checkBody } from '@crib/journal'
import { type PlannedField, plannedField, seedSownWithPlanting } from '@crib/planning'
import { useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { localDay } from '../../local-day.ts'
import {
  ChoiceTags,
  CountField,
  DateField,
  FlagTag,
  Passage,
  Sheet,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { LengthField } from './length-field.tsx'
import { typedLength } from './typed-length.ts'

interface Sowing {
  readonly corn: string
  readonly seedLotId: string
  readonly pattern: 'rows' | 'hills'
  readonly rows: number
  readonly hills: number
  readonly kernels: number
  readonly betweenText: string
  readonly inRowText: string
  readonly beans: boolean
  readonly squash: boolean
}

const NO_LOT = ''

function fromPlan(planned: PlannedField | null): Sowing {
  const none = { corn: '', seedLotId: NO_LOT, pattern: 'rows', rows: 0, hills: 0, kernels: 0 } as const
  if (!planned) return { ...none, betweenText: '', inRowText: '', beans: false, squash: false }
  const { input, plan, cornName, seedLotId = NO_LOT } = planned
  return {
    corn: cornName,
    seedLotId,
    pattern: input.pattern,
    rows: plan.block.rowsCount,
    hills: input.pattern === 'hills' ? plan.block.placesCount : 0,
    kernels: plan.values.find(({ id }) => id === 'kernelsToSow')?.value ?? 0,
    betweenText: typedLength(input.rowSpacingM),
    inRowText: typedLength(input.inRowSpacingM),
    beans: input.withBeans ?? false,
    squash: input.withSquash ?? false,
  }
}

export default function SowSheet({ plotId }: { readonly plotId: string }) {
  const { facts, newId, write } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [, navigate] = useLocation()
  const plot = facts.plots[plotId]
  const planned = useMemo(() => (plot ? plannedField(plot) : null), [plot])
  const fresh = useMemo(() => fromPlan(planned), [planned])
  const [sowing, setSowing, forget] = useHalfTyped<Sowing>(`sowing:${plotId}`, fresh)
  const today = localDay()
  const [plantedOn, setPlantedOn] = useState(today)
  const [betweenM, setBetweenM] = useState<number | null>(null)
  const [inRowM, setInRowM] = useState<number | null>(null)
  const [missing, setMissing] = useState(false)
  if (!plot) return <NotHere />
  const change = (part: Partial<Sowing>) => setSowing({ ...sowing, ...part })
  const { corn, seedLotId, pattern, rows, hills, kernels, beans, squash } = sowing
  const isHills = pattern === 'hills'
  const lots = Object.values(facts.seedLots)
  const lot = facts.seedLots[seedLotId]
  const left = lot?.kernels?.leftCount
  const isHalfRead =
    (sowing.betweenText.trim() !== '' && betweenM === null) || (sowing.inRowText.trim() !== '' && inRowM === null)
  const keep = async () => {
    if (corn.trim() === '') return setMissing(true)
    const companions = [...(beans ? (['beans'] as const) : []), ...(squash ? (['squash'] as const) : [])]
    const plantingId = newId()
    const body = {
      plantingId,
      plotId,
      cornName: corn.trim(),
      plantedOn,
      pattern,
      ...(lot && { seedLotId }),
      ...(rows > 0 && { rowsCount: rows }),
      ...(betweenM !== null && { rowSpacingM: betweenM }),
      ...(inRowM !== null && { inRowSpacingM: inRowM }),
      ...(isHills && hills > 0 && { hillsCount: hills }),
      ...(kernels > 0 && { kernelsSownCount: kernels }),
      ...(isHills && companions.length > 0 && { companions }),
    }
    if (!(await record.keep('planting-recorded', body))) return
    // Kernels that are in the ground are no longer in the tin.
    const taken = lot && seedSownWithPlanting(body)
    if (taken && checkBody('seed-sown', taken).ok) await write('seed-sown', taken)
    forget()
    navigate(`~/field/planting/${plantingId}`)
  }
  return (
    <Sheet title={say('field:screen-sow')} drawing="field" lead={plot.name}>
      <Passage>
        <Form action={say('field:screen-sow-keep')} onSubmit={keep} disabled={isHalfRead}>
          <TextField
            label={say('field:screen-plan-corn')}
            value={corn}
            onValue={(text) => change({ corn: text })}
            error={missing && corn.trim() === '' ? say('shell:name-missing') : null}
          />
          <DateField label={say('field:screen-sow-on')} value={plantedOn} onValue={setPlantedOn} max={today} />
          {lots.length > 0 && (
            <ChoiceTags
              legend={say('field:screen-plan-seed-lot')}
              options={[
                { value: NO_LOT, label: say('field:screen-plan-no-lot') },
                ...lots.map((one) => ({ value: one.seedLotId, label: one.name })),
              ]}
              value={seedLotId}
              onValue={(id) => change({ seedLotId: id })}
            />
          )}
          <CountField
            label={say('field:screen-sow-kernels')}
            hint={say('field:screen-none-counted')}
            value={kernels}
            onValue={(value) => change({ kernels: value })}
            max={5_000_000}
          />
          {left !== undefined && left < kernels && <p role="status">{say('field:screen-sow-short', { left })}</p>}
          <ChoiceTags
            legend={say('field:screen-plan-pattern')}
            options={(['rows', 'hills'] as const).map((value) => ({
              value,
              label: say(`field:screen-pattern-${value}`),
            }))}
            value={pattern}
            onValue={(value) => change({ pattern: value })}
          />
          <CountField
            label={say(isHills ? 'field:screen-plan-rows-of-hills' : 'field:screen-sow-rows')}
            hint={say('field:screen-none-counted')}
            value={rows}
            onValue={(value) => change({ rows: value })}
            max={2000}
          />
          {isHills && (
            <>
              <CountField
                label={say('field:screen-sow-hills')}
                hint={say('field:screen-none-counted')}
                value={hills}
                onValue={(value) => change({ hills: value })}
                max={100_000}
              />
              <fieldset className="field">
                <legend>{say('field:screen-plan-companions')}</legend>
                <div className="tags">
                  <FlagTag label={say('field:screen-beans')} value={beans} onValue={(on) => change({ beans: on })} />
                  <FlagTag label={say('field:screen-squash')} value={squash} onValue={(on) => change({ squash: on })} />
                </div>
              </fieldset>
            </>
          )}
          <LengthField
            label={say(isHills ? 'field:screen-plan-between-hill-rows' : 'field:screen-plan-between-rows')}
            hint={say('field:screen-plan-spacing-hint')}
            text={sowing.betweenText}
            onText={(betweenText) => change({ betweenText })}
            onMetres={setBetweenM}
            least={0.02}
            most={5}
          />
          <LengthField
            label={say(isHills ? 'field:screen-plan-between-hills' : 'field:screen-plan-in-row')}
            text={sowing.inRowText}
            onText={(inRowText) => change({ inRowText })}
            onMetres={setInRowM}
            least={0.02}
            most={5}
          />
          <Asked record={record} onKept={() => navigate(`~/field/plot/${plotId}`)} />
        </Form>
      </Passage>
    </Sheet>
  )
}
