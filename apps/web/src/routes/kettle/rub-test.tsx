/** A rub test: how many of twenty kernels slip, by big taps, put right by one where need be. */
import { RUB_TEST_KERNELS, rubWord } from '@crib/planning'
import { useState } from 'react'
import { CountField } from '../../parts-of-the-sheet/index.ts'
import { TapButton, TapGroup } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import type { PotAt } from './pot-at.ts'

/** Counts in the middle of each word. */
const QUICK = [0, 4, 10, 15, 19] as const

export function RubTestForm({ at, isNext }: { readonly at: PotAt; readonly isNext: boolean }) {
  const { say } = useWords()
  const { batch, walk, taps } = at
  const [slippedCount, setSlipped] = useState<number | null>(null)
  const ofCount = RUB_TEST_KERNELS
  const word = (count: number) => say(`kettle:walk-rub-${rubWord({ slippedCount: count, ofCount })}`)
  const keep = async () => {
    if (slippedCount === null) return
    const words = say('kettle:walk-rub-word', {
      slipped: slippedCount,
      rubbed: ofCount,
      word: word(slippedCount).toLowerCase(),
    })
    const seen = { type: 'rubbed', slippedCount, ofCount } as const
    const kept = await taps.keep(words, [['cook-noted', { batchId: batch.batchId, potLoad: walk.potLoad, seen }]])
    if (kept) setSlipped(null)
  }
  return (
    <section className="passage-body" aria-label={say('kettle:walk-rub')}>
      <h3>{say('kettle:walk-rub')}</h3>
      <p className="field-hint">{say('kettle:walk-rub-of', { count: ofCount })}</p>
      <TapGroup label={say('kettle:walk-rub-of', { count: ofCount })}>
        {QUICK.map((count) => (
          <TapButton key={count} onClick={() => setSlipped(count)}>
            {say('kettle:walk-rub-tap', { word: word(count), count })}
          </TapButton>
        ))}
      </TapGroup>
      {slippedCount !== null && (
        <>
          <CountField
            label={say('kettle:walk-rub-of', { count: ofCount })}
            hint={word(slippedCount)}
            value={slippedCount}
            onValue={setSlipped}
            max={ofCount}
          />
          <TapGroup>
            <TapButton isNext={isNext} disabled={taps.busy} onClick={() => void keep()}>
              {say('kettle:walk-rub-keep', { slipped: slippedCount, rubbed: ofCount })}
            </TapButton>
          </TapGroup>
        </>
      )}
    </section>
  )
}
