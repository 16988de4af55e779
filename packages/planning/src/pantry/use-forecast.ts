/**
 * When a form of food runs out at the pace it was used here, and the lids and jars to buy for a coming plan.
 * Leaves out: what nobody wrote down; a pace from two or fewer uses is not told.
 */
import type { Facts, FoodLotFact } from '@crib/journal'
import { ceilCount, type Reckoned, UP_TO_WHOLE } from '@crib/science'
import { down, nearest, reckon } from '../shared/reckon.ts'

export interface UseForecast {
  readonly form: FoodLotFact['form']
  readonly onShelfCount: number
  /** Null with fewer than three uses written down, or all of one day. */
  readonly values: readonly [pace: Reckoned, lasts: Reckoned] | null
}

const MS_PER_DAY = 86_400_000
/** Days looked back over. [days]  A year, so that a hungry month does not rule.  project rule */
const LOOK_BACK_DAYS = 365
const FEWEST_USES = 3

/** Pace and days left of each form on the shelf, from the uses of the last year. `nowMs` in epoch ms. */
export function useForecasts({ foodLots }: Pick<Facts, 'foodLots'>, nowMs: number): readonly UseForecast[] {
  const byForm = Map.groupBy(Object.values(foodLots), ({ form }) => form)
  return [...byForm].flatMap(([form, lots]) => {
    const onShelfCount = lots.reduce((sum, { remainingCount }) => sum + Math.max(0, remainingCount), 0)
    if (onShelfCount === 0) return []
    return [{ form, onShelfCount, values: paceOf(lots, onShelfCount, nowMs) }]
  })
}

function paceOf(lots: readonly FoodLotFact[], onShelfCount: number, nowMs: number): UseForecast['values'] {
  const uses = lots
    .flatMap((lot) =>
      [...lot.uses, ...lot.openings].map(({ count = 0, at }) => ({ count, ms: Date.parse(at.instant) })),
    )
    .filter(({ count, ms }) => count > 0 && ms <= nowMs && nowMs - ms <= LOOK_BACK_DAYS * MS_PER_DAY)
  const firstMs = Math.min(...uses.map(({ ms }) => ms))
  const days = (nowMs - firstMs) / MS_PER_DAY
  if (uses.length < FEWEST_USES || !(days >= 1)) return null
  const perDay = uses.reduce((sum, { count }) => sum + count, 0) / days
  const common = { basis: 'own-record', inputs: { uses: uses.length, days: Math.round(days), onShelfCount } } as const
  return [
    reckon({ id: 'usedPerWeek', value: perDay * 7, unit: 'Count', rounding: nearest(0.1), ...common }),
    reckon({ id: 'lastsDays', value: onShelfCount / perDay, unit: 'Days', rounding: down(1), ...common }),
  ]
}

export interface LidNeed {
  readonly jarsCount: number
  readonly lidsAtHandCount: number
  readonly jarsAtHandCount: number
  /** [fraction]  S6: 0.05. */
  readonly spareLidFraction: number
}

/**
 * Lids and jars to buy: what the plan takes with its spares, less what is at hand. [count]
 *
 * 96 pints with 5 % spare: 101 lids.
 *
 * @throws {RangeError} for a count that is no whole number, or below 0.
 * @source project-rule: bought things round up
 */
export function lidsAndJarsToBuy(need: LidNeed): readonly [lids: Reckoned, jars: Reckoned] {
  for (const [name, count] of Object.entries(need))
    if (!(count >= 0) || (name !== 'spareLidFraction' && !Number.isInteger(count)))
      throw new RangeError(`${name} is ${count}; a number of 0 or more is needed, whole but for the spares`)
  const lids = ceilCount(need.jarsCount * (1 + need.spareLidFraction))
  const buy = (id: string, wanted: number, have: number): Reckoned =>
    reckon({
      id,
      value: Math.max(0, wanted - have),
      unit: 'Count',
      rounding: UP_TO_WHOLE,
      basis: 'project-rule',
      inputs: { ...need },
    })
  return [buy('lidsToBuy', lids, need.lidsAtHandCount), buy('jarsToBuy', need.jarsCount, need.jarsAtHandCount)]
}
