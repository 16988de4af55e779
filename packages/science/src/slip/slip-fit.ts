/**
 * The kitchen's, the corn lots' and the alkali lots' own shares in the time to slip, for given spreads: the likeliest values
 * and how sure they are (Laplace's method). Leaves out: which spreads are likely (slip-belief.ts).
 */
import { choleskyInPlace, choleskyLogDeterminant, choleskySolveInPlace } from '../numeric/cholesky.ts'
import { type Evidence, type PotRecord, potEvidence } from './pot-evidence.ts'
import { SLIP_PRIOR, type SlipSpreads } from './slip-model.ts'

/** Places in the list of unknowns: the kitchen, the darkening lag, then corn lots, then alkali lots. */
const KITCHEN = 0
const LAG = 1
export const FIRST_LOT = 2

/** A book's pots, numbered for the fit. */
export interface SlipDesign {
  readonly pots: readonly { readonly record: PotRecord; readonly corn: number; readonly alkali: number }[]
  readonly cornIndex: ReadonlyMap<string, number>
  readonly alkaliIndex: ReadonlyMap<string, number>
  readonly size: number
}

export interface FitState {
  /** The unknowns; where to start from. */
  readonly x: Float64Array
  /** Each pot's likeliest place, to start from. */
  readonly places: Float64Array
}

export interface SlipFit {
  readonly spreads: SlipSpreads
  readonly x: Float64Array
  /** Cholesky's factor of the curvature at `x`. */
  readonly factor: Float64Array
  /** ln of the chance of all records with these spreads, but for what is the same for all spreads. */
  readonly lnEvidence: number
}

export function startState({ pots, size }: SlipDesign): FitState {
  const x = new Float64Array(size)
  x[LAG] = SLIP_PRIOR.darkeningLag.middle
  return { x, places: Float64Array.from(pots, ({ record }) => record.lnUsual) }
}

/** How sharply the prior holds each unknown. [1 / (ln minutes)^2] */
function priorPrecision(index: number, cornCount: number, spreads: SlipSpreads): number {
  if (index === KITCHEN) return 1 / SLIP_PRIOR.kitchenSd ** 2
  if (index === LAG) return 1 / SLIP_PRIOR.darkeningLag.sd ** 2
  return 1 / (index < FIRST_LOT + cornCount ? spreads.cornLots : spreads.alkaliLots) ** 2
}

/** Newton's steps are few because the likelihood is concave; more than these would be a fault. */
const MOST_STEPS = 40
/** A step that gains less in ln chance is the last. */
const SETTLED = 1e-4

/**
 * Fits the unknowns for given spreads, starting from `state`, which is brought along. Null if it does not settle.
 */
export function fitAtSpreads(design: SlipDesign, spreads: SlipSpreads, state: FitState): SlipFit | null {
  const { pots, size, cornIndex } = design
  const { x, places } = state
  const held = Float64Array.from({ length: size }, (_, i) => priorPrecision(i, cornIndex.size, spreads))
  const prior = (i: number) => (i === LAG ? SLIP_PRIOR.darkeningLag.middle : 0)
  const curvature = new Float64Array(size * size)
  const slope = new Float64Array(size)
  const before = new Float64Array(size)
  const evidence: Evidence = { value: 0, byCentre: 0, byLag: 0, byCentre2: 0, byBoth: 0, byLag2: 0, place: 0 }
  let last = Number.NEGATIVE_INFINITY
  for (let step = 0; step < MOST_STEPS; step += 1) {
    curvature.fill(0)
    slope.fill(0)
    let value = 0
    for (let i = 0; i < size; i += 1) {
      const off = x[i]! - prior(i)
      value -= (held[i]! * off * off) / 2
      slope[i] = -held[i]! * off
      curvature[i * size + i] = held[i]!
    }
    for (let p = 0; p < pots.length; p += 1) {
      const { record, corn, alkali } = pots[p]!
      evidence.place = places[p]!
      const centre = record.lnUsual + x[KITCHEN]! + x[corn]! + x[alkali]!
      potEvidence(record, { centre, lag: x[LAG]!, kernels: spreads.kernels, pots: spreads.pots }, evidence)
      places[p] = evidence.place
      value += evidence.value
      addPot(evidence, corn, alkali, { slope, curvature, size })
    }
    // A step that made things worse is halved.
    if (value < last - 1e-9) {
      for (let i = 0; i < size; i += 1) x[i] = (x[i]! + before[i]!) / 2
      continue
    }
    last = value
    const factor = Float64Array.from(curvature)
    if (!choleskyInPlace(factor, size)) return null
    before.set(x)
    const uphill = Float64Array.from(slope)
    choleskySolveInPlace(factor, size, slope)
    // Twice what the step will gain.
    let gain = 0
    for (let i = 0; i < size; i += 1) gain += uphill[i]! * slope[i]!
    for (let i = 0; i < size; i += 1) x[i] = x[i]! + slope[i]!
    if (gain < SETTLED) {
      let lnPrior = 0
      for (let i = 0; i < size; i += 1) lnPrior += Math.log(held[i]!) / 2
      const lnEvidence = value + gain / 2 + lnPrior - choleskyLogDeterminant(factor, size) / 2
      return { spreads, x: Float64Array.from(x), factor, lnEvidence }
    }
  }
  return null
}

