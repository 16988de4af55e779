/**
 * ShelfRow: one lot on the shelf: how many, of what, where, what goes first, and taking some. Props: row.
 * LotLines: the same without taking. Props: row. LeftTheShelf: what became of what is gone. Props: lot.
 */
import type { FoodLotFact } from '@crib/journal'
import type { ShelfLot } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Fold, Reasons, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { dayText } from './day-text.ts'
import { leftTheShelf } from './left-the-shelf.ts'
import { TakeForm } from './take-form.tsx'

export function ShelfRow({ row }: { readonly row: ShelfLot }) {
  const { say } = useWords()
  const { lot } = row
  return (
    <li className="shelf-row">
      <LotLines row={row} />
      <Fold title={say('pantry:take')}>
        <TakeForm lot={lot} />
      </Fold>
      <ButtonRow>
        <SideAction href={`/pantry/lot/${lot.lotId}`}>{say('pantry:to-lot', { code: lot.loadCode })}</SideAction>
      </ButtonRow>
      <LeftTheShelf lot={lot} />
    </li>
  )
}

/** What a lot is, where it stands, and what to use first. */
export function LotLines({ row }: { readonly row: ShelfLot }) {
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
    <>
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
    </>
  )
}

/** What became of the packs that are gone. */
export function LeftTheShelf({ lot }: { readonly lot: FoodLotFact }) {
  const words = useWords()
  return <Reasons title={words.say('pantry:left-the-shelf')} sentences={leftTheShelf(lot, words)} />
}
