/** PutUpForm: something put on the shelf without a walk or a canner run behind it. Props: none. */
import type { BodyOf } from '@crib/journal'
import { convert, type Quantity } from '@crib/science'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { ChoiceTags, CountField, QuantityField, SideAction, TextField } from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

/** Jars come from a canner run, with what was done; they are not put up by hand here. */
const FORMS = ['fridge', 'freezer', 'dried', 'flour', 'roasted'] as const
const LIMIT = { min: 0.01, max: 1000, unit: 'Kg', source: 'project rule' } as const

export function PutUpForm() {
  const { facts, newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [form, setForm] = useState<(typeof FORMS)[number]>('freezer')
  const [count, setCount] = useState(1)
  const [place, setPlace] = useState('')
  const [text, setText] = useState('')
  const [each, setEach] = useState<Quantity | null>(null)
  const [code, setCode] = useState('')
  const [batchId, setBatchId] = useState<string>('')
  const [missing, setMissing] = useState(false)
  const batches = Object.values(facts.batches)
  const keep = async () => {
    if (code.trim() === '') return setMissing(true)
    const body: BodyOf<'food-put-up'> = {
      lotId: newId(),
      loadCode: code.trim(),
      form,
      count,
      ...(batchId && { batchId }),
      ...(place.trim() && { place: place.trim() }),
      ...(each && { massKg: convert(each.value, each.unit, 'Kg') }),
    }
    if (!(await record.keep('food-put-up', body))) return
    setCode('')
    setText('')
    setMissing(false)
  }
  return (
    <>
      <ChoiceTags
        legend={say('pantry:put-up-form')}
        options={FORMS.map((value) => ({ value, label: say(`pantry:put-up-as-${value}`) }))}
        value={form}
        onValue={setForm}
      />
      <TextField
        label={say('pantry:put-up-code')}
        hint={say('pantry:put-up-code-hint')}
        value={code}
        onValue={setCode}
        error={missing && code.trim() === '' ? say('shell:name-missing') : null}
      />
      <CountField label={say('pantry:put-up-count')} value={count} onValue={setCount} min={1} max={10_000} />
      <QuantityField
        label={say('pantry:put-up-weight')}
        measures="mass"
        bareNumberUnit="Lb"
        text={text}
        onText={setText}
        onQuantity={setEach}
        limits={LIMIT}
      />
      <TextField label={say('pantry:put-up-place')} value={place} onValue={setPlace} />
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
      <SideAction onClick={keep}>{say('pantry:put-up')}</SideAction>
      <Asked record={record} />
    </>
  )
}
