/**
 * What one pot's record says of its place, with the day's own scatter integrated out: a value, slopes and curvatures for
 * the fit. The integral is Gauss's with five points, laid about where the pot's own record is likeliest.
 */
import { PLACE_LOGIT, SLIP_PRIOR, type SlipPot } from './slip-model.ts'

/** A pot's record in logarithms, made once for a whole fit. Rub tests lie in columns: they are gone over very often. */
export interface PotRecord {
  readonly lnUsual: number
  readonly lnRubbed: readonly number[]
  readonly slipped: readonly number[]
  readonly of: readonly number[]
  readonly lnDarkened: number | null
  readonly lnSlipped: number | null
}

export function potRecord({ usualMin, rubs, darkenedMin, slippedMin }: SlipPot): PotRecord {
  return {
    lnUsual: Math.log(usualMin),
    lnRubbed: rubs.map(({ boiledMin }) => Math.log(boiledMin)),
    slipped: rubs.map(({ slippedCount }) => slippedCount),
    of: rubs.map(({ ofCount }) => ofCount),
    lnDarkened: darkenedMin === undefined ? null : Math.log(darkenedMin),
    lnSlipped: slippedMin === undefined ? null : Math.log(slippedMin),
  }
}

/** ln of the chance of a pot's whole record at one place, but for what is the same everywhere. */
export function lnChanceAtPlace(pot: PotRecord, place: number, kernels: number, lag: number): number {
  const { lnRubbed, slipped, of, lnDarkened, lnSlipped } = pot
  let ln = 0
  for (let j = 0; j < lnRubbed.length; j += 1) {
    const x = (lnRubbed[j]! - place) / kernels + PLACE_LOGIT
    // ln p = min(0, x) - ln(1 + e^-|x|), and ln(1 - p) the same of -x: nothing overflows.
    const far = x > 0 ? x : -x
    ln -= of[j]! * Math.log(1 + Math.exp(-far)) + far * (x > 0 ? of[j]! - slipped[j]! : slipped[j]!)
  }
  if (lnDarkened !== null) ln -= ((lnDarkened - place - lag) / SLIP_PRIOR.darkeningSd) ** 2 / 2
  if (lnSlipped !== null) ln -= ((lnSlipped - place) / SLIP_PRIOR.toldSd) ** 2 / 2
  return ln
}

/** Of ln ∫ chance(place) Normal(place; centre, pots) dplace: value, slopes and curvatures by centre and by darkening lag. */
export interface Evidence {
  value: number
  byCentre: number
  byLag: number
  byCentre2: number
  byBoth: number
  byLag2: number
  /** Likeliest place, to start from the next time. */
  place: number
}

/** Gauss's points and weights of the standard normal.  @source abramowitz-stegun-1964 table 25.10 */
export const HERMITE_POINTS = [-2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806] as const
export const HERMITE_WEIGHTS = [
  0.01125741132772, 0.222075922005613, 0.533333333333333, 0.222075922005613, 0.01125741132772,
] as const
const LN_WEIGHT_OVER_DENSITY = HERMITE_POINTS.map((z, i) => Math.log(HERMITE_WEIGHTS[i]!) + (z * z) / 2)

const DARK = 1 / SLIP_PRIOR.darkeningSd ** 2
const TOLD = 1 / SLIP_PRIOR.toldSd ** 2

/** Room to reckon in: overwritten by each call, never read by the next. */
const lnAt = new Float64Array(HERMITE_POINTS.length)

/** Fills `out`; `out.place` is where to start from. */
export function potEvidence(
  pot: PotRecord,
  { centre, lag, kernels, pots }: { centre: number; lag: number; kernels: number; pots: number },
  out: Evidence,
): void {
  const { lnRubbed, slipped, of, lnDarkened, lnSlipped } = pot
  const scatter = 1 / (pots * pots)
  let place = out.place
  let bend = scatter
  // Newton on a concave function; a step is never longer than two spreads, so it cannot leap over the top for ever.
  for (let step = 0; step < 30; step += 1) {
    let slope = (centre - place) * scatter
    bend = scatter
    for (let j = 0; j < lnRubbed.length; j += 1) {
      const p = 1 / (1 + Math.exp(-((lnRubbed[j]! - place) / kernels + PLACE_LOGIT)))
      slope -= (slipped[j]! - of[j]! * p) / kernels
      bend += (of[j]! * p * (1 - p)) / (kernels * kernels)
    }
    if (lnDarkened !== null) {
      slope += (lnDarkened - place - lag) * DARK
      bend += DARK
    }
    if (lnSlipped !== null) {
      slope += (lnSlipped - place) * TOLD
      bend += TOLD
    }
    const longest = 2 * kernels
    const move = Math.max(-longest, Math.min(longest, slope / bend))
    place += move
    if (Math.abs(move) < 1e-3 * kernels) break
  }
  const width = 1 / Math.sqrt(bend)
  const lnScale = Math.log(width / pots)
  let top = Number.NEGATIVE_INFINITY
  for (let k = 0; k < HERMITE_POINTS.length; k += 1) {
    const at = place + width * HERMITE_POINTS[k]!
    const ln =
      lnChanceAtPlace(pot, at, kernels, lag) -
      ((at - centre) * (at - centre) * scatter) / 2 +
      LN_WEIGHT_OVER_DENSITY[k]! +
      lnScale
    lnAt[k] = ln
    if (ln > top) top = ln
  }
  let whole = 0
  let c1 = 0
  let d1 = 0
  let c2 = 0
  let cd = 0
  let d2 = 0
  for (let k = 0; k < HERMITE_POINTS.length; k += 1) {
    const weight = Math.exp(lnAt[k]! - top)
    const at = place + width * HERMITE_POINTS[k]!
    // Slopes by the centre need no chance: it enters by the scatter alone.
    const c = (at - centre) * scatter
    const d = lnDarkened === null ? 0 : (lnDarkened - at - lag) * DARK
    whole += weight
    c1 += weight * c
    d1 += weight * d
    c2 += weight * c * c
    cd += weight * c * d
    d2 += weight * d * d
  }
  c1 /= whole
  d1 /= whole
  out.value = top + Math.log(whole)
  out.byCentre = c1
  out.byLag = d1
  out.byCentre2 = c2 / whole - c1 * c1 - scatter
  out.byBoth = cd / whole - c1 * d1
  out.byLag2 = lnDarkened === null ? 0 : d2 / whole - d1 * d1 - DARK
  out.place = place
}
