/**
 * Heat conducted into a jar, in a cross-section from axis to outside and bottom to top: food, glass and headspace, the base
 * in water and the upper part in steam. Finite volumes and alternating directions (Peaceman and Rachford): second order in
 * space and time, stable at any step. Properties do not change with temperature; nothing flows (convecting-brine.ts).
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { createFastKernel } from './finite-volume-fast.ts'
import { gridOf, type HeatMesh } from './finite-volume-grid.ts'
import { createPlainKernel } from './finite-volume-plain.ts'
import { type PreparedSteps, prepareSteps, type StepKernel, type SurfaceC } from './finite-volume-steps.ts'
import { HISTORY_TEMPERATURE_C, requireHistory, type SurfaceHistory, walkHistory } from './surface-history.ts'

export interface HeatRun {
  /** Of the cell in ring i at level j when the run begins. [°C] */
  readonly initialC: (i: number, j: number) => number
  readonly water: SurfaceHistory
  /** Begins when `water` does. */
  readonly steam: SurfaceHistory
  readonly durationS: number
  readonly stepS: number
  /** Readings are kept every so many steps. */
  readonly keepEvery: number
  /** Called with each kept reading; return false to stop there. */
  readonly onKept?: (timeS: number) => boolean
}

export interface HeatField {
  readonly timesS: readonly number[]
  /** Temperatures at each kept time, column by column: ring i, level j at i nz + j. [°C] */
  readonly fieldsC: readonly Float64Array[]
  readonly nr: number
  readonly nz: number
  /** Heat that came in through the surface, and heat the cells gained. [J]  Equal but for rounding. */
  readonly enteredJ: number
  readonly gainedJ: number
  readonly stopped: boolean
}

const STEP_S: ValidRange = { min: 1e-3, max: 3600, unit: 's', source: 'project-rule' }
const STEPS: ValidRange = { min: 1, max: 10_000_000, unit: 'steps', source: 'project-rule' }

/**
 * Temperatures in a jar over a run.
 *
 * @param createKernel what runs the steps; the answer is the same to the last bit by either.
 * @throws {ValidRangeError} for fewer than 3 cells either way, faces that do not rise, or a step, history or temperature out
 *   of range.
 * @source peaceman-rachford-1955
 */
export function conductInto(
  mesh: HeatMesh,
  run: HeatRun,
  createKernel: (prepared: PreparedSteps) => StepKernel = createHeatKernel,
): HeatField {
  requireHistory(run.water)
  requireHistory(run.steam)
  requireInRange('stepS', run.stepS, STEP_S)
  const stepCount = Math.round(run.durationS / run.stepS)
  requireInRange('durationS', stepCount, STEPS)
  const grid = gridOf(mesh)
  const { nr, nz } = grid
  const startC = new Float64Array(nr * nz)
  for (let i = 0; i < nr; i += 1) {
    for (let j = 0; j < nz; j += 1) {
      const initialC = run.initialC(i, j)
      requireInRange('initialC', initialC, HISTORY_TEMPERATURE_C)
      startC[i * nz + j] = initialC
    }
  }
  const stepper = createStepper({ grid, startC }, run, createKernel)
  const timesS = [0]
  const fieldsC: Float64Array[] = [startC]
  let stopped = false
  for (let step = 1; step <= stepCount; step += 1) {
    stepper.step()
    if (step % run.keepEvery !== 0 && step !== stepCount) continue
    timesS.push(step * run.stepS)
    fieldsC.push(stepper.fieldC())
    if (run.onKept?.(step * run.stepS) === false && step < stepCount) {
      stopped = true
      break
    }
  }
  const endC = fieldsC.at(-1)!
  let gainedJ = 0
  for (let at = 0; at < endC.length; at += 1) gainedJ += grid.capacityJPerK[at]! * (endC[at]! - startC[at]!)
  return { timesS, fieldsC, nr, nz, enteredJ: stepper.enteredJ(), gainedJ, stopped }
}

/** The steps compiled where the engine runs them, in plain numbers elsewhere; the answers are the same to the last bit. */
export function createHeatKernel(prepared: PreparedSteps): StepKernel {
  return createFastKernel(prepared) ?? createPlainKernel(prepared)
}

/** One step after another along the histories of water and steam. */
export function createStepper(
  { grid, startC }: Pick<PreparedSteps, 'grid' | 'startC'>,
  { water, steam, stepS }: Pick<HeatRun, 'water' | 'steam' | 'stepS'>,
  createKernel: (prepared: PreparedSteps) => StepKernel = createHeatKernel,
): Pick<StepKernel, 'fieldC' | 'enteredJ'> & { readonly step: () => void } {
  const waterAt = walkHistory(water)
  const steamAt = walkHistory(steam)
  const startMin = water[0]!.timeMin
  let timeS = 0
  const surfaceAt = (afterS: number): SurfaceC => {
    const timeMin = startMin + afterS / 60
    return { waterC: waterAt(timeMin), steamC: steamAt(timeMin) }
  }
  let from = surfaceAt(0)
  const { step, fieldC, enteredJ } = createKernel(prepareSteps(grid, startC, { stepS, surface: from }))
  return {
    step: () => {
      const middle = surfaceAt(timeS + stepS / 2)
      timeS += stepS
      const to = surfaceAt(timeS)
      step(from, middle, to)
      from = to
    },
    fieldC,
    enteredJ,
  }
}
