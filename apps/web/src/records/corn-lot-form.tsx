/** CornLotForm: brings corn into the book, as ears or shelled, by weight or by measure. Props: onKept(lotId)?. */
import { convert, type Quantity, shelledCornKg, UNITS } from '@crib/science'
import { formatWeight } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { useHalfTyped } from '../half-typed.ts'
import { ChoiceTags, FlagTag, TextField } from '../parts-of-the-sheet/fields.tsx'
import { Caution } from '../parts-of-the-sheet/lines.tsx'
import { QuantityField } from '../parts-of-the-sheet/quantity-field.tsx'
import { useWords } from '../words.tsx'
import { Form } from './form.tsx'
import { Asked, useRecord } from './use-record.tsx'

const TYPES = ['flint', 'flour', 'dent', 'popcorn', 'unknown'] as const
const LIMIT = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const

export function CornLotForm({ onKept }: { readonly onKept?: (lotId: string) => void }) {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [name, setName, forgetName] = useHalfTyped('corn-lot:name', '')
  const [text, setText, forgetText] = useHalfTyped('corn-lot:amount', '')
  const [amount, setAmount] = useState<Quantity | null>(null)
  const [form, setForm] = useState<'ears' | 'shelled'>('shelled')
  const [cornType, setCornType] = useState<(typeof TYPES)[number]>('flint')
  const [treatedSeed, setTreatedSeed] = useState(false)
  const [missing, setMissing] = useState(false)

  const byVolume = amount !== null && UNITS[amount.unit].measure === 'volume'
  const keep = async () => {
    if (!amount || name.trim() === '') return setMissing(true)
    const lotId = newId()
    const kept = await record.keep('corn-lot-brought-in', {
      lotId,
      name: name.trim(),
      cornType,
      form,
      ...(byVolume ? { volumeL: convert(amount.value, amount.unit, 'L') } : {}),
      ...massOf(amount, form),
      asTyped: text.trim(),
      treatedSeed,
    })
    if (!kept) return
    forgetName()
    forgetText()
    setTreatedSeed(false)
    setMissing(false)
    onKept?.(lotId)
  }
  return (
    <Form action={say('shell:corn-keep')} onSubmit={keep}>
      <TextField
        label={say('shell:corn-name')}
        hint={say('shell:corn-name-hint')}
        value={name}
        onValue={setName}
        required
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      <ChoiceTags
        legend={say('shell:corn-form')}
        options={[
          { value: 'shelled', label: say('shell:corn-shelled') },
          { value: 'ears', label: say('shell:corn-ears') },
        ]}
        value={form}
        onValue={setForm}
      />
      <QuantityField
        key={record.keptCount} // anew once written down: an empty field is then no mistake
        label={say('shell:amount')}
        hint={say('shell:corn-amount-hint')}
        measures={['mass', 'volume']}
        text={text}
        onText={setText}
        onQuantity={setAmount}
        limits={LIMIT}
        required
      />
      {byVolume && form === 'shelled' && (
        <p className="field-hint">
          {say('shell:corn-weight-by-rule', {
            weight: formatWeight(massOf(amount, form).massKg ?? 0),
          })}
        </p>
      )}
      {byVolume && form === 'ears' && <p className="field-hint">{say('shell:corn-ears-need-weight')}</p>}
      <ChoiceTags
        legend={say('shell:corn-type')}
        options={TYPES.map((value) => ({ value, label: say(`shell:corn-type-${value}`) }))}
        value={cornType}
        onValue={setCornType}
      />
      <FlagTag label={say('shell:corn-treated')} value={treatedSeed} onValue={setTreatedSeed} />
      {treatedSeed && <Caution>{say('shell:corn-treated-care')}</Caution>}
      {missing && !amount && <p role="alert">{say('shell:quantity-empty')}</p>}
      <Asked record={record} />
    </Form>
  )
}

/** A measure of ears says little of their weight; shelled kernels have the trade's own figure. */
function massOf({ value, unit }: Quantity, form: 'ears' | 'shelled'): { readonly massKg?: number } {
  if (UNITS[unit].measure === 'mass') return { massKg: convert(value, unit, 'Kg') }
  return form === 'shelled' ? { massKg: shelledCornKg(convert(value, unit, 'L')) } : {}
}
