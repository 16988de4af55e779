/** One corn lot in store: how long it keeps, what it holds dry, its tests and places, and testing it anew. */
import type { CornLotFact } from '@crib/journal'
import { lotShrink, lotStorages } from '@crib/planning'
import { formatQuantity } from '@crib/wording'
import { lazy, Suspense } from 'react'
import { useBook } from '../../book/book.tsx'
import { localDay } from '../../local-day.ts'
import {
  BigNumber,
  ButtonRow,
  Caution,
  Fold,
  Ledger,
  MarginNote,
  NumberRow,
  Passage,
  Reasons,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { MoistureTestForm } from './moisture-test-form.tsx'
import { StoreNoteForm } from './store-note-form.tsx'

/** Brings every calculation along: only for whoever opens its fold. */
const AirOfStore = lazy(() => import('./air-of-store.tsx'))

export function StoreSheet({ lotId }: { readonly lotId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const lot = facts.cornLots[lotId]
  if (!lot) return <NotHere />
  return (
    <Sheet title={lot.name} drawing="braid" lead={say('crib:sheet-lead')}>
      <Keeps lot={lot} />
      <Shrink lot={lot} />
      <Told lot={lot} />
      <Passage title={say('crib:write')} margin={<MarginNote>{say('crib:write-margin')}</MarginNote>}>
        <Fold title={say('crib:test')}>
          <MoistureTestForm lot={lot} />
        </Fold>
        <Fold title={say('crib:note')}>
          <StoreNoteForm lotId={lotId} />
        </Fold>
        <Fold title={say('crib:air')}>
          <Suspense fallback={<p role="status">{say('shell:loading')}</p>}>
            <AirOfStore lot={lot} />
          </Suspense>
        </Fold>
        <ButtonRow>
          <SideAction href="/crib">{say('crib:back')}</SideAction>
        </ButtonRow>
      </Passage>
    </Sheet>
  )
}

function Keeps({ lot }: { readonly lot: CornLotFact }) {
  const { say } = useWords()
  const stored = lotStorages({ cornLots: { [lot.lotId]: lot } }, localDay())[0]
  if (!stored) return <Passage>{<p>{say('crib:none-left')}</p>}</Passage>
  const [left, allowable, used] = stored.storage?.values ?? []
  return (
    <Passage title={say('crib:keeps')}>
      <Reasons sentences={stored.asks} />
      {stored.storage && left && used && allowable && (
        <>
          <NumberRow>
            <BigNumber label={say('crib:left-days')} reckoned={left} />
            <BigNumber label={say('crib:used')} reckoned={used} size="small" />
            <BigNumber label={say('crib:fresh-would')} reckoned={allowable} size="small" />
          </NumberRow>
          {stored.storage.warnings.map((warning) => (
            <Caution key={warning.key} sentence={warning} />
          ))}
          <Reasons sentences={stored.storage.reasons} />
        </>
      )}
    </Passage>
  )
}

function Shrink({ lot }: { readonly lot: CornLotFact }) {
  const { say } = useWords()
  const values = lotShrink(lot)
  if (!values) return null
  const [dryMatter, weighsNow, shrink] = values
  return (
    <Passage title={say('crib:shrink')} margin={<MarginNote>{say('crib:shrink-margin')}</MarginNote>}>
      <NumberRow>
        <BigNumber label={say('crib:weighs-now')} reckoned={weighsNow!} size="small" />
        <BigNumber label={say('crib:dry-matter')} reckoned={dryMatter!} size="small" />
        <BigNumber label={say('crib:shrunk')} reckoned={shrink!} size="small" />
      </NumberRow>
    </Passage>
  )
}

function Told({ lot: { moistureTests, storeNotes } }: { readonly lot: CornLotFact }) {
  const { say } = useWords()
  if (moistureTests.length + storeNotes.length === 0) return null
  const share = (value: number) => formatQuantity({ value: Math.round(value * 1000) / 1000, unit: 'Fraction' })
  const rows = [
    ...moistureTests.map((test) => ({
      day: test.testedOn,
      key: test.at.entryId,
      text: [
        test.wetFraction !== undefined && say('crib:told-moisture', { moisture: share(test.wetFraction) }),
        test.saltClung !== undefined && say(test.saltClung ? 'crib:told-clung' : 'crib:told-clean'),
        say(`crib:by-${test.by}`),
        test.note,
      ],
    })),
    ...storeNotes.map((note) => ({
      day: note.notedOn,
      key: note.at.entryId,
      text: [
        formatQuantity({ value: Math.round(note.temperatureC * 10) / 10, unit: 'C' }),
        note.humidityFraction !== undefined && say('crib:told-humidity', { humidity: share(note.humidityFraction) }),
        note.place,
        note.note,
      ],
    })),
  ].sort((a, b) => (a.day < b.day ? -1 : +(a.day > b.day)))
  return (
    <Passage title={say('crib:told')}>
      <Ledger
        head={[say('crib:day'), say('crib:what')]}
        rows={rows.map(({ key, day, text }) => ({ key, cells: [dayText(day), text.filter(Boolean).join('; ')] }))}
      />
    </Passage>
  )
}
