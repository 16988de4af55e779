/**
 * What every step of the finite-volume model needs and none changes: the factors of its solves, the shares of its surface and
 * the first right-hand side. Made once in plain numbers, whichever kernel then runs the steps, so that they agree to the bit.
 */
import type { HeatGrid } from './finite-volume-grid.ts'
import type { SweepFactors } from './finite-volume-sweeps.ts'

/** Around the jar at one time. [°C] */
export interface SurfaceC {
  readonly waterC: number
  readonly steamC: number
}

export interface PreparedSteps {
  readonly grid: HeatGrid
  readonly stepS: number
  readonly startC: Float64Array
  /** (I - A) u along the height, less its surface: the right-hand side before the first sweep. [°C] */
  readonly startQ: Float64Array
  readonly radial: SweepFactors
  readonly axial: SweepFactors
  /** What bottom, lid and side pass in half a step for each degree, over the heat capacity behind them. [1] */
  readonly lowShare: Float64Array
  readonly highShare: Float64Array
  readonly sideShare: Float64Array
}

/** Runs the steps one after another. */
export interface StepKernel {
  /** Along the radius the surface is taken at the middle of the step, along the height at its two ends. */
  readonly step: (from: SurfaceC, middle: SurfaceC, to: SurfaceC) => void
  /** A copy, ring by ring. [°C] */
  readonly fieldC: () => Float64Array
  /** Heat that came in so far. [J] */
  readonly enteredJ: () => number
}

export function prepareSteps(
  grid: HeatGrid,
  startC: Float64Array,
  { stepS, surface: { waterC, steamC } }: { readonly stepS: number; readonly surface: SurfaceC },
): PreparedSteps {
  const { nr, nz, capacityJPerK, outward, upward, bottom, inWater } = grid
  const u = startC
  const half = stepS / 2
  const lastRing = (nr - 1) * nz
  const perHalf: PerHalf = (at, conductance) => (conductance * half) / capacityJPerK[at]!
  // The only stencil ever applied; the sweeps take 2u - q after it.
  const startQ = new Float64Array(nr * nz)
  for (let i = 0; i < nr; i += 1) {
    for (let j = 0; j < nz; j += 1) {
      const at = i * nz + j
      const below = j === 0 ? bottom[i]! * (waterC - u[at]!) : upward[at - 1]! * (u[at - 1]! - u[at]!)
      const above = upward[at]! * ((j === nz - 1 ? steamC : u[at + 1]!) - u[at]!)
      startQ[at] = u[at]! - perHalf(at, below + above)
    }
    const low = i * nz
    const high = i * nz + nz - 1
    startQ[low] = startQ[low]! + perHalf(low, bottom[i]! * waterC)
    startQ[high] = startQ[high]! + perHalf(high, upward[high]! * steamC)
  }
  return {
    grid,
    stepS,
    startC,
    startQ,
    radial: factorsAlongRadius(grid, perHalf),
    axial: factorsAlongHeight(grid, perHalf),
    lowShare: Float64Array.from(bottom, (conductance, i) => perHalf(i * nz, conductance)),
    highShare: Float64Array.from(bottom, (_, i) => perHalf(i * nz + nz - 1, upward[i * nz + nz - 1]!)),
    sideShare: Float64Array.from(inWater, (_, j) => perHalf(lastRing + j, outward[lastRing + j]!)),
  }
}

type PerHalf = (at: number, conductance: number) => number

/** Thomas factors: what couples a cell to its neighbours, over its heat capacity, eliminated from the axis outward. */
function factorsAlongRadius({ nr, nz, outward }: HeatGrid, perHalf: PerHalf): SweepFactors {
  const inv = new Float64Array(nr * nz)
  const f = new Float64Array(nr * nz)
  const e = new Float64Array(nr * nz)
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
  const inv = new Float64Array(nr * nz)
  const f = new Float64Array(nr * nz)
  const e = new Float64Array(nr * nz)
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
