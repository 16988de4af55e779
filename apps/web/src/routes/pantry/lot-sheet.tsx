/** One lot of food, as its label leads to it: what is left, using some, where it came from, and what a serving holds. */
import type { FoodLotFact } from '@crib/journal'
import { shelfLot, traceBack } from '@crib/planning'
import { formatQuantity, formatWeight } from '@crib/wording'
import { useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Fold, Passage, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { Nourishment } from './nourishment.tsx'
import { BeforeTasting } from './pantry-shelf-sheet.tsx'
import { LeftTheShelf, LotLines } from './shelf-row.tsx'
import { TakeForm } from './take-form.tsx'

export function LotSheet({ lotId }: { readonly lotId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const lot = facts.foodLots[lotId]
  if (!lot) return <NotHere />
  return (
    <Sheet title={lot.loadCode} drawing={lot.form === 'jar' ? 'jar' : 'tin'} lead={say(`pantry:form-${lot.form}`)}>
      <Passage>
        <LotLines row={shelfLot(lot, facts)} />
      </Passage>
      {lot.remainingCount > 0 ? (
        <Passage title={say('pantry:take')}>
          <TakeForm lot={lot} isNext />
        </Passage>
      ) : (
        <Passage>
          <p>{say('pantry:none-left')}</p>
        </Passage>
      )}
      {lot.form === 'jar' && lot.remainingCount > 0 && <BeforeTasting />}
      <Passage>
        <LeftTheShelf lot={lot} />
        <Origin lot={lot} />
        <Fold title={say('pantry:nourishment')}>
          <Nourishment form={lot.form} />
        </Fold>
        <ButtonRow>
          <SideAction href={`/paper/labels?load=${encodeURIComponent(lot.loadCode)}`}>
            {say('pantry:to-labels')}
          </SideAction>
          <SideAction href={`/pantry/recall?load=${encodeURIComponent(lot.loadCode)}`}>
            {say('pantry:to-others-of-load', { code: lot.loadCode })}
          </SideAction>
          <SideAction href="/pantry/scan">{say('pantry:to-scan-next')}</SideAction>
          <SideAction href="/pantry">{say('pantry:back')}</SideAction>
        </ButtonRow>
      </Passage>
    </Sheet>
  )
}

/** Back from the code on the label to canner, batch, alkali and corn, and how it was ground or roasted. */
function Origin({ lot }: { readonly lot: FoodLotFact }) {
  const { facts } = useBook()
  const { say } = useWords()
  const back = useMemo(() => traceBack(facts, lot.loadCode), [facts, lot.loadCode])
  const names = (ids: readonly string[], of: { readonly [id: string]: { readonly name: string } }) =>
    ids.flatMap((id) => of[id]?.name ?? []).join(', ')
  const rows = [
    [say('pantry:from-corn'), names(back?.cornLotIds ?? [], facts.cornLots)],
    [say('pantry:from-alkali'), names(back?.alkaliLotIds ?? [], facts.alkaliLots)],
    [
      say('pantry:from-batch'),
      (back?.batchIds ?? []).flatMap((batchId) => facts.batches[batchId]?.plan.title ?? []).join(', '),
    ],
    [say('pantry:from-canner'), [...new Set((back?.runs ?? []).map(({ begun }) => begun.cannerName))].join(', ')],
    [say('pantry:from-codes'), (back?.madeFromCodes ?? []).join(', ')],
    ...lot.workings.map(({ how, inKg, outKg, passesCount, minutes, temperatureC, note }) => [
      say(`pantry:worked-${how}`),
      [
        say('pantry:worked-weights', { went: formatWeight(inKg), came: formatWeight(outKg) }),
        passesCount !== undefined && say('pantry:worked-passes', { count: passesCount }),
        minutes !== undefined && formatQuantity({ value: minutes, unit: 'Min' }),
        temperatureC !== undefined && formatQuantity({ value: Math.round(temperatureC * 10) / 10, unit: 'C' }),
        note,
      ]
        .filter(Boolean)
        .join('; '),
    ]),
  ].filter(([, text]) => text)
  if (rows.length === 0) return null
  return (
    <div>
      <p className="line-title">{say('pantry:from-title')}</p>
      <dl className="facts">
        {rows.map(([name, text]) => (
          <div key={name} style={{ display: 'contents' }}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </div>
  )
}
