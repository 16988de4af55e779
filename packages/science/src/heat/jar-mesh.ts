/** Meshes for the finite-volume model: one material throughout, or a jar with glass, food and headspace. */
import { requireInRange, type ValidRange } from '../errors.ts'
import type { HeatField } from './finite-volume.ts'
import type { HeatMesh } from './finite-volume-grid.ts'
import { JAR_GLASS, JAR_HEADSPACE, type JarSize, type Material } from './jar-materials.ts'

const CELLS: ValidRange = { min: 4, max: 1000, unit: 'cells', source: 'project-rule' }
const LENGTH_M: ValidRange = { min: 0.0005, max: 0.5, unit: 'm', source: 'project-rule' }

/** Rings and levels of the default mesh of food. */
export const DEFAULT_MESH = { nr: 32, nz: 64 } as const

/**
 * A cylinder of one material with its whole surface at the outer temperature, as the closed series has it.
 *
 * @throws {ValidRangeError} for fewer than 4 cells either way or a size out of range.
 * @source none: a choice of cells
 */
export function plainCylinderMesh(
  { radiusM, halfHeightM }: JarSize,
  food: Material,
  { nr, nz }: { readonly nr: number; readonly nz: number } = DEFAULT_MESH,
): HeatMesh {
  return {
    rFacesM: evenFaces(0, radiusM, nr),
    zFacesM: evenFaces(0, 2 * halfHeightM, nz),
    materialOf: () => food,
    waterLineM: 0,
    filmWaterWPerM2K: Number.POSITIVE_INFINITY,
    filmSteamWPerM2K: Number.POSITIVE_INFINITY,
  }
}

export interface FilledJar {
  /** Of the food itself: inside radius and half the height it fills. */
  readonly food: JarSize
  readonly material: Material
  /** Wall and base. [m] Common practice, no source: 3 mm. */
  readonly glassM?: number
  /** [m] One inch unless said. */
  readonly headspaceM?: number
  /** How high water stands on the outside, from under the base. [m] Two inches unless said. */
  readonly waterLineM?: number
}

/** Boiling water and condensing steam on glass. [W/(m2 K)] Common practice, no source; both are far above what glass passes. */
const FILM_WATER = 1000
const FILM_STEAM = 3000
const INCH_M = 0.0254
const GLASS_CELLS = 4
const HEADSPACE_CELLS = 8

/**
 * A jar of glass with food and headspace, its lid as good as open to the steam.
 *
 * @throws {ValidRangeError} for fewer than 4 cells either way or a size out of range.
 * @source soda-lime-glass-sheets for the glass
 */
export function filledJarMesh(
  jar: FilledJar,
  { nr, nz } = DEFAULT_MESH as { readonly nr: number; readonly nz: number },
): HeatMesh {
  const { food, material, glassM = 0.003, headspaceM = INCH_M, waterLineM = 2 * INCH_M } = jar
  requireInRange('glassM', glassM, LENGTH_M)
  requireInRange('headspaceM', headspaceM, LENGTH_M)
  const foodTopM = glassM + 2 * food.halfHeightM
  const rFacesM = [
    ...evenFaces(0, food.radiusM, nr),
    ...evenFaces(food.radiusM, food.radiusM + glassM, GLASS_CELLS).slice(1),
  ]
  const zFacesM = [
    ...evenFaces(0, glassM, GLASS_CELLS),
    ...evenFaces(glassM, foodTopM, nz).slice(1),
    ...evenFaces(foodTopM, foodTopM + headspaceM, HEADSPACE_CELLS).slice(1),
  ]
  return {
    rFacesM,
    zFacesM,
    materialOf: (i, j) => {
      if (i >= nr || j < GLASS_CELLS) return JAR_GLASS
      return j < GLASS_CELLS + nz ? material : JAR_HEADSPACE
    },
    waterLineM,
    filmWaterWPerM2K: FILM_WATER,
    filmSteamWPerM2K: FILM_STEAM,
  }
}

/** Whether a cell of `filledJarMesh` holds food.  @source none: a question about the mesh */
export function isFoodCell({ nr, nz }: { readonly nr: number; readonly nz: number }, i: number, j: number): boolean {
  return i < nr && j >= GLASS_CELLS && j < GLASS_CELLS + nz
}

/**
 * Temperature at the very middle of a plain cylinder of evenly spaced cells, an even number along the height. [°C]
 *
 * By the parabola through the cells beside it; the middle is no cell's own.
 *
 * @source none: interpolation of second order
 */
export function middleTemperatureC({ nz }: Pick<HeatField, 'nz'>, fieldC: Float64Array): number {
  const onAxis = (j: number) => (9 * fieldC[j]! - fieldC[nz + j]!) / 8
  const upper = nz / 2
  const near = (onAxis(upper - 1) + onAxis(upper)) / 2
  const far = (onAxis(upper - 2) + onAxis(upper + 1)) / 2
  return (9 * near - far) / 8
}

function evenFaces(fromM: number, toM: number, count: number): number[] {
  requireInRange('cells', count, CELLS)
  requireInRange('size', toM - fromM, LENGTH_M)
  return Array.from({ length: count + 1 }, (_, k) => fromM + ((toM - fromM) * k) / count)
}
