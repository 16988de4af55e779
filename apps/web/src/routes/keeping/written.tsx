/**
 * useWritten(name): an amount as it was typed, kept on this device until it is written down. Spread `field` on a QuantityField.
 * within(reckon): the answer, or null off its range.
 * useMoisture(name), MoistureField: a percentage with its basis, which is always asked. Props: label, moisture, hint?.
 */
import { type MoistureBasis, type TypedMoisture, typedMoisture } from '@crib/planning'
import { convert, type Quantity, type Unit, ValidRangeError } from '@crib/science'
import { useState } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import { ChoiceTags, TextField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export interface Written {
  readonly field: {
    readonly text: string
    readonly onText: (text: string) => void
    readonly onQuantity: (quantity: Quantity | null) => void
  }
  /** Null while it cannot be read. */
  in(unit: Unit): number | null
  /** Something stands there that is no amount yet. */
  readonly isUnread: boolean
  forget(): void
}

export function useWritten(name: string): Written {
  const [text, onText, forget] = useHalfTyped(name, '')
  const [quantity, onQuantity] = useState<Quantity | null>(null)
  return {
    field: { text, onText, onQuantity },
    in: (unit) => quantity && convert(quantity.value, quantity.unit, unit),
    isUnread: text.trim() !== '' && quantity === null,
    forget,
  }
}

export interface WrittenMoisture {
  readonly text: string
  setText(text: string): void
  readonly basis: MoistureBasis | null
  setBasis(basis: MoistureBasis): void
  readonly typed: TypedMoisture
  /** Null while it cannot be read. */
  readonly wetFraction: number | null
  forget(): void
}

export function useMoisture(name: string): WrittenMoisture {
  const [text, setText, forgetText] = useHalfTyped(`${name}:percent`, '')
  const [basis, setBasis, forgetBasis] = useHalfTyped<MoistureBasis | null>(`${name}:basis`, null)
  const typed = typedMoisture(text, basis)
  return {
    text,
    setText,
    basis,
    setBasis,
    typed,
    wetFraction: typed.kind === 'moisture' ? typed.wetFraction : null,
    forget: () => {
      forgetText()
      forgetBasis()
    },
  }
}

export function MoistureField({
  label,
  moisture: { text, setText, basis, setBasis, typed },
  hint,
}: {
  readonly label: string
  readonly moisture: WrittenMoisture
  readonly hint?: string
}) {
  const { say, sentence } = useWords()
  return (
    <>
      <TextField
        label={label}
        {...(hint !== undefined && { hint })}
        value={text}
        onValue={setText}
        error={typed.kind === 'fault' ? sentence(typed.why) : null}
      />
      <ChoiceTags
        legend={say('keeping:screen-basis-of', { label })}
        options={[
          { value: 'wet', label: say('keeping:screen-basis-wet'), note: say('keeping:screen-basis-wet-note') },
          { value: 'dry', label: say('keeping:screen-basis-dry'), note: say('keeping:screen-basis-dry-note') },
        ]}
        value={basis}
        onValue={setBasis}
      />
      {typed.kind === 'moisture' && typed.say && <p className="field-hint">{sentence(typed.say)}</p>}
    </>
  )
}

/** The answer, or null where what was typed lies outside what it covers; the sentence beside the fields then says so. */
export function within<T>(reckon: () => T): T | null {
  try {
    return reckon()
  } catch (error) {
    if (error instanceof ValidRangeError) return null
    throw error
  }
}
