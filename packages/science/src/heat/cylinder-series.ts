/**
 * Heat conducted into a finite cylinder, in closed form: the eigenfunction series for a surface held at one temperature,
 * and Duhamel's superposition of it for a surface that follows straight lines.
 * The food is one material and the whole surface has one temperature; glass, headspace and water level are finite-volume.ts.
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import type { TemperatureSample } from '../lethality/lethality.ts'
import { besselI0Scaled, besselJ, zerosOfJ0 } from '../numeric/bessel.ts'
import { HISTORY_TEMPERATURE_C, requireHistory, type SurfaceHistory } from './surface-history.ts'

const FOURIER: ValidRange = { min: 1e-3, max: 1e3, unit: '(Fo)', source: 'carslaw-jaeger-1959' }
const PLACE: ValidRange = { min: 0, max: 0.75, unit: 'of the way to the surface', source: 'project-rule' }
const LENGTH_M: ValidRange = { min: 0.005, max: 0.5, unit: 'm', source: 'project-rule' }
const DIFFUSIVITY: ValidRange = { min: 1e-8, max: 1e-5, unit: 'm2/s', source: 'project-rule' }
const STEP_S: ValidRange = { min: 0.01, max: 600, unit: 's', source: 'project-rule' }

/**
 * Unaccomplished temperature at the axis of an endless cylinder, Y = (Tr - T)/(Tr - Ti). [1]
 *
 * Y = sum 2/(b J1(b)) exp(-b^2 Fo), J0(b) = 0. Fo 0.2: 0.501487.
 *
 * @param fourier Fo = alpha t / R^2. Valid: 1e-3 to 1e3.
 * @throws {ValidRangeError} outside that range.
 * @source carslaw-jaeger-1959 section 7.6
 */
export function cylinderAxisUnaccomplished(fourier: number): number {
  requireInRange('fourier', fourier, FOURIER)
  const { b } = bases(Math.ceil(Math.sqrt(40 / fourier) / Math.PI) + 2)
  return b.reduce((sum, zero) => sum + (2 / (zero * besselJ(zero).J1)) * Math.exp(-(zero ** 2) * fourier), 0)
}

/**
 * Unaccomplished temperature at the middle of an endless slab, Y = (Tr - T)/(Tr - Ti). [1]
 *
 * Y = sum 4 (-1)^k/((2k+1) pi) exp(-((2k+1) pi/2)^2 Fo). Fo 0.2: 0.772312.
 *
 * @param fourier Fo = alpha t / l^2, l half the thickness. Valid: 1e-3 to 1e3.
 * @throws {ValidRangeError} outside that range.
 * @source carslaw-jaeger-1959 section 3.3
 */
export function slabMiddleUnaccomplished(fourier: number): number {
  requireInRange('fourier', fourier, FOURIER)
  const { c } = bases(Math.ceil(Math.sqrt(40 / fourier) / Math.PI) + 2)
  return c.reduce((sum, ck, k) => sum + ((k % 2 === 0 ? 2 : -2) / ck) * Math.exp(-(ck ** 2) * fourier), 0)
}

export interface CylinderSize {
  /** R, inside radius. [m] Valid: 0.005 to 0.5. */
  readonly radiusM: number
  /** l, half the height of the food. [m] Valid: 0.005 to 0.5. */
  readonly halfHeightM: number
}

export interface ConductingCylinder extends CylinderSize {
  /** alpha. [m2/s] Valid: 1e-8 to 1e-5. */
  readonly diffusivityM2PerS: number
}

/** Where in the cylinder, as shares of the way from the middle to the surface. The cold spot while heating is 0, 0. */
export interface CylinderPlace {
  /** r/R. Valid: 0 to 0.75. */
  readonly radiusFraction: number
  /** |x|/l. Valid: 0 to 0.75. */
  readonly heightFraction: number
}

const MIDDLE: CylinderPlace = { radiusFraction: 0, heightFraction: 0 }

/**
 * fh, minutes for the centre to close nine tenths of the way to the surface temperature, once heating runs straight. [min]
 *
 * fh = ln 10 / (alpha (b1^2/R^2 + (pi/2)^2/l^2)). A quart, R 4.35 cm, l 7.5 cm, alpha 1.5e-7: 73.2 min.
 *
 * @throws {ValidRangeError} for a size or diffusivity out of range.
 * @source carslaw-jaeger-1959 sections 7.6 and 3.3
 */
