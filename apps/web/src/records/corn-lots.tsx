/** CornLots: every lot and what is left of it, as a plain table. Props: none. */
import { formatWeight } from '@crib/wording'
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
          { number: lot.balance ? formatWeight(lot.balance.broughtInKg, measureFirst) : lot.asTyped },
          { number: lot.balance ? formatWeight(lot.balance.leftKg, measureFirst) : say('shell:corn-not-weighed') },
        ],
      }))}
    />
  )
}
