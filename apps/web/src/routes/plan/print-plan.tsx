/** The batch sheet of a day not yet begun. */
import { useMemo } from 'react'
import { Empty, NextAction, Passage, Sheet } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { batchSheetDocument } from '../paper/documents.ts'
import { PaperChoice } from '../paper/paper-choice.tsx'
import { PrintView } from '../paper/print-view.tsx'
import { useDesk } from '../paper/use-desk.ts'
import { usePlan } from './use-plan.ts'

export function PrintPlan() {
  const { say } = useWords()
  const { desk, setPaper } = useDesk()
  const { outcome, plannedDay, title } = usePlan()
  const document = useMemo(
    () => (outcome?.kind === 'planned' ? batchSheetDocument(desk, { batch: title, plan: outcome, plannedDay }) : null),
    [desk, outcome, plannedDay, title],
  )
  return (
    <Sheet title={say('shell:print-batch-sheet')} drawing="sheet" lead={title}>
      {document ? (
        <PrintView document={document}>
          <PaperChoice paper={desk.paper} onPaper={setPaper} />
        </PrintView>
      ) : (
        <Passage>
          <Empty drawing="sheet" action={<NextAction href="/plan">{say('shell:plan-to-answers')}</NextAction>}>
            <p>{say('shell:plan-nothing-yet')}</p>
          </Empty>
        </Passage>
      )}
    </Sheet>
  )
}
