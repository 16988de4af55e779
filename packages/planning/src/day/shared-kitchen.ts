/**
 * What is said and counted where several households share one kitchen: a load record for each load, each canner's own jars,
 * and which rules begin where jars leave the household. Leaves out: whose load is whose (journal).
 */
import type { Reckoned, Sentence } from '@crib/science'
import { type BatchPlan, planValue } from '../batch/plan.ts'
import { down, nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface SharedKitchen {
  /** `jarsEach`, `loadRecords`, and `jarsThrough:` with each canner's name. [count] */
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/** Fresh, frozen and dried first; jars household by household. */
export const FIRST_OFFER: Sentence = say('season:first-offer')
/** True whether or not jars are wanted. */
export const SHARED_WORK: readonly Sentence[] = [say('season:pool-or-cloth-bags'), say('season:wall-board')]
/** Where jars leave the household. */
export const SHARED_TABLE: readonly Sentence[] = [say('season:serving-is-another-thing'), say('season:shared-table')]

/** A load record for each load, and the jars that went through each canner. [count] */
export function loadRecordValues({ input, jars }: Pick<BatchPlan, 'input' | 'jars'>): readonly Reckoned[] {
  const loads = jars?.rounds.flat() ?? []
  if (loads.length === 0) return []
  const count = (id: string, value: number) =>
    reckon({ id, value, unit: 'Count', rounding: nearest(1), basis: 'project-rule' })
  return [
    ...input.canners.map(({ name }) =>
      count(
        `jarsThrough:${name}`,
        loads.filter(({ cannerName }) => cannerName === name).reduce((sum, { jarCount }) => sum + jarCount, 0),
      ),
    ),
    count('loadRecords', loads.length),
  ]
}

/** Null for one household. */
export function sharedKitchen(plan: BatchPlan, householdsCount: number): SharedKitchen | null {
  if (!(householdsCount > 1)) return null
  const jars = planValue(plan, 'jars')
  const hasLoads = (plan.jars?.rounds.length ?? 0) > 0
  return {
    values: [
      ...(jars
        ? [
            reckon({
              id: 'jarsEach',
              value: jars.value / householdsCount,
              unit: 'Count',
              rounding: down(1),
              basis: 'project-rule',
              inputs: { householdsCount, jars: jars.value },
            }),
          ]
        : []),
      ...loadRecordValues(plan),
    ],
    reasons: [
      FIRST_OFFER,
      ...SHARED_WORK,
      ...(hasLoads
        ? [
            say('season:own-card', { count: plan.input.canners.length }),
            say('season:loads-even'),
            say('season:load-records'),
          ]
        : []),
    ],
    warnings: SHARED_TABLE,
  }
}
