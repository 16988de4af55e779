/**
 * What a batch was planned from, kept with the batch so that every screen and sheet works the same plan out again.
 * Leaves out: the plan itself (batch-plan.ts) and the day by clock (day/).
 */
import { GUIDANCE_EDITION } from '@crib/guidance'
import type { BatchFact, BodyOf } from '@crib/journal'
import { CODE_VERSION, type Json, shownValue } from '@crib/science'
import { batchPlan } from './batch-plan.ts'
import type { BatchPlanInput } from './input.ts'
import type { BatchOutcome, BatchPlan } from './plan.ts'

/** When the work is done, and by how many. */
export interface PlannedDay {
  /** YYYY-MM-DD */
  readonly date: string
  /** Laid out forward from a start or back from a finish. [ClockMin] */
  readonly clock: { readonly from: 'start' | 'finish'; readonly clockMin: number }
  readonly peopleCount: number
  /** 2: hull today, can tomorrow. */
  readonly dayCount: 1 | 2
}

export interface PlannedInputs {
  readonly plan: BatchPlanInput
  readonly day: PlannedDay
  readonly cornLotId?: string
  readonly alkaliLotId?: string
  readonly cannerIds: readonly string[]
}

export interface BatchToPlan {
  readonly batchId: string
  readonly title: string
  readonly inputs: PlannedInputs
  readonly plan: BatchPlan
  /** Corn the batch takes from its lot. [kg] */
  readonly cornKg?: number
}

/** The body of a `batch-planned` entry: inputs, edition, code version, and every number as it was shown. */
export function batchPlannedBody({ batchId, title, inputs, plan, cornKg }: BatchToPlan): BodyOf<'batch-planned'> {
  const { cornLotId } = inputs
  return {
    batchId,
    title,
    inputs: JSON.parse(JSON.stringify(inputs)) as Json,
    edition: GUIDANCE_EDITION,
    codeVersion: CODE_VERSION,
    shown: Object.fromEntries(plan.values.map((value) => [value.id, { value: shownValue(value), unit: value.unit }])),
    ...(cornLotId !== undefined && cornKg !== undefined && { corn: [{ lotId: cornLotId, massKg: cornKg }] }),
  }
}

/** What a batch was planned from; null where its entry was written by something that kept other inputs. */
export function plannedInputs({ plan }: Pick<BatchFact, 'plan'>): PlannedInputs | null {
  const inputs = plan.inputs as unknown as Partial<PlannedInputs> | null
  const isWhole =
    typeof inputs === 'object' &&
    inputs !== null &&
    Array.isArray(inputs.plan?.endings) &&
    Array.isArray(inputs.plan?.pots) &&
    Array.isArray(inputs.plan?.canners) &&
    typeof inputs.day?.clock?.clockMin === 'number'
  return isWhole ? (inputs as PlannedInputs) : null
}

/** The plan of a batch, worked out again from what it was planned from; null as plannedInputs. */
export function planOfBatch(batch: Pick<BatchFact, 'plan'>): BatchOutcome | null {
  const inputs = plannedInputs(batch)
  return inputs && batchPlan(inputs.plan)
}
