/** Reserve: what is wished of a seed lot, and what it comes to. Props: choice (which lot), today. */
import type { SeedLotFact } from '@crib/journal'
import { nextSowingOn, PLANTINGS_COUNT, reserveFromBook } from '@crib/planning'
import type { Quantity } from '@crib/science'
import { useMemo, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { ChoiceTags, CountField, FlagTag, QuantityField, TextField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { CONFIDENCES, FRESH, LINES, Planned, type Wish } from './reserve-answer.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

const SHELLED_LIMIT = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const

export function Reserve({ choice, today }: { readonly choice: LotChoice; readonly today: string }) {
  const { say } = useWords()
  const { lot } = choice
  const test = lot?.tests.at(-1)
  if (!lot) return null
  return (
    <>
      <WhichLot {...choice} />
      {test ? (
        <ReserveOf key={lot.seedLotId} lot={lot} today={today} />
      ) : (
        <p>{say('seed:screen-reserve-needs-test')}</p>
      )}
    </>
  )
}

function ReserveOf({ lot, today }: { readonly lot: SeedLotFact; readonly today: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const known = useMemo(() => reserveFromBook(lot, facts, nextSowingOn(today)), [lot, facts, today])
  const [kept, setWish] = useHalfTyped<Wish>(`reserve:${lot.seedLotId}`, {
    ...FRESH,
    kernelsPerOz: Math.round(lot.kernelsPerOz ?? 0),
    parentEars: lot.parentEarsCount ?? 0,
  })
  // What an earlier version kept half typed has fewer fields.
  const wish = { ...FRESH, ...kept }
  const [shelled, setShelled] = useState<Quantity | null>(null)
  const years = known?.input.fieldYears ?? []
  const change = (part: Partial<Wish>) => setWish({ ...wish, ...part })
  return (
    <>
      <CountField
        label={say('seed:screen-plants')}
        value={wish.plants}
        onValue={(plants) => change({ plants })}
        max={20_000}
      />
      <CountField
        label={say('seed:screen-plantings')}
        hint={say('seed:screen-plantings-hint')}
        value={wish.plantings}
        onValue={(plantings) => change({ plantings })}
        max={10}
      />
      {wish.plantings < PLANTINGS_COUNT && (
        <TextField
          label={say('seed:screen-plantings-reason')}
          value={wish.reason}
          onValue={(reason) => change({ reason })}
          error={wish.reason.trim() === '' ? say('seed:screen-reason-needed') : null}
        />
      )}
      {years.length > 0 ? (
        <div>
          <p>{say('seed:screen-own-years', { count: years.length })}</p>
          <ul className="reasons">
            {years.map(({ year, sproutsCount, grownCount }) => (
              <li key={year}>
                {say('seed:screen-own-year', { year: String(year), grown: grownCount, sprouts: sproutsCount })}
              </li>
            ))}
          </ul>
        </div>
      ) : (
        <CountField
          label={say('seed:screen-survive')}
          hint={say('seed:screen-survive-hint')}
          value={wish.surviveOf100}
          onValue={(surviveOf100) => change({ surviveOf100 })}
          max={100}
        />
      )}
      {known?.isAged && wish.assumedPercent === 0 && <p>{say('seed:screen-aged')}</p>}
      <FlagTag
        label={say('seed:screen-assume')}
        value={wish.assumedPercent > 0}
        onValue={(isAssumed) => change({ assumedPercent: isAssumed ? 85 : 0 })}
      />
      {wish.assumedPercent > 0 && (
        <CountField
          label={say('seed:screen-assumed')}
          value={wish.assumedPercent}
          onValue={(assumedPercent) => change({ assumedPercent })}
          min={1}
          max={100}
        />
      )}
      <CountField
        label={say('seed:screen-tests')}
        value={wish.testKernels}
        onValue={(testKernels) => change({ testKernels })}
        max={10_000}
      />
      <CountField
        label={say('seed:screen-gifts')}
        value={wish.giftKernels}
        onValue={(giftKernels) => change({ giftKernels })}
        max={1_000_000}
      />
      <CountField
        label={say('seed:screen-per-oz')}
        value={wish.kernelsPerOz}
        onValue={(kernelsPerOz) => change({ kernelsPerOz })}
        max={500}
      />
      <CountField
        label={say('seed:screen-parents')}
        value={wish.parentEars}
        onValue={(parentEars) => change({ parentEars })}
        max={1_000_000}
      />
      <QuantityField
        label={say('seed:screen-shelled')}
        hint={say('seed:screen-shelled-hint')}
        measures="mass"
        bareNumberUnit="Lb"
        text={wish.shelledText}
        onText={(shelledText) => change({ shelledText })}
        onQuantity={setShelled}
        limits={SHELLED_LIMIT}
      />
      <ChoiceTags
        legend={say('seed:screen-confidence')}
        options={CONFIDENCES.map((value) => ({ value, label: value }))}
        value={wish.confidence}
        onValue={(confidence) => change({ confidence })}
      />
      <ChoiceTags
        legend={say('seed:screen-line')}
        options={LINES.map((value) => ({
          value,
          label: say(`seed:screen-line-${value}`),
          note: say(`seed:screen-line-${value}-note`),
        }))}
        value={wish.line}
        onValue={(line) => change({ line })}
      />
      <div aria-live="polite" className="passage-body" id="reserve">
        {known && <Planned lot={lot} wish={wish} shelled={shelled} known={known} />}
      </div>
    </>
  )
}
