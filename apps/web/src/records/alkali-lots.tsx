/**
 * AlkaliLots: ash and other alkali lots, with how each was last judged. Props: none.
 * AlkaliLotForm: a form for one more, with the cautions of the ash pail. Props: none.
 * AlkaliJudgementForm: how a lot worked on a corn. Props: none (hidden until there is a lot).
 */
import type { BodyOf } from '@crib/journal'
import { formatDuration, formatNumber } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { useHalfTyped } from '../half-typed.ts'
import { ChoiceTags, CountField, DateField, FlagTag, TextField } from '../parts-of-the-sheet/fields.tsx'
import { Ledger } from '../parts-of-the-sheet/figure.tsx'
import { Caution } from '../parts-of-the-sheet/lines.tsx'
import { useWords } from '../words.tsx'
import { Form } from './form.tsx'
import { Asked, useRecord } from './use-record.tsx'

const ALKALIS = ['ash', 'calcium-hydroxide', 'sodium-hydroxide', 'baking-soda'] as const
const READY = ['burntClean', 'cold', 'sifted', 'lidded', 'onlyCleanWood'] as const

export function AlkaliLots() {
  const { facts } = useBook()
  const { say } = useWords()
  const lots = Object.values(facts.alkaliLots)
  if (lots.length === 0) return null
  return (
    <Ledger
      caption={say('shell:alkali-caption')}
      head={[say('shell:alkali-name'), say('shell:alkali-kind'), say('shell:alkali-judged')]}
      rows={lots.map((lot) => {
        const last = lot.judgements.at(-1)
        const parts = [
          say(`shell:alkali-judged-${lot.judged}`),
          last?.cupsPerLiquidQt !== undefined && say('shell:alkali-cups', { cups: formatNumber(last.cupsPerLiquidQt) }),
          last?.slipMin !== undefined && say('shell:alkali-slip', { time: formatDuration(last.slipMin) }),
        ]
        return {
          key: lot.alkaliLotId,
          cells: [lot.name, say(`shell:alkali-${lot.alkali}`), parts.filter(Boolean).join(', ')],
        }
      })}
    />
  )
}

export function AlkaliLotForm() {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [name, setName, forgetName] = useHalfTyped('alkali-lot:name', '')
  const [alkali, setAlkali] = useState<(typeof ALKALIS)[number]>('ash')
  const [woods, setWoods, forgetWoods] = useHalfTyped('alkali-lot:woods', '')
  const [gatheredOn, setGatheredOn] = useState('')
  const [ready, setReady] = useState<Partial<Record<(typeof READY)[number], boolean>>>({})
  const [missing, setMissing] = useState(false)

  const keep = async () => {
    if (name.trim() === '') return setMissing(true)
    const kept = await record.keep('alkali-lot-recorded', {
      alkaliLotId: newId(),
      name: name.trim(),
      alkali,
      ...(alkali === 'ash' ? ready : {}),
      ...(alkali === 'ash' && woods.trim() !== '' ? { woods: woods.trim() } : {}),
      ...(gatheredOn && { gatheredOn }),
    })
    if (!kept) return
    forgetName()
    forgetWoods()
    setReady({})
    setMissing(false)
  }
  return (
    <Form action={say('shell:alkali-keep')} onSubmit={keep}>
      <ChoiceTags
        legend={say('shell:alkali-kind')}
        options={ALKALIS.map((value) => ({ value, label: say(`shell:alkali-${value}`) }))}
        value={alkali}
        onValue={setAlkali}
      />
      <TextField
        label={say('shell:alkali-name')}
        hint={say('shell:alkali-name-hint')}
        value={name}
        onValue={setName}
        required
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      {alkali === 'ash' && (
        <>
          <TextField label={say('shell:alkali-woods')} value={woods} onValue={setWoods} />
          <fieldset className="field">
            <legend>{say('shell:alkali-ready')}</legend>
            <div className="tags">
              {READY.map((flag) => (
                <FlagTag
                  key={flag}
                  label={say(`shell:alkali-${flag}`)}
                  value={ready[flag] ?? false}
                  onValue={(value) => setReady({ ...ready, [flag]: value })}
                />
              ))}
            </div>
          </fieldset>
          <Caution>{say('shell:ash-embers-care')}</Caution>
          <Caution>{say('shell:ash-fire-care')}</Caution>
        </>
      )}
      {alkali !== 'ash' && <Caution>{say('shell:alkali-eyes-care')}</Caution>}
      <DateField label={say('shell:alkali-gathered')} value={gatheredOn} onValue={setGatheredOn} />
      <Asked record={record} />
    </Form>
  )
}

type Judged = BodyOf<'alkali-lot-judged'>['judged']

export function AlkaliJudgementForm() {
  const { facts } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const lots = Object.values(facts.alkaliLots)
  const [alkaliLotId, setAlkaliLotId] = useState<string | null>(null)
  const [judged, setJudged] = useState<Judged>('works')
  const [halfCups, setHalfCups] = useState(2)
  const [slipMin, setSlipMin] = useState(60)
  const chosen = alkaliLotId ?? lots.at(-1)?.alkaliLotId
  if (!chosen) return null
  return (
    <Form
      action={say('shell:alkali-judge')}
      onSubmit={() =>
        record.keep('alkali-lot-judged', {
          alkaliLotId: chosen,
          judged,
          ...(judged === 'works' ? { cupsPerLiquidQt: halfCups / 2, slipMin } : {}),
        })
      }
    >
      <ChoiceTags
        legend={say('shell:alkali-which')}
        options={lots.map((lot) => ({ value: lot.alkaliLotId, label: lot.name }))}
        value={chosen}
        onValue={setAlkaliLotId}
      />
      <ChoiceTags
        legend={say('shell:alkali-judged')}
        options={(['works', 'weak', 'unknown'] as const).map((value) => ({
          value,
          label: say(`shell:alkali-judged-${value}`),
        }))}
        value={judged}
        onValue={setJudged}
      />
      {judged === 'works' && (
        <>
          <CountField
            label={say('shell:alkali-half-cups')}
            hint={say('shell:alkali-cups', { cups: formatNumber(halfCups / 2) })}
            value={halfCups}
            onValue={setHalfCups}
            min={1}
            max={48}
          />
          <CountField label={say('shell:alkali-slip-min')} value={slipMin} onValue={setSlipMin} min={1} max={1440} />
        </>
      )}
      <Asked record={record} />
    </Form>
  )
}
