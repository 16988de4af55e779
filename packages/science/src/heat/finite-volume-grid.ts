/** The mesh of the finite-volume model turned into conductances between its cells and heat capacities of them. */
import { requireInRange, type ValidRange } from '../errors.ts'
import type { Material } from './jar-materials.ts'

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

const CELLS: ValidRange = { min: 3, max: 2000, unit: 'cells', source: 'project-rule' }

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
  const nr = r.length - 1
  const nz = z.length - 1
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
