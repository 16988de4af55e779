/** SeenForm: the day tassels opened or silk showed, on the first, half or all of the plants. Props: planting, what ('tassel' | 'silk'). */
import type { PlantingFact } from '@crib/journal'
import { useState } from 'react'
import { localDay } from '../../local-day.ts'
import { ChoiceTags, DateField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

const HOW_MANY = ['first', 'half', 'all'] as const

export function SeenForm({ planting, what }: { readonly planting: PlantingFact; readonly what: 'tassel' | 'silk' }) {
  const { say } = useWords()
  const record = useRecord()
  const today = localDay()
  const [seenOn, setSeenOn] = useState(today)
  const [howMany, setHowMany] = useState<(typeof HOW_MANY)[number]>('half')
  const keep = () => record.keep(`${what}-seen`, { plantingId: planting.plantingId, seenOn, howMany })
  return (
    <Form action={say('field:screen-seen-keep')} onSubmit={() => void keep()}>
      <DateField label={say('field:screen-on-day')} value={seenOn} onValue={setSeenOn} max={today} />
      <ChoiceTags
        legend={say('field:screen-how-many')}
        options={HOW_MANY.map((value) => ({ value, label: say(`field:screen-many-${value}`) }))}
        value={howMany}
        onValue={setHowMany}
      />
      <Asked record={record} />
    </Form>
  )
}
