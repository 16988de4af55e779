/**
 * Heat conducted into a jar, in a cross-section from axis to outside and bottom to top: food, glass and headspace, the base
 * in water and the upper part in steam. Finite volumes and alternating directions (Peaceman and Rachford): second order in
 * space and time, stable at any step. Properties do not change with temperature; nothing flows (convecting-brine.ts).
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { type SweepFactors, sweepAxial, sweepRadial } from './finite-volume-sweeps.ts'
import type { Material } from './jar-materials.ts'
import { HISTORY_TEMPERATURE_C, requireHistory, type SurfaceHistory, walkHistory } from './surface-history.ts'

export interface HeatMesh {
  /** From 0 at the axis outward, rising. [m] */
  readonly rFacesM: readonly number[]
  /** From the bottom up, rising. [m] */
  readonly zFacesM: readonly number[]
  /** What fills the cell in ring i at level j. */
  readonly materialOf: (i: number, j: number) => Material
  /** Side faces whose middle lies below this stand in water. [m] */
  readonly waterLineM: number
  /** Surface coefficient in water, and in steam; Infinity holds the surface at the outer temperature. [W/(m2 K)] */
  readonly filmWaterWPerM2K: number
  readonly filmSteamWPerM2K: number
}

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

const CELLS: ValidRange = { min: 3, max: 2000, unit: 'cells', source: 'project-rule' }
const STEP_S: ValidRange = { min: 1e-3, max: 3600, unit: 's', source: 'project-rule' }
const STEPS: ValidRange = { min: 1, max: 10_000_000, unit: 'steps', source: 'project-rule' }

/**
 * Temperatures in a jar over a run.
 *
 * @throws {ValidRangeError} for fewer than 3 cells either way, faces that do not rise, or a step, history or temperature out
 *   of range.
 * @source peaceman-rachford-1955
 */
export function conductInto(mesh: HeatMesh, run: HeatRun): HeatField {
  requireHistory(run.water)
  requireHistory(run.steam)
  requireInRange('stepS', run.stepS, STEP_S)
  const stepCount = Math.round(run.durationS / run.stepS)
  requireInRange('durationS', stepCount, STEPS)
  const grid = gridOf(mesh)
  const { nr, nz } = grid
  const u = new Float64Array(nr * nz)
  for (let i = 0; i < nr; i += 1) {
    for (let j = 0; j < nz; j += 1) {
      const initialC = run.initialC(i, j)
      requireInRange('initialC', initialC, HISTORY_TEMPERATURE_C)
      u[i * nz + j] = initialC
    }
  }
  const startC = u.slice()
  const stepper = createStepper(grid, u, run)
  const timesS = [0]
  const fieldsC = [u.slice()]
  let stopped = false
  for (let step = 1; step <= stepCount; step += 1) {
    stepper.step()
    if (step % run.keepEvery !== 0 && step !== stepCount) continue
    timesS.push(step * run.stepS)
    fieldsC.push(u.slice())
    if (run.onKept?.(step * run.stepS) === false && step < stepCount) {
      stopped = true
      break
    }
  }
  let gainedJ = 0
  for (let at = 0; at < u.length; at += 1) gainedJ += grid.capacityJPerK[at]! * (u[at]! - startC[at]!)
  return { timesS, fieldsC, nr, nz, enteredJ: stepper.enteredJ(), gainedJ, stopped }
}

/** Conductances of all faces [W/K] and heat capacities [J/K]; column by column. */
export interface HeatGrid {
  readonly nr: number
  readonly nz: number
  readonly capacityJPerK: Float64Array
  /** Of the face outside ring i; the last is to the surroundings. */
  readonly outward: Float64Array
  /** Of the face above level j; the last is to the steam. */
  readonly upward: Float64Array
  /** Of the face below level 0, by ring, to the water. */
  readonly bottom: Float64Array
  /** Whether side level j stands in water. */
  readonly inWater: readonly boolean[]
}

