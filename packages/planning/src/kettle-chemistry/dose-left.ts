/**
 * Alkali put in so far against what was wanted, and the next step: half at first, then a quarter at a time, so that a lot
 * stronger than thought does no harm. More can be added, none taken out. Leaves out: when to rub.
 */
import { requireInRange, type ValidRange } from '@crib/science'

export interface Addition {
  /** Weight of what went in. [g] */
  readonly massG: number
  /** Strength of that lot. [eq/kg] */
  readonly lotEqPerKg: number
}

export interface DoseLeftInput {
  /** [eq/kg dry corn] */
  readonly wantedEqPerKgCorn: number
  readonly cornKg: number
  readonly additions: readonly Addition[]
  /** Strength of the lot the next step is taken from. [eq/kg] */
  readonly nextLotEqPerKg: number
}

export interface DoseLeft {
  readonly wantedEq: number
  readonly soFarEq: number
  /** 0 once all is in. [eq] */
  readonly leftEq: number
  readonly leftG: number
  /** More than was wanted. [eq] */
  readonly overEq: number
  /** The next step: never more than is left. [g] */
  readonly stepG: number
}

/** Half of the dose goes in first, then a quarter each time.  project rule */
const FIRST_STEP_FRACTION = 0.5
const STEP_FRACTION = 0.25

const DOSE: ValidRange = { min: 0.001, max: 10, unit: 'eq/kg', source: 'project-rule' }
const CORN: ValidRange = { min: 0.01, max: 1000, unit: 'kg', source: 'project-rule' }
const STRENGTH: ValidRange = { min: 0.001, max: 40, unit: 'eq/kg', source: 'project-rule' }
const MASS: ValidRange = { min: 0, max: 1e6, unit: 'g', source: 'project-rule' }

/** What is left of a whole in any one measure of one strength: never less than nothing, and the next step of it. */
export function partsLeft(
  wanted: number,
  soFar: number,
): { readonly left: number; readonly step: number; readonly over: number } {
  const left = Math.max(0, wanted - soFar)
  const step = Math.min(left, wanted * (soFar > 0 ? STEP_FRACTION : FIRST_STEP_FRACTION))
  return { left, step, over: Math.max(0, soFar - wanted) }
}

/** @throws {ValidRangeError} for corn, strengths or weights no kitchen has. */
export function doseLeft({ wantedEqPerKgCorn, cornKg, additions, nextLotEqPerKg }: DoseLeftInput): DoseLeft {
  requireInRange('wantedEqPerKgCorn', wantedEqPerKgCorn, DOSE)
  requireInRange('cornKg', cornKg, CORN)
  requireInRange('nextLotEqPerKg', nextLotEqPerKg, STRENGTH)
  let soFarEq = 0
  for (const { massG, lotEqPerKg } of additions) {
    requireInRange('massG', massG, MASS)
    requireInRange('lotEqPerKg', lotEqPerKg, STRENGTH)
    soFarEq += (massG / 1000) * lotEqPerKg
  }
  const wantedEq = wantedEqPerKgCorn * cornKg
  const { left: leftEq, step: stepEq, over: overEq } = partsLeft(wantedEq, soFarEq)
  const inG = (eq: number) => (eq / nextLotEqPerKg) * 1000
  return {
    wantedEq,
    soFarEq,
    leftEq,
    leftG: inG(leftEq),
    overEq,
    stepG: inG(stepEq),
  }
}
