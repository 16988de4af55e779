/** What the sentences about a run are made from, once its lines were walked. */
import type { Quantity } from '@crib/science'
import type { RunClock } from './run-clock.ts'
import type { Departure } from './run-departures.ts'
import type { DueTimes } from './run-due.ts'
import type { OutcomeKind, RunPhase } from './run-phase.ts'
import type { RunSetup } from './run-setup.ts'
import type { Walk } from './walk.ts'

export interface RunView {
  readonly setup: RunSetup
  readonly walk: Walk
  readonly phase: RunPhase
  readonly outcome: OutcomeKind
  readonly due: DueTimes
  readonly clock: RunClock
  readonly asOfMs: number
  readonly departures: readonly Departure[]
}

/** The number to hold, in the gauge's printed unit. */
export function heldPressure({ gauge, requiredReadingPsi }: RunSetup): Quantity {
  return { value: requiredReadingPsi, unit: gauge === 'dial' ? 'PsiGauge' : 'LbWeight' }
}

/** Whole minutes that surely passed. */
export function fullMinutes(minutes: number): Quantity {
  return { value: Math.floor(minutes + 1e-9), unit: 'Min' }
}
