/**
 * What a picture of a made-up jar is drawn from, at the middle of every input: the canner, the slowest place and how fast
 * spores would die there, minute by minute; and for a solid pack the whole cross-section. For study alone, as jar-study.ts.
 */
import { LETHALITY_250F } from '../lethality/lethal-rate.ts'
import { middleOf } from './band.ts'
import { conductInto } from './finite-volume.ts'
import { JAR_GLASS, JAR_SIZES } from './jar-materials.ts'
import { filledJarMesh } from './jar-mesh.ts'
import {
  createJarHeating,
  HEAT_J_PER_M3_K,
  HEAT_UP_MIN,
  jarSpreads,
  type MadeUpRun,
  OVERALL_W_PER_M2_K,
  STEP_S,
} from './jar-study.ts'
import { walkHistory } from './surface-history.ts'

/** From the moment the jars go in. [min] */
export interface JarMoments {
  readonly steamMin: number
  readonly ventClosedMin: number
  readonly atPressureMin: number
  readonly heatOffMin: number
  readonly zeroMin: number
  readonly endMin: number
}

export interface JarPicture {
  readonly stepS: number
  readonly moments: JarMoments
  /** Around the jar. [°C] */
  readonly cannerC: Float64Array
  /** Middle of the glass; null for a solid pack, where the cross-section tells it. [°C] */
  readonly wallC: Float64Array | null
  /** Free brine; null for a solid pack. [°C] */
  readonly liquidC: Float64Array | null
  /** The slowest place: the middle of a solid pack, the middle of a kernel in free brine. [°C] */
  readonly coldSpotC: Float64Array
  /** Lethal rate there, reference 250 °F, z 10 °C. [min per min] */
  readonly rateFraction: Float64Array
}

/**
 * Curves of a made-up jar at the middle of every input, a reading every half minute.
 *
 * The middle of the glass lies between canner and liquid as the resistances of films and glass do.
 *
 * @throws {ValidRangeError} for a run out of range.
 * @source carslaw-jaeger-1959 for the jar, iapws-r7-97 for the steam, bigelow-1920 for the rate
 */
export function jarPicture(run: MadeUpRun): JarPicture {
  const values = middleOf(jarSpreads(run))
  const { history, temperaturesC, liquidC, endOfHoldMin } = createJarHeating(run)(values)
  const canner = walkHistory(history)
  const cannerC = temperaturesC.map((_, i) => canner((i * STEP_S) / 60))
  const steamMin = HEAT_UP_MIN
  const ventClosedMin = steamMin + run.ventMin
  return {
    stepS: STEP_S,
    moments: {
      steamMin,
      ventClosedMin,
      atPressureMin: ventClosedMin + values.comeUpMin,
      heatOffMin: endOfHoldMin,
      zeroMin: endOfHoldMin + values.coolDownMin,
      endMin: ((temperaturesC.length - 1) * STEP_S) / 60,
    },
    cannerC,
    liquidC,
    wallC: liquidC?.map((liquid, i) => liquid + (cannerC[i]! - liquid) * GLASS_MIDDLE_SHARE) ?? null,
    coldSpotC: temperaturesC,
    rateFraction: temperaturesC.map((C) => 10 ** ((C - LETHALITY_250F.referenceC) / LETHALITY_250F.zDeltaC)),
  }
}

const GLASS_M = 0.003
const STEAM_FILM_W_PER_M2_K = 3000
/** How far the middle of the glass lies on the way from liquid to canner. */
const GLASS_MIDDLE_SHARE =
  1 - OVERALL_W_PER_M2_K * (1 / STEAM_FILM_W_PER_M2_K + GLASS_M / 2 / JAR_GLASS.conductivityWPerMK)

export interface JarFrames {
  /** From the moment the jar goes in. [min] */
  readonly timesMin: readonly number[]
  /** Temperatures at each time: ring i, level j at i nz + j. [°C] */
  readonly framesC: readonly Float64Array[]
  readonly nr: number
  readonly nz: number
  /** Edges of rings and levels, rising. [m] */
  readonly rFacesM: readonly number[]
  readonly zFacesM: readonly number[]
  /** Half way up the food, in the middle of the glass. [°C] */
  readonly wallC: Float64Array
  /** Coolest place of the food at each time. [°C] */
  readonly coolestC: Float64Array
}

const FRAME_CELLS = { nr: 14, nz: 32 } as const
const FRAME_STEP_S = 15
const GLASS_RINGS = 4
const GLASS_LEVELS = 4

/**
 * Cross-section of a made-up jar packed solid, with its glass and headspace, once a minute.
 *
 * Glass and headspace slow it a little beside the closed series of `jarPicture`, whose food touches the canner.
 *
 * @throws {ValidRangeError} for a run out of range.
 * @source peaceman-rachford-1955
 */
export function jarFrames(run: MadeUpRun): JarFrames {
  const values = middleOf(jarSpreads(run))
  const { history } = createJarHeating({ ...run, pack: 'packed solid' })(values)
  const material = {
    conductivityWPerMK: values.diffusivityM2PerS * HEAT_J_PER_M3_K,
    heatCapacityJPerM3K: HEAT_J_PER_M3_K,
  }
  const mesh = filledJarMesh({ food: JAR_SIZES[run.jar], material, glassM: GLASS_M }, FRAME_CELLS)
  const field = conductInto(mesh, {
    initialC: () => run.fillC,
    water: history,
    steam: history,
    durationS: history.at(-1)!.timeMin * 60,
    stepS: FRAME_STEP_S,
    keepEvery: 60 / FRAME_STEP_S,
  })
  const { nr, nz, fieldsC } = field
  const middleOfFood = GLASS_LEVELS + FRAME_CELLS.nz / 2
  return {
    timesMin: field.timesS.map((s) => s / 60),
    framesC: fieldsC,
    nr,
    nz,
    rFacesM: mesh.rFacesM,
    zFacesM: mesh.zFacesM,
    wallC: Float64Array.from(fieldsC, (C) => C[(FRAME_CELLS.nr + GLASS_RINGS / 2) * nz + middleOfFood]!),
    coolestC: Float64Array.from(fieldsC, (C) => coolestOf(C, nz)),
  }
}

function coolestOf(fieldC: Float64Array, nz: number): number {
  let coolest = Number.POSITIVE_INFINITY
  for (let i = 0; i < FRAME_CELLS.nr; i += 1) {
    for (let j = 0; j < FRAME_CELLS.nz; j += 1) coolest = Math.min(coolest, fieldC[i * nz + GLASS_LEVELS + j]!)
  }
  return coolest
}
