/** What is kept, what is on its way to being kept, and the work there is. */
import { coolingPan, dryingTray, pantryShelf } from '@crib/planning'
import { formatReckoned } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Empty, MarginNote, NextAction, Passage, Sheet, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useNow } from '../../walk/use-now.ts'
import { useWords } from '../../words.tsx'
import { ShelfRow } from '../pantry/shelf-row.tsx'

const WORK = ['cooling', 'drying', 'freezer', 'mill', 'roast', 'power-cut'] as const

export function KeepingList() {
  const { facts } = useBook()
  const { say, sentence } = useWords()
  const nowMs = useNow()
  const kept = pantryShelf(facts).filter(({ lot }) => lot.form !== 'jar')
  const pans = Object.values(facts.coolings).filter(({ ended }) => ended === null)
  const trays = Object.values(facts.dryings).filter(({ ended }) => ended === null)
  const isEmpty = kept.length + pans.length + trays.length === 0
  return (
    <Sheet title={say('shell:part-keeping')} drawing="tin" lead={say('shell:keeping-lead')}>
      {pans.length > 0 && (
        <Passage title={say('keeping:screen-cooling-now')}>
          <ul className="reasons">
            {pans.map((pan) => {
              const { values, next } = coolingPan(pan, nowMs)
              const warmBy = formatReckoned(values[0]!)
              const coldBy = formatReckoned(values[1]!)
              return (
                <li key={pan.coolingId}>
                  {say('keeping:screen-pan-line', { what: pan.what, warmBy, coldBy })} {sentence(next)}
                </li>
              )
            })}
          </ul>
          <NextAction href="/keeping/cooling">{say('keeping:screen-to-cooling')}</NextAction>
        </Passage>
      )}
      {trays.length > 0 && (
        <Passage title={say('keeping:screen-drying-now')}>
          <ul className="reasons">
            {trays.map((tray) => {
              const [stopAt] = dryingTray(tray).values
              return (
                <li key={tray.dryingId}>
                  {tray.name}: {stopAt && say('keeping:screen-tray-line', { weight: formatReckoned(stopAt) })}
                </li>
              )
            })}
          </ul>
          <ButtonRow>
            <SideAction href="/keeping/drying">{say('keeping:screen-to-drying')}</SideAction>
          </ButtonRow>
        </Passage>
      )}
      <Passage title={say('keeping:screen-work')} margin={<MarginNote>{say('keeping:screen-work-margin')}</MarginNote>}>
        <ButtonRow>
          {WORK.map((work) => (
            <SideAction key={work} href={`/keeping/${work}`}>
              {say(`keeping:screen-${work}`)}
            </SideAction>
          ))}
        </ButtonRow>
      </Passage>
      <Passage title={say('keeping:screen-kept')}>
        {kept.length > 0 ? (
          <ol className="shelf-rows">
            {kept.map((row) => (
              <ShelfRow key={row.lot.lotId} row={row} />
            ))}
          </ol>
        ) : (
          <Empty
            drawing="tin"
            {...(isEmpty && { action: <NextAction href="/plan">{say('shell:next-plan')}</NextAction> })}
          >
            <p>{say('shell:keeping-empty')}</p>
          </Empty>
        )}
      </Passage>
    </Sheet>
  )
}
