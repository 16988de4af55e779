/**
 * A made-up jar in a made-up canner run, with every uncertain input as a spread: its slowest place over time and what that
 * is worth. For study alone: a keeper's own run is shown as temperatures and departures, never as a total.
 */
import { standardPressureKPaAbs } from '../atmosphere/standard-atmosphere.ts'
import { requireInRange } from '../errors.ts'
import { LETHALITY_250F } from '../lethality/lethal-rate.ts'
import { type Band, bandsOf, middleOf, type Spreads, type Swing, swingsOf, type Values } from './band.ts'
import { airLeftAfterVentFraction, cannerHistory, PURGE_MIN } from './canner-atmosphere.ts'
import { brineCurve } from './convecting-brine.ts'
import { COARSE_EXPONENT, modesAt, superpose } from './cylinder-series.ts'
import { JAR_SIZES, type LowMidHigh, PACKED_HOMINY_DIFFUSIVITY_M2_PER_S } from './jar-materials.ts'
import { BOTULINUM_Z_DELTA_C, curveLethalityMin } from './kill-and-cook.ts'
import type { SurfaceHistory } from './surface-history.ts'

export type Pack = 'free brine' | 'packed solid'

export interface MadeUpRun {
  readonly jar: keyof typeof JAR_SIZES
  readonly pack: Pack
  /** [m] */
  readonly elevationM: number
  /** What the gauge shows. [kPa gauge] */
  readonly gaugeKPa: number
  /** How much too high the gauge reads. [kPa] */
  readonly gaugeReadsHighKPa: number
  readonly ventMin: number
  readonly holdMin: number
  /** Food when the jars go in. [°C] */
  readonly fillC: number
  /** From heat off to zero. [min] */
  readonly coolDownMin: number
  /** From closing the vent to pressure, where a canner's own records tell; 5 unless said. [min] Valid: 0.5 to 60. */
  readonly comeUpMin?: number
}

export type JarInput =
  | 'fillC'
  | 'diffusivityM2PerS'
  | 'jarConductanceFactor'
  | 'gaugeKPa'
  | 'weatherKPa'
  | 'purgeMin'
  | 'comeUpMin'
  | 'coolDownMin'
  | 'zDeltaC'

export interface JarStudy {
  /** At the slowest place when the hold ends. [°C] */
  readonly endOfHoldC: Band
  /** Through heating and cooling, reference 250 °F. [min] */
  readonly lethalityMin: Band
  /** Share of it gained after the heat went off, at the middle of every input. [fraction] */
  readonly coolingShareFraction: number
  readonly swings: readonly Swing<JarInput>[]
}

/** Before the vent phase; the same for every run. [min] Common practice, no source. */
export const HEAT_UP_MIN = 15
export const STEP_S = 30
/** Food and liquid alike, near that of water; half of a jar of free brine is kernels. [J/(m3 K)] */
export const HEAT_J_PER_M3_K = 4.0e6
/** Outside to liquid through 3 mm of glass and two films. [W/(m2 K)] Common practice, no source. */
export const OVERALL_W_PER_M2_K = 200
const KERNEL_RADIUS_M = 0.0055

/**
 * Spread of each input about a run. Unless a source is named in the module it is from, common practice, no source.
 * @source none: see the module each spread is from
 */
export function jarSpreads(run: MadeUpRun): Spreads<JarInput> {
  const about = (mid: number, less: number, more = less) => ({ low: mid - less, mid, high: mid + more })
  return {
    fillC: about(run.fillC, 8, 4),
    diffusivityM2PerS: PACKED_HOMINY_DIFFUSIVITY_M2_PER_S,
    jarConductanceFactor: { low: 0.6, mid: 1, high: 1.3 },
    gaugeKPa: about(run.gaugeKPa, 1.7, 3.4),
    weatherKPa: { low: -2, mid: 0, high: 2 },
    purgeMin: PURGE_MIN,
    comeUpMin: comeUpSpread(run.comeUpMin),
    coolDownMin: about(run.coolDownMin, 0.3 * run.coolDownMin),
    zDeltaC: BOTULINUM_Z_DELTA_C,
  }
}

/** Of a canner whose own come-up is known, three tenths either way; else what is common. [min] Common practice, no source. */
function comeUpSpread(ownMin: number | undefined): LowMidHigh {
  if (ownMin === undefined) return { low: 3, mid: 5, high: 10 }
  requireInRange('comeUpMin', ownMin, { min: 0.5, max: 60, unit: 'min', source: 'project-rule' })
  return { low: 0.7 * ownMin, mid: ownMin, high: 1.3 * ownMin }
}

