/** GaugeTestForm: a dial beside a gauge known to be true, as a small table. Props: none (hidden until there is a dial). */
import { useId, useState } from 'react'
import { useBook } from '../book/book.tsx'
import { useHalfTyped } from '../half-typed.ts'
import { localDay } from '../local-day.ts'
import { ButtonRow, SideAction } from '../parts-of-the-sheet/actions.tsx'
import { FieldError } from '../parts-of-the-sheet/field-error.tsx'
import { ChoiceTags, DateField, TextField } from '../parts-of-the-sheet/fields.tsx'
import { useWords } from '../words.tsx'
import { Form } from './form.tsx'
import { Asked, useRecord } from './use-record.tsx'

interface Row {
  readonly key: number
  readonly truePsi: string
  readonly readsPsi: string
}

const START: readonly Row[] = [10, 11, 15].map((truePsi, key) => ({ key, truePsi: String(truePsi), readsPsi: '' }))

export function GaugeTestForm() {
  const { facts } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const dials = Object.values(facts.canners).filter(({ gauges }) => gauges.includes('dial'))
  const [cannerId, setCannerId] = useState<string | null>(null)
  const [testedOn, setTestedOn] = useState(() => localDay(new Date()))
  // Not forgotten once written down: the same office tests the next dial.
  const [tester, setTester] = useHalfTyped('gauge-test:tester', '')
  const [marks, setMarks] = useState<'1' | '2' | '5'>('1')
  const [restsAt, setRestsAt] = useState('0')
  const [rows, setRows, forgetRows] = useHalfTyped('gauge-test:rows', START)
  const [wrong, setWrong] = useState(false)
  const chosen = cannerId ?? dials.at(-1)?.cannerId
  if (!chosen) return null

  const written = rows.filter(({ readsPsi }) => readsPsi.trim() !== '')
  const numbersHold = [restsAt, ...written.flatMap(({ truePsi, readsPsi }) => [truePsi, readsPsi])].every(isPsi)
  const keep = async () => {
    if (!numbersHold || written.length === 0 || tester.trim() === '') return setWrong(true)
    const readings = written.map(({ truePsi, readsPsi }) => ({ truePsi: Number(truePsi), readsPsi: Number(readsPsi) }))
    const kept = await record.keep('gauge-tested', {
      cannerId: chosen,
      testedOn,
      tester: tester.trim(),
      readings,
      marksEveryPsi: Number(marks),
      restsAtPsi: Number(restsAt),
    })
    if (!kept) return
    setWrong(false)
    forgetRows()
  }
  const change = (key: number, change: Partial<Row>) =>
    setRows(rows.map((row) => (row.key === key ? { ...row, ...change } : row)))

  return (
    <Form action={say('shell:gauge-keep')} onSubmit={keep}>
      <ChoiceTags
        legend={say('shell:gauge-which')}
        options={dials.map((canner) => ({ value: canner.cannerId, label: canner.name }))}
        value={chosen}
        onValue={setCannerId}
      />
      <DateField label={say('shell:gauge-tested-on')} value={testedOn} onValue={setTestedOn} />
      <TextField
        label={say('shell:gauge-tester')}
        hint={say('shell:gauge-tester-hint')}
        value={tester}
        onValue={setTester}
        error={wrong && tester.trim() === '' ? say('shell:name-missing') : null}
      />
      <PsiField label={say('shell:gauge-rests-at')} value={restsAt} onValue={setRestsAt} />
      <ChoiceTags
        legend={say('shell:gauge-marks')}
        options={(['1', '2', '5'] as const).map((value) => ({ value, label: `${value} psi` }))}
        value={marks}
        onValue={setMarks}
      />
      <fieldset className="field">
        <legend>{say('shell:gauge-readings')}</legend>
        {rows.map((row) => (
          <div key={row.key} className="stamped-row" style={{ gridTemplateColumns: '1fr 1fr', gap: '0.75rem' }}>
            <PsiField
              label={say('shell:gauge-true')}
              value={row.truePsi}
              onValue={(truePsi) => change(row.key, { truePsi })}
            />
            <PsiField
              label={say('shell:gauge-reads')}
              value={row.readsPsi}
              onValue={(readsPsi) => change(row.key, { readsPsi })}
            />
          </div>
        ))}
      </fieldset>
      <ButtonRow>
        <SideAction onClick={() => setRows([...rows, { key: rows.length, truePsi: '', readsPsi: '' }])}>
          {say('shell:gauge-another')}
        </SideAction>
      </ButtonRow>
      {wrong && !numbersHold && (
        <p role="alert">
          <FieldError>{say('shell:gauge-limits')}</FieldError>
        </p>
      )}
      {wrong && written.length === 0 && (
        <p role="alert">
          <FieldError>{say('shell:gauge-no-reading')}</FieldError>
        </p>
      )}
      <Asked record={record} />
    </Form>
  )
}

function PsiField({
  label,
  value,
  onValue,
}: {
  readonly label: string
  readonly value: string
  readonly onValue: (text: string) => void
}) {
  const id = useId()
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="written"
        inputMode="decimal"
        value={value}
        aria-invalid={value.trim() !== '' && !isPsi(value)}
        onChange={(event) => onValue(event.target.value)}
      />
    </div>
  )
}

/** A figure a household gauge can show: -5 to 30 psi, the same limit the book keeps. */
function isPsi(text: string): boolean {
  return /^-?\d+(\.\d+)?$/.test(text.trim()) && Number(text) >= -5 && Number(text) <= 30
}
