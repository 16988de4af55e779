/**
 * CountField: a whole number with big minus and plus. label, value (null: not told yet), onValue(number), min?, max?, hint?.
 * PercentField: the same for a number that may have a part, such as a moisture of 12.5 %.
 * What cannot be taken is said, with what was typed and the limits; the number before it stands.
 */
import { formatNumber } from '@crib/wording'
import { useId, useState } from 'react'
import { useWords } from '../words.tsx'
import { describedBy, Frame, type Labelled } from './field-frame.tsx'
import { typedNumber } from './typed-number.ts'

interface NumberProps extends Labelled {
  readonly value: number | null
  readonly onValue: (value: number) => void
  readonly min?: number
  readonly max?: number
}

export function CountField(props: NumberProps) {
  return <NumberField {...props} isWhole />
}

export function PercentField(props: NumberProps) {
  return <NumberField {...props} isWhole={false} />
}

function NumberField({
  label,
  value,
  onValue,
  min = 0,
  max = 999,
  hint,
  error,
  isWhole,
}: NumberProps & { readonly isWhole: boolean }) {
  const id = useId()
  const { say } = useWords()
  // As it is being typed: "12." is on its way to 12.5.
  const [typed, setTyped] = useState<string | null>(null)
  const [refused, setRefused] = useState<string | null>(null)
  const hold = (next: number) => onValue(Math.min(max, Math.max(min, isWhole ? Math.round(next) : next)))
  const step = (by: number) => {
    setTyped(null)
    setRefused(null)
    hold((value ?? 0) + by)
  }
  const read = (text: string) => {
    const number = typedNumber(text, isWhole)
    setTyped(text)
    setRefused(number === null || number > max ? text : null)
    if (number !== null) hold(number)
  }
  const asTyped = typed === null ? null : typedNumber(typed, isWhole)
  const isOnItsWay = typed !== null && (asTyped === null || (asTyped === value && (!isWhole || typed === '')))
  const fault =
    refused === null
      ? null
      : say(isWhole ? 'shell:count-refused' : 'shell:number-refused', {
          typed: refused,
          min: formatNumber(min, 0),
          max: formatNumber(max, 0),
        })
  return (
    <Frame id={id} label={label} hint={hint} error={error ?? fault}>
      <div className="count">
        <button
          type="button"
          aria-label={say('shell:one-less', { label })}
          disabled={value === null || value <= min}
          onClick={() => step(-1)}
        >
          −
        </button>
        <input
          id={id}
          className="written"
          inputMode={isWhole ? 'numeric' : 'decimal'}
          autoComplete="off"
          value={isOnItsWay ? typed : value === null ? '' : String(value)}
          aria-invalid={fault !== null}
          aria-describedby={describedBy(id, hint)}
          // The number that stands is typed over, not typed into.
          onFocus={(event) => event.target.select()}
          onChange={(event) => read(event.target.value)}
          onBlur={() => setTyped(null)}
        />
        <button
          type="button"
          aria-label={say('shell:one-more', { label })}
          disabled={value !== null && value >= max}
          onClick={() => step(1)}
        >
          +
        </button>
      </div>
    </Frame>
  )
}
