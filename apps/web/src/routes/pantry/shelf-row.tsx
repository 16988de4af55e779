/** ShelfRow: one lot on the shelf: how many, of what, where, what goes first, and taking some. Props: row. */
import type { BodyOf } from '@crib/journal'
import type { ShelfLot } from '@crib/planning'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { ChoiceTags, CountField, Fold, Reasons, SideAction, TextField } from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from './day-text.ts'

const HOW = ['eaten', 'opened', 'given', 'discarded'] as const
type How = (typeof HOW)[number]

export function ShelfRow({ row }: { readonly row: ShelfLot }) {
  const { facts } = useBook()
  const words = useWords()
  const { say, sentence } = words
  const { lot, advice, putUpOn, useFirstBy, bestUntil } = row
  const batch = lot.batchId === undefined ? undefined : facts.batches[lot.batchId]
  const cornLotId = batch?.plan.corn?.[0]?.lotId
  const corn = cornLotId === undefined ? undefined : facts.cornLots[cornLotId]?.name
  const contents = corn === undefined ? say('pantry:hominy') : say('pantry:hominy-of', { name: corn })
  const packs = say(`pantry:held-${lot.form === 'jar' ? (lot.jarSize ?? 'quart') : lot.form}`, {
    count: lot.remainingCount,
  })
  return (
    <li className="shelf-row">
      <p className="shelf-count">
        <b>{lot.remainingCount}</b> <span>{packs}</span>
      </p>
      <p>
        {contents} <span className="shelf-code">{lot.loadCode}</span>
      </p>
      <p>
        {[
          say('pantry:put-up-on', { day: dayText(putUpOn) }),
          lot.place && say('pantry:stands-in', { place: lot.place }),
          lot.householdName && say('pantry:belongs-to', { household: lot.householdName }),
        ]
          .filter(Boolean)
          .join(' ')}
      </p>
      {useFirstBy && bestUntil && (
        <p>
          <strong>
            {useFirstBy === bestUntil
              ? say('pantry:use-by', { day: dayText(useFirstBy) })
              : say('pantry:use-between', { first: dayText(useFirstBy), last: dayText(bestUntil) })}
          </strong>
        </p>
      )}
      {advice && <p className="field-hint">{sentence(advice.say)}</p>}
      {lot.departures && lot.departures.length > 0 && (
        <div>
          <p className="field-name">{say('pantry:departures')}</p>
          <ul className="reasons">
            {lot.departures.map((departure) => (
              <li key={departure}>{departure}</li>
            ))}
          </ul>
        </div>
      )}
      <Fold title={say('pantry:take')}>
        <TakeForm row={row} />
      </Fold>
      {lot.uses.length > 0 && (
        <Reasons
          title={say('pantry:left-the-shelf')}
          sentences={lot.uses.map(({ how, count = 0, toWhom = '', at }) => ({
            key: how === 'given' && toWhom ? `pantry:used-${how}-to` : `pantry:used-${how}`,
            params: { count, toWhom, day: dayText(at.instant.slice(0, 10)) },
          }))}
        />
      )}
    </li>
  )
}

function TakeForm({ row: { lot } }: { readonly row: ShelfLot }) {
  const { say } = useWords()
  const record = useRecord()
  const [how, setHow] = useState<How>('opened')
  const [count, setCount] = useState(1)
  const [toWhom, setToWhom] = useState('')
  const body: BodyOf<'lot-used'> = {
    lotId: lot.lotId,
    count,
    how,
    ...(how === 'given' && toWhom.trim() && { toWhom: toWhom.trim() }),
  }
  const taken = () => {
    setCount(1)
    setToWhom('')
  }
  return (
    <>
      <ChoiceTags
        legend={say('pantry:take-how')}
        options={HOW.map((value) => ({ value, label: say(`pantry:how-${value}`) }))}
        value={how}
        onValue={setHow}
      />
      <CountField label={say('pantry:take-count')} value={count} onValue={setCount} min={1} max={10_000} />
      {how === 'given' && (
        <TextField
          label={say('pantry:take-to-whom')}
          hint={say('pantry:take-to-whom-hint')}
          value={toWhom}
          onValue={setToWhom}
        />
      )}
      <SideAction
        onClick={async () => {
          if (await record.keep('lot-used', body)) taken()
        }}
      >
        {say('shell:write-down')}
      </SideAction>
      <Asked record={record} onKept={taken} />
    </>
  )
}
