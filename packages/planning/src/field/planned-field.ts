/** What a plot is to be planted with, kept with its plot, and worked out again from what was kept. */
import { GUIDANCE_EDITION } from '@crib/guidance'
import type { BodyOf, PlotFact } from '@crib/journal'
import { CODE_VERSION, type Json, shownValue } from '@crib/science'
import { type FieldPlan, type FieldPlanInput, fieldPlan, fieldPlanTooLarge } from './field-plan.ts'

export interface PlannedField {
  readonly seasonYear: number
  readonly cornName: string
  readonly seedLotId?: string
  readonly input: FieldPlanInput
  readonly plan: FieldPlan
}

/** The body of a `field-planned` entry: inputs, edition, code version, and every number as it was shown. */
export function fieldPlannedBody({ input, plan, ...named }: PlannedField, plotId: string): BodyOf<'field-planned'> {
  return {
    plotId,
    ...named,
    // Through text once, so that what is absent is absent in the book as well.
    inputs: JSON.parse(JSON.stringify(input)) as Json,
    edition: GUIDANCE_EDITION,
    codeVersion: CODE_VERSION,
    shown: Object.fromEntries(plan.values.map((value) => [value.id, shownValue(value)])),
  }
}

const NUMBERS = [
  ...(['foodLb', 'reserveKernelsCount', 'plantsForLineCount', 'gPerThousand', 'kernelsPerEar'] as const),
  ...(['earsPerPlant', 'lossFraction', 'germinationFraction', 'survivalFraction'] as const),
  ...(['rowSpacingM', 'inRowSpacingM'] as const),
] satisfies readonly (keyof FieldPlanInput)[]

/** The plan of a plot for a year, or its latest; null without one, or where its entry kept other inputs. */
export function plannedField(plot: Pick<PlotFact, 'plans'>, seasonYear?: number): PlannedField | null {
  const told = plot.plans.findLast((one) => seasonYear === undefined || one.seasonYear === seasonYear)
  const inputs = told?.inputs as unknown as FieldPlanInput | null | undefined
  const isWhole =
    typeof inputs === 'object' &&
    inputs !== null &&
    NUMBERS.every((name) => Number.isFinite(inputs[name])) &&
    (inputs.pattern === 'rows' || inputs.pattern === 'hills')
  if (!told || !isWhole || fieldPlanTooLarge(inputs)) return null
  const { cornName, seedLotId } = told
  return {
    seasonYear: told.seasonYear,
    cornName,
    input: inputs,
    plan: fieldPlan(inputs),
    ...(seedLotId !== undefined && { seedLotId }),
  }
}
