/**
 * QuantityField: an amount as a person types it ("9 lb", "2 gal", "3 quarts"), read back at once in both measures.
 * A bare quart is taken as liquid, says so, changes by a tap, and is remembered for the kitchen.
 * Props: label, measures ('mass' | 'volume' | ... or several), text, onText(text),
 *        onQuantity(quantity | null) (null while it cannot be read or is outside its limits),
 *        hint?, bareNumberUnit?, allowNegative?, limits? ({ min, max, unit, source: a short name in words }), required?.
 */
import {
  convert,
  type Measure,
  parseQuantity,
  type Quantity,
  type QuantityFault,
  UNITS,
  type Unit,
} from '@crib/science'
import { formatQuantity, type MessageKey } from '@crib/wording'
import { type ReactNode, useEffect, useId, useRef, useState } from 'react'
import { usePreferences } from '../preferences.tsx'
import { upperFirst } from '../upper-first.ts'
import { useWords } from '../words.tsx'
import { FieldError } from './field-error.tsx'

export interface QuantityLimits {
  readonly min: number
  readonly max: number
  readonly unit: Unit
  readonly source: string
}

export interface QuantityFieldProps {
  readonly label: string
  readonly measures: Measure | readonly Measure[]
  readonly text: string
  readonly onText: (text: string) => void
  readonly onQuantity?: (quantity: Quantity | null) => void
  readonly hint?: ReactNode
  readonly bareNumberUnit?: Unit
  readonly allowNegative?: boolean
  readonly limits?: QuantityLimits
  readonly required?: boolean
}

export function QuantityField(props: QuantityFieldProps) {
  const { label, measures, text, onText, onQuantity, hint, limits, required = false } = props
  const { vagueQuart, rememberVagueQuart } = usePreferences()
  const { say } = useWords()
  const id = useId()
  const [left, setLeft] = useState(false)

  const parsed = parseQuantity(text, measures, {
    vague: vagueQuart,
    ...(props.bareNumberUnit && { bareNumberUnit: props.bareNumberUnit }),
    ...(props.allowNegative && { allowNegative: true }),
  })
  const quantity = parsed.ok ? parsed.quantity : null
  const outside = quantity !== null && limits !== undefined && isOutside(quantity, limits)
  const good = quantity !== null && !outside ? quantity : null
  const tell = useRef(onQuantity)
  tell.current = onQuantity
  const goodValue = good?.value
  const goodUnit = good?.unit
  // Told when the amount changes, not when the screen hands in a new function.
  useEffect(() => {
    tell.current?.(goodValue === undefined || goodUnit === undefined ? null : { value: goodValue, unit: goodUnit })
  }, [goodValue, goodUnit])

  const error =
    !parsed.ok && left && (parsed.fault !== 'empty' || required)
      ? say(FAULT_KEYS[parsed.fault], { typed: parsed.typed })
      : outside && quantity
        ? say('shell:quantity-outside', {
            typed: formatQuantity(quantity, 'alone'),
            low: formatQuantity({ value: limits.min, unit: limits.unit }, 'alone'),
            high: formatQuantity({ value: limits.max, unit: limits.unit }, 'alone'),
            source: limits.source,
          })
        : null

  return (
    <div className="field">
      <label htmlFor={id}>{upperFirst(label)}</label>
      {hint && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <input
        id={id}
        className="written"
        type="text"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        value={text}
        required={required}
        aria-invalid={error !== null}
        aria-describedby={`${hint ? `${id}-hint ` : ''}${id}-reading`}
        onChange={(event) => onText(event.target.value)}
        onBlur={() => setLeft(true)}
      />
      <div className="field-reading" id={`${id}-reading`} aria-live="polite">
        {error ? (
          <FieldError>{error}</FieldError>
        ) : (
          quantity && (
            <span>
              {parsed.ok && parsed.assumed
                ? say('shell:quantity-taken-as', { quantity: formatQuantity(quantity) })
                : formatQuantity(quantity)}
            </span>
          )
        )}
      </div>
      {!error && parsed.ok && parsed.assumed && quantity?.unit !== 'Cup' && (
        <button
          type="button"
          className="word-button"
          style={{ justifySelf: 'start' }}
          onClick={() => rememberVagueQuart(parsed.assumed === 'liquid' ? 'dry' : 'liquid')}
        >
          {say(parsed.assumed === 'liquid' ? 'shell:quantity-meant-dry' : 'shell:quantity-meant-liquid')}
        </button>
      )}
    </div>
  )
}

const FAULT_KEYS: Record<QuantityFault, MessageKey> = {
  empty: 'shell:quantity-empty',
  'no-number': 'shell:quantity-no-number',
  comma: 'shell:quantity-comma',
  negative: 'shell:quantity-negative',
  'divided-by-zero': 'shell:quantity-divided-by-zero',
  'no-unit': 'shell:quantity-no-unit',
  'unknown-unit': 'shell:quantity-unknown-unit',
  'wrong-measure': 'shell:quantity-wrong-measure',
}

/** A limit in litres says nothing of a weight: only the same measure is held against it. */
function isOutside(quantity: Quantity, { min, max, unit }: QuantityLimits): boolean {
  if (UNITS[quantity.unit].measure !== UNITS[unit].measure) return false
  const value = convert(quantity.value, quantity.unit, unit)
  return !(value >= min && value <= max)
}
