/** Where the hominy goes: into jars by a canner run, or kept at once, each under a code of its own. */
import type { FoodLotFact } from '@crib/journal'
import { dayOfInstant, nextKettleCode } from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  ButtonRow,
  ChoiceTags,
  CountField,
  Fold,
  Passage,
  QuantityField,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { upperFirst } from '../../upper-first.ts'
import { useWords } from '../../words.tsx'
import type { PotAt } from './pot-at.ts'

/** Fresh, frozen and dried first. Jars have a run of their own. */
const FORMS = ['tonight', 'fridge', 'freezer', 'dried', 'flour', 'roasted'] as const
type Kept = (typeof FORMS)[number]
const LIMIT = { min: 0, max: 2000, unit: 'Kg', source: 'project rule' } as const

export function Endings({ at, isDue }: { readonly at: PotAt; readonly isDue: boolean }) {
  const { facts } = useBook()
  const { say } = useWords()
  const { batch, plan } = at
  const lots = Object.values(facts.foodLots).filter(({ batchId }) => batchId === batch.batchId)
  const wantsJars = !plan || plan.input.endings.some(({ ending }) => ending === 'jars')
  return (
    <Passage title={say('kettle:walk-endings')}>
      {lots.length > 0 && (
        <ul className="reasons">
          {lots.map((lot) => (
            <li key={lot.lotId}>
              {say('kettle:walk-end-line', { code: lot.loadCode, count: lot.count, form: formWords(lot, say) })}
            </li>
          ))}
        </ul>
      )}
      <Fold title={say('kettle:walk-end-kept')} open={isDue && !wantsJars}>
        <KeepForm at={at} />
      </Fold>
      {wantsJars && (
        <ButtonRow>
          <SideAction href={`/canner/run?batch=${batch.batchId}`}>
            {upperFirst(say('kettle:walk-endings-jars'))}
          </SideAction>
        </ButtonRow>
      )}
    </Passage>
  )
}

function formWords({ form }: FoodLotFact, say: ReturnType<typeof useWords>['say']): string {
  return form === 'jar' ? say('canner:run-screen-put-up-jar') : say(`kettle:walk-end-${form}`)
}

function KeepForm({ at }: { readonly at: PotAt }) {
  const { facts, newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const { batch, plan, zone } = at
  const planned = FORMS.find((form) => plan?.input.endings.some(({ ending }) => ending === form))
  const [form, setForm] = useState<Kept>(planned ?? 'freezer')
  const [count, setCount] = useState(1)
  const [text, setText] = useState('')
  const [weight, setWeight] = useState<Quantity | null>(null)
  const [place, setPlace] = useState('')
  const keep = async () => {
    const kept = await record.keep('food-put-up', {
      lotId: newId(),
      batchId: batch.batchId,
      loadCode: nextKettleCode(facts, dayOfInstant(Date.now(), zone)),
      form,
      count,
      ...(weight && { massKg: convert(weight.value, weight.unit, 'Kg') }),
      ...(place.trim() !== '' && { place: place.trim() }),
    })
    if (!kept) return
    setText('')
    setPlace('')
  }
  return (
    <Form action={say('kettle:walk-end-keep')} onSubmit={keep} disabled={text.trim() !== '' && weight === null}>
      <ChoiceTags
        legend={say('kettle:walk-end-kept')}
        options={FORMS.map((value) => ({ value, label: say(`kettle:walk-end-${value}`) }))}
        value={form}
        onValue={setForm}
      />
      <CountField label={say('kettle:walk-end-count')} value={count} onValue={setCount} min={1} max={500} />
      <QuantityField
        label={say('kettle:walk-end-weight')}
        hint={say('kettle:walk-end-weight-hint')}
        measures="mass"
        text={text}
        onText={setText}
        onQuantity={setWeight}
        limits={LIMIT}
      />
      <TextField label={say('kettle:walk-end-place')} value={place} onValue={setPlace} />
      <Asked record={record} />
    </Form>
  )
}
