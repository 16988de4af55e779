/** Paper of a plot: its field sheet, from the plan kept for it. */
import { fieldSheetOfPlan } from '@crib/paper'
import { fieldSheetBeside, plannedField } from '@crib/planning'
import { dateOf } from '../clock-times.ts'
import { badInput } from '../exit-codes.ts'
import { printSetting } from '../print.ts'
import type { MakePaper } from './paper-flags.ts'

export const FIELD_PAPERS = {
  'field-sheet': ({ facts, flags, door, words }) => {
    const plots = Object.values(facts.plots)
    const wanted = flags.plot?.toLowerCase()
    const plot = plots.findLast(({ name, plans }) =>
      wanted === undefined ? plans.length > 0 : name.toLowerCase() === wanted,
    )
    const planned = plot && plannedField(plot)
    if (!plot || !planned) {
      throw badInput('terminal:no-such-plot-plan', { names: plots.map(({ name }) => name).join(', ') || '-' })
    }
    const today = dateOf(door.terminal.now(), door.terminal.zone)
    const beside = fieldSheetBeside(plot, planned, today)
    return fieldSheetOfPlan(planned.plan, planned.input, beside, printSetting(facts, flags, door), words)
  },
} satisfies Record<string, MakePaper>
