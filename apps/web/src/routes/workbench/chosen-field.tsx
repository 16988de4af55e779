/** A field that is chosen from: hung as tags while few, a list when many. One that may be left out can be left out again. */
import type { Field } from '@crib/science'
import { ChoiceTags } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { Faults, fieldId, useForm } from './form-of.tsx'
import { optionWords } from './option-words.ts'
import { type Path, valueAt } from './typed.ts'

export type ChosenFieldSchema = Extract<Field, { kind: 'choice' | 'flag' }>

const TAGS_AT_MOST = 5
const LEFT_OUT = ''

export function ChosenField({ field, path }: { readonly field: ChosenFieldSchema; readonly path: Path }) {
  const { typed, set } = useForm()
  const { say } = useWords()
  const id = fieldId(path)
  const given = valueAt(typed, path)
  const value = given === undefined || given === null ? LEFT_OUT : String(given)
  const stored = field.kind === 'flag' ? ['true', 'false'] : field.options
  const words = (option: string) =>
    field.kind === 'flag' ? say(option === 'true' ? 'workbench:yes' : 'workbench:no') : optionWords(option, say)
  const options = [
    ...stored.map((option) => ({ value: option, label: words(option) })),
    ...(field.optional ? [{ value: LEFT_OUT, label: say('workbench:left-out') }] : []),
  ]
  const choose = (option: string) =>
    set(path, option === LEFT_OUT ? undefined : field.kind === 'flag' ? option === 'true' : option)

  // In a row of a table there is room for a list only.
  const isInRow = path.some((step) => typeof step === 'number')
  if (options.length <= (isInRow ? 0 : TAGS_AT_MOST)) {
    return (
      <div id={id} tabIndex={-1}>
        <ChoiceTags legend={field.label} options={options} value={value} onValue={choose} />
        <Faults path={path} />
      </div>
    )
  }
  return (
    <div className="field">
      <label htmlFor={id}>{field.label}</label>
      <select
        id={id}
        className="written"
        value={value}
        aria-describedby={`${id}-faults`}
        onChange={(event) => choose(event.target.value)}
      >
        {!field.optional && !options.some((option) => option.value === value) && (
          <option value={value}>{value === LEFT_OUT ? say('workbench:choose') : value}</option>
        )}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
      <Faults path={path} />
    </div>
  )
}
