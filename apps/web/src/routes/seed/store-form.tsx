/** StoreForm: how dry the kernels are and how warm the place is, as found on a day. Props: choice (which lot), today. */
import { convert, type Quantity } from '@crib/science'
import { useState } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import { DateField, PercentField, QuantityField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

/** The book's own limit. */
const WARMTH_LIMIT = { min: -40, max: 50, unit: 'C', source: 'project rule' } as const

/** A day not chosen is today. */
const FRESH = { notedOn: '', moisturePercent: 0, warmthText: '' }

export function StoreForm({ choice, today }: { readonly choice: LotChoice; readonly today: string }) {
  const { say } = useWords()
  const record = useRecord()
  const { lot } = choice
  const [typed, setTyped, forget] = useHalfTyped(`seed-store:${lot?.seedLotId}`, FRESH)
  const change = (more: Partial<typeof FRESH>) => setTyped({ ...typed, ...more })
  const [warmth, setWarmth] = useState<Quantity | null>(null)
  if (!lot) return null
  const { moisturePercent, warmthText } = typed
  const notedOn = typed.notedOn || today
  const keep = async () => {
    const kept = await record.keep('seed-store-noted', {
      seedLotId: lot.seedLotId,
      notedOn,
      ...(warmth && { storeC: convert(warmth.value, warmth.unit, 'C') }),
      ...(moisturePercent > 0 && { kernelWetFraction: moisturePercent / 100 }),
    })
    if (kept) forget(typed)
  }
  return (
    <Form
      action={say('seed:screen-keep-store')}
      onSubmit={keep}
      disabled={(warmth === null && moisturePercent === 0) || (warmthText.trim() !== '' && warmth === null)}
    >
      <WhichLot {...choice} />
      <DateField
        label={say('seed:screen-noted-on')}
        value={notedOn}
        onValue={(now) => change({ notedOn: now })}
        max={today}
      />
      <PercentField
        label={say('seed:screen-store-dry')}
        hint={say('seed:screen-store-dry-hint')}
        value={moisturePercent}
        onValue={(now) => change({ moisturePercent: now })}
        max={40}
      />
      <QuantityField
        label={say('seed:screen-store-warm')}
        hint={say('seed:screen-store-warm-hint')}
        measures="temperature"
        allowNegative
        text={warmthText}
        onText={(now) => change({ warmthText: now })}
        onQuantity={setWarmth}
        limits={WARMTH_LIMIT}
      />
      <Asked record={record} onKept={() => forget()} />
    </Form>
  )
}