export function cylinderHeatingFhMin(cylinder: ConductingCylinder): number {
  requireCylinder(cylinder)
  const { radiusM: R, halfHeightM: l, diffusivityM2PerS: alpha } = cylinder
  const b1 = zerosOfJ0(1)[0]!
  return Math.LN10 / (alpha * (b1 ** 2 / R ** 2 + (Math.PI / 2) ** 2 / l ** 2)) / 60
}

export interface CylinderCurve {
  /** Evenly spaced from the first point of the history. */
  readonly temperaturesC: Float64Array
  readonly stepS: number
}

/**
 * Temperature at one place of a conducting cylinder whose surface follows straight lines. [°C]
 *
 * Exact but for the terms left out, which are below 1e-9 of the largest change of the surface. A change of slope is felt
 * at a place only after heat had time to come from the nearest surface, so each is taken up once its influence exceeds
 * 1e-11 of itself; by then few modes are left. Cost falls with time as modes die out.
 *
 * @param start.initialC the food when the history begins, the same throughout. [°C]
 * @param options.stepS spacing of the answer. [s] Valid: 0.01 to 600.
 * @throws {ValidRangeError} for a size, diffusivity, place, step or history out of range.
 * @source carslaw-jaeger-1959 sections 1.14 (Duhamel), 1.15 (products), 7.6 and 3.3
 */
export function cylinderCurve(
  cylinder: ConductingCylinder,
  history: SurfaceHistory,
  { initialC, stepS, place = MIDDLE }: { initialC: number; stepS: number; place?: CylinderPlace },
): CylinderCurve {
  requireHistory(history)
  requireCylinder(cylinder)
  requireInRange('initialC', initialC, HISTORY_TEMPERATURE_C)
  requireInRange('stepS', stepS, STEP_S)
  const modes = modesAt(cylinder, place)
  return { stepS, temperaturesC: superpose(modes, cylinder.diffusivityM2PerS, history, { initialC, stepS }) }
}

/** A curve as readings, for the lethality rules.  @source none: the same numbers in another shape */
export function curveSamples({ temperaturesC, stepS }: CylinderCurve): readonly TemperatureSample[] {
  return Array.from(temperaturesC, (temperatureC, i) => ({ timeMin: (i * stepS) / 60, temperatureC }))
}

export interface Modes {
  /** Decay rate over alpha, rising. [1/m2] */
  readonly rates: Float64Array
  /** Weight of each mode at the place. [1] */
  readonly weights: Float64Array
  /** Solution of laplace(phi) = -1 with phi = 0 on the surface, at the place: how far a steady rise lags, times alpha. [m2] */
  readonly lagM2: number
  /** alpha times the time before which nothing is felt at the place. [m2] */
  readonly quietM2: number
}

/** exp(-EXPONENT) is what a mode left out, or a change not yet taken up, could still add. */
const EXPONENT = 25
/** The same where a ten-thousandth of a degree is fine, as in a band: a quarter of the modes. */
export const COARSE_EXPONENT = 12

/** The modes of a size at a place; they do not depend on the diffusivity, so a study over it makes them once. A disc or rod
 * more than some 18 times as wide as thick needs more zeros than are kept and is refused. */
export function modesAt(
  { radiusM: R, halfHeightM: l }: CylinderSize,
  place: CylinderPlace = MIDDLE,
  exponent = EXPONENT,
): Modes {
  const { radiusFraction: u, heightFraction: v } = place
  requireInRange('radiusM', R, LENGTH_M)
  requireInRange('halfHeightM', l, LENGTH_M)
  requireInRange('radiusFraction', u, PLACE)
  requireInRange('heightFraction', v, PLACE)
  const depth = Math.min(R * (1 - u), l * (1 - v))
  const quietM2 = depth ** 2 / (4 * exponent)
  const rateLimit = exponent / quietM2
  const { b } = bases(Math.ceil((R * Math.sqrt(rateLimit)) / Math.PI) + 1)
  const { c } = bases(Math.ceil((l * Math.sqrt(rateLimit)) / Math.PI) + 1)
  const radial = b.map((zero) => {
    const along = u === 0 ? 1 : besselJ(zero * u).J0
    return { rate: (zero / R) ** 2, weight: (2 * along) / (zero * besselJ(zero).J1) }
  })
  const axial = c.map((ck, k) => ({
    rate: (ck / l) ** 2,
    weight: ((k % 2 === 0 ? 2 : -2) * Math.cos(ck * v)) / ck,
  }))
  const kept = radial
    .flatMap((r) => axial.map((a) => ({ rate: r.rate + a.rate, weight: r.weight * a.weight })))
    .filter(({ rate }) => rate <= rateLimit)
    .toSorted((one, other) => one.rate - other.rate)
  return {
    rates: Float64Array.from(kept, ({ rate }) => rate),
    weights: Float64Array.from(kept, ({ weight }) => weight),
    lagM2: lagM2(R, l, u, v),
    quietM2,
  }
}

