/** What a batch plan holds: sections for screens and sheets, and every number once in `values`. */
import type { Reckoned, Sentence } from '@crib/science'
import type { SeedLine } from '../seed/seed-answer.ts'
import type { RoundOfLoads } from '../shared/canner-loads.ts'
import type { EndingPlan } from './endings.ts'
import type { BatchPlanInput, Fill, JarSize } from './input.ts'
import type { PotLoad } from './pots.ts'
import type { Stage } from './stages.ts'
import type { StageWater } from './water.ts'

export interface PlanSection {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

export interface KettleSection extends PlanSection {
  readonly potLoads: readonly PotLoad[]
  readonly stages: readonly Stage[]
  /** Water by stage for the largest pot-load. */
  readonly water: readonly StageWater[]
}

export interface JarSection extends PlanSection {
  readonly jarSize: JarSize
  readonly fill: Fill
  readonly rounds: readonly RoundOfLoads[]
  /** Published minutes at pressure; absent where none may be shown. [min] */
  readonly processMin?: number
  readonly standing: readonly Sentence[]
}

export interface BatchPlan {
  readonly kind: 'planned'
  readonly input: BatchPlanInput
  /** Heads the sheet. */
  readonly seed: SeedLine
  readonly corn: PlanSection
  readonly kettle: KettleSection
  readonly hominy: PlanSection
  /** Fresh, frozen, dried and the rest, in the order to offer them. */
  readonly endings: readonly EndingPlan[]
  /** Null when no jars are wanted, or when the standing of a jar plan has not been read. */
  readonly jars: JarSection | null
  /** Why a wanted jar plan is closed, and whom to ask; empty otherwise. */
  readonly jarsClosed: { readonly why: readonly Sentence[]; readonly askWhom: readonly Sentence[] } | null
  /** Every number of the plan, seed first. */
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

export interface BatchRefusal {
  readonly kind: 'refused'
  readonly refused: string
  readonly why: readonly Sentence[]
  readonly askWhom: readonly Sentence[]
}

export type BatchOutcome = BatchPlan | BatchRefusal

/** The value with this id, or undefined where the plan has none. */
export function planValue(plan: Pick<BatchPlan, 'values'>, id: string): Reckoned | undefined {
  return plan.values.find((value) => value.id === id)
}
