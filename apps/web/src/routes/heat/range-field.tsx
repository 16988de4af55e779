/** RangeField: a slider with its value in words. label, shown (the value worded), value, min, max, step, onValue(number), id?. */
import { useId } from 'react'
import { upperFirst } from '../../upper-first.ts'

export function RangeField({
  label,
  shown,
  value,
  min,
  max,
  step,
  onValue,
}: {
  readonly label: string
  readonly shown: string
  readonly value: number
  readonly min: number
  readonly max: number
  readonly step: number
  readonly onValue: (value: number) => void
}) {
  const id = useId()
  return (
    <div className="field slide">
      <label htmlFor={id}>{upperFirst(label)}</label>
      <output htmlFor={id} className="slide-value">
        {shown}
      </output>
      <input
        id={id}
        type="range"
        min={min}
        max={max}
        step={step}
        value={value}
        aria-valuetext={shown}
        onChange={(event) => onValue(Number(event.target.value))}
      />
    </div>
  )
}
