/** CornLots: every lot and what is left of it, as a plain table. Props: none. */
import { convert } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { useBook } from '../book/book.tsx'
import { Ledger } from '../parts-of-the-sheet/figure.tsx'
import { useWords } from '../words.tsx'

export function CornLots() {
  const { facts } = useBook()
  const { say } = useWords()
  return (
    <Ledger
      caption={say('shell:corn-lots-caption')}
      head={[say('shell:corn-name'), say('shell:corn-brought'), say('shell:corn-left')]}
      rows={Object.values(facts.cornLots).map((lot) => ({
        key: lot.lotId,
        cells: [
          lot.treatedSeed ? `${lot.name}, ${say('shell:corn-treated-short')}` : lot.name,
          { number: lot.balance ? weight(lot.balance.broughtInKg) : lot.asTyped },
          { number: lot.balance ? weight(lot.balance.leftKg) : say('shell:corn-not-weighed') },
        ],
      }))}
    />
  )
}

/** A weight from the book, to the hundredth of a pound. */
export function weight(massKg: number): string {
  return formatQuantity({ value: Math.round(convert(massKg, 'Kg', 'Lb') * 100) / 100, unit: 'Lb' })
}
