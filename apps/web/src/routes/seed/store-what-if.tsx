/** StoreWhatIf: how long a cellar, a cupboard or a freezer would keep this lot, with the band. Props: choice (which lot). */
import { KEEP_ABOVE_FRACTION, seedWhatIf } from '@crib/planning'
import { formatQuantity, formatReckoned } from '@crib/wording'
import { useState } from 'react'
import { Ledger, PercentField, Reasons, Refusal } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

/** Examples, common practice, no source. [°C] */
const PLACES = [
  { name: 'cellar', temperatureC: 10 },
  { name: 'cupboard', temperatureC: 20 },
  { name: 'freezer', temperatureC: -18 },
] as const
/** Wet basis, where the lot's own was not told: common practice, no source. [%] */
const USUAL_MOISTURE_PERCENT = 12

export function StoreWhatIf({ choice }: { readonly choice: LotChoice }) {
  const { say } = useWords()
  const { lot } = choice
  const [typed, setTyped] = useState<number | null>(null)
  if (!lot) return null
  const noted = lot.storeNotes.findLast(({ kernelWetFraction }) => kernelWetFraction !== undefined)
  const told = noted?.kernelWetFraction ?? lot.kernelWetFraction
  const moisturePercent = typed ?? (told === undefined ? USUAL_MOISTURE_PERCENT : Number((100 * told).toFixed(1)))
  const test = lot.tests.at(-1)
  const result = seedWhatIf({
    ...(test && { sproutedCount: test.sproutedCount, testedCount: test.ofCount }),
    ways: PLACES.map((place) => ({ ...place, wetFraction: moisturePercent / 100 })),
  })
  const keep = formatQuantity({ value: KEEP_ABOVE_FRACTION, unit: 'Fraction' })
  return (
    <>
      <WhichLot {...choice} />
      <PercentField
        label={say('seed:screen-how-dry')}
        hint={say('seed:screen-how-dry-hint')}
        value={moisturePercent}
        onValue={setTyped}
        max={40}
      />
      <div aria-live="polite" className="passage-body">
        {result.ok ? (
          <>
            <Ledger
              head={[say('seed:screen-kept'), say('seed:screen-years-above', { keep })]}
              rows={PLACES.map(({ name, temperatureC }, index) => ({
                key: name,
                cells: [
                  say(`seed:screen-${name}`, { temperature: formatQuantity({ value: temperatureC, unit: 'C' }) }),
                  formatReckoned(result.values[index]!),
                ],
              }))}
            />
            <p className="field-hint">{say('seed:screen-what-if-warmths')}</p>
            <Reasons sentences={[...result.reasons, ...result.warnings]} />
          </>
        ) : (
          <Refusal title={say('seed:screen-what-if')} why={result.why} />
        )}
      </div>
    </>
  )
}
