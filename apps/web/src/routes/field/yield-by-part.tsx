/** YieldByPart: a part of the plot husked and weighed. Props: plantingId, areaM2 (of the plot, where known). */
import { estimateByPart } from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { useState } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import { PercentField, QuantityField, Refusal } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { LengthField } from './length-field.tsx'
import { YieldNumbers } from './yield-numbers.tsx'

const WEIGHT_LIMIT = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const

export function YieldByPart({
  plantingId,
  areaM2,
}: {
  readonly plantingId: string
  readonly areaM2: number | undefined
}) {
  const { say } = useWords()
  const [typed, setTyped] = useHalfTyped(`yield:${plantingId}:part`, {
    earsText: '',
    moisturePercent: 0,
    lengthText: '',
    widthText: '',
  })
  const [ears, setEars] = useState<Quantity | null>(null)
  const [lengthM, setLengthM] = useState<number | null>(null)
  const [widthM, setWidthM] = useState<number | null>(null)
  const change = (part: Partial<typeof typed>) => setTyped({ ...typed, ...part })
  const isTold = ears !== null && lengthM !== null && widthM !== null && typed.moisturePercent > 0
  const outcome = isTold
    ? estimateByPart({
        earCornKg: convert(ears.value, ears.unit, 'Kg'),
        kernelWetFraction: typed.moisturePercent / 100,
        lengthM,
        widthM,
        areaM2,
      })
    : null
  return (
    <>
      <QuantityField
        label={say('field:screen-yield-part-ears')}
        hint={say('field:screen-harvest-weight-hint')}
        measures="mass"
        bareNumberUnit="Lb"
        text={typed.earsText}
        onText={(earsText) => change({ earsText })}
        onQuantity={setEars}
        limits={WEIGHT_LIMIT}
      />
      <PercentField
        label={say('field:screen-yield-part-moisture')}
        hint={say('field:screen-harvest-moisture-hint')}
        value={typed.moisturePercent}
        onValue={(moisturePercent) => change({ moisturePercent })}
        max={60}
      />
      <LengthField
        label={say('field:screen-yield-part-length')}
        hint={say('field:screen-side-hint')}
        text={typed.lengthText}
        onText={(lengthText) => change({ lengthText })}
        onMetres={setLengthM}
        least={0.3}
        most={5000}
      />
      <LengthField
        label={say('field:screen-yield-part-width')}
        text={typed.widthText}
        onText={(widthText) => change({ widthText })}
        onMetres={setWidthM}
        least={0.3}
        most={5000}
      />
      {outcome?.kind === 'refused' ? (
        <Refusal title={say('field:screen-yield')} why={outcome.why} askWhom={outcome.askWhom} />
      ) : (
        <YieldNumbers estimate={outcome?.estimate ?? null} />
      )}
    </>
  )
}
