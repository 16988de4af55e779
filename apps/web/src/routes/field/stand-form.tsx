/** StandForm: plants counted, of so many kernels sown where they were counted. Props: planting. */
import type { PlantingFact } from '@crib/journal'
import { useState } from 'react'
import { localDay } from '../../local-day.ts'
import { CountField, DateField, FieldError } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

export function StandForm({ planting }: { readonly planting: PlantingFact }) {
  const { say } = useWords()
  const record = useRecord()
  const today = localDay()
  const [countedOn, setCountedOn] = useState(today)
  const [plants, setPlants] = useState<number | null>(null)
  const [kernels, setKernels] = useState(planting.kernelsSownCount ?? 0)
  const [isTried, setTried] = useState(false)
  const { plantingId } = planting
  const tooMany = plants !== null && kernels > 0 && plants > kernels
  const keep = async () => {
    setTried(true)
    if (plants === null || tooMany) return
    const body = { plantingId, countedOn, plantsCount: plants, ...(kernels > 0 && { ofKernelsCount: kernels }) }
    if (await record.keep('stand-counted', body)) setPlants(null)
  }
  return (
    <Form action={say('field:screen-stand-keep')} onSubmit={keep} disabled={plants === null}>
      <DateField label={say('field:screen-on-day')} value={countedOn} onValue={setCountedOn} max={today} />
      <CountField label={say('field:screen-stand-plants')} value={plants} onValue={setPlants} max={5_000_000} />
      <CountField
        label={say('field:screen-stand-kernels')}
        hint={say('field:screen-none-counted')}
        value={kernels}
        onValue={setKernels}
        max={5_000_000}
      />
      {isTried && tooMany && (
        <p role="alert">
          <FieldError>{say('field:screen-stand-too-many', { plants: plants ?? 0, kernels })}</FieldError>
        </p>
      )}
      <Asked record={record} onKept={() => setPlants(null)} />
    </Form>
  )
}
