/**
 * When hulls slip, as a model of chances. The minute at which one kernel's hull slips is log-logistic within a pot; the
 * pot's own place is what is usual for such corn and alkali, times what this kitchen, this corn lot, this lot of alkali and
 * this day make of it. Leaves out: why a lot is slow, and how strong the liquor is.
 *
 *   share slipped at t = 1 / (1 + exp(-((ln t - place) / spread + logit 0.9)))
 *   place = ln usual + kitchen + corn lot + alkali lot + pot        place: ln of the minute by which nine in ten slipped
 *   ln darkening = place + darkening lag + scatter
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { requireWhole } from '../statistics/binomial.ts'

/** One rub test. */
export interface SlipRub {
  /** Since the boil in alkali began. [min] Valid: 0.5 to 2880. */
  readonly boiledMin: number
  /** Kernels whose hull slipped, of how many rubbed. Valid: 0 to ofCount; 1 to 1000. */
  readonly slippedCount: number
  readonly ofCount: number
}

/** What one pot-load told. */
export interface SlipPot {
  readonly cornLotId: string
  readonly alkaliLotId: string
  /** By when nine in ten hulls slip by common practice, with such corn and alkali. [min] Valid: 1 to 1440. */
  readonly usualMin: number
  /** In order of time. */
  readonly rubs: readonly SlipRub[]
  /** When the kernels darkened. [min] Valid: 0.5 to 2880. */
  readonly darkenedMin?: number
  /** When hulls slipped, written down without counts. [min] Valid: 0.5 to 2880. */
  readonly slippedMin?: number
}

/** How far things scatter, each as a standard deviation of ln minutes; `kernels` is the scale of the log-logistic. */
export interface SlipSpreads {
  readonly kernels: number
  readonly cornLots: number
  readonly alkaliLots: number
  readonly pots: number
}

export const SPREAD_NAMES = ['kernels', 'cornLots', 'alkaliLots', 'pots'] as const

/**
 * What is believed before any record.  Project rule, no source: no published spread of slip times was found. Together they
 * let nine in ten hulls of a first pot slip within four to five times either way of the usual minute in 19 pots of 20, a
 * little wider than the printed recipes lie (20 min to 5 h).
 */
export const SLIP_PRIOR = {
  /** This kitchen against common practice. [sd of ln minutes] */
  kitchenSd: 0.5,
  /** Middle of each spread, and how far it may be off. [ln minutes; sd of its logarithm] */
  kernels: { middle: 0.2, logSd: 0.4 },
  cornLots: { middle: 0.3, logSd: 0.5 },
  alkaliLots: { middle: 0.3, logSd: 0.5 },
  pots: { middle: 0.15, logSd: 0.5 },
  /** Darkening comes at about a third of the time to slip, between a sixth and two thirds for 19 kitchens of 20. */
  darkeningLag: { middle: Math.log(1 / 3), sd: 0.35 },
  /** From pot to pot about the kitchen's own lag. [sd of ln minutes] */
  darkeningSd: 0.35,
  /** A minute written down without counts. [sd of ln minutes] */
  toldSd: 0.2,
} as const

/** The share whose minute is the pot's place. [fraction] */
export const PLACE_SHARE_FRACTION = 0.9
/** logit of that share. */
export const PLACE_LOGIT = Math.log(PLACE_SHARE_FRACTION / (1 - PLACE_SHARE_FRACTION))

const MINUTES: ValidRange = { min: 0.5, max: 2880, unit: 'min', source: 'project-rule' }
const USUAL: ValidRange = { min: 1, max: 1440, unit: 'min', source: 'project-rule' }

/** @throws {ValidRangeError} outside the ranges of SlipPot. */
export function requirePot({ usualMin, rubs, darkenedMin, slippedMin }: Omit<SlipPot, 'cornLotId' | 'alkaliLotId'>) {
  requireInRange('usualMin', usualMin, USUAL)
  for (const { boiledMin, slippedCount, ofCount } of rubs) {
    requireInRange('boiledMin', boiledMin, MINUTES)
    requireWhole('ofCount', ofCount, 1, 1000)
    requireWhole('slippedCount', slippedCount, 0, ofCount)
  }
  if (darkenedMin !== undefined) requireInRange('darkenedMin', darkenedMin, MINUTES)
  if (slippedMin !== undefined) requireInRange('slippedMin', slippedMin, MINUTES)
}

/**
 * Share of the hulls that slipped by a minute, of a pot whose place and spread are known. [fraction]
 *
 * @param placeLnMin ln of the minute by which nine in ten slipped.
 * @source kalbfleisch-prentice-2002 section 2.2.5: the log-logistic distribution
 */
export function slippedFraction(boiledMin: number, placeLnMin: number, kernelSpread: number): number {
  return 1 / (1 + Math.exp(-((Math.log(boiledMin) - placeLnMin) / kernelSpread + PLACE_LOGIT)))
}

/**
 * ln of the minute by which a share slipped. [ln min]
 *
 * @param shareFraction [fraction] Valid: above 0, below 1.
 * @source kalbfleisch-prentice-2002 section 2.2.5, solved for the time
 */
export function lnMinuteOfShare(shareFraction: number, placeLnMin: number, kernelSpread: number): number {
  return placeLnMin + kernelSpread * (Math.log(shareFraction / (1 - shareFraction)) - PLACE_LOGIT)
}
