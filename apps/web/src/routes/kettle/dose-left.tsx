/** DoseLeft: what of a pot's dose is still to go in, and the next step of it. Props: at, lotId (the lot it is taken from). */
import { potDoseLeft } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { BigNumber, NumberRow, Reasons } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import type { PotAt } from './pot-at.ts'

export function DoseLeft({ at, lotId }: { readonly at: PotAt; readonly lotId: string | undefined }) {
  const { facts } = useBook()
  const { say } = useWords()
  const dose = potDoseLeft(facts, at.batch, at.plan, at.walk.potLoad, lotId)
  if (!dose) return null
  const { left, step, sentences } = dose
  return (
    <div className="passage-body">
      <NumberRow>
        <BigNumber label={say('kettle:dose-left')} reckoned={left} size="small" asWeighed={left.unit === 'G'} />
        {left.value > 0 && (
          <BigNumber label={say('kettle:dose-step')} reckoned={step} size="small" asWeighed={step.unit === 'G'} />
        )}
      </NumberRow>
      <Reasons sentences={sentences} />
    </div>
  )
}
