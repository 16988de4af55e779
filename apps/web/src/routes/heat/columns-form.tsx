/** What each column of the file is: asked, with what the head itself says filled in, and nothing guessed beyond that. */
import { type LoggerTimeKind, type LoggerUnit, splitLoggerRow, type TraceRole } from '@crib/planning'
import { unitName } from '@crib/wording'
import { useId } from 'react'
import { ChoiceTags, ClockField, DateField, TextField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import {
  type ColumnAnswer,
  cutAt,
  type Delimiter,
  type FileAnswers,
  type LoggerHead,
  needsDay,
  needsStart,
} from './file-answers.ts'

const KINDS = ['minutes', 'seconds', 'clock', 'instant'] as const satisfies readonly LoggerTimeKind[]
const ROLES = ['canner', 'jar', 'gauge', 'out'] as const
const UNITS_OF: Record<TraceRole, readonly LoggerUnit[]> = {
  canner: ['C', 'F'],
  jar: ['C', 'F'],
  gauge: ['PsiGauge', 'KPaGauge'],
}
const DELIMITERS: readonly { readonly value: Delimiter; readonly name: 'comma' | 'semicolon' | 'tab' }[] = [
  { value: ',', name: 'comma' },
  { value: ';', name: 'semicolon' },
  { value: '\t', name: 'tab' },
]

export function ColumnsForm({
  head,
  answers,
  onAnswers,
}: {
  readonly head: LoggerHead
  readonly answers: FileAnswers
  readonly onAnswers: (answers: FileAnswers) => void
}) {
  const { say } = useWords()
  const change = (more: Partial<FileAnswers>) => onAnswers({ ...answers, ...more })
  const firstCells = splitLoggerRow(head.firstRow, answers.delimiter)
  const { timeKind } = answers
  return (
    <>
      <ChoiceTags
        legend={say('heat:columns-cut')}
        options={DELIMITERS.map(({ value, name }) => ({ value, label: say(`heat:cut-${name}`) }))}
        value={answers.delimiter}
        onValue={(delimiter) => onAnswers(cutAt(answers, delimiter))}
      />
      <ChoiceTags
        legend={say('heat:columns-decimal')}
        options={[
          { value: '.', label: say('heat:decimal-point') },
          { value: ',', label: say('heat:decimal-comma') },
        ]}
        value={answers.decimal}
        onValue={(decimal) => change({ decimal })}
      />
      <Select
        label={say('heat:time-column')}
        value={answers.timeColumn}
        options={answers.columns.map(({ column }) => ({ value: column, label: column }))}
        onValue={(timeColumn) => change({ timeColumn })}
      />
      <ChoiceTags
        legend={say('heat:time-kind')}
        options={KINDS.map((value) => ({ value, label: say(`heat:time-${value}`) }))}
        value={timeKind === '' ? null : timeKind}
        onValue={(kind) => change({ timeKind: kind })}
      />
      {needsDay(timeKind) && (
        <DateField label={say('heat:file-day')} value={answers.day} onValue={(day) => change({ day })} />
      )}
      {needsStart(timeKind) && (
        <ClockField
          label={say('heat:file-start')}
          hint={say('heat:file-start-hint')}
          value={answers.startClock}
          onValue={(startClock) => change({ startClock })}
        />
      )}
      {timeKind !== '' && !needsStart(timeKind) && (
        <TextField
          label={say('heat:file-ahead')}
          hint={say('heat:file-ahead-hint')}
          value={answers.aheadMin}
          onValue={(aheadMin) => change({ aheadMin })}
        />
      )}
      {answers.columns.map((column, index) =>
        column.column === answers.timeColumn ? null : (
          <Probe
            key={column.column}
            answer={column}
            first={firstCells[index] ?? ''}
            onAnswer={(next) => change({ columns: answers.columns.map((one, i) => (i === index ? next : one)) })}
          />
        ),
      )}
    </>
  )
}

function Probe({
  answer,
  first,
  onAnswer,
}: {
  readonly answer: ColumnAnswer
  readonly first: string
  readonly onAnswer: (answer: ColumnAnswer) => void
}) {
  const { say } = useWords()
  const { column, role, unit } = answer
  return (
    <div className="probe">
      <Select
        label={say('heat:column-is', { column })}
        hint={say('heat:column-first', { cell: first })}
        value={role}
        options={ROLES.map((value) => ({ value, label: say(`heat:role-${value}`) }))}
        onValue={(next) => {
          const nextRole = next as ColumnAnswer['role']
          const fits = nextRole !== '' && nextRole !== 'out' && unit !== '' && UNITS_OF[nextRole].includes(unit)
          onAnswer({ column, role: nextRole, unit: fits ? unit : '' })
        }}
      />
      {role !== '' && role !== 'out' && (
        <ChoiceTags
          legend={say('heat:column-unit', { column })}
          options={UNITS_OF[role].map((value) => ({ value, label: unitName(value) }))}
          value={unit === '' ? null : unit}
          onValue={(next) => onAnswer({ column, role, unit: next })}
        />
      )}
    </div>
  )
}

function Select({
  label,
  hint,
  value,
  options,
  onValue,
}: {
  readonly label: string
  readonly hint?: string
  readonly value: string
  readonly options: readonly { readonly value: string; readonly label: string }[]
  readonly onValue: (value: string) => void
}) {
  const { say } = useWords()
  const id = useId()
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {hint && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <select
        id={id}
        className="written"
        value={value}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={(event) => onValue(event.target.value)}
      >
        <option value="">{say('canner:run-screen-typed-choose')}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  )
}