/**
 * The slowest place of a made-up jar and its lethality, with the middle nine tenths of each and what each input does.
 *
 * @param samplesCount Valid: 64 to 1 000 000.
 * @param onSample called with the curve of each sample, a reading every half minute; the curve is used again by nobody. [°C]
 * @throws {ValidRangeError} for a run or a count out of range.
 * @source carslaw-jaeger-1959 for the jar, iapws-r7-97 for the steam; the spreads are named where they are defined
 */
export function studyJar(
  run: MadeUpRun,
  samplesCount: number,
  onSample?: (temperaturesC: Float64Array) => void,
): JarStudy {
  const spreads = jarSpreads(run)
  const heat = createJarHeating(run)
  const lethalityOf = (temperaturesC: Float64Array, zDeltaC: number) =>
    curveLethalityMin({ temperaturesC, stepS: STEP_S }, { ...LETHALITY_250F, zDeltaC })
  const endIndex = (endOfHoldMin: number) => Math.round((endOfHoldMin * 60) / STEP_S)
  let seenCount = 0
  const figures = (values: Values<JarInput>) => {
    const { temperaturesC, endOfHoldMin } = heat(values)
    // The first is the middle of every input, which is no sample.
    if (seenCount > 0) onSample?.(temperaturesC)
    seenCount += 1
    return [temperaturesC[endIndex(endOfHoldMin)]!, lethalityOf(temperaturesC, values.zDeltaC)]
  }
  const { temperaturesC, endOfHoldMin } = heat(middleOf(spreads))
  const whole = lethalityOf(temperaturesC, LETHALITY_250F.zDeltaC)
  const heating = lethalityOf(temperaturesC.subarray(0, endIndex(endOfHoldMin) + 1), LETHALITY_250F.zDeltaC)
  const [endOfHoldC, lethalityMin] = bandsOf(spreads, figures, samplesCount)
  return {
    endOfHoldC: endOfHoldC!,
    lethalityMin: lethalityMin!,
    coolingShareFraction: whole === 0 ? 0 : 1 - heating / whole,
    swings: swingsOf(spreads, (values) => lethalityOf(heat(values).temperaturesC, values.zDeltaC)),
  }
}

export interface HeatedJar {
  readonly history: SurfaceHistory
  /** At the slowest place, every half minute. [°C] */
  readonly temperaturesC: Float64Array
  /** Of free brine; null for a solid pack. [°C] */
  readonly liquidC: Float64Array | null
  readonly endOfHoldMin: number
}

/** The jar's curve for any values of its inputs; what does not depend on them is made once. */
export function createJarHeating(run: MadeUpRun): (values: Values<JarInput>) => HeatedJar {
  const size = JAR_SIZES[run.jar]
  const atmosphereKPaAbs = standardPressureKPaAbs(run.elevationM)
  const modes = modesAt(size, { radiusFraction: 0, heightFraction: 0 }, COARSE_EXPONENT)
  const volumeM3 = 2 * Math.PI * size.radiusM ** 2 * size.halfHeightM
  const areaM2 = 2 * Math.PI * size.radiusM * (size.radiusM + 2 * size.halfHeightM)
  return (values) => {
    const history = cannerHistory({
      atmosphereKPaAbs: atmosphereKPaAbs + values.weatherKPa,
      pressureKPaGauge: values.gaugeKPa - run.gaugeReadsHighKPa,
      airLeftFraction: airLeftAfterVentFraction(run.ventMin, values.purgeMin),
      startC: Math.min(90, values.fillC),
      heatUpMin: HEAT_UP_MIN,
      ventMin: run.ventMin,
      comeUpMin: values.comeUpMin,
      holdMin: run.holdMin,
      coolDownMin: values.coolDownMin,
    })
    const endOfHoldMin = HEAT_UP_MIN + run.ventMin + values.comeUpMin + run.holdMin
    const options = { initialC: values.fillC, stepS: STEP_S }
    if (run.pack === 'packed solid') {
      const temperaturesC = superpose(modes, values.diffusivityM2PerS, history, options)
      return { history, temperaturesC, liquidC: null, endOfHoldMin }
    }
    const { kernelCentreC, liquidC } = brineCurve(
      {
        conductanceWPerK: OVERALL_W_PER_M2_K * areaM2 * values.jarConductanceFactor,
        liquidJPerK: (HEAT_J_PER_M3_K * volumeM3) / 2,
        kernelsJPerK: (HEAT_J_PER_M3_K * volumeM3) / 2,
        kernelRadiusM: KERNEL_RADIUS_M,
        kernelDiffusivityM2PerS: values.diffusivityM2PerS,
      },
      history,
      options,
    )
    return { history, temperaturesC: kernelCentreC, liquidC, endOfHoldMin }
  }
}
