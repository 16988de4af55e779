/** Canners: the canners at hand with their last gauge test. CannerForm: one more. Props: none. */
import type { BodyOf } from '@crib/journal'
import type { CannerTimings } from '@crib/planning'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { useHalfTyped } from '../half-typed.ts'
import { CountField } from '../parts-of-the-sheet/count-field.tsx'
import { ChoiceTags, FlagTag, TextField } from '../parts-of-the-sheet/fields.tsx'
import { Ledger } from '../parts-of-the-sheet/figure.tsx'
import { Fold } from '../parts-of-the-sheet/fold.tsx'
import { Caution } from '../parts-of-the-sheet/lines.tsx'
import { useWords } from '../words.tsx'
import { TimingsFields, USUAL_TIMINGS } from './canner-timings.tsx'
import { Form } from './form.tsx'
import { Asked, useRecord } from './use-record.tsx'

type Gauge = BodyOf<'canner-recorded'>['gauges'][number]
type WeightLb = NonNullable<BodyOf<'canner-recorded'>['weightsLb']>[number]
type Rim = BodyOf<'canner-recorded'>['rim']

const GAUGES: Record<'dial' | 'weight' | 'both', readonly Gauge[]> = {
  dial: ['dial'],
  weight: ['weight'],
  both: ['dial', 'weight'],
}

const WEIGHTS: readonly WeightLb[] = [5, 10, 15]

export function Canners() {
  const { facts } = useBook()
  const { say } = useWords()
  const canners = Object.values(facts.canners)
  if (canners.length === 0) return null
  return (
    <Ledger
      caption={say('shell:canners-caption')}
      head={[
        say('shell:canner-name'),
        say('shell:canner-gauge'),
        say('shell:canner-holds'),
        say('shell:canner-tested'),
      ]}
      rows={canners.map((canner) => ({
        key: canner.cannerId,
        cells: [
          canner.name,
          canner.gauges.map((gauge) => say(`shell:gauge-${gauge}`)).join(', '),
          say('shell:canner-capacity', { pints: canner.capacityPints, quarts: canner.capacityQuarts }),
          canner.gauges.includes('dial')
            ? (canner.gaugeTests.at(-1)?.testedOn ?? say('shell:gauge-never-tested'))
            : say('shell:gauge-weight-no-test'),
        ],
      }))}
    />
  )
}

export function CannerForm() {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [name, setName, forgetName] = useHalfTyped('canner:name', '')
  const [gauges, setGauges] = useState<keyof typeof GAUGES>('dial')
  const [weightsLb, setWeightsLb] = useState<readonly WeightLb[]>(WEIGHTS)
  const [rim, setRim] = useState<Rim>('gasket')
  const [electric, setElectric] = useState(false)
  const [capacityQuarts, setQuarts] = useState(7)
  const [capacityPints, setPints] = useState(9)
  const [timingsMin, setTimings, forgetTimings] = useHalfTyped<CannerTimings | null>('canner:timings', null)
  const [missing, setMissing] = useState(false)

  const keep = async () => {
    if (name.trim() === '') return setMissing(true)
    const kept = await record.keep('canner-recorded', {
      cannerId: newId(),
      name: name.trim(),
      gauges: GAUGES[gauges],
      ...(gauges !== 'dial' && weightsLb.length > 0 && { weightsLb: [...weightsLb] }),
      rim,
      electric,
      capacityPints,
      capacityQuarts,
      ...(timingsMin && { timingsMin }),
    })
    if (kept) forget()
  }
  const forget = () => {
    forgetName()
    forgetTimings()
    setMissing(false)
  }
  return (
    <Form action={say('shell:canner-keep')} onSubmit={keep}>
      <TextField
        label={say('shell:canner-name')}
        hint={say('shell:canner-name-hint')}
        value={name}
        onValue={setName}
        required
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      <ChoiceTags
        legend={say('shell:canner-gauge')}
        options={(['dial', 'weight', 'both'] as const).map((value) => ({ value, label: say(`shell:gauge-${value}`) }))}
        value={gauges}
        onValue={setGauges}
      />
      {gauges !== 'dial' && (
        <fieldset className="field">
          <legend>{say('shell:canner-weights')}</legend>
          <div className="tags">
            {WEIGHTS.map((lb) => (
              <FlagTag
                key={lb}
                label={say('shell:canner-weight', { lb })}
                value={weightsLb.includes(lb)}
                onValue={(atHand) =>
                  setWeightsLb(WEIGHTS.filter((one) => (one === lb ? atHand : weightsLb.includes(one))))
                }
              />
            ))}
          </div>
        </fieldset>
      )}
      <ChoiceTags
        legend={say('shell:canner-rim')}
        options={(['gasket', 'metal'] as const).map((value) => ({ value, label: say(`shell:rim-${value}`) }))}
        value={rim}
        onValue={setRim}
      />
      {rim === 'metal' && <Caution>{say('shell:rim-metal-care')}</Caution>}
      <CountField label={say('shell:canner-quarts')} value={capacityQuarts} onValue={setQuarts} max={200} />
      <CountField label={say('shell:canner-pints')} value={capacityPints} onValue={setPints} max={200} />
      <FlagTag label={say('shell:canner-electric')} value={electric} onValue={setElectric} />
      <Fold title={say('canner:timing-fold')}>
        <p className="field-hint">{say('canner:timing-lead')}</p>
        <TimingsFields value={timingsMin ?? USUAL_TIMINGS} onValue={setTimings} />
      </Fold>
      <Asked record={record} onKept={forget} />
    </Form>
  )
}
