/**
 * What a book's records teach about slip times: likely spreads, each with its weight and its fit. Fixed points, no chance:
 * the same records give the same belief. Leaves out: any one pot (slip-forecast.ts).
 */
import { HERMITE_POINTS, HERMITE_WEIGHTS, potRecord } from './pot-evidence.ts'
import { FIRST_LOT, fitAtSpreads, type SlipDesign, type SlipFit, startState } from './slip-fit.ts'
import { requirePot, SLIP_PRIOR, type SlipPot, type SlipSpreads, SPREAD_NAMES } from './slip-model.ts'

export interface SlipBelief {
  readonly potsCount: number
  readonly design: SlipDesign
  /** The weights make 1. */
  readonly fits: readonly { readonly weight: number; readonly fit: SlipFit }[]
}

const DIMENSIONS = SPREAD_NAMES.length
/** Rounds of looking for the likeliest spreads; records as they are met settle in two to four. */
const MOST_ROUNDS = 6
/** How far to either side the slope is felt, in prior deviations. */
const FEEL = 0.25
/** Up to so many pots the kernels' spread is felt more finely. */
const FEW_POTS = 5

/**
 * Learns from pots that are done: a belief over places and spreads. [ln min]
 *
 * The spreads are found by Newton's steps, then integrated over 25 points about them (degree 5, Gauss's weight), or 95 while there are few pots. No record
 * gives the prior.
 *
 * @throws {ValidRangeError} outside the ranges of SlipPot.
 * @source tierney-kadane-1986 for the method of Laplace, rue-2009 for points about the likeliest spreads,
 *   mcnamee-stenger-1967 for the points; the prior is a project rule (slip-model.ts)
 */
export function learnSlip(pots: readonly SlipPot[]): SlipBelief {
  for (const pot of pots) requirePot(pot)
  const design = designOf(pots)
  const state = startState(design)
  /** Spreads as deviations from their prior middle; the fit and the log of its chance times the prior's. */
  const at = (z: readonly number[]) => {
    const fit = fitAtSpreads(design, spreadsAt(z), state)
    return fit && { fit, ln: fit.lnEvidence - z.reduce((sum, each) => sum + each * each, 0) / 2 }
  }
  const middle = SPREAD_NAMES.map(() => 0)
  const widths = SPREAD_NAMES.map(() => 1)
  for (let round = 0; round < (pots.length === 0 ? 0 : MOST_ROUNDS); round += 1) {
    const here = at(middle)
    if (!here) break
    let longest = 0
    const moves = SPREAD_NAMES.map((_, d) => {
      const feel = FEEL * widths[d]!
      const [below, above] = [-feel, feel].map((by) => at(middle.map((z, e) => (e === d ? z + by : z)))?.ln ?? here.ln)
      const slope = (above! - below!) / (2 * feel)
      // The prior alone bends by 1; records may not make it flatter than half of that.
      const bend = Math.max(0.5, (2 * here.ln - above! - below!) / (feel * feel))
      widths[d] = 1 / Math.sqrt(bend)
      const move = Math.max(-1, Math.min(1, slope / bend))
      longest = Math.max(longest, Math.abs(move) / widths[d]!)
      return move
    })
    for (let d = 0; d < DIMENSIONS; d += 1) middle[d] = Math.max(-4, Math.min(4, middle[d]! + moves[d]!))
    if (longest < 0.15) break
  }
  const found = spreadPoints(pots.length).flatMap(({ offsets, weight }) => {
    const point = at(middle.map((z, d) => z + widths[d]! * offsets[d]!))
    // Weighed by how far the true height lies from the bell that the points are made for.
    return point
      ? [{ fit: point.fit, ln: point.ln + Math.log(weight) + offsets.reduce((sum, o) => sum + (o * o) / 2, 0) }]
      : []
  })
  const top = Math.max(...found.map(({ ln }) => ln))
  const whole = found.reduce((sum, { ln }) => sum + Math.exp(ln - top), 0)
  return {
    potsCount: pots.length,
    design,
    fits: found.map(({ fit, ln }) => ({ fit, weight: Math.exp(ln - top) / whole })),
  }
}

function designOf(pots: readonly SlipPot[]): SlipDesign {
  const cornIds = [...new Set(pots.map(({ cornLotId }) => cornLotId))]
  const alkaliIds = [...new Set(pots.map(({ alkaliLotId }) => alkaliLotId))]
  const cornIndex = new Map(cornIds.map((id, i) => [id, FIRST_LOT + i]))
  const alkaliIndex = new Map(alkaliIds.map((id, i) => [id, FIRST_LOT + cornIds.length + i]))
  return {
    pots: pots.map((pot) => ({
      record: potRecord(pot),
      corn: cornIndex.get(pot.cornLotId)!,
      alkali: alkaliIndex.get(pot.alkaliLotId)!,
    })),
    cornIndex,
    alkaliIndex,
    size: FIRST_LOT + cornIds.length + alkaliIds.length,
  }
}

function spreadsAt(z: readonly number[]): SlipSpreads {
  const of = (name: (typeof SPREAD_NAMES)[number], deviate: number) =>
    SLIP_PRIOR[name].middle * Math.exp(SLIP_PRIOR[name].logSd * deviate)
  return {
    kernels: of('kernels', z[0]!),
    cornLots: of('cornLots', z[1]!),
    alkaliLots: of('alkaliLots', z[2]!),
    pots: of('pots', z[3]!),
  }
}

interface SpreadPoint {
  readonly offsets: readonly number[]
  readonly weight: number
}

/** Points about the likeliest spreads. Few pots say little of the kernels' spread, so there it is felt at five points, not three. */
function spreadPoints(potsCount: number): readonly SpreadPoint[] {
  if (potsCount > FEW_POTS) return degreeFivePoints(DIMENSIONS)
  return HERMITE_POINTS.flatMap((kernels, k) =>
    degreeFivePoints(DIMENSIONS - 1).map(({ offsets, weight }) => ({
      offsets: [kernels, ...offsets],
      weight: weight * HERMITE_WEIGHTS[k]!,
    })),
  )
}

/** The middle, each axis, and every pair of axes at ±√3: exact to degree 5.  @source mcnamee-stenger-1967 */
function degreeFivePoints(d: number): readonly SpreadPoint[] {
  const far = Math.sqrt(3)
  const axes = Array.from({ length: d }, (_, i) => i)
  const only = (far: ReadonlyMap<number, number>) => axes.map((axis) => far.get(axis) ?? 0)
  const ends = [-far, far]
  const points: SpreadPoint[] = [
    { offsets: only(new Map()), weight: (d * d - 7 * d + 18) / 18 },
    ...axes.flatMap((i) => ends.map((end) => ({ offsets: only(new Map([[i, end]])), weight: (4 - d) / 18 }))),
    ...axes.flatMap((i) =>
      axes
        .filter((j) => j > i)
        .flatMap((j) =>
          ends.flatMap((one) =>
            ends.map((other) => ({
              offsets: only(
                new Map([
                  [i, one],
                  [j, other],
                ]),
              ),
              weight: 1 / 36,
            })),
          ),
        ),
    ),
  ]
  return points.filter(({ weight }) => weight > 0)
}
