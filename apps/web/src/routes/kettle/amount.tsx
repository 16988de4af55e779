/**
 * amountIn: what was typed, in one unit and within its limits; null while it cannot be read.
 * AmountField: a QuantityField for such an amount. Props: label, spec, text, onText, hint?, required?.
 */
import { convert, type Measure, parseQuantity, UNITS, type Unit } from '@crib/science'
import type { ReactNode } from 'react'
import { QuantityField } from '../../parts-of-the-sheet/index.ts'

export interface AmountSpec {
  /** A bare number is taken in it, and limits are told in it. */
  readonly unit: Unit
  readonly min: number
  readonly max: number
  /** Units of these measures are read; that of `unit` unless told. */
  readonly measures?: readonly Measure[]
}

const measuresOf = ({ unit, measures }: AmountSpec): readonly Measure[] => measures ?? [UNITS[unit].measure]

export function amountIn(text: string, spec: AmountSpec): number | null {
  const parsed = parseQuantity(text, measuresOf(spec), { bareNumberUnit: spec.unit })
  if (!parsed.ok || UNITS[parsed.quantity.unit].measure !== UNITS[spec.unit].measure) return null
  const value = convert(parsed.quantity.value, parsed.quantity.unit, spec.unit)
  return value >= spec.min && value <= spec.max ? value : null
}

export function AmountField({
  label,
  spec,
  text,
  onText,
  hint,
  required = false,
}: {
  readonly label: string
  readonly spec: AmountSpec
  readonly text: string
  readonly onText: (text: string) => void
  readonly hint?: ReactNode
  readonly required?: boolean
}) {
  const { unit, min, max } = spec
  return (
    <QuantityField
      label={label}
      hint={hint}
      measures={measuresOf(spec)}
      bareNumberUnit={unit}
      text={text}
      onText={onText}
      limits={{ min, max, unit, source: 'project rule' }}
      required={required}
    />
  )
}
