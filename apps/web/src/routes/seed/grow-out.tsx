/** GrowOutAdvice: whether to grow a lot out this year, with the reasons and the way to the field. Props: choice (which lot), today. */
import { growOut, plannedField } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, Reasons, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

export function GrowOutAdvice({ choice, today }: { readonly choice: LotChoice; readonly today: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const { lot } = choice
  if (!lot) return null
  const planned = Object.values(facts.plots)
    .map((plot) => plannedField(plot))
    .findLast((one) => one?.seedLotId === lot.seedLotId)
  const sowing = planned?.plan.values.find(({ id }) => id === 'kernelsToSow')?.value
  const { kind, reasons } = growOut(lot, today, sowing)
  return (
    <>
      <WhichLot {...choice} />
      <p>
        <strong>{say(`seed:screen-grow-out-${kind}`)}</strong>
      </p>
      <Reasons sentences={reasons} />
      {kind !== 'test-first' && (
        <ButtonRow>
          <SideAction href="/field/plan">{say('seed:screen-grow-out-plan')}</SideAction>
        </ButtonRow>
      )}
    </>
  )
}
