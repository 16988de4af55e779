/** A field that is written in: amount, count, clock time or words, read back below as the catalogue takes it. */
import { readInputs } from '@crib/catalogue'
import { type Field, type Json, parseQuantity, UNITS, type Unit } from '@crib/science'
import { formatQuantity, unitName } from '@crib/wording'
import { usePreferences } from '../../preferences.tsx'
import { useWords } from '../../words.tsx'
import { Faults, fieldId, useForm } from './form-of.tsx'
import { type Path, settle, valueAt } from './typed.ts'
import { writtenText } from './written-text.ts'

type Kind = 'quantity' | 'count' | 'clock' | 'text'
export type WrittenFieldSchema = Extract<Field, { kind: Kind }>

export function WrittenField({ field, path }: { readonly field: WrittenFieldSchema; readonly path: Path }) {
  const { typed, set, faultsAt } = useForm()
  const { say } = useWords()
  const id = fieldId(path)
  const value = valueAt(typed, path)
  const hints = [unitHint(field, say), field.optional ? say('workbench:optional') : ''].filter(Boolean)
  return (
    <div className="field">
      <label htmlFor={id}>
        {field.label}
        {hints.length > 0 && <span className="bench-unit"> {hints.join(', ')}</span>}
      </label>
      <input
        id={id}
        className="written"
        type="text"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={field.kind === 'text'}
        inputMode={field.kind === 'count' ? 'numeric' : 'text'}
        value={writtenText(value, field.kind)}
        aria-invalid={faultsAt(path).length > 0}
        aria-describedby={`${id}-reading ${id}-faults`}
        onChange={(event) => set(path, event.target.value)}
      />
      <Reading field={field} value={value} id={`${id}-reading`} />
      <Faults path={path} />
    </div>
  )
}

function unitHint(field: WrittenFieldSchema, say: ReturnType<typeof useWords>['say']): string {
  if (field.kind === 'clock') return say('workbench:clock-hint')
  if (field.kind !== 'quantity' || field.unit === 'Fraction' || field.unit === 'Count') return ''
  return say('workbench:in-unit', { unit: unitName(field.unit) })
}

function Reading({
  field,
  value,
  id,
}: {
  readonly field: WrittenFieldSchema
  readonly value: Json | undefined
  readonly id: string
}) {
  const { vagueQuart, rememberVagueQuart } = usePreferences()
  const { say } = useWords()
  if (field.kind === 'text' || field.kind === 'count') return <div id={id} hidden />
  const assumed = field.kind === 'quantity' ? assumedIn(field.unit, value, vagueQuart) : null
  const canonical = canonicalValue(field, value, vagueQuart)
  const unit = field.kind === 'quantity' ? field.unit : 'ClockMin'
  // The field's own unit may be far from the typed one: a bare quart is read back as it was taken.
  const text = assumed ? say('shell:quantity-taken-as', { quantity: assumed.quantity }) : null
  return (
    <div className="field-reading" id={id} aria-live="polite">
      {canonical !== null && <span>{text ?? formatQuantity({ value: canonical, unit })}</span>}
      {assumed && assumed.quantity.unit !== 'Cup' && (
        <button
          type="button"
          className="word-button"
          onClick={() => rememberVagueQuart(assumed.as === 'liquid' ? 'dry' : 'liquid')}
        >
          {say(assumed.as === 'liquid' ? 'shell:quantity-meant-dry' : 'shell:quantity-meant-liquid')}
        </button>
      )}
    </div>
  )
}

function assumedIn(unit: Unit, value: Json | undefined, vague: 'liquid' | 'dry') {
  if (typeof value !== 'string') return null
  const parsed = parseQuantity(value, UNITS[unit].measure, { vague, allowNegative: true })
  return parsed.ok && parsed.assumed ? { quantity: parsed.quantity, as: parsed.assumed } : null
}

/** What the catalogue makes of it; null while it cannot be read. */
function canonicalValue(field: WrittenFieldSchema, value: Json | undefined, vague: 'liquid' | 'dry'): number | null {
  if (value === undefined || value === '') return null
  const fields = { it: field }
  const read = readInputs(fields, settle(fields, { it: value }, vague))
  return read.ok && typeof read.input.it === 'number' ? read.input.it : null
}
