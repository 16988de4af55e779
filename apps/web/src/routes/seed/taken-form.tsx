/** TakenForm: kernels given away or sown. Props: choice (which lot), today. */
import { useHalfTyped } from '../../half-typed.ts'
import { ChoiceTags, CountField, DateField, TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

interface Typed {
  readonly how: 'given' | 'sown'
  readonly day: string
  readonly kernelsCount: number
  readonly toWhom: string
}

export function TakenForm({ choice, today }: { readonly choice: LotChoice; readonly today: string }) {
  const { say } = useWords()
  const record = useRecord()
  const { lot } = choice
  const [typed, setTyped, forget] = useHalfTyped<Typed>(`seed-taken:${lot?.seedLotId}`, {
    how: 'given',
    day: today,
    kernelsCount: 0,
    toWhom: '',
  })
  if (!lot) return null
  const { how, day, kernelsCount, toWhom } = typed
  const change = (more: Partial<Typed>) => setTyped({ ...typed, ...more })
  const keep = async () => {
    const taken = { seedLotId: lot.seedLotId, kernelsCount }
    const kept =
      how === 'given'
        ? await record.keep('seed-given', { ...taken, givenOn: day, ...(toWhom.trim() && { toWhom: toWhom.trim() }) })
        : await record.keep('seed-sown', { ...taken, sownOn: day })
    if (kept) forget(typed)
  }
  return (
    <Form action={say('seed:screen-keep-taken')} onSubmit={keep} disabled={kernelsCount === 0}>
      <WhichLot {...choice} />
      <ChoiceTags
        legend={say('seed:screen-taken-how')}
        options={(['given', 'sown'] as const).map((value) => ({ value, label: say(`seed:screen-taken-${value}`) }))}
        value={how}
        onValue={(now) => change({ how: now })}
      />
      <DateField label={say('seed:screen-taken-on')} value={day} onValue={(now) => change({ day: now })} max={today} />
      <CountField
        label={say('seed:screen-taken-kernels')}
        value={kernelsCount}
        onValue={(now) => change({ kernelsCount: now })}
        max={5_000_000}
      />
      {how === 'given' && (
        <TextField label={say('seed:screen-to-whom')} value={toWhom} onValue={(now) => change({ toWhom: now })} />
      )}
      <Asked record={record} onKept={() => forget()} />
    </Form>
  )
}
