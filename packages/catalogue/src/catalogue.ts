/** Every public calculation once. The doors (terminal, HTTP, workbench page, docs list) are made from this list alone. */
import { GUIDANCE_CALCS } from '@crib/guidance'
import { CANNER_CALCS, PLANNING_CALCS } from '@crib/planning'
import { type Calc, SCIENCE_CALCS } from '@crib/science'

/** Inputs have been read against `calc.inputs` before `run` sees them, so the list may forget each one's own input type. */
export const CATALOGUE: readonly Calc[] = [...PLANNING_CALCS, ...CANNER_CALCS, ...GUIDANCE_CALCS, ...SCIENCE_CALCS]

export function findCalc(id: string): Calc | null {
  return CATALOGUE.find((calc) => calc.id === id) ?? null
}
