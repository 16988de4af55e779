/**
 * WorkForm: something ground or roasted, written down with what went in and what came out: the new lot, how it was done,
 * and what its source gave. Props: work.
 */

import type { BodyOf } from '@crib/journal'
import { nextKettleCode } from '@crib/planning'
import type { MessageKey } from '@crib/wording'
import { formatWeight } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { deviceZone } from '../../book/keeper.ts'
import { useHalfTyped } from '../../half-typed.ts'
import { ChoiceTags, CountField, QuantityField, TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked } from '../../records/use-record.tsx'
import type { Line } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import { useLines } from './use-lines.ts'
import { useWritten } from './written.tsx'

const MASS = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const
const WARMTH = { min: 20, max: 300, unit: 'C', source: 'project rule' } as const
const ROASTS = ['roasted-dry', 'roasted-in-oil'] as const

export function WorkForm({ work }: { readonly work: 'ground' | 'roasted' }) {
  const { facts, newId } = useBook()
  const { say } = useWords()
  const lines = useLines()
  const sources = Object.values(facts.foodLots).filter(
    ({ remainingKg = 0, form }) => remainingKg > 0 && form !== 'jar' && form !== 'flour' && form !== 'roasted',
  )
  const [fromLotId, setFrom] = useState('')
  const [roast, setRoast] = useState<(typeof ROASTS)[number]>('roasted-dry')
  const [count, setCount] = useState(1)
  const [passesCount, setPasses] = useState(1)
  const [minutes, setMinutes] = useState(0)
  const [place, setPlace, forgetPlace] = useHalfTyped(`${work}:place`, '')
  const [note, setNote, forgetNote] = useHalfTyped(`${work}:note`, '')
  const inWeight = useWritten(`${work}:in`)
  const outWeight = useWritten(`${work}:out`)
  const warmth = useWritten(`${work}:warmth`)
  const [missing, setMissing] = useState(false)
  const inKg = inWeight.in('Kg')
  const outKg = outWeight.in('Kg')
  const temperatureC = warmth.in('C')
  const from = sources.find(({ lotId }) => lotId === fromLotId)
  const keep = async () => {
    if (inKg === null || outKg === null) return setMissing(true)
    const lotId = newId()
    const put: BodyOf<'food-put-up'> = {
      lotId,
      form: work === 'ground' ? 'flour' : 'roasted',
      count,
      massKg: outKg,
      loadCode: nextKettleCode(facts, new Date().toLocaleDateString('en-CA', { timeZone: deviceZone() })),
      ...(from?.batchId !== undefined && { batchId: from.batchId }),
      ...(place.trim() && { place: place.trim() }),
    }
    const worked: BodyOf<'food-worked'> = {
      lotId,
      inKg,
      outKg,
      how: work === 'ground' ? 'ground' : roast,
      ...(from && { fromLotId: from.lotId }),
      ...(work === 'ground' && { passesCount }),
      ...(work === 'roasted' && minutes > 0 && { minutes }),
      ...(work === 'roasted' && temperatureC !== null && { temperatureC }),
      ...(note.trim() && { note: note.trim() }),
    }
    const taken: readonly Line[] = from
      ? [['lot-used', { lotId: from.lotId, massKg: inKg, how: 'made-into', intoLotId: lotId }]]
      : []
    if (await lines.keepAll([['food-put-up', put], ['food-worked', worked], ...taken])) forget()
  }
  const forget = () => {
    for (const field of [inWeight, outWeight, warmth]) field.forget()
    forgetPlace()
    forgetNote()
    setMissing(false)
  }
  return (
    <Form action={say('shell:write-down')} onSubmit={keep}>
      {sources.length > 0 && (
        <ChoiceTags
          legend={say('keeping:screen-made-from')}
          options={[
            { value: '', label: say('keeping:screen-made-from-none') },
            ...sources.map(({ lotId, loadCode, form, remainingKg = 0 }) => ({
              value: lotId,
              label: `${loadCode}, ${say(`pantry:put-up-as-${form}` as MessageKey)}, ${formatWeight(remainingKg)}`,
            })),
          ]}
          value={fromLotId}
          onValue={setFrom}
        />
      )}
      {work === 'roasted' && (
        <ChoiceTags
          legend={say('keeping:screen-roast-how')}
          options={ROASTS.map((value) => ({ value, label: say(`keeping:screen-${value}`) }))}
          value={roast}
          onValue={setRoast}
        />
      )}
      <QuantityField label={say('keeping:screen-went-in')} measures="mass" {...inWeight.field} limits={MASS} />
      <QuantityField label={say('keeping:screen-came-out')} measures="mass" {...outWeight.field} limits={MASS} />
      {work === 'ground' ? (
        <CountField label={say('keeping:screen-passes')} value={passesCount} onValue={setPasses} min={1} max={50} />
      ) : (
        <>
          <QuantityField
            label={say('keeping:screen-roast-warmth')}
            measures="temperature"
            {...warmth.field}
            limits={WARMTH}
          />
          <CountField label={say('keeping:screen-roast-minutes')} value={minutes} onValue={setMinutes} max={1440} />
        </>
      )}
      <CountField label={say('pantry:put-up-count')} value={count} onValue={setCount} min={1} max={10_000} />
      <TextField label={say('pantry:put-up-place')} value={place} onValue={setPlace} />
      <TextField label={say('keeping:screen-note')} value={note} onValue={setNote} lines={2} maxLength={10_000} />
      {missing && (inKg === null || outKg === null) && <p role="alert">{say('keeping:screen-weights-needed')}</p>}
      <Asked record={lines} onKept={forget} />
    </Form>
  )
}
