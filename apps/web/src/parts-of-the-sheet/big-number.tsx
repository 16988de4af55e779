/**
 * BigNumber: a reckoned value stamped large, with its range, its companion unit and what stands behind it.
 * Props: label, reckoned (a Reckoned), size? ('huge' for three metres | 'large' | 'small'), note? (one line under it),
 *        bare? (true: no details, for a number whose source is already beside it).
 * NumberRow: lays BigNumbers side by side where there is room. Props: children.
 */

import { type Reckoned, shownValue, UNITS } from '@crib/science'
import { formatQuantity, formatReckoned } from '@crib/wording'
import { type ReactNode, useId } from 'react'
import { usePreferences } from '../preferences.tsx'
import { useWords } from '../words.tsx'
import { Behind } from './behind.tsx'

export function BigNumber({
  label,
  reckoned,
  size = 'large',
  note,
  bare = false,
}: {
  readonly label: string
  readonly reckoned: Reckoned
  readonly size?: 'huge' | 'large' | 'small'
  readonly note?: ReactNode
  readonly bare?: boolean
}) {
  const { measureFirst } = usePreferences()
  const nameId = useId()
  const { number, unit, beside } = stampedParts(reckoned, measureFirst)
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

export interface StampedParts {
  readonly number: string
  readonly unit: string
  readonly beside: string
}

/** Only these may swap places with their metric companion; a gauge is read in the figures printed on it. */
const MAY_SWAP = new Set(['mass', 'volume', 'length', 'temperature'])

/** A value as number, unit and companion, taken apart from the one place that words values. */
export function stampedParts(reckoned: Reckoned, measureFirst: 'us' | 'metric' = 'us'): StampedParts {
  const quantity = { value: shownValue(reckoned), unit: reckoned.unit }
  const alone = formatQuantity(quantity, 'alone')
  const beside = formatQuantity(quantity, 'both')
    .slice(alone.length)
    .replace(/^ \(|\)$/g, '')
  const isMetric = /^(Kg|G|L|Ml|M|Mm|Cm|C)$/.test(reckoned.unit)
  const swap = beside !== '' && MAY_SWAP.has(UNITS[reckoned.unit].measure) && isMetric !== (measureFirst === 'metric')
  const [first, second] = swap ? [beside, alone] : [alone, beside]
  const number = /^[-−]?[\d.,:/ ]*\d/.exec(first)?.[0] ?? first
  return { number, unit: first.slice(number.length).trim(), beside: second }
}

function rangeText(reckoned: Reckoned): { readonly low: string; readonly high: string } | null {
  if (reckoned.low === undefined || reckoned.high === undefined) return null
  const { unit, rounding } = reckoned
  const [low, high] = [reckoned.low, reckoned.high].map((value) =>
    formatQuantity({ value: shownValue({ value, rounding }), unit }, 'alone'),
  ) as [string, string]
  return low === high ? null : { low, high }
}

/** The same value inside a sentence or a table cell, with its companion unit. */
export function Amount({ reckoned }: { readonly reckoned: Reckoned }) {
  return <span className="amount">{formatReckoned(reckoned)}</span>
}
