/** How fast cooked hominy that waits must cool. */
import type { Sentence } from '@crib/science'
import json from '../data/cooling-window.json' with { type: 'json' }
import { GUIDANCE_EDITION, type Standing } from '../schema/envelope.ts'
import { coolingWindowSchema } from '../schema/list-tables.ts'
import { loadTable, tableSourceKeys } from './load.ts'
import { sentence } from './sentence.ts'

export const COOLING_WINDOW = loadTable(coolingWindowSchema, json)

export interface CoolingStep {
  readonly fromF: number
  readonly toF: number
  /** From the start of cooling. [min] */
  readonly withinMin: number
}

export interface CoolingWindow {
  readonly steps: readonly [CoolingStep, CoolingStep]
  /** Kept at least this hot, food may wait instead. [F] */
  readonly holdHotF: number
  readonly say: Sentence
  readonly standing: Standing
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

/** 135 to 70 F within 2 h, to 41 F within 6 h in all; or held at 135 F or above.  @source food-code-cooling 3-501.14 */
export function coolingWindow(): CoolingWindow {
  const steps = COOLING_WINDOW.rows.map(({ fromF, toF, withinH }) => ({ fromF, toF, withinMin: withinH * 60 }))
  const [first, second] = steps as [CoolingStep, CoolingStep]
  return {
    steps: [first, second],
    holdHotF: first.fromF,
    say: sentence('guidance:cooling-window', {
      hot: { value: first.fromF, unit: 'F' },
      warm: { value: first.toF, unit: 'F' },
      warmWithin: { value: first.withinMin / 60, unit: 'H' },
      cold: { value: second.toF, unit: 'F' },
      coldWithin: { value: second.withinMin / 60, unit: 'H' },
    }),
    standing: COOLING_WINDOW.standing,
    sourceKeys: tableSourceKeys(COOLING_WINDOW),
    edition: GUIDANCE_EDITION,
  }
}
