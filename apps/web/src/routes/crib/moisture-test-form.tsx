/** MoistureTestForm: a test of moisture by oven, weight, jar, salt or meter, read at once and then written down. Props: lot. */
import type { BodyOf, CornLotFact } from '@crib/journal'
import { type MoistureForm, moistureTest, percentFraction } from '@crib/planning'
import type { CalcResult } from '@crib/science'
import { useState } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import { localDay } from '../../local-day.ts'
import {
  BigNumber,
  Caution,
  ChoiceTags,
  DateField,
  FlagTag,
  QuantityField,
  Reasons,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { MoistureField, useMoisture, useWritten } from '../keeping/written.tsx'

type By = BodyOf<'moisture-tested'>['by']
const WAYS = ['oven', 'weight', 'closed-jar', 'salt-jar', 'meter'] as const satisfies readonly By[]
const GRAMS = { min: 0, max: 100_000, unit: 'G', source: 'project rule' } as const
const MASS = { min: 0.001, max: 5000, unit: 'Kg', source: 'project rule' } as const
const WARMTH = { min: 0, max: 60, unit: 'C', source: 'project rule' } as const

export function MoistureTestForm({ lot: { lotId } }: { readonly lot: CornLotFact }) {
  const { say, sentence } = useWords()
  const record = useRecord()
  const today = localDay()
  const [by, setBy] = useHalfTyped<By>(`test:${lotId}:by`, 'closed-jar')
  const [testedOn, setTestedOn] = useState(today)
  const fields = useFields(lotId)
  const result = by === 'meter' ? null : read(by, fields)
  const value = result?.ok ? result.values[0] : undefined
  const wetFraction = by === 'meter' ? fields.meter.wetFraction : (value?.value ?? null)
  const isReady = by === 'salt-jar' ? result?.ok === true : wetFraction !== null
  const keep = async () => {
    if (!isReady) return
    const figure = by === 'salt-jar' ? { saltClung: fields.clung } : { wetFraction: wetFraction! }
    if (await record.keep('moisture-tested', { lotId, testedOn, by, ...figure })) fields.forget()
  }
  return (
    <Form action={say('crib:keep-test')} onSubmit={keep} disabled={!isReady}>
      <ChoiceTags
        legend={say('crib:test-by')}
        options={WAYS.map((way) => ({ value: way, label: say(`crib:by-${way}`), note: say(`crib:by-${way}-how`) }))}
        value={by}
        onValue={setBy}
      />
      <DateField label={say('crib:tested-on')} value={testedOn} onValue={setTestedOn} max={today} />
      <FieldsOf by={by} fields={fields} />
      <div aria-live="polite" className="passage-body">
        {value && by !== 'salt-jar' && <BigNumber label={say('crib:moisture')} reckoned={value} />}
        {result && !result.ok && result.refused !== 'missing' && (
          <p role="alert">{result.why.map((why) => sentence(why)).join(' ')}</p>
        )}
        {result?.ok && <Reasons sentences={result.reasons} />}
        {result?.ok && result.warnings.map((warning) => <Caution key={warning.key} sentence={warning} />)}
      </div>
      <Asked record={record} onKept={fields.forget} />
    </Form>
  )
}

function useFields(lotId: string) {
  const dish = useWritten(`test:${lotId}:dish`)
  const before = useWritten(`test:${lotId}:before`)
  const after = useWritten(`test:${lotId}:after`)
  const startMass = useWritten(`test:${lotId}:start`)
  const nowMass = useWritten(`test:${lotId}:now`)
  const warmth = useWritten(`test:${lotId}:warmth`)
  const startMoisture = useMoisture(`test:${lotId}:start-moisture`)
  const meter = useMoisture(`test:${lotId}:meter`)
  const [reads, setReads] = useHalfTyped(`test:${lotId}:reads`, '')
  const [overSalt, setOverSalt] = useHalfTyped(`test:${lotId}:over-salt`, '')
  const [clung, setClung] = useHalfTyped(`test:${lotId}:clung`, false)
  return {
    dish,
    before,
    after,
    startMass,
    nowMass,
    warmth,
    startMoisture,
    meter,
    reads,
    setReads,
    overSalt,
    setOverSalt,
    clung,
    setClung,
    forget: () => {
      for (const field of [dish, before, after, startMass, nowMass, warmth, startMoisture, meter]) field.forget()
      setReads('')
      setOverSalt('')
      setClung(false)
    },
  }
}

type Fields = ReturnType<typeof useFields>

/** What the test shows; a field not filled in yet makes it a refusal called `missing`. */
function read(by: MoistureForm['by'], fields: Fields): CalcResult | null {
  const told = <K extends keyof MoistureForm>(name: K, value: MoistureForm[K] | null): Partial<MoistureForm> =>
    value === null ? {} : ({ [name]: value } as Partial<MoistureForm>)
  const form: MoistureForm = {
    by,
    ...told('dishG', fields.dish.in('G')),
    ...told('withWetG', fields.before.in('G')),
    ...told('withDryG', fields.after.in('G')),
    ...told('startKg', fields.startMass.in('Kg')),
    ...told('startWetFraction', fields.startMoisture.wetFraction),
    ...told('nowKg', fields.nowMass.in('Kg')),
    ...told('temperatureC', fields.warmth.in('C')),
    ...told('readsFraction', percentFraction(fields.reads)),
    ...told('overSaltFraction', percentFraction(fields.overSalt)),
    saltClung: fields.clung,
  }
  try {
    return moistureTest(form)
  } catch (error) {
    // Off the range of the method: its own message names value, limit, unit and source.
    if (!(error instanceof RangeError)) throw error
    return {
      ok: false,
      refused: 'off-range',
      why: [{ key: 'crib:off-range', params: { why: error.message } }],
      askWhom: [],
    }
  }
}

function FieldsOf({ by, fields }: { readonly by: By; readonly fields: Fields }) {
  const { say } = useWords()
  switch (by) {
    case 'oven':
      return (
        <>
          <QuantityField label={say('crib:dish')} measures="mass" {...fields.dish.field} limits={GRAMS} />
          <QuantityField label={say('crib:dish-before')} measures="mass" {...fields.before.field} limits={GRAMS} />
          <QuantityField label={say('crib:dish-after')} measures="mass" {...fields.after.field} limits={GRAMS} />
        </>
      )
    case 'weight':
      return (
        <>
          <QuantityField label={say('crib:weight-then')} measures="mass" {...fields.startMass.field} limits={MASS} />
          <MoistureField label={say('crib:moisture-then')} moisture={fields.startMoisture} />
          <QuantityField label={say('crib:weight-now')} measures="mass" {...fields.nowMass.field} limits={MASS} />
        </>
      )
    case 'meter':
      return <MoistureField label={say('crib:meter-reads')} hint={say('crib:meter-hint')} moisture={fields.meter} />
    case 'closed-jar':
    case 'salt-jar':
      return (
        <>
          <QuantityField
            label={say('crib:jar-warmth')}
            measures="temperature"
            {...fields.warmth.field}
            limits={WARMTH}
          />
          {by === 'closed-jar' ? (
            <>
              <PercentField label={say('crib:reads')} text={fields.reads} onText={fields.setReads} />
              <PercentField
                label={say('crib:over-salt')}
                hint={say('crib:over-salt-hint')}
                text={fields.overSalt}
                onText={fields.setOverSalt}
              />
            </>
          ) : (
            <FlagTag label={say('crib:clung')} value={fields.clung} onValue={fields.setClung} />
          )}
        </>
      )
  }
}

export function PercentField({
  label,
  hint,
  text,
  onText,
}: {
  readonly label: string
  readonly hint?: string
  readonly text: string
  readonly onText: (text: string) => void
}) {
  const { sentence } = useWords()
  const isUnread = text.trim() !== '' && percentFraction(text) === null
  return (
    <TextField
      label={label}
      {...(hint !== undefined && { hint })}
      value={text}
      onValue={onText}
      error={isUnread ? sentence({ key: 'keeping:percent-unread', params: { typed: text.trim() } }) : null}
    />
  )
}
