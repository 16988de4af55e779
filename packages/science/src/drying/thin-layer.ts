/**
 * Thin-layer drying: the share of the water that can go which has not gone yet, against time, in one unchanging air.
 * MR = (M - Me)/(M0 - Me), dry basis. Each model is named for its work. Leaves out: deep layers, ears, and hominy, for
 * which no constants were found; rehydrated corn dries faster than these say.
 */
import { requireInRange } from '../errors.ts'

/** A layer in one air: what every model here asks. */
export interface Layer {
  /** Drying air. [°C] */
  readonly temperatureC: number
  /** Relative humidity of the drying air. [fraction] */
  readonly humidityFraction: number
  /** Moisture at the start, dry basis. [fraction] */
  readonly startDryFraction: number
  /** Air through the layer. [m/s] */
  readonly airMPerS: number
}

/** A drying curve MR(t) = exp(-k t^n). */
export interface PageCurve {
  /** [1/h^n] */
  readonly k: number
  readonly n: number
}

/** Share of the removable water left. [fraction]  t in hours.  @throws {ValidRangeError} before the start.  @source lewis-1921 */
export function moistureRatioLewis(k: number, hours: number): number {
  requireHours(hours)
  return Math.exp(-k * hours)
}

/** Share of the removable water left. [fraction]  t in hours.  @throws {ValidRangeError} before the start.  @source page-1949 */
export function moistureRatioPage({ k, n }: PageCurve, hours: number): number {
  requireHours(hours)
  return Math.exp(-k * hours ** n)
}

/** Hours until a share of the removable water is left: Page's curve the other way round. [h]  @throws {ValidRangeError} unless 0 < MR <= 1.  @source page-1949 */
export function hoursPage({ k, n }: PageCurve, moistureRatio: number): number {
  requireRatio(moistureRatio)
  return (-Math.log(moistureRatio) / k) ** (1 / n)
}

/**
 * Page's constants for shelled yellow dent, Misra and Brooker 1980 (ASAE S448). From memory, not re-read.
 *
 * k = exp[-7.1735 + 1.2793 ln(1.8 T + 32) + 0.1378 V], n = 0.0811 ln RH + 0.0078 M0, RH and M0 in percent, V in m/s.
 * 50 °C, 15 %, 33.3 % dry basis, 0.5 m/s: k 0.3833, n 0.4794.
 *
 * @param layer Valid: 2.2 to 71.1 °C, humidity 0.03 to 0.83, 0.025 to 2.33 m/s, start 0.18 to 0.60 dry basis.
 * @throws {ValidRangeError} outside those ranges.
 * @source misra-brooker-1980 equations as in ASAE S448, from memory
 */
export function pageCurveMisraBrooker1980({
  temperatureC,
  humidityFraction,
  startDryFraction,
  airMPerS,
}: Layer): PageCurve {
  const source = 'misra-brooker-1980'
  requireInRange('temperatureC', temperatureC, { min: 2.2, max: 71.1, unit: '°C', source })
  requireInRange('humidityFraction', humidityFraction, { min: 0.03, max: 0.83, unit: 'humidity', source })
  requireInRange('startDryFraction', startDryFraction, { min: 0.18, max: 0.6, unit: 'of dry matter', source })
  requireInRange('airMPerS', airMPerS, { min: 0.025, max: 2.33, unit: 'm/s', source })
  return {
    k: Math.exp(-7.1735 + 1.2793 * Math.log(1.8 * temperatureC + 32) + 0.1378 * airMPerS),
    n: 0.0811 * Math.log(100 * humidityFraction) + 0.0078 * 100 * startDryFraction,
  }
}

/**
 * Hours until a share of the removable water is left, shelled corn, Thompson 1968. From memory, not re-read. [h]
 *
 * t = A ln MR + B (ln MR)^2, A = -1.86178 + 0.00488 F, B = 427.3740 exp(-0.03301 F), F in °F. 140 °F, MR 0.5: 2.837 h.
 *
 * @param temperatureC Valid: 60 to 148.9 °C, 140 to 300 °F.
 * @throws {ValidRangeError} outside that range, or unless 0 < MR <= 1.
 * @source thompson-1968 from memory
 */
export function hoursThompson1968(temperatureC: number, moistureRatio: number): number {
  requireInRange('temperatureC', temperatureC, { min: 60, max: 148.9, unit: '°C', source: 'thompson-1968' })
  requireRatio(moistureRatio)
  const F = temperatureC * 1.8 + 32
  const logMr = Math.log(moistureRatio)
  return (-1.86178 + 0.00488 * F) * logMr + 427.374 * Math.exp(-0.03301 * F) * logMr ** 2
}

/**
 * Water diffusivity of hard red flint kernels, between the two ends measured. [m2/s]
 *
 * D = D0 exp(-E/(R T)) through 1.907e-11 at 30 °C and 6.495e-11 at 90 °C. (The paper prints E = 17.74 kJ/mol, which misses
 * one end by 6 %; the ends imply 18.7 and are kept.)
 *
 * @param temperatureC Valid: 30 to 90 °C.
 * @throws {ValidRangeError} outside that range.
 * @source ordonez-2012 diffusivities at 30 and 90 °C
 */
export function flintDiffusivityM2PerS(temperatureC: number): number {
  requireInRange('temperatureC', temperatureC, { min: 30, max: 90, unit: '°C', source: 'ordonez-2012' })
  const inverse = (tC: number): number => 1 / (tC + 273.15)
  const along = (inverse(temperatureC) - inverse(30)) / (inverse(90) - inverse(30))
  return 1.907e-11 * (6.495e-11 / 1.907e-11) ** along
}

/** Equivalent radius of those kernels. [m]  Half of 8.18 mm, the driest measured.  @source ordonez-2012 */
export const FLINT_KERNEL_RADIUS_M = 0.00409

/**
 * Share of the removable water left in a sphere whose surface is at equilibrium. [fraction]
 *
 * MR = (6/pi^2) sum (1/i^2) exp(-i^2 pi^2 D t/r^2). D 1.907e-11, r 4.09 mm: 0.7955 after 1 h, 0.2331 after 24 h.
 *
 * @param fourier D t / r^2. [-] Valid: 0 and above.
 * @throws {ValidRangeError} below 0.
 * @source carslaw-jaeger-1959 sphere with constant surface, as used by ordonez-2012
 */
export function moistureRatioSphere(fourier: number): number {
  requireInRange('fourier', fourier, { min: 0, max: Number.MAX_VALUE, unit: '', source: 'carslaw-jaeger-1959' })
  // Short times: the sum converges slowly, its image series at once. They agree to 1e-12 where they change over.
  if (fourier < 0.02) return 1 - 6 * Math.sqrt(fourier / Math.PI) + 3 * fourier
  let sum = 0
  for (let i = 1; i <= 40; i++) {
    const term = Math.exp(-(i ** 2) * Math.PI ** 2 * fourier) / i ** 2
    sum += term
    if (term < 1e-15) break
  }
  return (6 / Math.PI ** 2) * sum
}

function requireHours(hours: number): void {
  requireInRange('hours', hours, { min: 0, max: 1e6, unit: 'h', source: 'project-rule' })
}

function requireRatio(moistureRatio: number): void {
  requireInRange('moistureRatio', moistureRatio, { min: 1e-9, max: 1, unit: '', source: 'project-rule' })
}
