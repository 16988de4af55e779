/** StandForm: plants counted, of so many kernels sown where they were counted. Props: planting. */
import type { PlantingFact } from '@crib/journal'
import { useState } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import { localDay } from '../../local-day.ts'
import { CountField, DateField, FieldError } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

interface Typed {
  readonly countedOn: string
  readonly plants: number | null
  readonly kernels: number
}

export function StandForm({ planting }: { readonly planting: PlantingFact }) {
  const { say } = useWords()
  const record = useRecord()
  const today = localDay()
  const { plantingId } = planting
  const [typed, setTyped, forget] = useHalfTyped<Typed>(`stand:${plantingId}`, {
    countedOn: today,
    plants: null,
    kernels: planting.kernelsSownCount ?? 0,
  })
  const change = (more: Partial<Typed>) => setTyped({ ...typed, ...more })
  const { countedOn, plants, kernels } = typed
  const [isTried, setTried] = useState(false)
  const tooMany = plants !== null && kernels > 0 && plants > kernels
  const keep = async () => {
    setTried(true)
    if (plants === null || tooMany) return
    const body = { plantingId, countedOn, plantsCount: plants, ...(kernels > 0 && { ofKernelsCount: kernels }) }
    if (await record.keep('stand-counted', body)) forget(typed)
  }
  return (
    <Form action={say('field:screen-stand-keep')} onSubmit={keep} disabled={plants === null}>
      <DateField
        label={say('field:screen-on-day')}
        value={countedOn}
        onValue={(now) => change({ countedOn: now })}
        max={today}
      />
      <CountField
        label={say('field:screen-stand-plants')}
        value={plants}
        onValue={(now) => change({ plants: now })}
        max={5_000_000}
      />
      <CountField
        label={say('field:screen-stand-kernels')}
        hint={say('field:screen-none-counted')}
        value={kernels}
        onValue={(now) => change({ kernels: now })}
        max={5_000_000}
      />
      {isTried && tooMany && (
        <p role="alert">
          <FieldError>{say('field:screen-stand-too-many', { plants: plants ?? 0, kernels })}</FieldError>
        </p>
      )}
      <Asked record={record} onKept={() => forget()} />
    </Form>
  )
}
