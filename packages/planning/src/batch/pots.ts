/** Pot-loads: how the dry corn is shared over the pots at hand. Leaves out clock times. */
import { ceilCount, floorCount } from '@crib/science'
import type { Pot } from './input.ts'

/** No pot is fuller at the start.  project rule, from common practice: alkali foams. */
export const POT_FILL_LIMIT_FRACTION = 2 / 3
/** Water to dry corn in the alkali boil, by volume.  @source so-easy-to-preserve-1999 (2 qt to 8 qt) */
export const WATER_TO_CORN_RATIO = 4

export interface PotLoad {
  /** 1 for the first to go on. */
  readonly number: number
  readonly round: number
  readonly potName: string
  readonly cornLiquidQt: number
  readonly waterLiquidQt: number
  readonly startingVolumeLiquidQt: number
}

export interface PotChoice {
  readonly dryCornLiquidQt: number
  readonly pots: readonly Pot[]
  readonly fillLimitFraction: number
  readonly waterToCornRatio: number
}

/** Whole quarts of dry corn a pot takes; quarters of a quart where it takes less than one. [liquid qt] */
export function cornPerPotLiquidQt(
  volumeLiquidQt: number,
  fillLimitFraction: number,
  waterToCornRatio: number,
): number {
  const corn = (volumeLiquidQt * fillLimitFraction) / (1 + waterToCornRatio)
  return corn >= 1 ? floorCount(corn) : floorCount(corn * 4) / 4
}

/**
 * Pot-loads in the order they go on: the fewest rounds, in each round the fewest pots (largest first), the corn of a
 * round levelled over them. Empty when no pot takes even a quarter of a quart.
 */
export function potLoads({
  dryCornLiquidQt,
  pots,
  fillLimitFraction,
  waterToCornRatio,
}: PotChoice): readonly PotLoad[] {
  const sized = pots
    .map((pot) => ({ pot, takes: cornPerPotLiquidQt(pot.volumeLiquidQt, fillLimitFraction, waterToCornRatio) }))
    .filter(({ takes }) => takes > 0)
    .sort((a, b) => b.takes - a.takes)
  const all = sized.reduce((sum, { takes }) => sum + takes, 0)
  if (all === 0 || !(dryCornLiquidQt > 0)) return []

  const rounds = ceilCount(dryCornLiquidQt / all)
  const perRound = dryCornLiquidQt / rounds
  const loads: PotLoad[] = []
  for (let round = 1; round <= rounds; round++) {
    const used: typeof sized = []
    for (const each of sized) {
      if (used.reduce((sum, { takes }) => sum + takes, 0) >= perRound - 1e-9) break
      used.push(each)
    }
    const corn = levelled(
      perRound,
      used.map(({ takes }) => takes),
    )
    used.forEach(({ pot }, index) => {
      const cornLiquidQt = corn[index]!
      loads.push({
        number: loads.length + 1,
        round,
        potName: pot.name,
        cornLiquidQt,
        waterLiquidQt: cornLiquidQt * waterToCornRatio,
        startingVolumeLiquidQt: cornLiquidQt * (1 + waterToCornRatio),
      })
    })
  }
  return loads
}

/** `total` shared evenly, none above its own limit; what a small one cannot take goes to the others. */
function levelled(total: number, limits: readonly number[]): number[] {
  const shares = limits.map(() => 0)
  let open = limits.map((_, index) => index)
  let rest = total
  while (open.length > 0 && rest > 1e-12) {
    const each = rest / open.length
    const full = open.filter((index) => limits[index]! - shares[index]! <= each + 1e-12)
    for (const index of full.length > 0 ? full : open) {
      const added = Math.min(each, limits[index]! - shares[index]!)
      shares[index]! += added
      rest -= added
    }
    if (full.length === 0) break
    open = open.filter((index) => !full.includes(index))
  }
  return shares
}
