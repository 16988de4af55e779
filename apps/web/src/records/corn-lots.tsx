/** CornLots: every lot and what is left of it, as a plain table. Props: none. */
import { convert, roundTo } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { useBook } from '../book/book.tsx'
import { Ledger } from '../parts-of-the-sheet/figure.tsx'
import { usePreferences } from '../preferences.tsx'
import { useWords } from '../words.tsx'

export function CornLots() {
  const { facts } = useBook()
  const { say } = useWords()
  const { measureFirst } = usePreferences()
  return (
    <Ledger
      caption={say('shell:corn-lots-caption')}
      head={[say('shell:corn-name'), say('shell:corn-brought'), say('shell:corn-left')]}
      rows={Object.values(facts.cornLots).map((lot) => ({
        key: lot.lotId,
        cells: [
          lot.treatedSeed ? `${lot.name}, ${say('shell:corn-treated-short')}` : lot.name,
          { number: lot.balance ? weight(lot.balance.broughtInKg, measureFirst) : lot.asTyped },
          { number: lot.balance ? weight(lot.balance.leftKg, measureFirst) : say('shell:corn-not-weighed') },
        ],
      }))}
    />
  )
}

/** A weight from the book in both measures, to the hundredth of a pound and of a kilogram. */
export function weight(massKg: number, measureFirst: 'us' | 'metric' = 'us'): string {
  const us = formatQuantity({ value: toHundredth(convert(massKg, 'Kg', 'Lb')), unit: 'Lb' }, 'alone')
  const metric = formatQuantity({ value: toHundredth(massKg), unit: 'Kg' }, 'alone')
  return measureFirst === 'us' ? `${us} (${metric})` : `${metric} (${us})`
}

function toHundredth(value: number): number {
  return roundTo(value, { mode: 'nearest', step: 0.01 })
}
