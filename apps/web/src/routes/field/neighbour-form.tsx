/** NeighbourForm: other corn near a plot, or a later word on it. Props: plotId, seasonYear, known? (told before). */
import type { PlotFact } from '@crib/journal'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { localDay } from '../../local-day.ts'
import { ChoiceTags, DateField, TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { CompassTags } from './compass.tsx'
import { LengthField } from './length-field.tsx'
import { typedLength } from './typed-length.ts'

const SHOWS = ['not-told', 'yes', 'no'] as const

export function NeighbourForm({
  plotId,
  seasonYear,
  known,
}: {
  readonly plotId: string
  readonly seasonYear: number
  readonly known?: PlotFact['neighbours'][number]
}) {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [typed, setTyped, forget] = useHalfTyped(`neighbour:${plotId}:${known?.neighbourId ?? 'new'}`, {
    name: known?.name ?? '',
    distanceText: known ? typedLength(known.distanceM) : '',
    bearingDeg: known?.bearingDeg ?? null,
    tasselledOn: known?.tasselledOn ?? '',
    shows: known?.wouldShow === undefined ? 'not-told' : known.wouldShow ? 'yes' : 'no',
  })
  const [distanceM, setDistanceM] = useState<number | null>(null)
  const [missing, setMissing] = useState(false)
  const { name, distanceText, bearingDeg, tasselledOn, shows } = typed
  const change = (part: Partial<typeof typed>) => setTyped({ ...typed, ...part })
  const keep = async () => {
    if (name.trim() === '' || distanceM === null) return setMissing(true)
    const kept = await record.keep('neighbour-corn-recorded', {
      plotId,
      neighbourId: known?.neighbourId ?? newId(),
      name: name.trim(),
      seasonYear,
      distanceM,
      ...(bearingDeg !== null && { bearingDeg }),
      ...(tasselledOn !== '' && { tasselledOn }),
      ...(shows !== 'not-told' && { wouldShow: shows === 'yes' }),
    })
    if (!kept) return
    forget()
    setMissing(false)
  }
  return (
    <Form action={say('field:screen-neighbour-keep')} onSubmit={keep}>
      <TextField
        label={say('field:screen-neighbour-name')}
        value={name}
        onValue={(text) => change({ name: text })}
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      <LengthField
        label={say('field:screen-neighbour-distance')}
        hint={say('field:screen-neighbour-distance-hint')}
        text={distanceText}
        onText={(text) => change({ distanceText: text })}
        onMetres={setDistanceM}
        least={0.5}
        most={50_000}
      />
      {missing && distanceM === null && <p role="alert">{say('shell:quantity-empty')}</p>}
      <CompassTags
        legend={say('field:screen-neighbour-towards')}
        value={bearingDeg}
        onValue={(deg) => change({ bearingDeg: deg })}
      />
      <DateField
        label={say('field:screen-neighbour-tassel')}
        hint={say('field:screen-neighbour-tassel-hint')}
        value={tasselledOn}
        onValue={(day) => change({ tasselledOn: day })}
        max={localDay()}
      />
      <ChoiceTags
        legend={say('field:screen-neighbour-shows')}
        options={SHOWS.map((value) => ({
          value,
          label: value === 'not-told' ? say('field:screen-not-told') : say(`field:screen-shows-${value}`),
        }))}
        value={shows as (typeof SHOWS)[number]}
        onValue={(value) => change({ shows: value })}
      />
      <Asked record={record} />
    </Form>
  )
}
