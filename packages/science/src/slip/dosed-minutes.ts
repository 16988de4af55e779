/** Minutes in a liquor whose strength changed on the way, told as minutes at one strength. Leaves out what corn eats of it. */
import { requireInRange, type ValidRange } from '../errors.ts'

export interface Dosing {
  /** From when on the pot holds so much. [min since the boil began; below 0 where it went in before] */
  readonly fromMin: number
  /** All the alkali that went in so far, in any one measure, for so much corn. */
  readonly amount: number
}

/**
 * How strongly speed of slipping follows the amount of alkali: speed ~ amount^0.75. Between 0.5 and 1 for hulls in alkali,
 * from memory; the middle is a project rule.
 */
export const DOSE_EXPONENT = 0.75

const AMOUNT: ValidRange = { min: 1e-6, max: 1e6, unit: '', source: 'project-rule' }

/** Speed at an amount, 1 at an amount of 1. */
function speed(amount: number): number {
  return amount ** DOSE_EXPONENT
}

/**
 * Minutes at an amount of 1 that do as much as the minutes since the boil began at the amounts there were. [min]
 *
 * @param dosings in order of time, the first at or before 0; none counts as an amount of 1 throughout.
 * @throws {ValidRangeError} for an amount of nothing or less.
 * @source nelson-1980: cumulative exposure; the exponent from memory, see DOSE_EXPONENT
 */
export function minutesAtOne(dosings: readonly Dosing[], boiledMin: number): number {
  for (const { amount } of dosings) requireInRange('amount', amount, AMOUNT)
  if (dosings.length === 0) return boiledMin
  return dosings.reduce((sum, { fromMin, amount }, i) => {
    const until = Math.min(boiledMin, dosings[i + 1]?.fromMin ?? boiledMin)
    // Before the first known dosing the pot is taken as dosed like that.
    const since = i === 0 ? 0 : Math.max(0, fromMin)
    return sum + Math.max(0, until - since) * speed(amount)
  }, 0)
}

/**
 * The minute after the boil at which so many minutes at an amount of 1 are reached, if nothing more goes in. [min]
 *
 * @throws {ValidRangeError} as minutesAtOne.
 * @source nelson-1980: cumulative exposure, solved for the time
 */
export function minuteReached(dosings: readonly Dosing[], minutes: number): number {
  let from = 0
  let amount = dosings[0]?.amount ?? 1
  for (const next of dosings.slice(1)) {
    if (minutesAtOne(dosings, Math.max(0, next.fromMin)) >= minutes) break
    from = Math.max(0, next.fromMin)
    amount = next.amount
  }
  return from + (minutes - minutesAtOne(dosings, from)) / speed(amount)
}
