import { describe, expect, test } from 'vitest'
import { batchPlan } from '../batch/batch-plan.ts'
import type { BatchPlanInput } from '../batch/input.ts'
import { dayForPlan } from './from-plan.ts'
import { sharedKitchen } from './shared-kitchen.ts'

/** Scenario S6 (invented): 96 pints for 24 households, three canners with their own timings. */
const OWN = { heat: 20, comeUp: 8, coolToZero: 40, unload: 5, reload: 10 }
const S6: BatchPlanInput = {
  from: { kind: 'jars', jarCount: 96 },
  seed: { how: 'by-eye', plantingsCount: 2, places: [], isAlreadyTakenOut: true },
  cornType: 'flint',
  alkali: 'ash',
  pots: [{ name: 'the village pot', volumeLiquidQt: 60, material: 'stainless' }],
  endings: [{ ending: 'jars', shareFraction: 1 }],
  jarSize: 'pint',
  canners: [
    { name: 'A', gauges: ['weight'], capacityPints: 16, capacityQuarts: 7, timingsMin: OWN },
    { name: 'B', gauges: ['dial'], capacityPints: 9, capacityQuarts: 7, timingsMin: OWN },
    { name: 'C', gauges: ['weight'], capacityPints: 9, capacityQuarts: 7, timingsMin: OWN },
  ],
  sortedOutDryFraction: 0.1,
  elevationFt: 1180,
  elevationKnownBy: 'map',
  isStandingRead: true,
}

function planned() {
  const plan = batchPlan(S6)
  if (plan.kind !== 'planned') throw new Error(plan.refused)
  return plan
}

describe('a kitchen shared by two dozen households', () => {
  test('four jars for each, nine load records, and B answers for its own 27 (scenario S6)', () => {
    const { values } = sharedKitchen(planned(), 24)!
    expect(Object.fromEntries(values.map(({ id, value }) => [id, value]))).toEqual({
      jarsEach: 4,
      'jarsThrough:A': 42,
      'jarsThrough:B': 27,
      'jarsThrough:C': 27,
      loadRecords: 9,
    })
  })

  test('a jar that cannot be shared whole is not promised: 96 over 25 is three for each', () => {
    const each = sharedKitchen(planned(), 25)!.values.find(({ id }) => id === 'jarsEach')!
    expect(each.rounding).toEqual({ mode: 'down', step: 1 })
    expect(Math.floor(each.value)).toBe(3)
  })

  test('one household is told nothing of it', () => {
    expect(sharedKitchen(planned(), 1)).toBeNull()
  })

  test('the canners alone, heat on at 08:30, are done at 16:29 (scenario S6)', () => {
    const wish = { clock: { from: 'start', clockMin: 510 }, counts: 'canners', peopleCount: 6 } as const
    const { day, reasons, twoDays } = dayForPlan(planned(), wish)
    expect(day.doorToDoorMin).toBe(479)
    expect(day.finishMin).toBe(989)
    expect(day.steps.some(({ potLoad }) => potLoad !== undefined)).toBe(false)
    expect(reasons[0]).toEqual({ key: 'season:canners-alone' })
    expect(twoDays).toBeNull()
  })

  test('the whole work of the same plan is longer, and says nothing of canners alone', () => {
    const { day, reasons } = dayForPlan(planned(), { clock: { from: 'start', clockMin: 510 }, peopleCount: 6 })
    expect(day.doorToDoorMin).toBeGreaterThan(479)
    expect(reasons.map(({ key }) => key)).not.toContain('season:canners-alone')
  })
})
