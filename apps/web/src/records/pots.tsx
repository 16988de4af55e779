/** Pots: the pots at hand and a form for one more. Props: none. */
import { convert, type Quantity } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { useHalfTyped } from '../half-typed.ts'
import { ChoiceTags, TextField } from '../parts-of-the-sheet/fields.tsx'
import { Ledger } from '../parts-of-the-sheet/figure.tsx'
import { Caution } from '../parts-of-the-sheet/lines.tsx'
import { QuantityField } from '../parts-of-the-sheet/quantity-field.tsx'
import { useWords } from '../words.tsx'
import { Form } from './form.tsx'
import { Asked, useRecord } from './use-record.tsx'

const MATERIALS = ['stainless', 'enamel', 'cast-iron', 'other', 'aluminium'] as const
type Material = (typeof MATERIALS)[number]
const LIMIT = { min: 0.5, max: 500, unit: 'L', source: 'project rule' } as const

export function Pots() {
  const { facts } = useBook()
  const { say } = useWords()
  const pots = Object.values(facts.pots)
  if (pots.length === 0) return null
  return (
    <Ledger
      caption={say('shell:pots-caption')}
      head={[say('shell:pot-name'), say('shell:pot-holds'), say('shell:pot-material')]}
      rows={pots.map((pot) => ({
        key: pot.potId,
        cells: [
          pot.name,
          { number: formatQuantity({ value: round(convert(pot.volumeL, 'L', 'LiquidQt')), unit: 'LiquidQt' }) },
          say(`shell:pot-${pot.material}`),
        ],
      }))}
    />
  )
}

export function PotForm() {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [name, setName, forgetName] = useHalfTyped('pot:name', '')
  const [text, setText, forgetText] = useHalfTyped('pot:holds', '')
  const [holds, setHolds] = useState<Quantity | null>(null)
  const [material, setMaterial] = useState<Material>('stainless')
  const [missing, setMissing] = useState(false)

  const keep = async () => {
    if (!holds || name.trim() === '' || material === 'aluminium') return setMissing(true)
    const volumeL = convert(holds.value, holds.unit, 'L')
    if (!(await record.keep('pot-recorded', { potId: newId(), name: name.trim(), volumeL, material }))) return
    forgetName()
    forgetText()
    setMissing(false)
  }
  return (
    <Form action={say('shell:pot-keep')} onSubmit={keep} disabled={material === 'aluminium'}>
      <TextField
        label={say('shell:pot-name')}
        hint={say('shell:pot-name-hint')}
        value={name}
        onValue={setName}
        required
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      <QuantityField
        key={record.keptCount} // as in corn-lot-form
        label={say('shell:pot-holds')}
        hint={say('shell:pot-holds-hint')}
        measures="volume"
        text={text}
        onText={setText}
        onQuantity={setHolds}
        limits={LIMIT}
        required
      />
      <ChoiceTags
        legend={say('shell:pot-material')}
        options={MATERIALS.map((value) => ({ value, label: say(`shell:pot-${value}`) }))}
        value={material}
        onValue={setMaterial}
      />
      {material === 'aluminium' && <Caution>{say('shell:pot-aluminium-care')}</Caution>}
      {missing && !holds && <p role="alert">{say('shell:quantity-empty')}</p>}
      <Asked record={record} />
    </Form>
  )
}

function round(value: number): number {
  return Math.round(value * 100) / 100
}
