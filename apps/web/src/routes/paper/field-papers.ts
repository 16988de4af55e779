/** The field sheet of a plot: its plan for the year ahead, with its neighbours. Leaves out every number of its own. */
import type { PlotFact } from '@crib/journal'
import { fieldSheetOfPlan, type PaperDocument } from '@crib/paper'
import { fieldSheetBeside, plannedField } from '@crib/planning'
import { type Desk, settingOf } from './documents.ts'

/** Null without a plan. */
export function fieldSheetDocument(desk: Desk, plot: PlotFact): PaperDocument | null {
  const planned = plannedField(plot)
  if (!planned) return null
  const beside = fieldSheetBeside(plot, planned, desk.today)
  return fieldSheetOfPlan(planned.plan, planned.input, beside, settingOf(desk), desk.words)
}
