/** Water of a stage: as planned until it is written over; empty is no water written down. */
import type { WalkStep } from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { formatNumber } from '@crib/wording'
import { useState } from 'react'
import { QuantityField } from '../../parts-of-the-sheet/index.ts'
import { usePreferences } from '../../preferences.tsx'
import { useWords } from '../../words.tsx'

const LIMIT = { min: 0, max: 400, unit: 'L', source: 'project rule' } as const

export interface Water {
  readonly field: React.ReactNode
  /** False while something is typed that is no amount. */
  readonly isRead: boolean
  /** As an entry keeps it. */
  readonly body: { readonly waterL?: number }
}

export function useWater({ plannedWater }: Pick<WalkStep, 'plannedWater'>, isAsked: boolean): Water {
  const { say } = useWords()
  const { measureFirst } = usePreferences()
  const [text, setText] = useState(() => (plannedWater && isAsked ? asText(plannedWater, measureFirst) : ''))
  const [quantity, setQuantity] = useState<Quantity | null>(null)
  const isEmpty = text.trim() === ''
  return {
    field: isAsked ? (
      <QuantityField
        label={say('kettle:walk-water')}
        hint={plannedWater && say('kettle:walk-water-planned', { water: plannedWater })}
        measures="volume"
        text={text}
        onText={setText}
        onQuantity={setQuantity}
        limits={LIMIT}
      />
    ) : null,
    isRead: isEmpty || quantity !== null,
    body: isEmpty || quantity === null ? {} : { waterL: convert(quantity.value, quantity.unit, 'L') },
  }
}

function asText({ value, unit }: Quantity, measureFirst: 'us' | 'metric'): string {
  return measureFirst === 'metric' ? `${formatNumber(convert(value, unit, 'L'), 1)} L` : `${formatNumber(value)} gal`
}
