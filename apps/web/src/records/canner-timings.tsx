/**
 * This kitchen's own minutes for one load of a canner; vent, process and lid wait are published and not asked.
 * TimingsFields: the five minutes. Props: value, onValue.
 * CannerTimingsForm: writes them for a canner already in the book. Props: none.
 */
import { bookTimings, type CannerTimings } from '@crib/planning'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { CountField } from '../parts-of-the-sheet/count-field.tsx'
import { ChoiceTags } from '../parts-of-the-sheet/fields.tsx'
import { useWords } from '../words.tsx'
import { Form } from './form.tsx'
import { Asked, useRecord } from './use-record.tsx'

const NAMES = {
  heat: 'canner:timing-heat',
  comeUp: 'canner:timing-come-up',
  coolToZero: 'canner:timing-cool-to-zero',
  unload: 'canner:timing-unload',
  reload: 'canner:timing-reload',
} as const
const STEPS = Object.keys(NAMES) as readonly (keyof typeof NAMES)[]

/** Where nobody told: common practice, as the day is laid out without own timings. [min] */
export const USUAL_TIMINGS: CannerTimings = bookTimings('quart')

export function TimingsFields({
  value,
  onValue,
}: {
  readonly value: CannerTimings
  readonly onValue: (value: CannerTimings) => void
}) {
  const { say } = useWords()
  return STEPS.map((step) => (
    <CountField
      key={step}
      label={say(NAMES[step])}
      value={value[step]}
      onValue={(minutes) => onValue({ ...value, [step]: minutes })}
      max={300}
    />
  ))
}

export function CannerTimingsForm() {
  const { facts } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const canners = Object.values(facts.canners)
  const [cannerId, setCannerId] = useState<string | null>(null)
  const [typed, setTyped] = useState<CannerTimings | null>(null)
  const canner = canners.find((each) => each.cannerId === cannerId) ?? canners[0]
  if (!canner) return null
  const timingsMin = typed ?? canner.timingsMin ?? USUAL_TIMINGS
  const keep = async () => {
    const { name, gauges, weightsLb, rim, electric, capacityPints, capacityQuarts } = canner
    // The whole canner is told again: the latest telling stands, the earlier stays readable.
    const kept = await record.keep('canner-recorded', {
      cannerId: canner.cannerId,
      name,
      gauges: [...gauges],
      rim,
      electric,
      capacityPints,
      capacityQuarts,
      ...(weightsLb && { weightsLb: [...weightsLb] }),
      timingsMin,
    })
    if (kept) setTyped(null)
  }
  return (
    <Form action={say('canner:timing-keep')} onSubmit={keep}>
      <p className="field-hint">{say('canner:timing-lead')}</p>
      {canners.length > 1 && (
        <ChoiceTags
          legend={say('shell:gauge-which')}
          options={canners.map(({ cannerId: value, name }) => ({ value, label: name }))}
          value={canner.cannerId}
          onValue={(value) => {
            setCannerId(value)
            setTyped(null)
          }}
        />
      )}
      <TimingsFields value={timingsMin} onValue={setTyped} />
      <Asked record={record} />
    </Form>
  )
}
