/** A tray or braid of the book that dries: where it stands by its last weight, when to stop, and what to mind. */
import type { DryingFact } from '@crib/journal'
import { moistureByWeightWetFraction, type Reckoned, type Sentence, ValidRangeError } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { dryingPlan } from './drying-plan.ts'

/** Half a gram: below what a kitchen scale shows. [kg]  project rule */
const SCALE_KG = 0.0005

export interface DryingTray {
  readonly dryingId: string
  readonly isReady: boolean
  /** The weight to stop at, what it weighed last, what is to go, its moisture now, and hours where any are known. */
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/**
 * Where a tray stands. Its moisture follows from the weights alone, since only water goes.
 *
 * 5 kg of hominy at 75 %, to 10 %: stop at 1.388 kg; at 2 kg it stands at 37.5 %.
 *
 * @source hicks-cloud-nch-61
 */
export function dryingTray(drying: DryingFact): DryingTray {
  const { dryingId, what, massKg, startWetFraction, endWetFraction, weights } = drying
  if (!(endWetFraction < startWetFraction))
    return { dryingId, isReady: false, values: [], reasons: [], warnings: [say('keeping:not-drier')] }
  const plan = dryingPlan({ what, massKg, startWetFraction, endWetFraction })
  const [stopAt, , ...hours] = plan.values
  const nowKg = weights.at(-1)?.massKg ?? massKg
  const inputs = { massKg, startWetFraction, endWetFraction, weighings: weights.length }
  const isReady = weights.length > 0 && nowKg <= stopAt!.value + SCALE_KG
  const rose = weights.some((weight, index) => weight.massKg > (weights[index - 1]?.massKg ?? massKg))
  const own = (id: string, value: number): Reckoned =>
    reckon({ id, value, unit: 'Kg', rounding: nearest(0.01), basis: 'own-record', inputs })
  const moisture = moistureNow({ startKg: massKg, startWetFraction, nowKg })
  return {
    dryingId,
    isReady,
    values: [
      stopAt!,
      own('weighsKg', nowKg),
      own('toGoKg', Math.max(0, nowKg - stopAt!.value)),
      ...(moisture === null
        ? []
        : [
            reckon({
              id: 'moistureFraction',
              value: moisture,
              unit: 'Fraction',
              rounding: nearest(0.001),
              basis: 'computed',
              sourceKeys: ['hicks-cloud-nch-61'],
              inputs,
            }),
          ]),
      ...hours,
    ],
    reasons: plan.reasons,
    warnings: [
      ...(moisture === null ? [say('keeping:tray-lighter-than-dry')] : []),
      ...(rose ? [say('keeping:tray-grew-heavier')] : []),
      ...(isReady ? [say('keeping:tray-let-it-even')] : []),
      ...plan.warnings,
    ],
  }
}

/** Null where it weighs less than its dry matter alone. */
function moistureNow(weights: { startKg: number; startWetFraction: number; nowKg: number }): number | null {
  // It grew heavier: its moisture is then above the one told at the start, and not told at all.
  if (weights.nowKg > weights.startKg) return weights.startWetFraction
  try {
    return moistureByWeightWetFraction(weights)
  } catch (error) {
    if (error instanceof ValidRangeError) return null
    throw error
  }
}
