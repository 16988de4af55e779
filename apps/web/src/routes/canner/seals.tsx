/** After the lid: the seals looked at, and every jar of the load put up with its code and what departed from the direction. */
import { processLog } from '@crib/planning'
import { type ReactNode, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  ButtonRow,
  ChoiceTags,
  CountField,
  Fold,
  Passage,
  Reasons,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import type { Taps } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import { eventWords, type RunNow } from './run-of.ts'

export function SealsForm({ at, taps }: { readonly at: RunNow; readonly taps: Taps }) {
  const words = useWords()
  const { say } = words
  const { jarCount, begun } = { jarCount: at.run.begun.jarCount, begun: at.run.begun }
  const [sealedCount, setSealed] = useState(jarCount)
  const [unsealedCount, setUnsealed] = useState(0)
  const looked = sealedCount + unsealedCount
  return (
    <Passage title={say('canner:run-screen-seals-title')}>
      <WhenDue isDue={at.state.phase === 'seal-look'}>
        <Form
          action={say('canner:run-screen-seals-keep')}
          disabled={taps.busy}
          onSubmit={() => {
            const event = { type: 'seal-seen', sealedCount, unsealedCount } as const
            void taps.keep(eventWords(event, at, words), [['run-event', { runId: begun.runId, event }]])
          }}
        >
          <CountField label={say('canner:run-screen-sealed')} value={sealedCount} onValue={setSealed} max={200} />
          <CountField label={say('canner:run-screen-unsealed')} value={unsealedCount} onValue={setUnsealed} max={200} />
          {looked !== jarCount && (
            <p role="status">{say('canner:run-screen-seals-too-many', { given: looked, loaded: jarCount })}</p>
          )}
        </Form>
      </WhenDue>
    </Passage>
  )
}

/** Before their time the seals are looked at only by somebody who opens the fold. */
function WhenDue({ isDue, children }: { readonly isDue: boolean; readonly children: ReactNode }) {
  const { say } = useWords()
  return isDue ? children : <Fold title={say('canner:run-screen-seals-early')}>{children}</Fold>
}

const FORMS = ['jar', 'fridge', 'freezer'] as const
type Form_ = (typeof FORMS)[number]

export function PutUp({ at }: { readonly at: RunNow }) {
  const { facts, newId } = useBook()
  const words = useWords()
  const { say, sentence } = words
  const record = useRecord()
  const { begun, runId } = at.run
  const lots = Object.values(facts.foodLots).filter((lot) => lot.runId === runId)
  const ran = at.state.outcome === 'time-ran'
  const forms = ran ? FORMS : FORMS.filter((form) => form !== 'jar')
  const sealedLeft = (at.state.seals?.sealedCount ?? 0) - sumOf(lots.filter(({ form }) => form === 'jar'))
  const left = begun.jarCount - sumOf(lots)
  const [chosen, setForm] = useState<Form_ | null>(null)
  const form = chosen ?? (ran && sealedLeft > 0 ? 'jar' : 'fridge')
  const offered = form === 'jar' ? Math.min(left, sealedLeft) : left
  const [typedCount, setCount] = useState<number | null>(null)
  const count = typedCount ?? Math.max(0, offered)
  const [place, setPlace] = useState('')
  const [householdName, setHousehold] = useState('')
  const log = processLog({
    setup: at.setup,
    records: at.records,
    nowMs: at.state.asOfMs,
    loadCode: begun.loadCode,
    cannerName: begun.cannerName,
  })
  const keep = async () => {
    const kept = await record.keep('food-put-up', {
      lotId: newId(),
      ...(begun.batchId !== undefined && { batchId: begun.batchId }),
      runId,
      loadCode: begun.loadCode,
      form,
      jarSize: begun.jarSize,
      count,
      ...(place.trim() !== '' && { place: place.trim() }),
      ...(householdName.trim() !== '' && { householdName: householdName.trim() }),
      ...(log.departures.length > 0 && { departures: log.departures.map(sentence) }),
    })
    if (!kept) return
    setForm(null)
    setCount(null)
    setHousehold('')
  }
  return (
    <Passage title={say('canner:run-screen-put-up-title')}>
      <p>{sentence(log.summary)}</p>
      <Reasons sentences={log.departures} title={say('canner:run-screen-travels')} />
      {lots.length > 0 && (
        <ul className="reasons">
          {lots.map((lot) => (
            <li key={lot.lotId}>
              {lot.householdName !== undefined && `${lot.householdName}: `}
              {say(lot.place ? 'canner:run-screen-put-up-line-at' : 'canner:run-screen-put-up-line', {
                code: lot.loadCode,
                count: lot.count,
                form: say(`canner:run-screen-put-up-${lot.form as Form_}`),
                ...(lot.place && { place: lot.place }),
              })}
            </li>
          ))}
        </ul>
      )}
      {left > 0 && (
        <>
          <p>{say('canner:run-screen-put-up-left', { count: left })}</p>
          {!ran && <p>{say('canner:run-screen-not-for-shelf')}</p>}
          <Form action={say('canner:run-screen-put-up-keep')} disabled={count === 0} onSubmit={keep}>
            <ChoiceTags
              legend={say('canner:run-screen-put-up-as')}
              options={forms.map((value) => ({ value, label: say(`canner:run-screen-put-up-${value}`) }))}
              value={form}
              onValue={(value) => {
                setForm(value)
                setCount(null)
              }}
            />
            <CountField label={say('canner:run-screen-put-up-how-many')} value={count} onValue={setCount} max={left} />
            <TextField
              label={say('canner:run-screen-put-up-place')}
              hint={say('canner:run-screen-put-up-place-hint')}
              value={place}
              onValue={setPlace}
            />
            {begun.households ? (
              <ChoiceTags
                legend={say('canner:run-screen-put-up-household')}
                hint={say('canner:whose-hint')}
                options={begun.households.map((value) => ({
                  value,
                  label: value,
                  note: say('canner:whose-put-up', { count: sumOf(lots.filter((lot) => lot.householdName === value)) }),
                }))}
                value={householdName}
                onValue={setHousehold}
              />
            ) : (
              <TextField
                label={say('canner:run-screen-put-up-household')}
                hint={say('canner:run-screen-put-up-household-hint')}
                value={householdName}
                onValue={setHousehold}
              />
            )}
          </Form>
        </>
      )}
      <Asked record={record} />
      <ButtonRow>
        {lots.length > 0 && (
          <SideAction href={`/paper/labels?load=${encodeURIComponent(begun.loadCode)}`}>
            {say('canner:run-screen-labels')}
          </SideAction>
        )}
        <SideAction href={`/paper/process-log/${runId}`}>{say('canner:run-screen-log-print')}</SideAction>
        <SideAction href={`/canner/run${begun.batchId ? `?batch=${begun.batchId}` : ''}`}>
          {say('canner:run-screen-next-load')}
        </SideAction>
      </ButtonRow>
    </Passage>
  )
}

function sumOf(lots: readonly { readonly count: number }[]): number {
  return lots.reduce((sum, { count }) => sum + count, 0)
}
