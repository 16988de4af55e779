/** DoseNumbers: grams first, then cups and spoons; capacity and intensity apart; what hurts; the boil at this elevation. Props: pot. */
import { anHourAtElevation, type DosePot, doseOf } from '@crib/planning'
import type { Reckoned } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import { useBook } from '../../../book/book.tsx'
import { BigNumber, Caution, Fold, NumberRow, Reasons, Refusal } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'

export function DoseNumbers({ pot }: { readonly pot: DosePot | null }) {
  const { facts } = useBook()
  const { say } = useWords()
  if (!pot) return <p>{say('kettle:dose-needs')}</p>
  if (pot.kind === 'refused') return <Refusal title={say('kettle:dose-none')} why={pot.why} />
  const read = doseOf(pot.input)
  if (!read.ok) return <Refusal title={say('kettle:dose-none')} why={read.why} askWhom={read.askWhom} />
  const elevationM = facts.kitchen?.elevationM
  const higher = elevationM === undefined ? null : anHourAtElevation(elevationM)
  const of = (ids: readonly string[], values: readonly Reckoned[]) =>
    ids.flatMap((id) => values.filter((value) => value.id === id))
  const numbers = (values: readonly Reckoned[], size: 'large' | 'small') => (
    <NumberRow>
      {values.map((value) => (
        <BigNumber
          key={value.id}
          label={say(`kettle:dose-value-${value.id}` as MessageKey)}
          reckoned={value}
          size={size}
          asWeighed={value.unit === 'G'}
        />
      ))}
    </NumberRow>
  )
  return (
    <>
      {numbers(of(['doseG', 'doseCups', 'doseTbsp'], read.values), 'large')}
      {read.warnings.map((sentence) => (
        <Caution key={sentence.key} sentence={sentence} />
      ))}
      <h3>{say('kettle:dose-capacity')}</h3>
      {numbers(of(['alkaliEq', 'capacityEqPerL', 'reserveEqPerL'], read.values), 'small')}
      <h3>{say('kettle:dose-intensity')}</h3>
      {numbers(of(['hydroxideMolPerL'], read.values), 'small')}
      <Reasons sentences={read.reasons} />
      {higher?.ok && (
        <Fold title={say('kettle:dose-altitude')}>
          {numbers(higher.values, 'small')}
          <Reasons sentences={[...higher.reasons, ...higher.warnings]} />
        </Fold>
      )}
    </>
  )
}
