/**
 * What one pot's record says of its place, with the day's own scatter integrated out: a value, slopes and curvatures for
 * the fit. The integral is Gauss's with five points, laid about where the pot's own record is likeliest.
 */
import { PLACE_LOGIT, SLIP_PRIOR, type SlipPot } from './slip-model.ts'

/** A pot's record in logarithms, made once for a whole fit. */
export interface PotRecord {
  readonly lnUsual: number
  readonly rubs: readonly { readonly ln: number; readonly yes: number; readonly no: number }[]
  readonly lnDarkened: number | null
  readonly lnSlipped: number | null
}

export function potRecord({ usualMin, rubs, darkenedMin, slippedMin }: SlipPot): PotRecord {
  return {
    lnUsual: Math.log(usualMin),
    rubs: rubs.map(({ boiledMin, slippedCount, ofCount }) => ({
      ln: Math.log(boiledMin),
      yes: slippedCount,
      no: ofCount - slippedCount,
    })),
    lnDarkened: darkenedMin === undefined ? null : Math.log(darkenedMin),
    lnSlipped: slippedMin === undefined ? null : Math.log(slippedMin),
  }
}

/** ln of the chance of a pot's whole record at one place, but for what is the same everywhere. */
export function lnChanceAtPlace(pot: PotRecord, place: number, kernels: number, lag: number): number {
  let ln = 0
  for (const { ln: lnT, yes, no } of pot.rubs) {
    const x = (lnT - place) / kernels + PLACE_LOGIT
    // softplus of either sign, without overflow
    const tail = Math.log1p(Math.exp(-Math.abs(x)))
    ln -= yes * (tail + Math.max(0, -x)) + no * (tail + Math.max(0, x))
  }
  if (pot.lnDarkened !== null) ln -= ((pot.lnDarkened - place - lag) / SLIP_PRIOR.darkeningSd) ** 2 / 2
  if (pot.lnSlipped !== null) ln -= ((pot.lnSlipped - place) / SLIP_PRIOR.toldSd) ** 2 / 2
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

/** Gauss-Hermite points of the standard normal, with ln of weight over density.  @source abramowitz-stegun-1964 table 25.10 */
const POINTS = [-2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806] as const
const WEIGHTS = [0.01125741132772, 0.222075922005613, 0.533333333333333, 0.222075922005613, 0.01125741132772] as const
const LN_WEIGHT_OVER_DENSITY = POINTS.map((z, i) => Math.log(WEIGHTS[i]!) + (z * z) / 2)

const DARK = 1 / SLIP_PRIOR.darkeningSd ** 2
const TOLD = 1 / SLIP_PRIOR.toldSd ** 2

/** Room to reckon in: overwritten by each call, never read by the next. */
const lnAt = new Float64Array(POINTS.length)

/** Fills `out`; `out.place` is where to start from. */
export function potEvidence(
  pot: PotRecord,
  { centre, lag, kernels, pots }: { centre: number; lag: number; kernels: number; pots: number },
  out: Evidence,
): void {
  const { rubs, lnDarkened, lnSlipped } = pot
  const scatter = 1 / (pots * pots)
  let place = out.place
  let bend = scatter
  // Newton on a concave function; a step is never longer than two spreads, so it cannot leap over the top for ever.
  for (let step = 0; step < 30; step += 1) {
    let slope = (centre - place) * scatter
    bend = scatter
    for (let j = 0; j < rubs.length; j += 1) {
      const { ln, yes, no } = rubs[j]!
      const p = 1 / (1 + Math.exp(-((ln - place) / kernels + PLACE_LOGIT)))
      slope -= (yes * (1 - p) - no * p) / kernels
      bend += ((yes + no) * p * (1 - p)) / (kernels * kernels)
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
    if (Math.abs(move) < 1e-4) break
  }
  const width = 1 / Math.sqrt(bend)
  const lnScale = Math.log(width / pots)
  let top = Number.NEGATIVE_INFINITY
  for (let k = 0; k < POINTS.length; k += 1) {
    const at = place + width * POINTS[k]!
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
  for (let k = 0; k < POINTS.length; k += 1) {
    const weight = Math.exp(lnAt[k]! - top)
    const at = place + width * POINTS[k]!
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
