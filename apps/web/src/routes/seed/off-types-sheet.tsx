/** OffTypesSheet: off-types of a corn counted, and their trend over the years of all its lots. Props: seedLotId. */
import { type OffTypeKind, offTypeCounts, offTypesOfCorn } from '@crib/planning'
import { formatReckoned } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { localDay } from '../../local-day.ts'
import {
  BigNumber,
  ChoiceTags,
  CountField,
  DateField,
  Ledger,
  Passage,
  Reasons,
  Sheet,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'

const KINDS = ['plants', 'ears', 'kernels'] as const satisfies readonly OffTypeKind[]

interface Typed {
  readonly what: OffTypeKind
  readonly countedOn: string
  readonly found: number
  readonly of: number
}

export default function OffTypesSheet({ seedLotId }: { readonly seedLotId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const today = localDay()
  const [typed, setTyped, forget] = useHalfTyped<Typed>(`off-types:${seedLotId}`, {
    what: 'ears',
    countedOn: today,
    found: 0,
    of: 0,
  })
  const { what, countedOn, found, of } = typed
  const change = (more: Partial<Typed>) => setTyped({ ...typed, ...more })
  const lot = facts.seedLots[seedLotId]
  if (!lot) return <NotHere />
  const keep = async () => {
    const body = { seedLotId, countedOn, what, offTypesCount: found, ofCount: of }
    if (await record.keep('off-types-counted', body)) setTyped({ what, countedOn: today, found: 0, of: 0 })
  }
  return (
    <Sheet title={say('seed:screen-off-types')} drawing="ear" lead={lot.name}>
      <Passage>
        <ChoiceTags
          legend={say('seed:screen-off-what')}
          options={KINDS.map((value) => ({ value, label: say(`seed:screen-off-${value}`) }))}
          value={what}
          onValue={(now) => change({ what: now })}
        />
        <Form action={say('seed:screen-off-keep')} onSubmit={keep} disabled={of === 0}>
          <DateField
            label={say('seed:screen-off-counted-on')}
            value={countedOn}
            onValue={(now) => change({ countedOn: now })}
            max={today}
          />
          <CountField
            label={say('seed:screen-off-of')}
            value={of}
            onValue={(now) => change({ of: now })}
            max={1_000_000}
          />
          <CountField
            label={say('seed:screen-off-found')}
            value={found}
            onValue={(now) => change({ found: now })}
            max={1_000_000}
          />
          <Asked record={record} onKept={() => forget()} />
        </Form>
      </Passage>
      <Passage title={say('seed:screen-off-trend')}>
        <div aria-live="polite" className="passage-body" id="off-types">
          <Trend cornName={lot.name} what={what} />
        </div>
      </Passage>
    </Sheet>
  )
}

function Trend({ cornName, what }: { readonly cornName: string; readonly what: OffTypeKind }) {
  const { facts } = useBook()
  const { say } = useWords()
  const result = offTypesOfCorn(facts.seedLots, cornName, what)
  if (result === null) return <p>{say('seed:screen-off-none')}</p>
  if (!result.ok) {
    return (
      <>
        <ul className="reasons">
          {offTypeCounts(facts.seedLots, cornName, what).map(({ year, offTypesCount, ofCount }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two counts of a year may be alike
            <li key={`${year} ${index}`}>
              {say('seed:screen-own-year', { year: String(year), grown: offTypesCount, sprouts: ofCount })}
            </li>
          ))}
        </ul>
        <Reasons sentences={result.why} />
      </>
    )
  }
  const ratio = result.values.find(({ id }) => id === 'oddsRatioPerYear')
  return (
    <>
      <Ledger
        head={[say('seed:screen-off-year'), say('seed:screen-off-share')]}
        rows={result.values
          .filter(({ id }) => id.startsWith('shareFraction:'))
          .map((share) => ({ key: share.id, cells: [share.id.slice('shareFraction:'.length), formatReckoned(share)] }))}
      />
      {ratio && <BigNumber label={say('seed:screen-off-factor')} reckoned={ratio} size="small" />}
      <Reasons sentences={[...result.reasons, ...result.warnings]} />
    </>
  )
}
