/**
 * Where the dry matter of a pot of corn went: into hominy, into what was sorted out, and, by difference, into hulls, tips
 * and liquor. Dry matter is neither made nor lost. Leaves out: what in the liquor it became.
 */
import type { Spread } from '../alkali/vinegar-titration.ts'
import { requireInRange } from '../errors.ts'
import { requireAmount } from './bulk.ts'
import { requireWetFraction } from './moisture.ts'

export interface CookWeights {
  /** Dry kernels that went into the pot. [kg] Valid: above 0, to 1e6. */
  readonly cornKg: number
  /** M0, their moisture, wet basis. [fraction] Valid: 0 to 0.95, low not above high. */
  readonly cornWetFraction: Spread
  /** Hominy kept, drained. [kg] Valid: 0 to 1e6. */
  readonly hominyKg: number
  /** M1, its moisture, wet basis; what was sorted out wet holds as much. [fraction] Valid: as above. */
  readonly hominyWetFraction: Spread
  /** Sorted out after the cook, drained. [kg] Valid: 0 to 1e6. */
  readonly tailsKg: number
}

export interface CookBalance {
  /** Dry matter. [kg] */
  readonly inKg: Spread
  readonly hominyDryKg: Spread
  readonly tailsDryKg: Spread
  /** Hulls, tips and liquor, by difference; below 0 where more came out than went in. [kg] */
  readonly lossKg: Spread
  /** The same of the dry matter that went in. */
  readonly lossFraction: Spread
  /** Wet hominy for each weight of dry kernels. [kg/kg] */
  readonly hominyPerCorn: number
  /** Moisture at which nothing would have been lost: hominy cannot be drier. [fraction] */
  readonly leastWetFraction: number
}

/**
 * Dry matter in, out and lost, with the range that both moistures leave. [kg, fractions]
 *
 * L = 1 - (hominy + tails)(1 - M1) / (corn (1 - M0)). 1 kg at 10.4 %, 2.688 kg at 70 %: 10 % lost.
 *
 * @throws {ValidRangeError} outside the ranges of CookWeights.
 * @source fao-maize-1992 chapter 5 for losses of this kind; the balance itself is conservation of dry matter
 */
export function cookBalance(weights: CookWeights): CookBalance {
  const { cornKg, cornWetFraction, hominyKg, hominyWetFraction, tailsKg } = weights
  requireInRange('cornKg', cornKg, { min: 1e-6, max: 1e6, unit: 'kg', source: 'project-rule' })
  requireAmount('hominyKg', hominyKg, 'kg')
  requireAmount('tailsKg', tailsKg, 'kg')
  requireSpread('cornWetFraction', cornWetFraction)
  requireSpread('hominyWetFraction', hominyWetFraction)
  const inKg = dry(cornKg, cornWetFraction)
  const hominyDryKg = dry(hominyKg, hominyWetFraction)
  const tailsDryKg = dry(tailsKg, hominyWetFraction)
  const out = dry(hominyKg + tailsKg, hominyWetFraction)
  const lossKg = { value: inKg.value - out.value, low: inKg.low - out.high, high: inKg.high - out.low }
  return {
    inKg,
    hominyDryKg,
    tailsDryKg,
    lossKg,
    lossFraction: {
      value: 1 - out.value / inKg.value,
      low: 1 - out.high / inKg.low,
      high: 1 - out.low / inKg.high,
    },
    hominyPerCorn: hominyKg / cornKg,
    leastWetFraction: Math.max(0, 1 - inKg.value / Math.max(hominyKg + tailsKg, inKg.value)),
  }
}

/** Dry matter of a weight; the wetter, the less. [kg] */
function dry(massKg: number, { value, low, high }: Spread): Spread {
  return { value: massKg * (1 - value), low: massKg * (1 - high), high: massKg * (1 - low) }
}

function requireSpread(argument: string, { value, low, high }: Spread): void {
  requireWetFraction(argument, low)
  requireWetFraction(argument, high)
  requireInRange(argument, value, { min: low, max: high, unit: 'of total weight', source: 'project-rule' })
}
