/** FieldSheetPage: the field sheet of a plot. Props: plotId. */
import { useMemo } from 'react'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { fieldSheetDocument } from './field-papers.ts'
import { Page } from './pages.tsx'
import { PaperChoice } from './paper-choice.tsx'
import { useDesk } from './use-desk.ts'

export function FieldSheetPage({ plotId }: { readonly plotId: string }) {
  const { say } = useWords()
  const { desk, setPaper } = useDesk()
  const plot = desk.facts.plots[plotId]
  const made = useMemo(() => (plot ? fieldSheetDocument(desk, plot) : null), [desk, plot])
  if (!plot) return <NotHere />
  return (
    <Page title={say('field:screen-print')} lead={plot.name} made={made} missing={say('field:screen-print-none')}>
      <PaperChoice paper={desk.paper} onPaper={setPaper} />
    </Page>
  )
}
