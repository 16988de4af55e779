/** A year on one sheet, for the eyes it is meant for. Leaves out every number of its own. */
import { factsOpenedTo } from '@crib/journal'
import { type PaperDocument, yearSheet } from '@crib/paper'
import { yearSummary } from '@crib/planning'
import { type Desk, settingOf } from './documents.ts'

export function yearSheetDocument(desk: Desk, year: number): PaperDocument {
  const { audience, today, words } = desk
  const facts = factsOpenedTo(desk.facts, audience)
  const name = facts.kitchen?.name
  // Other eyes may not know the kitchen; its measure they may.
  const measureFirst = desk.facts.kitchen?.measureFirst
  return yearSheet(
    { summary: yearSummary(facts, year, today), audience, measureFirst, ...(name && { kitchen: name }) },
    settingOf(desk),
    words,
  )
}
