/**
 * How the model does on the keeper's own pots: each of them foretold from all the others, before its first rub test, then
 * laid beside what its rub tests showed. Leaves out: how a pot is foretold once it is rubbed.
 */

import { requireInRange } from '../errors.ts'
import { atLeastFraction } from '../statistics/binomial.ts'
import { normalCdfFraction, normalQuantile } from '../statistics/normal.ts'
import { type Evidence, lnChanceAtPlace, type PotRecord, potEvidence } from './pot-evidence.ts'
import type { SlipBelief } from './slip-belief.ts'
import { foreknown, type SlipDesign, type SlipFit } from './slip-fit.ts'
import { PLACE_SHARE_FRACTION, SLIP_PRIOR, slippedFraction } from './slip-model.ts'

/** How forecasts made at one stage of a pot came out. */
export interface StageScore {
  /** Pots laid beside their forecast: the newest ones. */
  readonly potsCount: number
  /** Of them, within the range that was foretold; a pot seen only between two rubs counts in part. [fraction] */
  readonly withinFraction: number
  /** Sooner and later than the range. [fraction] */
  readonly soonerFraction: number
  readonly laterFraction: number
  /** How much wider to draw the range than the model says; 1 where the pots came as foretold. */
  readonly widening: number
}

export interface SlipScore {
  /** Foretold before the first rub test. */
  readonly beforeRubs: StageScore
  /** Foretold from the first two rub tests as well, of pots that needed more. */
  readonly afterRubs: StageScore
}

/** Older pots than these say little of the corn and ash of today.  project rule */
export const SCORED_POTS_COUNT = 60
/** How many pots, come as foretold, a first pot that did not is set against.  project rule */
const TRUST_COUNT = 5
/** No range is drawn wider than this.  project rule */
const WIDEST = 5
/** Lighter sets of spreads than this are left out of the score. */
const LIGHT = 0.004

/** Points a pot's place is felt at, in deviations. */
const PLACES = Array.from({ length: 41 }, (_, i) => -4 + 0.2 * i)
/** Rub tests that are known at the second stage. */
const RUBS_COUNT = 2

/**
 * Lays the newest pots of a belief beside what the others foretold of them. [fractions; 1 to 5]
 *
 * With the model right, `rangeFraction` of pots fall within, on average, and the widening is 1 but for chance.
 *
 * @param rangeFraction as for `slipRange`. [fraction] Valid: 0.5 to 0.99.
 * @throws {ValidRangeError} outside that range.
 * @source dawid-1984 for the place of what came in what was foretold; the others without one pot as in gelfand-1992;
 *   the widening is a project rule
 */
export function scoreSlip(belief: SlipBelief, rangeFraction: number): SlipScore {
  requireInRange('rangeFraction', rangeFraction, { min: 0.5, max: 0.99, unit: 'fraction', source: 'project-rule' })
  return {
    beforeRubs: scoreStage(belief, rangeFraction, 0),
    afterRubs: scoreStage(belief, rangeFraction, RUBS_COUNT),
  }
}

function scoreStage({ design, fits }: SlipBelief, rangeFraction: number, knownCount: number): StageScore {
  const outside = (1 - rangeFraction) / 2
  const heavy = fits.filter(({ weight }) => weight > LIGHT)
  const scored = design.pots.slice(-SCORED_POTS_COUNT).filter(({ record }) => isScored(record, knownCount))
  const sum = { within: 0, sooner: 0, later: 0, squares: 0 }
  for (const pot of scored) {
    const mass = { whole: 0, before: 0, after: 0 }
    for (const { fit, weight } of heavy) {
      const found = massAbout(pot.record, fit.spreads.kernels, withoutPot(fit, design, pot), knownCount)
      mass.whole += weight * found.whole
      mass.before += weight * found.before
      mass.after += weight * found.after
    }
    const placed = { from: 1 - mass.before / mass.whole, to: 1 - mass.after / mass.whole }
    sum.sooner += shareWithin(placed, 0, outside)
    sum.within += shareWithin(placed, outside, 1 - outside)
    sum.later += shareWithin(placed, 1 - outside, 1)
    sum.squares += meanSquare(placed)
  }
  const count = scored.length
  const widening = Math.sqrt(Math.max(1, (TRUST_COUNT + sum.squares) / (TRUST_COUNT + count)))
  return {
    potsCount: count,
    withinFraction: count === 0 ? rangeFraction : sum.within / count,
    soonerFraction: count === 0 ? outside : sum.sooner / count,
    laterFraction: count === 0 ? outside : sum.later / count,
    widening: Math.min(WIDEST, widening),
  }
}