/** @throws {ValidRangeError} as conductInto. */
export function gridOf(mesh: HeatMesh): HeatGrid {
  const { rFacesM: r, zFacesM: z } = mesh
  const [nr, nz] = [r.length - 1, z.length - 1]
  requireInRange('rFacesM', nr, CELLS)
  requireInRange('zFacesM', nz, CELLS)
  for (const faces of [r, z]) {
    for (let k = 1; k < faces.length; k += 1) {
      requireInRange('faces', faces[k]! - faces[k - 1]!, { min: 1e-6, max: 1, unit: 'm', source: 'project-rule' })
    }
  }
  requireInRange('rFacesM', r[0]!, { min: 0, max: 0, unit: 'm', source: 'project-rule' })
  const size = nr * nz
  const grid = {
    nr,
    nz,
    capacityJPerK: new Float64Array(size),
    outward: new Float64Array(size),
    upward: new Float64Array(size),
    bottom: new Float64Array(nr),
    inWater: Array.from({ length: nz }, (_, j) => (z[j]! + z[j + 1]!) / 2 < mesh.waterLineM),
  }
  const k = (i: number, j: number) => mesh.materialOf(i, j).conductivityWPerMK
  for (let i = 0; i < nr; i += 1) {
    const ring = Math.PI * (r[i + 1]! ** 2 - r[i]! ** 2)
    const halfR = (r[i + 1]! - r[i]!) / 2
    for (let j = 0; j < nz; j += 1) {
      const at = i * nz + j
      const height = z[j + 1]! - z[j]!
      grid.capacityJPerK[at] = mesh.materialOf(i, j).heatCapacityJPerM3K * ring * height
      const side = 2 * Math.PI * r[i + 1]! * height
      const sideFilm = grid.inWater[j] ? mesh.filmWaterWPerM2K : mesh.filmSteamWPerM2K
      const outside = i + 1 < nr ? (r[i + 2]! - r[i + 1]!) / 2 / k(i + 1, j) : 1 / sideFilm
      grid.outward[at] = side / (halfR / k(i, j) + outside)
      const above = j + 1 < nz ? (z[j + 2]! - z[j + 1]!) / 2 / k(i, j + 1) : 1 / mesh.filmSteamWPerM2K
      grid.upward[at] = ring / (height / 2 / k(i, j) + above)
    }
    grid.bottom[i] = ring / ((z[1]! - z[0]!) / 2 / k(i, 0) + 1 / mesh.filmWaterWPerM2K)
  }
  return grid
}

