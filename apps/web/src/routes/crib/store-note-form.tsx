/** StoreNoteForm: how a lot lies from a day on, and what was seen or done there: insects, a week in the freezer. Props: lotId. */
import { percentFraction } from '@crib/planning'
import { useState } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import { localDay } from '../../local-day.ts'
import { DateField, QuantityField, Reasons, TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { useWritten } from '../keeping/written.tsx'
import { PercentField } from './moisture-test-form.tsx'

const WARMTH = { min: -40, max: 70, unit: 'C', source: 'project rule' } as const

export function StoreNoteForm({ lotId }: { readonly lotId: string }) {
  const { say } = useWords()
  const record = useRecord()
  const today = localDay()
  const [notedOn, setNotedOn] = useState(today)
  const warmth = useWritten(`store:${lotId}:warmth`)
  const [humidity, setHumidity] = useHalfTyped(`store:${lotId}:humidity`, '')
  const [place, setPlace] = useHalfTyped(`store:${lotId}:place`, '')
  const [note, setNote] = useHalfTyped(`store:${lotId}:note`, '')
  const temperatureC = warmth.in('C')
  const humidityFraction = percentFraction(humidity)
  const forget = () => {
    warmth.forget()
    for (const set of [setHumidity, setPlace, setNote]) set('')
  }
  const keep = async () => {
    if (temperatureC === null) return
    const kept = await record.keep('store-condition-noted', {
      lotId,
      notedOn,
      temperatureC,
      ...(humidityFraction !== null && { humidityFraction }),
      ...(place.trim() && { place: place.trim() }),
      ...(note.trim() && { note: note.trim() }),
    })
    if (kept) forget()
  }
  return (
    <Form
      action={say('crib:keep-note')}
      onSubmit={keep}
      disabled={temperatureC === null || (humidity.trim() !== '' && humidityFraction === null)}
    >
      <DateField label={say('crib:noted-on')} value={notedOn} onValue={setNotedOn} max={today} />
      <QuantityField
        label={say('crib:store-warmth')}
        hint={say('crib:store-warmth-hint')}
        measures="temperature"
        allowNegative
        {...warmth.field}
        limits={WARMTH}
      />
      <PercentField label={say('crib:store-humidity')} text={humidity} onText={setHumidity} />
      <TextField label={say('crib:store-place')} value={place} onValue={setPlace} />
      <TextField
        label={say('crib:store-note')}
        hint={say('crib:store-note-hint')}
        value={note}
        onValue={setNote}
        lines={2}
        maxLength={10_000}
      />
      <Reasons
        sentences={[{ key: 'keeping:insects-freeze' }, { key: 'keeping:insects-awake' }]}
        title={say('crib:insects')}
      />
      <Asked record={record} onKept={forget} />
    </Form>
  )
}
