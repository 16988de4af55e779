/** How long shelling by hand takes so many people, and what the ears should give. Leaves out: machines, which crack seed. */
import type { CornLotFact } from '@crib/journal'
import { convert, type Reckoned, type Sentence, SHELLED_PER_EAR_CORN_TRADE_FRACTION } from '@crib/science'
import { SHELLING_LB_PER_H } from '../batch/corn.ts'
import { down, nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface ShellingInput {
  /** Dry husked ears. */
  readonly earCornKg: number
  readonly helpersCount: number
  /** Own rate of one person, shelled corn. [lb/h]  Default: common practice. */
  readonly lbPerHour?: number
}

/** @returns shelled corn to expect [lb] and hours with all hands, each a band. */
export function shellingTime({ earCornKg, helpersCount, lbPerHour }: ShellingInput): {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
} {
  const shelledLb = convert(earCornKg, 'Kg', 'Lb') * SHELLED_PER_EAR_CORN_TRADE_FRACTION
  const hours = (rate: number) => shelledLb / (rate * helpersCount)
  const inputs = { earCornKg, helpersCount, ...(lbPerHour !== undefined && { lbPerHour }) }
  const { low, middle, high } = SHELLING_LB_PER_H
  return {
    values: [
      reckon({
        id: 'shelledLb',
        value: shelledLb,
        unit: 'Lb',
        rounding: down(0.1),
        inputs,
        basis: 'common-practice',
      }),
      reckon({
        id: 'shellingHours',
        value: hours(lbPerHour ?? middle),
        unit: 'H',
        rounding: nearest(0.25),
        inputs,
        low: hours(Math.max(high, lbPerHour ?? 0)),
        high: hours(Math.min(low, lbPerHour ?? Number.POSITIVE_INFINITY)),
        basis: lbPerHour === undefined ? 'common-practice' : 'own-record',
      }),
    ],
    reasons: [
      say('field:shelling-trade-share'),
      lbPerHour === undefined
        ? say('field:shelling-by-practice')
        : say('field:shelling-by-own-rate', { rate: Number(lbPerHour.toFixed(1)) }),
    ],
  }
}

/** Ears of a lot not shelled yet. [kg] 0 for corn brought in shelled, and where the lot was never weighed. */
export function earsLeftKg(lot: CornLotFact): number {
  if (lot.form !== 'ears' || !lot.balance || lot.balance.leftAs === 'shelled') return 0
  // A shelling without its ears took all that were left.
  const shelledKg = lot.shellings.reduce((sum, { earsKg }) => sum + (earsKg ?? Number.POSITIVE_INFINITY), 0)
  return Math.max(0, Math.min(lot.balance.leftKg, (lot.massKg ?? 0) - shelledKg))
}
