/** LengthField: a length as a person types it, kept in metres. Props: label, text, onText, onMetres (null while it cannot be read), hint?, most? (metres). */
import { convert, type Quantity } from '@crib/science'
import { QuantityField } from '../../parts-of-the-sheet/index.ts'

export function LengthField({
  label,
  hint,
  text,
  onText,
  onMetres,
  least,
  most,
}: {
  readonly label: string
  readonly hint?: string
  readonly text: string
  readonly onText: (text: string) => void
  readonly onMetres: (metres: number | null) => void
  readonly least: number
  readonly most: number
}) {
  return (
    <QuantityField
      label={label}
      {...(hint !== undefined && { hint })}
      measures="length"
      text={text}
      onText={onText}
      onQuantity={(quantity: Quantity | null) => onMetres(quantity && convert(quantity.value, quantity.unit, 'M'))}
      limits={{ min: least, max: most, unit: 'M', source: 'project rule' }}
    />
  )
}
