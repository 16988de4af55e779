/**
 * useWhichLot: the seed lot a form is about; the one written down last, until another is tapped.
 * WhichLot: the choice, hung as tags; nothing where there is only one lot. Props: from useWhichLot.
 */
import type { SeedLotFact } from '@crib/journal'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { ChoiceTags } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export interface LotChoice {
  readonly lots: readonly SeedLotFact[]
  /** Null while the book holds no seed lot. */
  readonly lot: SeedLotFact | null
  choose(seedLotId: string): void
}

export function useWhichLot(): LotChoice {
  const { facts } = useBook()
  const [chosen, choose] = useState<string | null>(null)
  const lots = Object.values(facts.seedLots)
  const lot = lots.find(({ seedLotId }) => seedLotId === chosen) ?? lots.at(-1) ?? null
  return { lots, lot, choose }
}

export function WhichLot({ lots, lot, choose }: LotChoice) {
  const { say } = useWords()
  if (lots.length < 2) return null
  return (
    <ChoiceTags
      legend={say('seed:screen-which')}
      options={lots.map(({ seedLotId, name }) => ({ value: seedLotId, label: name }))}
      value={lot?.seedLotId ?? null}
      onValue={choose}
    />
  )
}
