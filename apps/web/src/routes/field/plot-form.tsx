/** PlotForm: a plot that is there, with its sides as far as they were measured. Props: onKept(plotId)?. */
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { CompassTags } from './compass.tsx'
import { LengthField } from './length-field.tsx'

export function PlotForm({ onKept }: { readonly onKept?: (plotId: string) => void }) {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [name, setName, forgetName] = useHalfTyped('plot:name', '')
  const [sides, setSides, forgetSides] = useHalfTyped('plot:sides', { along: '', across: '' })
  const [lengthM, setLengthM] = useState<number | null>(null)
  const [widthM, setWidthM] = useState<number | null>(null)
  const [bearingDeg, setBearingDeg] = useState<number | null>(null)
  const [missing, setMissing] = useState(false)
  const isHalfRead = (sides.along.trim() !== '' && lengthM === null) || (sides.across.trim() !== '' && widthM === null)
  const keep = async () => {
    if (name.trim() === '') return setMissing(true)
    const plotId = newId()
    const kept = await record.keep('plot-recorded', {
      plotId,
      name: name.trim(),
      ...(lengthM !== null && { lengthM }),
      ...(widthM !== null && { widthM }),
      ...(bearingDeg !== null && { rowsBearingDeg: bearingDeg }),
    })
    if (!kept) return
    forgetName()
    forgetSides()
    setMissing(false)
    onKept?.(plotId)
  }
  return (
    <Form action={say('field:screen-plot-keep')} onSubmit={keep} disabled={isHalfRead}>
      <TextField
        label={say('field:screen-plot-name')}
        hint={say('field:screen-plot-name-hint')}
        value={name}
        onValue={setName}
        required
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      <LengthField
        label={say('field:screen-along')}
        hint={say('field:screen-side-hint')}
        text={sides.along}
        onText={(along) => setSides({ ...sides, along })}
        onMetres={setLengthM}
        least={0.5}
        most={5000}
      />
      <LengthField
        label={say('field:screen-across')}
        text={sides.across}
        onText={(across) => setSides({ ...sides, across })}
        onMetres={setWidthM}
        least={0.5}
        most={5000}
      />
      <CompassTags legend={say('field:screen-rows-run')} value={bearingDeg} onValue={setBearingDeg} />
      <Asked record={record} />
    </Form>
  )
}
