/** What a run is measured against: the number to hold, the published minutes and the rules of the trade. */
import { requireInRange } from '@crib/science'

/** Published rules of a run, as they stood when it began. */
export interface RunRules {
  /** Steady steam before the vent is closed. [min] */
  readonly ventMin: number
  /** From zero, with the weight off, until the lid is unfastened. [min] */
  readonly lidWaitMin: number
  /** Seals are looked at between these, counted from jars out. [min] */
  readonly sealFromMin: number
  readonly sealToMin: number
  /** Unsealed jars of a full process are chilled, frozen or processed again within this. [min] */
  readonly redoWithinMin: number
  /** The same where the process itself was not as directed. [min] */
  readonly redoWithinShortMin: number
  /** Least water in the canner. [in] */
  readonly waterLowIn: number
}

export interface RunSetup {
  readonly gauge: 'dial' | 'weight'
  /** A dial reading below this is a dip; on a weight, the figure stamped on it. [psi] */
  readonly requiredReadingPsi: number
  /** Published minutes at pressure. [min] */
  readonly processMin: number
  readonly rules: RunRules
  /** IANA zone in which clock times are worded. Default UTC. */
  readonly zone?: string
}

/** @throws {ValidRangeError} when a number is absent, negative or absurd. */
export function requireRunSetup({ requiredReadingPsi, processMin, rules }: RunSetup): void {
  const source = 'project-rule'
  requireInRange('requiredReadingPsi', requiredReadingPsi, { min: 1, max: 30, unit: 'psi', source })
  requireInRange('processMin', processMin, { min: 1, max: 300, unit: 'min', source })
  requireInRange('ventMin', rules.ventMin, { min: 0, max: 60, unit: 'min', source })
  requireInRange('lidWaitMin', rules.lidWaitMin, { min: 0, max: 60, unit: 'min', source })
}
