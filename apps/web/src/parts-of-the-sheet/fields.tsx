/**
 * TextField: label, value, onValue(text), hint?, error?, required?, lines? (more than one: a larger box), maxLength?.
 * ChoiceTags: a radio group hung as tags. legend, options ([{ value, label, note? }]), value, onValue(value), hint?.
 * FlagTag: one yes-or-no tag. label, value, onValue(boolean).
 * ClockField: a clock time. label, value ("HH:MM" or ""), onValue(text), hint?. clockMinutes(text) gives minutes after midnight.
 * DateField: a calendar day. label, value ("YYYY-MM-DD" or ""), onValue(text), hint?, max?.
 */
import { type ReactNode, useId } from 'react'
import { Drawing } from '../drawings/drawing.tsx'
import { upperFirst } from '../upper-first.ts'
import { describedBy, Frame, type Labelled } from './field-frame.tsx'

export function TextField({
  label,
  value,
  onValue,
  hint,
  error,
  required,
  lines = 1,
  maxLength = 200,
}: Labelled & {
  readonly value: string
  readonly onValue: (text: string) => void
  readonly required?: boolean
  readonly lines?: number
  readonly maxLength?: number
}) {
  const id = useId()
  const shared = {
    id,
    className: 'written',
    value,
    required,
    maxLength,
    'aria-invalid': Boolean(error),
    'aria-describedby': describedBy(id, hint),
  }
  return (
    <Frame id={id} label={label} hint={hint} error={error ?? null}>
      {lines > 1 ? (
        <textarea {...shared} rows={lines} onChange={(event) => onValue(event.target.value)} />
      ) : (
        <input {...shared} type="text" autoComplete="off" onChange={(event) => onValue(event.target.value)} />
      )}
    </Frame>
  )
}

export interface Choice<V extends string> {
  readonly value: V
  readonly label: string
  readonly note?: string
}

export function ChoiceTags<V extends string>({
  legend,
  options,
  value,
  onValue,
  hint,
}: {
  readonly legend: string
  readonly options: readonly Choice<V>[]
  readonly value: V | null
  readonly onValue: (value: V) => void
  readonly hint?: ReactNode
}) {
  const name = useId()
  const chosen = options.find((option) => option.value === value)
  return (
    <fieldset className="field" style={{ maxWidth: 'none' }}>
      <legend>{upperFirst(legend)}</legend>
      {hint && <p className="field-hint">{hint}</p>}
      <div className="tags">
        {options.map((option) => (
          <label className="choice" key={option.value}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onValue(option.value)}
            />
            <span className="choice-face">
              <Mark chosen={option.value === value} />
              {option.label}
            </span>
          </label>
        ))}
      </div>
      {chosen?.note && <p className="choice-note">{chosen.note}</p>}
    </fieldset>
  )
}

/** The hole of a tag: empty, or filled by a tick. */
function Mark({ chosen }: { readonly chosen: boolean }) {
  if (chosen) return <Drawing name="tick" />
  return (
    <svg viewBox="0 0 20 20" fill="none" stroke="currentColor" strokeWidth="2" aria-hidden="true" focusable="false">
      <circle cx="10" cy="10" r="5" />
    </svg>
  )
}

export function FlagTag({
  label,
  value,
  onValue,
}: {
  readonly label: string
  readonly value: boolean
  readonly onValue: (value: boolean) => void
}) {
  return (
    <label className="choice" style={{ justifySelf: 'start' }}>
      <input type="checkbox" checked={value} onChange={(event) => onValue(event.target.checked)} />
      <span className="choice-face">
        <Mark chosen={value} />
        {label}
      </span>
    </label>
  )
}

export function ClockField({
  label,
  value,
  onValue,
  hint,
  error,
}: Labelled & { readonly value: string; readonly onValue: (text: string) => void }) {
  const id = useId()
  return (
    <Frame id={id} label={label} hint={hint} error={error ?? null}>
      <input
        id={id}
        className="written"
        type="time"
        value={value}
        aria-describedby={describedBy(id, hint)}
        onChange={(event) => onValue(event.target.value)}
      />
    </Frame>
  )
}

/** Minutes after midnight of "HH:MM", or null when it is no clock time. */
export function clockMinutes(text: string): number | null {
  const match = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(text)
  return match ? Number(match[1]) * 60 + Number(match[2]) : null
}

export function DateField({
  label,
  value,
  onValue,
  hint,
  error,
  max,
}: Labelled & { readonly value: string; readonly onValue: (text: string) => void; readonly max?: string }) {
  const id = useId()
  return (
    <Frame id={id} label={label} hint={hint} error={error ?? null}>
      <input
        id={id}
        className="written"
        type="date"
        value={value}
        max={max}
        aria-describedby={describedBy(id, hint)}
        onChange={(event) => onValue(event.target.value)}
      />
    </Frame>
  )
}
