/** A log written on paper, typed in afterwards: one line for each thing that happened, with its clock time. */
import type { RunEvent } from '@crib/journal'
import { LOG_EVENTS, logInstants } from '@crib/planning'
import { useId, useState } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import {
  ButtonRow,
  ClockField,
  clockMinutes,
  DateField,
  FieldError,
  NextAction,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { type RunNow, tapSentence } from './run-of.ts'
import { readPsi } from './run-taps.tsx'

type TypedType = (typeof LOG_EVENTS)[number]
const WITH_PSI: ReadonlySet<string> = new Set(['reading', 'dipped', 'over-pressure'])

interface Row {
  readonly key: number
  readonly clock: string
  readonly type: TypedType | ''
  readonly psi: string
}

interface Typed {
  /** YYYY-MM-DD */
  readonly day: string
  readonly rows: readonly Row[]
}

export interface TypedLine {
  readonly atMs: number
  readonly event: RunEvent
}

const emptyRow = (key: number): Row => ({ key, clock: '', type: '', psi: '' })
const isEmpty = ({ clock, type, psi }: Row) => clock === '' && type === '' && psi.trim() === ''

export function TypedLog({
  name,
  held,
  zone,
  today,
  onKeep,
}: {
  /** Whose half-typed lines these are. */
  readonly name: string
  readonly held: Pick<RunNow, 'pressure' | 'setup'>
  readonly zone: string
  /** YYYY-MM-DD */
  readonly today: string
  readonly onKeep: (lines: readonly TypedLine[]) => Promise<unknown>
}) {
  const { say } = useWords()
  const [typed, setTyped, forget] = useHalfTyped<Typed>(`log:${name}`, {
    day: today,
    rows: [emptyRow(0), emptyRow(1), emptyRow(2)],
  })
  const { day, rows } = typed
  const setRows = (next: readonly Row[]) => setTyped({ ...typed, rows: next })
  const [fault, setFault] = useState<string | null>(null)
  const [busy, setBusy] = useState(false)
  const change = (key: number, told: Partial<Row>) =>
    setRows(rows.map((row) => (row.key === key ? { ...row, ...told } : row)))

  const keep = async () => {
    const filled = rows.map((row, index) => ({ ...row, number: index + 1 })).filter((row) => !isEmpty(row))
    const unread = filled.find(({ clock, type }) => clockMinutes(clock) === null || type === '')
    const noPsi = filled.find(
      ({ type, psi }) => (type === 'reading' || (WITH_PSI.has(type) && psi.trim() !== '')) && readPsi(psi) === null,
    )
    if (filled.length === 0) return setFault(say('canner:run-screen-typed-none'))
    if (unread) return setFault(say('canner:run-screen-typed-missing', { number: unread.number }))
    if (noPsi) return setFault(say('canner:run-screen-typed-no-psi', { number: noPsi.number }))
    setFault(null)
    setBusy(true)
    const instants = logInstants(
      filled.map(({ clock }) => clockMinutes(clock) ?? 0),
      day,
      zone,
    )
    await onKeep(filled.map((row, index) => ({ atMs: instants[index]!, event: eventOf(row) })))
    setBusy(false)
    forget()
  }
  return (
    <form
      className="passage-body"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <DateField
        label={say('canner:run-screen-typed-day')}
        value={day}
        onValue={(value) => value && setTyped({ ...typed, day: value })}
      />
      <p className="field-hint">{say('canner:run-screen-typed-past-midnight')}</p>
      {rows.map((row, index) => (
        <TypedRow key={row.key} row={row} number={index + 1} held={held} onChange={(told) => change(row.key, told)} />
      ))}
      <ButtonRow>
        <SideAction onClick={() => setRows([...rows, emptyRow(rows[0]!.key + rows.length)])}>
          {say('canner:run-screen-typed-more')}
        </SideAction>
      </ButtonRow>
      {fault && (
        <p role="alert">
          <FieldError>{fault}</FieldError>
        </p>
      )}
      <NextAction disabled={busy}>{say('canner:run-screen-typed-keep')}</NextAction>
    </form>
  )
}

function eventOf({ type, psi }: Row): RunEvent {
  const read = readPsi(psi)
  return { type, ...(WITH_PSI.has(type) && read !== null && { psi: read }) } as RunEvent
}

function TypedRow({
  row,
  number,
  held,
  onChange,
}: {
  readonly row: Row
  readonly number: number
  readonly held: Pick<RunNow, 'pressure' | 'setup'>
  readonly onChange: (told: Partial<Row>) => void
}) {
  const { say, sentence } = useWords()
  const id = useId()
  return (
    <fieldset className="typed-row">
      <legend>{say('canner:run-screen-typed-line', { number })}</legend>
      <ClockField
        label={say('canner:run-screen-typed-clock')}
        value={row.clock}
        onValue={(clock) => onChange({ clock })}
      />
      <div className="field">
        <label htmlFor={id}>{say('canner:run-screen-typed-event')}</label>
        <select
          id={id}
          className="written"
          value={row.type}
          onChange={(event) => onChange({ type: event.target.value as TypedType | '' })}
        >
          <option value="">{say('canner:run-screen-typed-choose')}</option>
          {LOG_EVENTS.map((type) => (
            <option key={type} value={type}>
              {sentence(tapSentence(type, held))}
            </option>
          ))}
        </select>
      </div>
      {WITH_PSI.has(row.type) && (
        <TextField label={say('canner:run-screen-typed-psi')} value={row.psi} onValue={(psi) => onChange({ psi })} />
      )}
    </fieldset>
  )
}
