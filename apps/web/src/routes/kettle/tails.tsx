/**
 * Tails: what was sorted out of a pot after the cook, by cause, beside the keeper's own line; a handful to count instead of
 * weighing; what became of it. Mould stops. Props: at.
 */
import { mouldFound, type PotTails, potTails, type SortCause } from '@crib/planning'
import { formatReckoned } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ChoiceTags,
  CountField,
  Fold,
  Ledger,
  NumberRow,
  Reasons,
  Refusal,
} from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { upperFirst } from '../../upper-first.ts'
import { TapButton, TapGroup } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import type { PotAt } from './pot-at.ts'
import { CAUSES } from './sort-fields.tsx'

export function Tails({ at }: { readonly at: PotAt }) {
  const { facts } = useBook()
  const { say } = useWords()
  const tails = potTails(facts, at.batch, at.walk.potLoad)
  return (
    <>
      {tails && <Seen tails={tails} at={at} />}
      <Fold title={say('kettle:handful-title')}>
        <Handful at={at} />
      </Fold>
      <Fold title={say('kettle:line-title')}>
        <OwnLine />
      </Fold>
    </>
  )
}

/** Mould stops, whatever else is there. */
export function MouldStop({ when }: { readonly when: 'dry' | 'wet' }) {
  const { say } = useWords()
  return <Refusal title={say('kettle:mould-title')} why={mouldFound(when)} askWhom={[{ key: 'kettle:mould-ask' }]} />
}

function Seen({ tails, at }: { readonly tails: PotTails; readonly at: PotAt }) {
  const { say } = useWords()
  const { causes, shareFraction, hasMould, sentences, askWhom } = tails
  return (
    <div aria-live="polite" className="passage-body">
      {hasMould && <Refusal title={say('kettle:mould-title')} why={mouldFound('wet')} askWhom={askWhom} />}
      {shareFraction && (
        <NumberRow>
          <BigNumber label={say('kettle:tails-share')} reckoned={shareFraction} size="small" />
        </NumberRow>
      )}
      <Reasons sentences={sentences} />
      {causes.length > 0 && (
        <Ledger
          head={[say('kettle:cause-column'), say('kettle:cause-weight'), say('kettle:cause-share')]}
          rows={causes.map(({ cause, massKg, shareFraction: share }) => ({
            key: cause,
            cells: [
              upperFirst(say(`kettle:cause-${cause}`)),
              { number: massKg ? formatReckoned(massKg) : '' },
              { number: share ? formatReckoned(share) : '' },
            ],
          }))}
        />
      )}
      <WentTo tails={tails} at={at} />
    </div>
  )
}

/** What becomes of weighed tails: one tap, kept with their weight. */
function WentTo({ tails: { offered }, at: { batch, walk } }: { readonly tails: PotTails; readonly at: PotAt }) {
  const { say } = useWords()
  const record = useRecord()
  const last = batch.sorts.findLast(({ when, potLoad = 1 }) => when === 'wet' && potLoad === walk.potLoad)
  if (!last) return null
  const { at: said, ...body } = last
  if (last.wentTo) return <p>{say(`kettle:tails-went-${last.wentTo}`)}</p>
  return (
    <>
      <p className="line-title">{say('kettle:tails-go')}</p>
      <TapGroup label={say('kettle:tails-go')}>
        {offered.map((wentTo) => (
          <TapButton
            key={wentTo}
            onClick={() =>
              void record.keep('entry-corrected', {
                correctsId: said.entryId,
                body: { ...body, wentTo },
                reason: say('kettle:tails-go-reason'),
              })
            }
          >
            {say(`kettle:tails-to-${wentTo}`)}
          </TapButton>
        ))}
      </TapGroup>
      <Asked record={record} />
    </>
  )
}

interface Counted {
  readonly ofCount: number
  readonly counts: { readonly [cause: string]: number }
}

const FIFTY: Counted = { ofCount: 50, counts: {} }

function Handful({ at: { batch, walk } }: { readonly at: PotAt }) {
  const { say } = useWords()
  const record = useRecord()
  const { potLoad } = walk
  const [typed, setTyped, forget] = useHalfTyped(`handful:${batch.batchId}:${potLoad}`, FIFTY)
  const causes: readonly SortCause[] = CAUSES['sort-wet']
  const tails = causes.flatMap((cause) => {
    const count = typed.counts[cause] ?? 0
    return count > 0 ? [{ cause, count }] : []
  })
  const keep = async () => {
    const seen = { type: 'handful-sorted', ofCount: typed.ofCount, tails } as const
    if (await record.keep('cook-noted', { batchId: batch.batchId, potLoad, seen })) forget()
  }
  return (
    <div className="passage-body">
      <CountField
        label={say('kettle:handful-of')}
        hint={say('kettle:handful-hint')}
        value={typed.ofCount}
        onValue={(ofCount) => setTyped({ ...typed, ofCount })}
        min={1}
      />
      {causes.map((cause) => (
        <CountField
          key={cause}
          label={say('kettle:cause-counted', { cause: upperFirst(say(`kettle:cause-${cause}`)) })}
          value={typed.counts[cause] ?? 0}
          onValue={(count) => setTyped({ ...typed, counts: { ...typed.counts, [cause]: count } })}
        />
      ))}
      <TapGroup>
        <TapButton onClick={() => void keep()}>{say('kettle:handful-keep')}</TapButton>
      </TapGroup>
      <Asked record={record} />
    </div>
  )
}

const ABOVE = ['sort-again', 'cook-tails-again', 'grind', 'feed', 'discard'] as const

/** The keeper's own line: a share they choose, and what then becomes of the tails. */
function OwnLine() {
  const { facts, kitchenId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const kept = facts.kitchen?.rejectLine
  const fresh: { percent: number; above: (typeof ABOVE)[number] } = {
    percent: kept ? Math.round(kept.shareFraction * 100) : 5,
    above: kept?.above ?? 'sort-again',
  }
  const [typed, setTyped, forget] = useHalfTyped('reject-line', fresh)
  const keep = async () => {
    if (!kitchenId) return
    const rejectLine = { shareFraction: typed.percent / 100, above: typed.above }
    if (await record.keep('kitchen-noted', { kitchenId, rejectLine })) forget()
  }
  return (
    <div className="passage-body">
      <p>
        {kept
          ? say('kettle:line-is', { line: { value: kept.shareFraction, unit: 'Fraction' } })
          : say('kettle:line-none-yet')}
      </p>
      <CountField
        label={say('kettle:line-percent')}
        value={typed.percent}
        onValue={(percent) => setTyped({ ...typed, percent })}
        min={1}
        max={50}
      />
      <ChoiceTags
        legend={say('kettle:line-above')}
        options={ABOVE.map((value) => ({ value, label: say(`kettle:tails-to-${value}`) }))}
        value={typed.above}
        onValue={(above) => setTyped({ ...typed, above })}
      />
      <TapGroup>
        <TapButton onClick={() => void keep()}>{say('kettle:line-keep')}</TapButton>
      </TapGroup>
      <Asked record={record} />
    </div>
  )
}
