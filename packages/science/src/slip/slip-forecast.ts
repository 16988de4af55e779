/**
 * When a wanted share of one pot's hulls will have slipped: a range, from what the book taught and what this pot has shown
 * so far. Leaves out: the clock, and any promise of a minute.
 */
import { requireInRange } from '../errors.ts'
import { lnChanceAtPlace, potRecord } from './pot-evidence.ts'
import type { SlipBelief } from './slip-belief.ts'
import { foreknown } from './slip-fit.ts'
import { lnMinuteOfShare, requirePot, SLIP_PRIOR, type SlipPot, slippedFraction } from './slip-model.ts'

/** Places with their spreads and weights: what is believed of one pot. */
export type SlipPlaces = readonly { readonly place: number; readonly kernels: number; readonly weight: number }[]

/** Points a pot's place is felt at, over so many deviations to either side. */
const PLACES = 121
const REACH = 5

/**
 * What is believed of one pot, its own rub tests and darkening weighed in. [ln min]
 *
 * @throws {ValidRangeError} outside the ranges of SlipPot.
 * @source none: Bayes' rule on a grid of places, for each likely set of spreads
 */
export function slipPlaces({ design, fits }: SlipBelief, pot: SlipPot): SlipPlaces {
  requirePot(pot)
  const record = potRecord(pot)
  const corn = design.cornIndex.get(pot.cornLotId)
  const alkali = design.alkaliIndex.get(pot.alkaliLotId)
  const { lnDarkened } = record
  const undarkened = { ...record, lnDarkened: null }
  const found: { place: number; kernels: number; ln: number }[] = []
  let top = Number.NEGATIVE_INFINITY
  for (const { fit, weight } of fits) {
    const { kernels, pots } = fit.spreads
    const known = foreknown(fit, design.size, { lnUsual: record.lnUsual, corn, alkali })
    const placeVar = known.centreVar + pots ** 2
    const sd = Math.sqrt(placeVar)
    // Given the place, what is left unknown of the lag.
    const tilt = known.bothVar / placeVar
    const darkVar = SLIP_PRIOR.darkeningSd ** 2 + Math.max(0, known.lagVar - tilt * known.bothVar)
    for (let i = 0; i < PLACES; i += 1) {
      const z = -REACH + (2 * REACH * i) / (PLACES - 1)
      const place = known.centre + sd * z
      let ln = Math.log(weight) - (z * z) / 2 + lnChanceAtPlace(undarkened, place, kernels, 0)
      if (lnDarkened !== null) {
        const lag = known.lag + tilt * sd * z
        ln -= (lnDarkened - place - lag) ** 2 / (2 * darkVar) + Math.log(darkVar) / 2
      }
      found.push({ place, kernels, ln })
      if (ln > top) top = ln
    }
  }
  const heavy = found.filter(({ ln }) => ln > top - 14)
  const whole = heavy.reduce((sum, { ln }) => sum + Math.exp(ln - top), 0)
  return heavy.map(({ place, kernels, ln }) => ({ place, kernels, weight: Math.exp(ln - top) / whole }))
}

export interface SlipWish {
  /** Share of hulls wanted off. [fraction] Valid: 0.05 to 0.99. */
  readonly wantedFraction: number
  /** How much of what is believed lies within the range. [fraction] Valid: 0.5 to 0.99. */
  readonly rangeFraction: number
  /** How much wider than the model says, from how it did on the keeper's own pots. Valid: 1 to 10. */
  readonly widening?: number
}

export interface SlipRange {
  /** As likely earlier as later. [min since the boil began] */
  readonly middleMin: number
  readonly lowMin: number
  readonly highMin: number
}

/**
 * The range in which the wanted share will have slipped. [min]
 *
 * @throws {ValidRangeError} outside the ranges of SlipWish.
 * @source none: quantiles of a weighted sum of log-logistic pots
 */
export function slipRange(places: SlipPlaces, { wantedFraction, rangeFraction, widening = 1 }: SlipWish): SlipRange {
  requireInRange('wantedFraction', wantedFraction, { min: 0.05, max: 0.99, unit: 'fraction', source: 'project-rule' })
  requireInRange('rangeFraction', rangeFraction, { min: 0.5, max: 0.99, unit: 'fraction', source: 'project-rule' })
  requireInRange('widening', widening, { min: 1, max: 10, unit: '', source: 'project-rule' })
  const times = places
    .map(({ place, kernels, weight }) => ({ at: lnMinuteOfShare(wantedFraction, place, kernels), weight }))
    .sort((one, other) => one.at - other.at)
  const middle = quantile(times, 0.5)
  const from = (share: number) => Math.exp(middle + widening * (quantile(times, share) - middle))
  const outside = (1 - rangeFraction) / 2
  return { middleMin: Math.exp(middle), lowMin: from(outside), highMin: from(1 - outside) }
}

/**
 * Share of the hulls that has slipped by a minute: the middle of what is believed, and a range. [fraction]
 *
 * @param boiledMin since the boil began. [min] Valid: 0.5 to 2880.
 * @throws {ValidRangeError} outside that range.
 * @source none: quantiles of a weighted sum of log-logistic pots
 */
export function slippedRange(places: SlipPlaces, boiledMin: number, rangeFraction: number) {
  requireInRange('boiledMin', boiledMin, { min: 0.5, max: 2880, unit: 'min', source: 'project-rule' })
  requireInRange('rangeFraction', rangeFraction, { min: 0.5, max: 0.99, unit: 'fraction', source: 'project-rule' })
  const shares = places
    .map(({ place, kernels, weight }) => ({ at: slippedFraction(boiledMin, place, kernels), weight }))
    .sort((one, other) => one.at - other.at)
  const outside = (1 - rangeFraction) / 2
  return { middle: quantile(shares, 0.5), low: quantile(shares, outside), high: quantile(shares, 1 - outside) }
}

/** Where so much of the weight lies below, straight between points. */
function quantile(points: readonly { readonly at: number; readonly weight: number }[], share: number): number {
  let below = 0
  let last = { share: 0, at: points[0]!.at }
  for (const { at, weight } of points) {
    const here = below + weight / 2
    if (here >= share) {
      return here > last.share ? last.at + ((at - last.at) * (share - last.share)) / (here - last.share) : at
    }
    last = { share: here, at }
    below += weight
  }
  return last.at
}
