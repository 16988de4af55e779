/** Jars over canners and rounds, for plans. */
import { ceilCount } from '@crib/science'

export interface PlannedLoad {
  /** 1 for the first of the day. */
  readonly number: number
  readonly round: number
  readonly cannerName: string
  readonly jarCount: number
}

export type RoundOfLoads = readonly PlannedLoad[]

/**
 * Rounds = jars over all capacities, rounded up; rounds as equal as can be; within a round levelled up to each capacity.
 * Empty when there is no canner that takes a jar.  project rule
 */
export function cannerLoads(
  jarCount: number,
  canners: readonly { readonly name: string; readonly capacity: number }[],
): readonly RoundOfLoads[] {
  const all = canners.reduce((sum, { capacity }) => sum + capacity, 0)
  if (all <= 0 || jarCount <= 0) return []
  const roundCount = ceilCount(jarCount / all)
  let number = 0
  return Array.from({ length: roundCount }, (_, index) => {
    const inRound = Math.floor(jarCount / roundCount) + (index < jarCount % roundCount ? 1 : 0)
    const shares = levelledCounts(
      inRound,
      canners.map(({ capacity }) => capacity),
    )
    return canners.flatMap(({ name }, at) =>
      shares[at]! > 0 ? [{ number: ++number, round: index + 1, cannerName: name, jarCount: shares[at]! }] : [],
    )
  })
}

/** One jar at a time to the canner with the fewest that still has room; the first of equals. */
function levelledCounts(total: number, limits: readonly number[]): number[] {
  const shares = limits.map(() => 0)
  for (let jar = 0; jar < total; jar++) {
    let best = -1
    for (let at = 0; at < limits.length; at++) {
      if (shares[at]! < limits[at]! && (best < 0 || shares[at]! < shares[best]!)) best = at
    }
    shares[best]!++
  }
  return shares
}
