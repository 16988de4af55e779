/** TakeForm: a jar or pack opened (good, or why not), given, thrown out, or all that is left moved elsewhere. Props: lot, isNext? (the one thing to do on its page). */
import { suspectJarSteps } from '@crib/guidance'
import type { BodyOf, FoodLotFact } from '@crib/journal'
import { useState } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import {
  ButtonRow,
  Caution,
  ChoiceTags,
  CountField,
  NextAction,
  Reasons,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

const HOW = ['opened', 'given', 'moved', 'discarded'] as const
type How = (typeof HOW)[number]
type Found = BodyOf<'food-opened'>['found']

/** What may be wrong, by how it was kept. */
const WRONG_IN_JAR = ['unsealed', 'leaking', 'bulged', 'spurted', 'cloudy', 'off-smell', 'mould'] as const
const WRONG_IN_PACK = ['off-smell', 'mould', 'insects', 'stale', 'freezer-burnt'] as const

export function TakeForm({ lot, isNext = false }: { readonly lot: FoodLotFact; readonly isNext?: boolean }) {
  const { say } = useWords()
  const record = useRecord()
  const { lotId, loadCode } = lot
  const [how, setHow] = useState<How>('opened')
  const [found, setFound] = useState<Found>('good')
  const [count, setCount] = useState(1)
  const [toWhom, setToWhom, forgetWhom] = useHalfTyped(`take:${lotId}:to-whom`, '')
  const [place, setPlace, forgetPlace] = useHalfTyped(`take:${lotId}:place`, '')
  const [note, setNote, forgetNote] = useHalfTyped(`take:${lotId}:note`, '')
  const isBadJar = lot.form === 'jar' && how === 'opened' && found !== 'good'
  const Keep = isNext ? NextAction : SideAction
  const taken = () => {
    setCount(1)
    for (const forget of [forgetWhom, forgetPlace, forgetNote]) forget()
  }
  const keep = async () => {
    const kept = await (how === 'opened'
      ? record.keep('food-opened', { lotId, count, found, ...(note.trim() && { note: note.trim() }) })
      : how === 'moved'
        ? record.keep('food-moved', { lotId, place: place.trim() })
        : record.keep('lot-used', {
            lotId,
            count,
            how,
            ...(how === 'given' && toWhom.trim() && { toWhom: toWhom.trim() }),
          }))
    if (kept) taken()
  }
  return (
    <>
      <ChoiceTags
        legend={say('pantry:take-how')}
        options={HOW.map((value) => ({ value, label: say(`pantry:how-${value}`) }))}
        value={how}
        onValue={setHow}
      />
      {how !== 'moved' && (
        <CountField label={say('pantry:take-count')} value={count} onValue={setCount} min={1} max={10_000} />
      )}
      {how === 'opened' && (
        <ChoiceTags
          legend={say('pantry:found-how')}
          options={(['good', ...(lot.form === 'jar' ? WRONG_IN_JAR : WRONG_IN_PACK)] as const).map((value) => ({
            value,
            label: say(`pantry:found-${value}`),
          }))}
          value={found}
          onValue={setFound}
        />
      )}
      {isBadJar && (
        <>
          <Caution sentence={suspectJarSteps('open')[0]!} />
          <Reasons sentences={suspectJarSteps('open').slice(1)} title={say('pantry:suspect-title')} />
          <ButtonRow>
            <SideAction href={`/pantry/recall?load=${encodeURIComponent(loadCode)}`}>
              {say('pantry:to-others-of-load', { code: loadCode })}
            </SideAction>
          </ButtonRow>
        </>
      )}
      {how === 'opened' && found !== 'good' && (
        <TextField label={say('pantry:found-note')} value={note} onValue={setNote} lines={2} maxLength={10_000} />
      )}
      {how === 'given' && (
        <TextField
          label={say('pantry:take-to-whom')}
          hint={say('pantry:take-to-whom-hint')}
          value={toWhom}
          onValue={setToWhom}
        />
      )}
      {how === 'moved' && (
        <TextField label={say('pantry:moved-to')} hint={say('pantry:moved-to-hint')} value={place} onValue={setPlace} />
      )}
      <Keep onClick={keep} disabled={how === 'moved' && place.trim() === ''}>
        {say('shell:write-down')}
      </Keep>
      <Asked record={record} onKept={taken} />
    </>
  )
}
