/** Across: the same alkali on the corn from every alkali, in a table, with a word for how each bites. Props: pot. */
import { type DosePot, doseAcross } from '@crib/planning'
import { formatReckoned } from '@crib/wording'
import { Ledger, Reasons } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'

export function Across({ pot }: { readonly pot: Extract<DosePot, { readonly kind: 'pot' }> }) {
  const { say } = useWords()
  const { alkali: _, gPerCup: __, ...input } = pot.input
  const rows = doseAcross(input)
  return (
    <>
      <Ledger
        head={[
          say('shell:alkali-kind'),
          say('kettle:dose-value-doseG'),
          say('kettle:dose-value-hydroxideMolPerL'),
          say('kettle:dose-value-reserveEqPerL'),
          say('kettle:dose-bites'),
        ]}
        rows={rows.map(({ alkali, doseG, hydroxideMolPerL, reserveEqPerL, bite }) => ({
          key: alkali,
          cells: [
            say(alkali === 'potassium-carbonate' ? 'kettle:dose-potassium-carbonate' : `shell:alkali-${alkali}`),
            { number: formatReckoned(doseG, 'alone') },
            { number: formatReckoned(hydroxideMolPerL, 'alone') },
            { number: reserveEqPerL ? formatReckoned(reserveEqPerL, 'alone') : '' },
            say(reserveEqPerL ? 'kettle:dose-bite-reserve' : `kettle:dose-bite-${bite}`),
          ],
        }))}
      />
      <Reasons sentences={[{ key: 'kettle:chem-equal-not-equal' }, { key: 'kettle:dose-across-none-alike' }]} />
    </>
  )
}