interface Normal {
  readonly slope: Float64Array
  readonly curvature: Float64Array
  readonly size: number
}

/** A pot bears on the kitchen, its two lots, and the lag; the lower half of the curvature is enough. */
function addPot(e: Evidence, corn: number, alkali: number, { slope, curvature, size }: Normal): void {
  for (const i of [KITCHEN, corn, alkali]) slope[i] = slope[i]! + e.byCentre
  slope[LAG] = slope[LAG]! + e.byLag
  const add = (i: number, j: number, by: number) => {
    const at = i * size + j
    curvature[at] = curvature[at]! - by
  }
  add(KITCHEN, KITCHEN, e.byCentre2)
  add(corn, KITCHEN, e.byCentre2)
  add(corn, corn, e.byCentre2)
  add(alkali, KITCHEN, e.byCentre2)
  add(alkali, corn, e.byCentre2)
  add(alkali, alkali, e.byCentre2)
  if (e.byLag2 === 0 && e.byBoth === 0) return
  add(LAG, LAG, e.byLag2)
  add(LAG, KITCHEN, e.byBoth)
  add(corn, LAG, e.byBoth)
  add(alkali, LAG, e.byBoth)
}

/** Of one pot with these lots: the centre of its place, the lag, and how they vary together. Lots not in the book are at their prior. */
export interface PotForeknown {
  readonly centre: number
  readonly centreVar: number
  readonly lag: number
  readonly lagVar: number
  readonly bothVar: number
}

/** What a fit says of a pot, before the day's own scatter; a lot that is not in the book adds its whole spread. */
export function foreknown(
  { x, factor, spreads }: SlipFit,
  size: number,
  { lnUsual, corn, alkali }: { lnUsual: number; corn: number | undefined; alkali: number | undefined },
): PotForeknown {
  const known = [corn, alkali].filter((i) => i !== undefined)
  const a = new Float64Array(size)
  a[KITCHEN] = 1
  for (const i of known) a[i] = 1
  const solved = Float64Array.from(a)
  choleskySolveInPlace(factor, size, solved)
  const lagOnly = new Float64Array(size)
  lagOnly[LAG] = 1
  choleskySolveInPlace(factor, size, lagOnly)
  let centre = lnUsual
  let centreVar =
    (corn === undefined ? spreads.cornLots ** 2 : 0) + (alkali === undefined ? spreads.alkaliLots ** 2 : 0)
  let bothVar = 0
  for (let i = 0; i < size; i += 1) {
    if (a[i] === 0) continue
    centre += x[i]!
    centreVar += solved[i]!
    bothVar += lagOnly[i]!
  }
  return { centre, centreVar, lag: x[LAG]!, lagVar: lagOnly[LAG]!, bothVar }
}