/** Advances u in place. The surface of both half steps along the radius is taken at the middle of the step. */
export function createStepper(
  grid: HeatGrid,
  u: Float64Array,
  { water, steam, stepS }: Pick<HeatRun, 'water' | 'steam' | 'stepS'>,
): { readonly step: () => void; readonly enteredJ: () => number } {
  const { nr, nz, capacityJPerK, outward, upward, bottom, inWater } = grid
  const half = stepS / 2
  const lastRing = (nr - 1) * nz
  const perHalf: PerHalf = (at, conductance) => (conductance * half) / capacityJPerK[at]!
  const radial = factorsAlongRadius(grid, perHalf)
  const axial = factorsAlongHeight(grid, perHalf)
  const waterAt = walkHistory(water)
  const steamAt = walkHistory(steam)
  const startMin = water[0]!.timeMin
  let timeS = 0
  let waterC = waterAt(startMin)
  let steamC = steamAt(startMin)
  let enteredJ = 0

  // q for the first solve, (I - A) u with the surface of the start: the only stencil ever applied.
  const q = new Float64Array(nr * nz)
  for (let i = 0; i < nr; i += 1) {
    for (let j = 0; j < nz; j += 1) {
      const at = i * nz + j
      const below = j === 0 ? bottom[i]! * (waterC - u[at]!) : upward[at - 1]! * (u[at - 1]! - u[at]!)
      const above = upward[at]! * ((j === nz - 1 ? steamC : u[at + 1]!) - u[at]!)
      // The sweep takes 2u - q, and adds nothing for the ends: those are in q.
      q[at] = u[at]! - perHalf(at, below + above)
    }
    q[i * nz] = q[i * nz]! + perHalf(i * nz, bottom[i]! * waterC)
    q[i * nz + nz - 1] = q[i * nz + nz - 1]! + perHalf(i * nz + nz - 1, upward[i * nz + nz - 1]! * steamC)
  }

  const lowShare = Float64Array.from(bottom, (conductance, i) => perHalf(i * nz, conductance))
  const highShare = Float64Array.from(bottom, (_, i) => perHalf(i * nz + nz - 1, upward[i * nz + nz - 1]!))
  const sideShare = Float64Array.from(inWater, (_, j) => perHalf(lastRing + j, outward[lastRing + j]!))
  const addEnds = () => {
    for (let i = 0, low = 0; i < nr; i += 1, low += nz) {
      q[low] = q[low]! - lowShare[i]! * waterC
      q[low + nz - 1] = q[low + nz - 1]! - highShare[i]! * steamC
    }
  }
  const addSide = (sideWaterC: number, sideSteamC: number) => {
    for (let j = 0; j < nz; j += 1) {
      q[lastRing + j] = q[lastRing + j]! - sideShare[j]! * (inWater[j] ? sideWaterC : sideSteamC)
    }
  }
  const endsW = () => {
    let sum = 0
    for (let i = 0; i < nr; i += 1) {
      const low = i * nz
      const high = low + nz - 1
      sum += bottom[i]! * (waterC - u[low]!) + upward[high]! * (steamC - u[high]!)
    }
    return sum
  }
  const step = () => {
    const middleMin = startMin + (timeS + half) / 60
    const sideWaterC = waterAt(middleMin)
    const sideSteamC = steamAt(middleMin)
    enteredJ += half * endsW()
    addEnds()
    addSide(sideWaterC, sideSteamC)
    sweepRadial(u, q, radial, nr, nz)
    for (let j = 0; j < nz; j += 1) {
      const at = lastRing + j
      enteredJ += stepS * outward[at]! * ((inWater[j] ? sideWaterC : sideSteamC) - u[at]!)
    }
    timeS += stepS
    waterC = waterAt(startMin + timeS / 60)
    steamC = steamAt(startMin + timeS / 60)
    addSide(sideWaterC, sideSteamC)
    addEnds()
    sweepAxial(u, q, axial, nr, nz)
    enteredJ += half * endsW()
  }
  return { step, enteredJ: () => enteredJ }
}

type PerHalf = (at: number, conductance: number) => number

/** Thomas factors: what couples a cell to its neighbours, over its heat capacity, eliminated from the axis outward. */
function factorsAlongRadius({ nr, nz, outward }: HeatGrid, perHalf: PerHalf): SweepFactors {
  const [inv, f, e] = [new Float64Array(nr * nz), new Float64Array(nr * nz), new Float64Array(nr * nz)]
  for (let at = 0; at < nr * nz; at += 1) {
    const inside = at < nz ? 0 : perHalf(at, outward[at - nz]!)
    const outside = perHalf(at, outward[at]!)
    inv[at] = 1 / (1 + inside + outside - (at < nz ? 0 : inside * e[at - nz]!))
    f[at] = inside * inv[at]!
    e[at] = at < (nr - 1) * nz ? outside * inv[at]! : 0
  }
  return { inv, f, e }
}

/** The same from the bottom up. */
function factorsAlongHeight({ nr, nz, upward, bottom }: HeatGrid, perHalf: PerHalf): SweepFactors {
  const [inv, f, e] = [new Float64Array(nr * nz), new Float64Array(nr * nz), new Float64Array(nr * nz)]
  for (let i = 0; i < nr; i += 1) {
    for (let j = 0; j < nz; j += 1) {
      const at = i * nz + j
      const below = perHalf(at, j === 0 ? bottom[i]! : upward[at - 1]!)
      const above = perHalf(at, upward[at]!)
      const left = j === 0 ? 0 : below * e[at - 1]!
      inv[at] = 1 / (1 + below + above - left)
      f[at] = j === 0 ? 0 : below * inv[at]!
      e[at] = j === nz - 1 ? 0 : above * inv[at]!
    }
  }
  return { inv, f, e }
}
