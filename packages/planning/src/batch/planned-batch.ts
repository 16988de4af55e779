/**
 * What a batch was planned from, kept with the batch so that every screen and sheet works the same plan out again.
 * Leaves out: the plan itself (batch-plan.ts) and the day by clock (day/).
 */
import type { BatchFact, BodyOf } from '@crib/journal'
import { convert, type Json } from '@crib/science'
import type { DayCounts } from '../day/from-plan.ts'
import { shelledLb } from '../shared/corn-measure.ts'
import { batchPlan } from './batch-plan.ts'
import type { BatchPlanInput } from './input.ts'
import type { BatchOutcome, BatchPlan } from './plan.ts'
import { planRecord } from './plan-record.ts'

/** When the work is done, and by how many. */
export interface PlannedDay {
  /** YYYY-MM-DD */
  readonly date: string
  /** Laid out forward from a start or back from a finish. [ClockMin] */
  readonly clock: { readonly from: 'start' | 'finish'; readonly clockMin: number }
  /** Absent: the whole work. */
  readonly counts?: DayCounts
  readonly peopleCount: number
  /** 2: hull today, can tomorrow. */
  readonly dayCount: 1 | 2
}

/** What a plan was made from, and beside it what the plan itself does not need to know. */
export interface PlannedInputs extends BatchPlanInput {
  readonly day?: PlannedDay
  readonly cornLotId?: string
  readonly alkaliLotId?: string
  readonly cannerIds?: readonly string[]
  /** How many households share the kitchen; absent for one. Their names are told at each load, not here. */
  readonly householdsCount?: number
}

export interface BatchToPlan {
  readonly batchId: string
  readonly title: string
  readonly plan: BatchPlan
  readonly beside: Pick<PlannedInputs, 'day' | 'cornLotId' | 'alkaliLotId' | 'cannerIds' | 'householdsCount'>
}

/** The body of a `batch-planned` entry: inputs, edition, code version, and every number as it was shown. */
export function batchPlannedBody({ batchId, title, plan, beside }: BatchToPlan): BodyOf<'batch-planned'> {
  const { inputs, ...record } = planRecord(plan)
  const { cornLotId } = beside
  return {
    batchId,
    title,
    ...record,
    // Through text once, so that what is absent is absent in the book as well.
    inputs: JSON.parse(JSON.stringify({ ...(inputs as object), ...beside })) as Json,
    ...(cornLotId !== undefined && { corn: [{ lotId: cornLotId, massKg: cornTakenKg(plan) }] }),
  }
}

/** Corn the batch takes from its lot, before anything is sorted out of it. [kg] */
export function cornTakenKg(plan: Pick<BatchPlan, 'input' | 'values'>): number {
  const { from, lbPerLiquidQt } = plan.input
  if (from.kind === 'corn') return convert(shelledLb(from.amount, lbPerLiquidQt), 'Lb', 'Kg')
  return convert(plan.values.find(({ id }) => id === 'cornToShellLb')?.value ?? 0, 'Lb', 'Kg')
}

/** What a batch was planned from; null where its entry was written by something that kept other inputs. */
export function plannedInputs({ plan }: Pick<BatchFact, 'plan'>): PlannedInputs | null {
  const inputs = plan.inputs as unknown as Partial<PlannedInputs> | null
  const isWhole =
    typeof inputs === 'object' &&
    inputs !== null &&
    Array.isArray(inputs.endings) &&
    Array.isArray(inputs.pots) &&
    Array.isArray(inputs.canners) &&
    typeof inputs.seed?.how === 'string' &&
    typeof inputs.from?.kind === 'string'
  return isWhole ? (inputs as PlannedInputs) : null
}

/** The plan of a batch, worked out again from what it was planned from; null as plannedInputs. */
export function planOfBatch(batch: Pick<BatchFact, 'plan'>): BatchOutcome | null {
  const inputs = plannedInputs(batch)
  return inputs && batchPlan(inputs)
}
