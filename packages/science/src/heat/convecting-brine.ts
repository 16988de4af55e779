/**
 * A jar of kernels in free brine: the liquid moves and is one temperature, heat crosses glass and films by one overall
 * coefficient, and kernels are spheres warmed by conduction from the liquid. It fails when starch thickens the liquid or the
 * pack is too tight to move; then the jar conducts (cylinder-series.ts), and hot spots in the liquid are not shown at all.
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { HISTORY_TEMPERATURE_C, requireHistory, type SurfaceHistory, walkHistory } from './surface-history.ts'

export interface BrineJar {
  /** Overall, outside to liquid, times the area it acts on. [W/K] */
  readonly conductanceWPerK: number
  /** m cp of the liquid. [J/K] */
  readonly liquidJPerK: number
  /** m cp of the kernels together; 0 for liquid alone. [J/K] */
  readonly kernelsJPerK: number
  /** [m] */
  readonly kernelRadiusM: number
  /** alpha of a kernel. [m2/s] */
  readonly kernelDiffusivityM2PerS: number
}

export interface BrineCurve {
  readonly liquidC: Float64Array
  /** At the middle of a kernel, the slowest place. */
  readonly kernelCentreC: Float64Array
  readonly stepS: number
  /** Heat through the glass, and heat liquid and kernels gained. [J] Equal but for rounding. */
  readonly enteredJ: number
  readonly gainedJ: number
}

const MODES = 12
const RANGES = {
  conductanceWPerK: { min: 0.01, max: 1000, unit: 'W/K', source: 'project-rule' },
  liquidJPerK: { min: 1, max: 1e6, unit: 'J/K', source: 'project-rule' },
  kernelsJPerK: { min: 0, max: 1e6, unit: 'J/K', source: 'project-rule' },
  kernelRadiusM: { min: 1e-4, max: 0.03, unit: 'm', source: 'project-rule' },
  kernelDiffusivityM2PerS: { min: 1e-8, max: 1e-6, unit: 'm2/s', source: 'project-rule' },
} as const satisfies { readonly [name in keyof BrineJar]: ValidRange }

/**
 * fh of one sphere whose surface is held, fh = R^2 ln 10 / (pi^2 alpha). [min]  A kernel of 5 to 6 mm: 39 to 56 s.
 *
 * @throws {ValidRangeError} for a radius or diffusivity out of range.
 * @source carslaw-jaeger-1959 section 9.3
 */
export function sphereHeatingFhMin(radiusM: number, diffusivityM2PerS: number): number {
  requireInRange('radiusM', radiusM, RANGES.kernelRadiusM)
  requireInRange('diffusivityM2PerS', diffusivityM2PerS, RANGES.kernelDiffusivityM2PerS)
  return (radiusM ** 2 * Math.LN10) / (Math.PI ** 2 * diffusivityM2PerS) / 60
}

/**
 * Temperatures of liquid and kernels through a run. [°C]
 *
 * The liquid is a straight line within a step, its slope solved so that heat in and heat gained are equal; each kernel's
 * modes follow that line exactly, and the modes left out are taken as keeping pace. Second order, stable at any step.
 *
 * @throws {ValidRangeError} for a jar, history, step or temperature out of range.
 * @source carslaw-jaeger-1959 section 9.3 for the spheres
 */
export function brineCurve(
  jar: BrineJar,
  history: SurfaceHistory,
  { initialC, stepS }: { readonly initialC: number; readonly stepS: number },
): BrineCurve {
  requireHistory(history)
  for (const name of Object.keys(RANGES) as (keyof BrineJar)[]) requireInRange(name, jar[name], RANGES[name])
  requireInRange('initialC', initialC, HISTORY_TEMPERATURE_C)
  requireInRange('stepS', stepS, { min: 0.01, max: 600, unit: 's', source: 'project-rule' })
  const {
    conductanceWPerK: UA,
    liquidJPerK: Cl,
    kernelsJPerK: Ck,
    kernelRadiusM: R,
    kernelDiffusivityM2PerS: alpha,
  } = jar

  const rate = new Float64Array(MODES)
  const decay = new Float64Array(MODES)
  const gain = new Float64Array(MODES)
  const ofMean = new Float64Array(MODES)
  const ofCentre = new Float64Array(MODES)
  const lag = new Float64Array(MODES)
  // Of a sphere that follows a steady rise of 1 °C/s: its mean lags R^2/(15 alpha), its centre R^2/(6 alpha).
  let meanTailS = R ** 2 / (15 * alpha)
  let centreTailS = R ** 2 / (6 * alpha)
  for (let m = 0; m < MODES; m += 1) {
    const n = m + 1
    rate[m] = ((n * Math.PI) / R) ** 2 * alpha
    decay[m] = Math.exp(-rate[m]! * stepS)
    gain[m] = -Math.expm1(-rate[m]! * stepS) / rate[m]!
    ofMean[m] = 6 / (n * Math.PI) ** 2
    ofCentre[m] = n % 2 === 1 ? 2 : -2
    meanTailS -= ofMean[m]! / rate[m]!
    centreTailS -= ofCentre[m]! / rate[m]!
  }
  // A slope s adds `meanGain` s to how far the mean lags; what was there decays.
  let meanGainS = meanTailS
  for (let m = 0; m < MODES; m += 1) meanGainS += ofMean[m]! * gain[m]!

  const surfaceAt = walkHistory(history)
  const startMin = history[0]!.timeMin
  const count = Math.floor(((history.at(-1)!.timeMin - startMin) * 60) / stepS + 1e-9) + 1
  const liquidC = new Float64Array(count).fill(initialC)
  const kernelCentreC = new Float64Array(count).fill(initialC)
  let liquid = initialC
  let lagMeanC = 0
  let enteredJ = 0
  for (let i = 1; i < count; i += 1) {
    const middleC = surfaceAt(startMin + ((i - 0.5) * stepS) / 60)
    let keptMeanC = 0
    for (let m = 0; m < MODES; m += 1) keptMeanC += ofMean[m]! * lag[m]! * decay[m]!
    // Cl s dt + Ck (s dt - (keptMean + meanGain s - lagMean)) = UA dt (middle - liquid - s dt / 2)
    const drive = UA * stepS * (middleC - liquid) + Ck * (keptMeanC - lagMeanC)
    const slope = drive / (Cl * stepS + Ck * (stepS - meanGainS) + (UA * stepS ** 2) / 2)
    enteredJ += UA * stepS * (middleC - liquid - (slope * stepS) / 2)
    liquid += slope * stepS
    lagMeanC = keptMeanC + meanGainS * slope
    let lagCentreC = centreTailS * slope
    for (let m = 0; m < MODES; m += 1) {
      lag[m] = lag[m]! * decay[m]! + gain[m]! * slope
      lagCentreC += ofCentre[m]! * lag[m]!
    }
    liquidC[i] = liquid
    kernelCentreC[i] = liquid - lagCentreC
  }
  const gainedJ = Cl * (liquid - initialC) + Ck * (liquid - lagMeanC - initialC)
  return { liquidC, kernelCentreC, stepS, enteredJ, gainedJ }
}
