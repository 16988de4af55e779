/**
 * What a book's records teach about slip times: likely spreads, each with its weight and its fit. Fixed points, no chance:
 * the same records give the same belief. Leaves out: any one pot (slip-forecast.ts).
 */
import { potRecord } from './pot-evidence.ts'
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

/**
 * Learns from pots that are done: a belief over places and spreads. [ln min]
 *
 * The spreads are found by Newton's steps, then integrated over 25 points about them (degree 5, Gauss weight). No record
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
  const found = degreeFivePoints().flatMap(({ offsets, weight }) => {
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

/** The middle, and every pair of axes at ±√3: exact to degree 5 in four dimensions.  @source mcnamee-stenger-1967 */
function degreeFivePoints(): readonly { readonly offsets: readonly number[]; readonly weight: number }[] {
  const far = Math.sqrt(3)
  const points = [{ offsets: SPREAD_NAMES.map(() => 0), weight: 1 / 3 }]
  for (let i = 0; i < DIMENSIONS; i += 1) {
    for (let j = i + 1; j < DIMENSIONS; j += 1) {
      for (const a of [-far, far]) {
        for (const b of [-far, far]) {
          points.push({ offsets: SPREAD_NAMES.map((_, d) => (d === i ? a : d === j ? b : 0)), weight: 1 / 36 })
        }
      }
    }
  }
  return points
}
