/**
 * useWhichLot: the seed lot a form is about; the one written down last, until another is tapped.
 * lotName: its name on this sheet.
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

/** Two lots of one name are told apart by a number, in the order they were written down. */
export function lotName(lots: readonly SeedLotFact[], lot: SeedLotFact): string {
  const alike = lots.filter(({ name }) => name === lot.name)
  return alike.length < 2 ? lot.name : `${lot.name} (${alike.indexOf(lot) + 1})`
}

export function WhichLot({ lots, lot, choose }: LotChoice) {
  const { say } = useWords()
  if (lots.length < 2) return null
  return (
    <ChoiceTags
      legend={say('seed:screen-which')}
      options={lots.map((each) => ({ value: each.seedLotId, label: lotName(lots, each) }))}
      value={lot?.seedLotId ?? null}
      onValue={choose}
    />
  )
}
