/** TakenForm: kernels given away or sown. Props: choice (which lot), today. */
import { useState } from 'react'
import { ChoiceTags, CountField, DateField, TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

export function TakenForm({ choice, today }: { readonly choice: LotChoice; readonly today: string }) {
  const { say } = useWords()
  const record = useRecord()
  const [how, setHow] = useState<'given' | 'sown'>('given')
  const [day, setDay] = useState(today)
  const [kernelsCount, setKernelsCount] = useState(0)
  const [toWhom, setToWhom] = useState('')
  const { lot } = choice
  if (!lot) return null
  const forget = () => {
    setKernelsCount(0)
    setToWhom('')
  }
  const keep = async () => {
    const taken = { seedLotId: lot.seedLotId, kernelsCount }
    const kept =
      how === 'given'
        ? await record.keep('seed-given', { ...taken, givenOn: day, ...(toWhom.trim() && { toWhom: toWhom.trim() }) })
        : await record.keep('seed-sown', { ...taken, sownOn: day })
    if (kept) forget()
  }
  return (
    <Form action={say('seed:screen-keep-taken')} onSubmit={keep} disabled={kernelsCount === 0}>
      <WhichLot {...choice} />
      <ChoiceTags
        legend={say('seed:screen-taken-how')}
        options={(['given', 'sown'] as const).map((value) => ({ value, label: say(`seed:screen-taken-${value}`) }))}
        value={how}
        onValue={setHow}
      />
      <DateField label={say('seed:screen-taken-on')} value={day} onValue={setDay} max={today} />
      <CountField
        label={say('seed:screen-taken-kernels')}
        value={kernelsCount}
        onValue={setKernelsCount}
        max={5_000_000}
      />
      {how === 'given' && <TextField label={say('seed:screen-to-whom')} value={toWhom} onValue={setToWhom} />}
      <Asked record={record} onKept={forget} />
    </Form>
  )
}
