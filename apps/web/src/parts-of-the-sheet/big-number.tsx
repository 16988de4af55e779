/**
 * BigNumber: a reckoned value stamped large, with its range, its companion unit and what stands behind it.
 * Props: label, reckoned (a Reckoned), size? ('huge' for three metres | 'large' | 'small'), note? (one line under it),
 *        bare? (true: no details, for a number whose source is already beside it),
 *        asWeighed? (true: grams stay first, for what goes on a scale of grams whatever the kitchen's measure).
 * NumberRow: lays BigNumbers side by side where there is room. Props: children.
 */

import { type Reckoned, shownValue } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { type ReactNode, useId } from 'react'
import { usePreferences } from '../preferences.tsx'
import { useWords } from '../words.tsx'
import { Behind } from './behind.tsx'
import { stampedParts } from './stamped-parts.ts'

export function BigNumber({
  label,
  reckoned,
  size = 'large',
  note,
  bare = false,
  asWeighed = false,
}: {
  readonly label: string
  readonly reckoned: Reckoned
  readonly size?: 'huge' | 'large' | 'small'
  readonly note?: ReactNode
  readonly bare?: boolean
  readonly asWeighed?: boolean
}) {
  const { measureFirst } = usePreferences()
  const nameId = useId()
  const { number, unit, beside } = stampedParts(reckoned, asWeighed ? 'its-own' : measureFirst)
  const range = rangeText(reckoned)
  const { say } = useWords()
  return (
    <div className={`stamped stamped-${size}`}>
      <p className="stamped-name" id={nameId}>
        {label}
      </p>
      <p className="stamped-value" aria-describedby={nameId}>
        <span>{number}</span>
        {unit && <span className="unit"> {unit}</span>}
      </p>
      {(beside || range) && (
        <p className="stamped-beside">
          {beside}
          {beside && range && ', '}
          {range && say('shell:between', { low: range.low, high: range.high })}
        </p>
      )}
      {note && <p>{note}</p>}
      {!bare && <Behind reckoned={reckoned} label={label} />}
    </div>
  )
}

export function NumberRow({ children }: { readonly children: ReactNode }) {
  return <div className="stamped-row">{children}</div>
}

function rangeText(reckoned: Reckoned): { readonly low: string; readonly high: string } | null {
  if (reckoned.low === undefined || reckoned.high === undefined) return null
  const { unit, rounding } = reckoned
  const [low, high] = [reckoned.low, reckoned.high].map((value) =>
    formatQuantity({ value: shownValue({ value, rounding }), unit }, 'alone'),
  ) as [string, string]
  return low === high ? null : { low, high }
}
