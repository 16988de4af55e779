/** Cold food when the power is out: how long the doors may stay shut, and what may be frozen again. */
import { type Reckoned, requireInRange, type Sentence } from '@crib/science'
import { type Rule, ruleFor } from './rules.ts'
import { sentence } from './sentence.ts'

export interface PowerCut {
  /** Since the power went. [h] */
  readonly hoursOut: number
  readonly freezer: 'full' | 'half' | 'none'
  /** Warmest food or air of the freezer, where a thermometer says. [F] */
  readonly freezerReadsF?: number
  readonly hasIceCrystals?: boolean
}

export interface PowerCutAdvice {
  /** Hours the closed fridge may still be counted on; 0 when they are over. [h] */
  readonly fridgeLeft: Reckoned
  /** Null without a freezer. [h] */
  readonly freezerLeft: Reckoned | null
  readonly say: readonly Sentence[]
}

/**
 * Hours left behind shut doors, and what becomes of the food. A thermometer or ice crystals decide over the hours.
 *
 * @param cut hoursOut valid: 0 to 720; freezerReadsF: -60 to 120.
 * @throws {ValidRangeError} outside those ranges.
 * @source foodsafety-gov-outage
 */
export function powerCutAdvice({ hoursOut, freezer, freezerReadsF, hasIceCrystals }: PowerCut): PowerCutAdvice {
  requireInRange('hoursOut', hoursOut, { min: 0, max: 720, unit: 'h', source: 'project-rule' })
  if (freezerReadsF !== undefined)
    requireInRange('freezerReadsF', freezerReadsF, { min: -60, max: 120, unit: 'F', source: 'project-rule' })
  const left = (id: string, { figure }: Rule): Reckoned => ({
    ...figure,
    id,
    value: Math.max(0, figure.value - hoursOut),
    // Down: time left to act is never shown longer than it is.
    rounding: { mode: 'down', step: 0.25 },
    inputs: { hoursOut },
  })
  const fridgeLeft = left('fridgeLeftH', ruleFor('power-cut', 'fridge'))
  const freezerLeft = freezer === 'none' ? null : left('freezerLeftH', ruleFor('power-cut', `freezer-${freezer}`))
  return {
    fridgeLeft,
    freezerLeft,
    say: [
      sentence('guidance:power-cut-doors'),
      sentence(fridgeLeft.value > 0 ? 'guidance:power-cut-fridge-holds' : 'guidance:power-cut-fridge-over'),
      ...(freezerLeft === null ? [] : [freezerSentence(freezerLeft.value, freezerReadsF, hasIceCrystals)]),
    ],
  }
}

function freezerSentence(leftH: number, readsF: number | undefined, hasIceCrystals: boolean | undefined): Sentence {
  const limit = ruleFor('power-cut', 'refreeze-at-or-below').figure
  const quantity = { value: limit.value, unit: limit.unit }
  if (hasIceCrystals === true || (readsF !== undefined && readsF <= limit.value))
    return sentence('guidance:power-cut-refreeze', { limit: quantity })
  if (readsF !== undefined) return sentence('guidance:power-cut-freezer-warm', { limit: quantity })
  return leftH > 0
    ? sentence('guidance:power-cut-freezer-holds')
    : sentence('guidance:power-cut-freezer-look', { limit: quantity })
}
