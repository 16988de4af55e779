/** What is left of a corn lot as dry matter, and what it weighs at the moisture last tested. Leaves out: lots never tested. */
import type { CornLotFact } from '@crib/journal'
import { massAtMoistureKg, moistureShrinkFraction, type Reckoned } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'

/**
 * Dry matter of what is left, its weight now, and the share that water took with it. Null without a weight or a test.
 *
 * 10 kg left, brought in at 18 % and now at 13 %: 8.2 kg dry, 9.425 kg, 5.7 % of the weight gone.
 *
 * @source hicks-cloud-nch-61
 */
export function lotShrink({ balance, moistureTests }: CornLotFact): readonly Reckoned[] | null {
  const tested = moistureTests.flatMap(({ wetFraction }) => wetFraction ?? [])
  const first = tested[0]
  const last = tested.at(-1)
  if (balance === null || first === undefined || last === undefined || balance.leftKg <= 0) return null
  const { leftKg } = balance
  const change = { fromWetFraction: first, toWetFraction: last }
  const common = {
    basis: 'computed',
    sourceKeys: ['hicks-cloud-nch-61'],
    inputs: { leftKg, ...change },
  } as const
  return [
    reckon({ id: 'dryMatterKg', value: leftKg * (1 - first), unit: 'Kg', rounding: nearest(0.01), ...common }),
    reckon({
      id: 'weighsNowKg',
      value: massAtMoistureKg(leftKg, change),
      unit: 'Kg',
      rounding: nearest(0.01),
      ...common,
    }),
    reckon({
      id: 'shrinkFraction',
      value: moistureShrinkFraction(change),
      unit: 'Fraction',
      rounding: nearest(0.001),
      ...common,
    }),
  ]
}
