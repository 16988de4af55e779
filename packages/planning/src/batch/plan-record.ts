/** What is written down of a plan, and what moves when one thing is changed. */
import { GUIDANCE_EDITION } from '@crib/guidance'
import { CODE_VERSION, type Json, shownValue } from '@crib/science'
import type { BatchPlan } from './plan.ts'

/** The body a `batch-planned` entry takes: inputs, edition, code version and every number as it was shown. */
export function planRecord(plan: BatchPlan): {
  readonly inputs: Json
  readonly edition: string
  readonly codeVersion: string
  readonly shown: { readonly [id: string]: number }
} {
  return {
    inputs: plan.input as unknown as Json,
    edition: GUIDANCE_EDITION,
    codeVersion: CODE_VERSION,
    shown: Object.fromEntries(plan.values.map((value) => [value.id, shownValue(value)])),
  }
}

export interface Moved {
  readonly id: string
  /** As shown; undefined where the number is new or gone. */
  readonly before?: number
  readonly after?: number
}

/** Which numbers moved between two plans, in the order of the later one, then those that are gone. */
export function whatMoved(before: BatchPlan, after: BatchPlan): readonly Moved[] {
  const was = planRecord(before).shown
  const is = planRecord(after).shown
  return [...new Set([...Object.keys(is), ...Object.keys(was)])].flatMap((id) => {
    const from = was[id]
    const to = is[id]
    if (from === to) return []
    return [{ id, ...(from !== undefined && { before: from }), ...(to !== undefined && { after: to }) }]
  })
}
