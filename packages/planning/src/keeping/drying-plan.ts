/**
 * Drying corn or hominy: the weight to stop at, always; hours, where a published model or a printed time covers it.
 * Leaves out: deep heaps, and whether it snaps, which the hand decides.
 */
import { type AirSpell, dryingHours, massAtMoistureKg, type Reckoned, type Sentence } from '@crib/science'
import { down, nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

/** Kernels: in one layer. Hominy: cooked, in one layer. Ears: on the cob, in a braid, on a rack. */
export type DryingOf = 'kernels' | 'hominy' | 'ears'

export interface DryingInput {
  readonly what: DryingOf
  readonly massKg: number
  readonly startWetFraction: number
  readonly endWetFraction: number
  /** For kernels; needed for their hours. */
  readonly air?: readonly AirSpell[]
  /** Through the layer. [m/s]  Left out, 0.3: a small fan. */
  readonly airMPerS?: number
}

export interface DryingPlan {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

const SMALL_FAN_M_PER_S = 0.3
/** Printed for vegetables in one layer at 140 °F. [h]  @source msu-01600519 */
const HOMINY_HOURS = { low: 6, high: 16 } as const
/** Slower than this, moulds are at work before it is dry. [h]  common practice, no source */
const SLOW_H = 72

/**
 * The weight to stop at, the water that goes, and hours where they are known.
 *
 * m2 = m1 (1 - M1)/(1 - M2): a tray of 5 kg of hominy at 75 % dried to 10 % weighs 1.389 kg.
 *
 * @throws {ValidRangeError} for moistures or air out of range; when the end is no drier than the start.
 * @source hicks-cloud-nch-61 for the weight; dryingHours for kernels; msu-01600519 for hominy
 */
export function dryingPlan(input: DryingInput): DryingPlan {
  const { massKg, startWetFraction, endWetFraction } = input
  if (!(endWetFraction < startWetFraction)) {
    throw new RangeError(`endWetFraction is ${endWetFraction}; below the start of ${startWetFraction} is needed`)
  }
  const endKg = massAtMoistureKg(massKg, { fromWetFraction: startWetFraction, toWetFraction: endWetFraction })
  const inputs = { massKg, startWetFraction, endWetFraction }
  const sourceKeys = ['hicks-cloud-nch-61']
  const kg = (id: string, value: number): Reckoned =>
    // Down: a tray that stops a little lighter is a little drier.
    reckon({ id, value, unit: 'Kg', rounding: down(0.01), basis: 'computed', sourceKeys, inputs })
  const hours = hoursOf(input)
  return {
    values: [kg('stopAtKg', endKg), kg('waterGoneKg', massKg - endKg), ...hours.values],
    reasons: [
      say('keeping:stop-at', { weight: { value: Math.floor(endKg * 100) / 100, unit: 'Kg' } }),
      ...hours.reasons,
    ],
    warnings: [...hours.warnings, say('keeping:case-hardening'), say('keeping:dry-mould')],
  }
}

function hoursOf({
  what,
  startWetFraction,
  endWetFraction,
  air,
  airMPerS = SMALL_FAN_M_PER_S,
}: DryingInput): DryingPlan {
  const none = { values: [], reasons: [], warnings: [] }
  if (what === 'hominy') {
    const { low, high } = HOMINY_HOURS
    const printed = { unit: 'H', rounding: nearest(1), basis: 'published', sourceKeys: ['msu-01600519'] } as const
    return {
      ...none,
      values: [reckon({ id: 'dryingH', value: (low + high) / 2, low, high, ...printed })],
      reasons: [say('keeping:hominy-hours', { low, high })],
    }
  }
  if (what === 'ears') return { ...none, reasons: [say('keeping:ears-no-hours')] }
  if (air === undefined || air.length === 0) return { ...none, reasons: [say('keeping:hours-need-air')] }
  const band = dryingHours({ startWetFraction, endWetFraction, air, airMPerS })
  if (band === null) return { ...none, warnings: [say('keeping:air-too-damp')] }
  const { quickHours: low, slowHours: high, settlesWetFraction } = band
  const sourceKeys = ['misra-brooker-1980', 'ordonez-2012', 'asae-d245']
  const computed = { basis: 'computed', sourceKeys, inputs: { startWetFraction, endWetFraction, airMPerS } } as const
  return {
    values: [
      reckon({ id: 'dryingH', value: (low + high) / 2, low, high, unit: 'H', rounding: nearest(0.5), ...computed }),
      reckon({
        id: 'settlesFraction',
        value: settlesWetFraction,
        unit: 'Fraction',
        rounding: nearest(0.001),
        ...computed,
      }),
    ],
    reasons: [say('keeping:kernel-hours')],
    warnings: high > SLOW_H ? [say('keeping:slow-drying')] : [],
  }
}
