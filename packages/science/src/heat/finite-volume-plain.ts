/** The steps of the finite-volume model in plain numbers: the yardstick of finite-volume-fast.ts, and what runs without it. */
import type { PreparedSteps, StepKernel, SurfaceC } from './finite-volume-steps.ts'
import { sweepAxial, sweepRadial } from './finite-volume-sweeps.ts'

export function createPlainKernel(prepared: PreparedSteps): StepKernel {
  const { grid, stepS, radial, axial, lowShare, highShare, sideShare } = prepared
  const { nr, nz, outward, upward, bottom, inWater } = grid
  const half = stepS / 2
  const lastRing = (nr - 1) * nz
  const u = prepared.startC.slice()
  const q = prepared.startQ.slice()
  let enteredJ = 0
  const addEnds = ({ waterC, steamC }: SurfaceC) => {
    for (let i = 0, low = 0; i < nr; i += 1, low += nz) {
      q[low] = q[low]! - lowShare[i]! * waterC
      q[low + nz - 1] = q[low + nz - 1]! - highShare[i]! * steamC
    }
  }
  const addSide = ({ waterC, steamC }: SurfaceC) => {
    for (let j = 0; j < nz; j += 1) {
      q[lastRing + j] = q[lastRing + j]! - sideShare[j]! * (inWater[j] ? waterC : steamC)
    }
  }
  const endsW = ({ waterC, steamC }: SurfaceC) => {
    let sum = 0
    for (let i = 0; i < nr; i += 1) {
      const low = i * nz
      const high = low + nz - 1
      sum += bottom[i]! * (waterC - u[low]!) + upward[high]! * (steamC - u[high]!)
    }
    return sum
  }
  const step = (from: SurfaceC, middle: SurfaceC, to: SurfaceC) => {
    enteredJ += half * endsW(from)
    addEnds(from)
    addSide(middle)
    sweepRadial(u, q, radial, nr, nz)
    for (let j = 0; j < nz; j += 1) {
      const at = lastRing + j
      enteredJ += stepS * outward[at]! * ((inWater[j] ? middle.waterC : middle.steamC) - u[at]!)
    }
    addSide(middle)
    addEnds(to)
    sweepAxial(u, q, axial, nr, nz)
    enteredJ += half * endsW(to)
  }
  return { step, fieldC: () => u.slice(), enteredJ: () => enteredJ }
}