/** phi for a slab, less what the curved side takes away; falls off as exp(-c (R - r)/l). */
function lagM2(R: number, l: number, u: number, v: number): number {
  let taken = 0
  for (let k = 0; k < 400; k += 1) {
    const ck = (k + 0.5) * Math.PI
    const far = (ck * R) / l
    if (far > 990) break
    const ratio = (besselI0Scaled(far * u) / besselI0Scaled(far)) * Math.exp(far * (u - 1))
    if (ratio < 1e-18) break
    taken += (((k % 2 === 0 ? 2 : -2) * Math.cos(ck * v)) / ck ** 3) * ratio
  }
  return l ** 2 * ((1 - v ** 2) / 2 - taken)
}

/** Adds the response to every change of slope, and to the first jump from the food to the surface. */
export function superpose(
  { rates, weights, lagM2: lag, quietM2 }: Modes,
  alpha: number,
  history: SurfaceHistory,
  { initialC, stepS }: { readonly initialC: number; readonly stepS: number },
): Float64Array {
  const startMin = history[0]!.timeMin
  const endS = (history.at(-1)!.timeMin - startMin) * 60
  const count = Math.floor(endS / stepS + 1e-9) + 1
  const temperaturesC = new Float64Array(count)
  const modesCount = rates.length
  const state = new Float64Array(modesCount + 3)
  const decay = new Float64Array(modesCount + 3)
  for (let m = 0; m < modesCount; m += 1) decay[m] = Math.exp(-alpha * rates[m]! * stepS)

  const quietS = quietM2 / alpha
  const lagS = lag / alpha
  let nextEvent = 0
  let slopeBefore = 0
  let activeCount = 0
  let baseC = initialC
  let slopeSum = 0
  let slopeTimeSum = 0
  for (let i = 0; i < count; i += 1) {
    const timeS = i * stepS
    while (nextEvent < history.length - 1) {
      const atS = (history[nextEvent]!.timeMin - startMin) * 60
      const ageS = timeS - atS
      if (ageS < quietS) break
      const from = history[nextEvent]!
      const to = history[nextEvent + 1]!
      const slope = (to.temperatureC - from.temperatureC) / ((to.timeMin - from.timeMin) * 60)
      const jump = nextEvent === 0 ? from.temperatureC - initialC : 0
      const change = slope - slopeBefore
      for (let m = 0; m < modesCount; m += 1) {
        const rate = alpha * rates[m]!
        const left = Math.exp(-rate * ageS)
        if (left < 1e-13) break
        state[m] = state[m]! + weights[m]! * (change / rate - jump) * left
        if (m >= activeCount) activeCount = m + 1
      }
      baseC += jump
      slopeSum += change
      slopeTimeSum += change * (atS + lagS)
      slopeBefore = slope
      nextEvent += 1
    }
    // Four sums at a time: one alone would wait for each addition. Places past the last mode hold zeros.
    let a = 0
    let b = 0
    let c = 0
    let d = 0
    for (let m = 0; m < activeCount; m += 4) {
      const sa = state[m]!
      const sb = state[m + 1]!
      const sc = state[m + 2]!
      const sd = state[m + 3]!
      a += sa
      b += sb
      c += sc
      d += sd
      state[m] = sa * decay[m]!
      state[m + 1] = sb * decay[m + 1]!
      state[m + 2] = sc * decay[m + 2]!
      state[m + 3] = sd * decay[m + 3]!
    }
    const modesC = a + c + (b + d)
    // The fastest modes die first.
    while (activeCount > 0 && Math.abs(state[activeCount - 1]!) < 1e-11) {
      activeCount -= 1
      state[activeCount] = 0
    }
    temperaturesC[i] = baseC + slopeSum * timeS - slopeTimeSum + modesC
  }
  return temperaturesC
}

function requireCylinder({ radiusM, halfHeightM, diffusivityM2PerS }: ConductingCylinder): void {
  requireInRange('radiusM', radiusM, LENGTH_M)
  requireInRange('halfHeightM', halfHeightM, LENGTH_M)
  requireInRange('diffusivityM2PerS', diffusivityM2PerS, DIFFUSIVITY)
}

/** b, zeros of J0, and c, odd multiples of pi/2: `count` of each. */
function bases(count: number): { readonly b: readonly number[]; readonly c: readonly number[] } {
  return { b: zerosOfJ0(count), c: Array.from({ length: count }, (_, k) => (k + 0.5) * Math.PI) }
}
