/**
 * A made-up jar in a made-up canner run, with every uncertain input as a spread: its slowest place over time and what that
 * is worth. For study alone: a keeper's own run is shown as temperatures and departures, never as a total.
 */
import { standardPressureKPaAbs } from '../atmosphere/standard-atmosphere.ts'
import { LETHALITY_250F } from '../lethality/lethal-rate.ts'
import { type Band, bandsOf, type Spreads, type Swing, swingsOf, type Values } from './band.ts'
import { airLeftAfterVentFraction, cannerHistory, PURGE_MIN } from './canner-atmosphere.ts'
import { brineCurve } from './convecting-brine.ts'
import { COARSE_EXPONENT, modesAt, superpose } from './cylinder-series.ts'
import { JAR_SIZES, PACKED_HOMINY_DIFFUSIVITY_M2_PER_S } from './jar-materials.ts'
import { BOTULINUM_Z_DELTA_C, curveLethalityMin } from './kill-and-cook.ts'

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
const HEAT_UP_MIN = 15
const STEP_S = 30
/** Food and liquid alike, near that of water; half of a jar of free brine is kernels. [J/(m3 K)] */
const HEAT_J_PER_M3_K = 4.0e6
/** Outside to liquid through 3 mm of glass and two films. [W/(m2 K)] Common practice, no source. */
const OVERALL_W_PER_M2_K = 200
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
    comeUpMin: { low: 3, mid: 5, high: 10 },
    coolDownMin: about(run.coolDownMin, 0.3 * run.coolDownMin),
    zDeltaC: BOTULINUM_Z_DELTA_C,
  }
}

/**
 * The slowest place of a made-up jar and its lethality, with the middle nine tenths of each and what each input does.
 *
 * @param samplesCount Valid: 64 to 1 000 000.
 * @throws {ValidRangeError} for a run or a count out of range.
 * @source carslaw-jaeger-1959 for the jar, iapws-r7-97 for the steam; the spreads are named where they are defined
 */
export function studyJar(run: MadeUpRun, samplesCount: number): JarStudy {
  const spreads = jarSpreads(run)
  const heat = createJarHeating(run)
  const lethalityOf = (temperaturesC: Float64Array, zDeltaC: number) =>
    curveLethalityMin({ temperaturesC, stepS: STEP_S }, { ...LETHALITY_250F, zDeltaC })
  const endIndex = (endOfHoldMin: number) => Math.round((endOfHoldMin * 60) / STEP_S)
  const figures = (values: Values<JarInput>) => {
    const { temperaturesC, endOfHoldMin } = heat(values)
    return [temperaturesC[endIndex(endOfHoldMin)]!, lethalityOf(temperaturesC, values.zDeltaC)]
  }
  const middle = Object.fromEntries(Object.entries(spreads).map(([name, { mid }]) => [name, mid])) as Values<JarInput>
  const { temperaturesC, endOfHoldMin } = heat(middle)
  const whole = lethalityOf(temperaturesC, LETHALITY_250F.zDeltaC)
  const heating = lethalityOf(temperaturesC.subarray(0, endIndex(endOfHoldMin) + 1), LETHALITY_250F.zDeltaC)
  const [endOfHoldC, lethalityMin] = bandsOf(spreads, figures, samplesCount)
  return {
    endOfHoldC: endOfHoldC!,
    lethalityMin: lethalityMin!,
    coolingShareFraction: whole === 0 ? 0 : 1 - heating / whole,
    swings: swingsOf(spreads, (values) => figures(values)[1]!),
  }
}

export interface HeatedJar {
  /** At the slowest place, every half minute. [°C] */
  readonly temperaturesC: Float64Array
  readonly endOfHoldMin: number
}

/** The jar's curve for any values of its inputs; what does not depend on them is made once. */
function createJarHeating(run: MadeUpRun): (values: Values<JarInput>) => HeatedJar {
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
      return { temperaturesC: superpose(modes, values.diffusivityM2PerS, history, options), endOfHoldMin }
    }
    const { kernelCentreC } = brineCurve(
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
    return { temperaturesC: kernelCentreC, endOfHoldMin }
  }
}
