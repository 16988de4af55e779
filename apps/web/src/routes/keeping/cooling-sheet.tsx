/** Cooling: each pan that left the heat, by when it must be cold, and its readings. Clock times, so that a reload changes nothing. */
import type { BodyOf, CoolingFact } from '@crib/journal'
import { coolingPan, lastInstantOfClock } from '@crib/planning'
import type { MessageKey } from '@crib/wording'
import { formatClock, formatQuantity } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { deviceZone } from '../../book/keeper.ts'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ButtonRow,
  Caution,
  ChoiceTags,
  ClockField,
  clockMinutes,
  Fold,
  MarginNote,
  NumberRow,
  Passage,
  QuantityField,
  Reasons,
  Sheet,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { clockAt } from '../../walk/clock-at.ts'
import { useNow } from '../../walk/use-now.ts'
import { useWords } from '../../words.tsx'
import { useWritten } from './written.tsx'

const MIDDLE = { min: -5, max: 110, unit: 'C', source: 'project rule' } as const
const AROUND = { min: -40, max: 40, unit: 'C', source: 'project rule' } as const

export function CoolingSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const pans = Object.values(facts.coolings).filter(({ ended }) => ended === null)
  return (
    <Sheet title={say('keeping:screen-cooling')} drawing="clock" lead={say('keeping:screen-cooling-lead')}>
      {pans.map((pan) => (
        <Pan key={pan.coolingId} pan={pan} />
      ))}
      <Passage
        title={say('keeping:screen-pan-begin')}
        margin={<MarginNote>{say('keeping:screen-pan-margin')}</MarginNote>}
      >
        {pans.length === 0 ? (
          <BeginPan />
        ) : (
          <Fold title={say('keeping:screen-pan-another')}>
            <BeginPan />
          </Fold>
        )}
      </Passage>
    </Sheet>
  )
}

const ENDS = ['fridge', 'freezer', 'eaten', 'thrown-out'] as const

function Pan({ pan }: { readonly pan: CoolingFact }) {
  const { say, sentence } = useWords()
  const record = useRecord()
  const { coolingId, at, readings } = pan
  const { values, standing, next, reasons } = coolingPan(pan, useNow())
  const [warmBy, coldBy, ...about] = values
  const middle = useWritten(`cooling:${coolingId}:middle`)
  const around = useWritten(`cooling:${coolingId}:around`)
  const temperatureC = middle.in('C')
  const keep = async () => {
    const aroundC = around.in('C')
    if (temperatureC === null) return
    const seen = { type: 'read', temperatureC, ...(aroundC !== null && { aroundC }) } as const
    if (await record.keep('cooling-noted', { coolingId, seen })) middle.forget()
  }
  return (
    <Passage title={say('keeping:screen-pan-title', { what: pan.what, at: clockText(at.instant, at.zone) })}>
      <NumberRow>
        <BigNumber label={say('keeping:screen-warm-by')} reckoned={warmBy!} />
        <BigNumber label={say('keeping:screen-cold-by')} reckoned={coldBy!} />
        {about.map((value) => (
          <BigNumber
            key={value.id}
            label={say(`keeping:screen-${value.id}` as MessageKey)}
            reckoned={value}
            size="small"
          />
        ))}
      </NumberRow>
      <div role="status">{standing === 'too-late' ? <Caution sentence={next} /> : <p>{sentence(next)}</p>}</div>
      {readings.length > 0 && (
        <ul className="reasons">
          {readings.map((reading) => (
            <li key={reading.at.entryId}>
              {clockText(reading.at.instant, reading.at.zone)}{' '}
              {formatQuantity({ value: Math.round(reading.temperatureC * 10) / 10, unit: 'C' })}
            </li>
          ))}
        </ul>
      )}
      <Reasons sentences={reasons} />
      <form
        className="passage-body"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void keep()
        }}
      >
        <QuantityField
          label={say('keeping:screen-middle')}
          hint={say('keeping:screen-middle-hint')}
          measures="temperature"
          allowNegative
          {...middle.field}
          limits={MIDDLE}
        />
        <QuantityField
          label={say('keeping:screen-around')}
          hint={say('keeping:screen-around-hint')}
          measures="temperature"
          allowNegative
          {...around.field}
          limits={AROUND}
        />
        <SideAction disabled={temperatureC === null || around.isUnread}>
          {say('keeping:screen-keep-reading')}
        </SideAction>
      </form>
      <p>{say('keeping:screen-pan-ends')}</p>
      <ButtonRow>
        {ENDS.map((how) => (
          <SideAction
            key={how}
            onClick={() => void record.keep('cooling-noted', { coolingId, seen: { type: 'ended', how } })}
          >
            {say(`keeping:screen-end-${how}`)}
          </SideAction>
        ))}
      </ButtonRow>
      <Asked record={record} onKept={middle.forget} />
    </Passage>
  )
}

function BeginPan() {
  const { facts, newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [what, setWhat, forget] = useHalfTyped('cooling:what', '')
  const [clock, setClock] = useState('')
  const [batchId, setBatchId] = useState('')
  const [missing, setMissing] = useState(false)
  const batches = Object.values(facts.batches).filter(({ begun }) => begun)
  const keep = async () => {
    if (what.trim() === '') return setMissing(true)
    const zone = deviceZone()
    const typedMin = clockMinutes(clock)
    const instant = typedMin === null ? Date.now() : lastInstantOfClock(typedMin, Date.now(), zone)
    const body: BodyOf<'cooling-noted'> = {
      coolingId: newId(),
      seen: { type: 'off-heat', what: what.trim(), ...(batchId !== '' && { batchId }) },
    }
    if (!(await record.keep('cooling-noted', body, { happenedAt: { instant, zone } }))) return
    forget()
    setClock('')
    setMissing(false)
  }
  return (
    <Form action={say('keeping:screen-pan-keep')} onSubmit={keep}>
      <TextField
        label={say('keeping:screen-pan-what')}
        hint={say('keeping:screen-pan-what-hint')}
        value={what}
        onValue={setWhat}
        error={missing && what.trim() === '' ? say('shell:name-missing') : null}
      />
      <ClockField
        label={say('keeping:screen-pan-off-at')}
        hint={say('keeping:screen-pan-off-at-hint')}
        value={clock}
        onValue={setClock}
      />
      {batches.length > 0 && (
        <ChoiceTags
          legend={say('pantry:put-up-batch')}
          options={[
            { value: '', label: say('pantry:put-up-no-batch') },
            ...batches.map((batch) => ({ value: batch.batchId, label: batch.plan.title })),
          ]}
          value={batchId}
          onValue={setBatchId}
        />
      )}
      <Asked record={record} />
    </Form>
  )
}

function clockText(instant: string, zone: string): string {
  return formatClock(clockAt(Date.parse(instant), zone))
}
