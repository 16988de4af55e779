/** Tables and series: rows to write in, to add, to take away, or to put in at once from a spreadsheet. */
import type { Field, Json } from '@crib/science'
import { unitName } from '@crib/wording'
import { type ReactNode, useState } from 'react'
import { ButtonRow, FieldError, SideAction, TextField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { Faults, fieldId, useForm } from './form-of.tsx'
import { type Column, isRows, type PastedRow, rowsFrom } from './paste.ts'
import { isTyped, type Path, pointOf, valueAt } from './typed.ts'
import { writtenText } from './written-text.ts'

type FieldOf<K extends Field['kind']> = Extract<Field, { kind: K }>

export function TableField({
  field,
  path,
  row,
}: {
  readonly field: FieldOf<'table'>
  readonly path: Path
  /** The fields of one row. */
  readonly row: (path: Path) => ReactNode
}) {
  const columns = Object.entries(field.columns)
    .filter(([, { kind }]) => kind !== 'table' && kind !== 'record' && kind !== 'series')
    .map(([name, { label }]) => ({ name, label }))
  return <Rows field={field} path={path} columns={columns} maxRows={field.maxRows} empty={{}} row={row} />
}

const SERIES_ROWS_MAX = 100_000

export function SeriesField({ field, path }: { readonly field: FieldOf<'series'>; readonly path: Path }) {
  const { say } = useWords()
  const columns = [
    { name: 'time', label: say('workbench:series-time', { unit: unitName(field.timeUnit) }) },
    { name: 'value', label: say('workbench:series-value', { unit: unitName(field.unit) }) },
  ] as const
  return (
    <Rows
      field={field}
      path={path}
      columns={columns}
      maxRows={SERIES_ROWS_MAX}
      empty={{ time: '', value: '' }}
      row={(rowPath) => <Point columns={columns} path={rowPath} />}
    />
  )
}

function Point({
  columns,
  path,
}: {
  readonly columns: readonly { readonly name: 'time' | 'value'; readonly label: string }[]
  readonly path: Path
}) {
  const { typed, set } = useForm()
  const point = pointOf(valueAt(typed, path))
  return (
    <div className="bench-cells bench-point">
      {columns.map(({ name, label }) => (
        <div className="field" key={name}>
          <label htmlFor={`${fieldId(path)}-${name}`}>{label}</label>
          <input
            id={`${fieldId(path)}-${name}`}
            className="written"
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={writtenText(point[name])}
            aria-describedby={`${fieldId(path)}-faults`}
            onChange={(event) => set(path, { ...point, [name]: event.target.value } as Json)}
          />
        </div>
      ))}
      <Faults path={path} />
    </div>
  )
}

function Rows({
  field,
  path,
  columns,
  maxRows,
  empty,
  row,
}: {
  readonly field: Field
  readonly path: Path
  readonly columns: readonly Column[]
  readonly maxRows: number
  readonly empty: Json
  readonly row: (path: Path) => ReactNode
}) {
  const { typed, set } = useForm()
  const { say } = useWords()
  const given = valueAt(typed, path)
  const rows: readonly Json[] = Array.isArray(given) ? given : []
  const setRows = (next: readonly Json[]) => set(path, next.length === 0 && field.optional ? undefined : next)
  const putIn = (pasted: readonly PastedRow[]) => setRows(pasted as readonly Json[])
  return (
    <fieldset
      className="bench-group"
      id={fieldId(path)}
      tabIndex={-1}
      onPaste={(event) => {
        const text = event.clipboardData.getData('text')
        if (event.target instanceof HTMLTextAreaElement || !isRows(text)) return
        event.preventDefault()
        putIn(rowsFrom(text, columns))
      }}
    >
      <legend>
        {field.label}
        {field.optional && <span className="bench-unit"> {say('workbench:optional')}</span>}
      </legend>
      {given !== undefined && !Array.isArray(given) && !isTyped(given) && <FieldError>{writtenText(given)}</FieldError>}
      <Faults path={path} />
      {rows.map((_, index) => {
        const number = index + 1
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row has no name but its place, and holds no state of its own
          <fieldset className="bench-row" key={index}>
            <legend>{say('workbench:row', { row: number })}</legend>
            {row([...path, index])}
            <button
              type="button"
              className="word-button"
              onClick={() => setRows(rows.filter((_row, other) => other !== index))}
            >
              {say('workbench:remove-row', { row: number })}
            </button>
          </fieldset>
        )
      })}
      <ButtonRow>
        <SideAction disabled={rows.length >= maxRows} onClick={() => setRows([...rows, empty])}>
          {say('workbench:add-row')}
        </SideAction>
      </ButtonRow>
      <Paste columns={columns} onRows={putIn} />
    </fieldset>
  )
}

function Paste({
  columns,
  onRows,
}: {
  readonly columns: readonly Column[]
  readonly onRows: (rows: readonly PastedRow[]) => void
}) {
  const { say } = useWords()
  const [text, setText] = useState('')
  const rows = rowsFrom(text, columns)
  return (
    <details className="behind">
      <summary>{say('workbench:paste')}</summary>
      <div className="behind-body">
        <TextField
          label={say('workbench:paste-label')}
          hint={say('workbench:paste-hint', { columns: columns.map(({ label }) => label).join('; ') })}
          lines={5}
          maxLength={1_000_000}
          value={text}
          onValue={setText}
        />
        <ButtonRow>
          <SideAction
            disabled={rows.length === 0}
            onClick={() => {
              onRows(rows)
              setText('')
            }}
          >
            {say('workbench:paste-in', { count: rows.length })}
          </SideAction>
        </ButtonRow>
      </div>
    </details>
  )
}