/** Kernels that must have slipped for the wanted share to be seen. */
function enoughOf(ofCount: number): number {
  return Math.ceil(ofCount * PLACE_SHARE_FRACTION - 1e-9)
}

/** Something was still to come once so many rubs were known. */
function isScored({ lnRubbed, slipped, of, lnSlipped }: PotRecord, knownCount: number): boolean {
  if (knownCount === 0 && lnRubbed.length === 0) return lnSlipped !== null
  return lnRubbed.length > knownCount && !slipped.slice(0, knownCount).some((count, j) => count >= enoughOf(of[j]!))
}

interface Normal {
  readonly centre: number
  readonly variance: number
}

/** What the other pots say of this pot's place: its own part in the fit is taken out again. */
function withoutPot(fit: SlipFit, design: SlipDesign, pot: SlipDesign['pots'][number]): Normal {
  const { lnUsual } = pot.record
  const known = foreknown(fit, design.size, { lnUsual, corn: pot.corn, alkali: pot.alkali })
  const { kernels, pots } = fit.spreads
  const own: Evidence = { value: 0, byCentre: 0, byLag: 0, byCentre2: 0, byBoth: 0, byLag2: 0, place: known.centre }
  potEvidence(pot.record, { centre: known.centre, lag: known.lag, kernels, pots }, own)
  const { centreVar: a, bothVar: b, lagVar: d } = known
  const det = a * d - b * b
  // Precisions of the whole, less the pot's own; likewise its pull.
  const p = d / det + own.byCentre2
  const q = -b / det + own.byBoth
  const r = a / det + own.byLag2
  const rest = p * r - q * q
  if (!(p > 0 && rest > 0)) return { centre: known.centre, variance: a + pots ** 2 }
  const moved = (-r * own.byCentre + q * own.byLag) / rest
  return { centre: known.centre + moved, variance: r / rest + pots ** 2 }
}

/** Chance, up to a factor, of what was known; of it, that the outcome is not before what came; and that it is after. */
interface Mass {
  readonly whole: number
  readonly before: number
  readonly after: number
}

/** Of the first rub at which the wanted share was seen; a pot that never showed it lies at the late end. */
function massAbout(record: PotRecord, kernels: number, { centre, variance }: Normal, knownCount: number): Mass {
  const { lnRubbed, slipped, of, lnSlipped } = record
  if (lnRubbed.length === 0) {
    const later = normalCdfFraction((centre - lnSlipped!) / Math.sqrt(variance + SLIP_PRIOR.toldSd ** 2))
    return { whole: 1, before: later, after: later }
  }
  const known = {
    ...record,
    lnDarkened: null,
    lnSlipped: null,
    lnRubbed: lnRubbed.slice(0, knownCount),
  }
  const sd = Math.sqrt(variance)
  const stop = slipped.findIndex((count, j) => count >= enoughOf(of[j]!))
  const until = stop < 0 ? of.length : stop + 1
  const mass = { whole: 0, before: 0, after: 0 }
  for (const z of PLACES) {
    const place = centre + sd * z
    const weight = Math.exp((-z * z) / 2 + lnChanceAtPlace(known, place, kernels, 0))
    mass.whole += weight
    let open = weight
    for (let j = knownCount; j < until; j += 1) {
      if (j === stop) mass.before += open
      const slippedShare = slippedFraction(Math.exp(lnRubbed[j]!), place, kernels)
      open *= 1 - atLeastFraction(enoughOf(of[j]!), of[j]!, slippedShare)
    }
    if (stop < 0) mass.before += open
    mass.after += stop < 0 ? 0 : open
  }
  return mass
}

interface Placed {
  readonly from: number
  readonly to: number
}

function shareWithin({ from, to }: Placed, low: number, high: number): number {
  if (to - from < 1e-9) return from >= low && from <= high ? 1 : 0
  return Math.max(0, Math.min(to, high) - Math.max(from, low)) / (to - from)
}

/** Mean square of the normal deviate over the span; 1 over the whole. */
function meanSquare({ from, to }: Placed): number {
  const low = normalQuantile(Math.max(1e-9, Math.min(from, 1 - 1e-9)))
  const high = normalQuantile(Math.max(1e-9, Math.min(to, 1 - 1e-9)))
  if (to - from < 1e-6) return low * low
  const part = (z: number) => normalCdfFraction(z) - (z * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI)
  return (part(high) - part(low)) / (normalCdfFraction(high) - normalCdfFraction(low))
}
