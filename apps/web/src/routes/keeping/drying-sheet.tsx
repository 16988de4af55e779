/** Drying: each tray or braid with the weight to stop at, weighed as it goes; and beginning one. */
import type { DryingFact } from '@crib/journal'
import { type DryingTray, dryingPlan, dryingTray } from '@crib/planning'
import type { MessageKey } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ButtonRow,
  Caution,
  ChoiceTags,
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
import { useWords } from '../../words.tsx'
import { DryingFigure } from './drying-figure.tsx'
import { ToldAir } from './told-air.tsx'
import { MoistureField, useMoisture, useWritten } from './written.tsx'

const LIMIT = { min: 0.001, max: 5000, unit: 'Kg', source: 'project rule' } as const
const WHATS = ['kernels', 'hominy', 'ears'] as const

export function DryingSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const trays = Object.values(facts.dryings).filter(({ ended }) => ended === null)
  return (
    <Sheet title={say('keeping:screen-drying')} drawing="braid" lead={say('keeping:screen-drying-lead')}>
      {trays.map((tray) => (
        <Tray key={tray.dryingId} drying={tray} />
      ))}
      <Passage
        title={say('keeping:screen-tray-begin')}
        margin={<MarginNote>{say('keeping:screen-tray-margin')}</MarginNote>}
      >
        {trays.length === 0 ? (
          <BeginTray />
        ) : (
          <Fold title={say('keeping:screen-tray-another')}>
            <BeginTray />
          </Fold>
        )}
      </Passage>
    </Sheet>
  )
}

const ENDS = ['dry', 'stopped', 'thrown-out'] as const

function Tray({ drying }: { readonly drying: DryingFact }) {
  const { say } = useWords()
  const record = useRecord()
  const { dryingId, name } = drying
  const tray = dryingTray(drying)
  const [stopAt, ...others] = tray.values
  const weight = useWritten(`drying:${dryingId}:weight`)
  const massKg = weight.in('Kg')
  const keep = async () => {
    if (massKg === null) return
    if (await record.keep('drying-noted', { dryingId, seen: { type: 'weighed', massKg } })) weight.forget()
  }
  return (
    <Passage title={name}>
      {stopAt && <BigNumber label={say('keeping:screen-stop-at')} reckoned={stopAt} size="huge" />}
      {tray.isReady && (
        <p role="status">
          <strong>{say('keeping:screen-tray-ready')}</strong>
        </p>
      )}
      <form
        className="passage-body"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void keep()
        }}
      >
        <QuantityField
          label={say('keeping:screen-weighs-now')}
          hint={say('keeping:screen-weighs-now-hint')}
          measures="mass"
          {...weight.field}
          limits={LIMIT}
        />
        <SideAction disabled={massKg === null}>{say('keeping:screen-keep-weight')}</SideAction>
      </form>
      <Asked record={record} onKept={weight.forget} />
      <NumberRow>
        {others.map((value) => (
          <BigNumber
            key={value.id}
            label={say(`keeping:screen-${value.id}` as MessageKey)}
            reckoned={value}
            size="small"
          />
        ))}
      </NumberRow>
      {stopAt && drying.weights.length > 0 && <DryingFigure drying={drying} stopAt={stopAt} />}
      {tray.warnings.map((warning) => (
        <Caution key={warning.key} sentence={warning} />
      ))}
      <Reasons sentences={tray.reasons.filter(({ key }) => key !== 'keeping:hours-need-air')} />
      {drying.what === 'kernels' && stopAt && !tray.isReady && (
        <Fold title={say('keeping:screen-air-title')}>
          <ToldAir name={dryingId} {...trayNow(drying, tray)} />
        </Fold>
      )}
      <ButtonRow>
        {ENDS.map((how) => (
          <SideAction
            key={how}
            onClick={() => void record.keep('drying-noted', { dryingId, seen: { type: 'ended', how } })}
          >
            {say(`keeping:screen-dried-${how}`)}
          </SideAction>
        ))}
      </ButtonRow>
    </Passage>
  )
}

/** As it hangs now: by its last weight, and the moisture that tells. */
function trayNow(drying: DryingFact, { values }: DryingTray) {
  const toldOf = (id: string) => values.find((value) => value.id === id)?.value
  return {
    massKg: toldOf('weighsKg') ?? drying.massKg,
    startWetFraction: toldOf('moistureFraction') ?? drying.startWetFraction,
    endWetFraction: drying.endWetFraction,
  }
}

function BeginTray() {
  const { newId } = useBook()
  const { say, sentence } = useWords()
  const record = useRecord()
  const [name, setName, forgetName] = useHalfTyped('drying:name', '')
  const [what, setWhat] = useState<(typeof WHATS)[number]>('hominy')
  const weight = useWritten('drying:mass')
  const start = useMoisture('drying:start')
  const end = useMoisture('drying:end')
  const [missing, setMissing] = useState(false)
  const massKg = weight.in('Kg')
  const startWetFraction = start.wetFraction
  const endWetFraction = end.wetFraction
  const told =
    massKg !== null && startWetFraction !== null && endWetFraction !== null
      ? { what, massKg, startWetFraction, endWetFraction }
      : null
  const isDrier = told !== null && told.endWetFraction < told.startWetFraction
  const plan = told && isDrier ? dryingPlan(told) : null
  const keep = async () => {
    if (name.trim() === '' || told === null || !isDrier) return setMissing(true)
    const seen = { type: 'begun', name: name.trim(), ...told } as const
    if (!(await record.keep('drying-noted', { dryingId: newId(), seen }))) return
    for (const field of [weight, start, end]) field.forget()
    forgetName()
    setMissing(false)
  }
  return (
    <Form action={say('keeping:screen-tray-keep')} onSubmit={keep}>
      <TextField
        label={say('keeping:screen-tray-name')}
        hint={say('keeping:screen-tray-name-hint')}
        value={name}
        onValue={setName}
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      <ChoiceTags
        legend={say('keeping:screen-tray-what')}
        options={WHATS.map((value) => ({ value, label: say(`keeping:screen-what-${value}`) }))}
        value={what}
        onValue={setWhat}
      />
      <QuantityField
        label={say('keeping:screen-tray-mass')}
        hint={say('keeping:screen-weighs-now-hint')}
        measures="mass"
        {...weight.field}
        limits={LIMIT}
      />
      <MoistureField
        label={say('keeping:screen-moisture-start')}
        hint={say('keeping:screen-moisture-start-hint')}
        moisture={start}
      />
      <MoistureField
        label={say('keeping:screen-moisture-end')}
        hint={say('keeping:screen-moisture-end-hint')}
        moisture={end}
      />
      <div aria-live="polite" className="passage-body">
        {told && !isDrier && <p>{sentence({ key: 'keeping:not-drier' })}</p>}
        {plan && <BigNumber label={say('keeping:screen-stop-at')} reckoned={plan.values[0]!} size="huge" />}
      </div>
      {told && isDrier && what === 'kernels' && (
        <Fold title={say('keeping:screen-air-title')}>
          <ToldAir name="begun" {...told} />
        </Fold>
      )}
      {missing && told === null && <p role="alert">{say('keeping:screen-tray-needs')}</p>}
      <Asked record={record} />
    </Form>
  )
}
