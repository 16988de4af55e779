/** A jar under any surface: kernels loose in clear liquid, and packed solid. The two between which a real jar lies. */
import {
  brineCurve,
  cylinderCurve,
  JAR_SIZES,
  PACKED_HOMINY_DIFFUSIVITY_M2_PER_S,
  type SurfaceHistory,
} from '@crib/science'

export interface ModelledJar {
  readonly jar: keyof typeof JAR_SIZES
  /** Food when the surface begins. [°C] */
  readonly foodC: number
}

/** Kernels of 5.5 mm in as much liquid, behind glass and films. Common practice, no source; only shares and pictures come of it. */
const BRINE = { heatJPerM3K: 4e6, overallWPerM2K: 200, kernelRadiusM: 0.0055 }

/** Middle of a kernel of a loose pack, evenly spaced from the first point of the surface. [°C] */
export function looseJarC({ jar, foodC }: ModelledJar, surface: SurfaceHistory, stepS: number): Float64Array {
  const { radiusM, halfHeightM } = JAR_SIZES[jar]
  const halfJPerK = Math.PI * radiusM ** 2 * halfHeightM * BRINE.heatJPerM3K
  return brineCurve(
    {
      conductanceWPerK: BRINE.overallWPerM2K * 2 * Math.PI * radiusM * (radiusM + 2 * halfHeightM),
      liquidJPerK: halfJPerK,
      kernelsJPerK: halfJPerK,
      kernelRadiusM: BRINE.kernelRadiusM,
      kernelDiffusivityM2PerS: PACKED_HOMINY_DIFFUSIVITY_M2_PER_S.mid,
    },
    surface,
    { initialC: foodC, stepS },
  ).kernelCentreC
}

/** Middle of a jar packed solid, evenly spaced from the first point of the surface. [°C] */
export function solidJarC({ jar, foodC }: ModelledJar, surface: SurfaceHistory, stepS: number): Float64Array {
  const cylinder = { ...JAR_SIZES[jar], diffusivityM2PerS: PACKED_HOMINY_DIFFUSIVITY_M2_PER_S.mid }
  return cylinderCurve(cylinder, surface, { initialC: foodC, stepS }).temperaturesC
}
