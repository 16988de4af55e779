/** LotPapers: what can be printed for a seed lot. Props: choice (which lot). */
import { ButtonRow, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

export function LotPapers({ choice }: { readonly choice: LotChoice }) {
  const { say } = useWords()
  const { lot } = choice
  if (!lot) return null
  return (
    <>
      <WhichLot {...choice} />
      <ButtonRow>
        <SideAction href={`/paper/seed-envelope/${lot.seedLotId}`}>{say('seed:screen-print-envelope')}</SideAction>
        <SideAction href={`/paper/sprouting-test/${lot.seedLotId}`}>{say('seed:screen-print-test')}</SideAction>
        <SideAction href={`/paper/reserve-tags/${lot.seedLotId}`}>{say('seed:screen-print-tags')}</SideAction>
      </ButtonRow>
    </>
  )
}
