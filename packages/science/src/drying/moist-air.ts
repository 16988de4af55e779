/**
 * Moist air as a mixture of perfect gases: vapour pressure, humidity ratio, wet bulb, dew point, enthalpy, volume.
 * Leaves out: the small departure of real air from perfect gases (under 1 % of the humidity ratio) and fog.
 */
import { requireInRange, ValidRangeError } from '../errors.ts'

export interface MoistAir {
  /** Dry bulb. [°C] Valid: -40 to 100. */
  readonly temperatureC: number
  /** Relative humidity over water above 0.01 °C, over ice below. [fraction] Valid: 0.001 to 1. */
  readonly humidityFraction: number
  /** Barometer. [kPa] Valid: 50 to 110. */
  readonly pressureKPaAbs: number
}

const SOURCE = 'ashrae-fundamentals-2017-ch1'
const ZERO_C_K = 273.15
const TRIPLE_POINT_C = 0.01
/** Water to dry air, by molar mass. */
const MASS_RATIO = 0.621945
const MIN_C = -40
const MAX_C = 100
// Hyland-Wexler, T in K, pws in Pa: ln pws = c0/T + c1 + c2 T + c3 T^2 + c4 T^3 + c5 T^4 + c6 ln T
const OVER_ICE = [-5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019] as const
const OVER_WATER = [-5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 0, 6.5459673] as const

/**
 * Vapour pressure of saturated air, over ice below the triple point and over water above it. [kPa]
 *
 * Hyland and Wexler. 25 °C: 3.1697 kPa. (The handbook changes over at 0 °C; both agree there to 0.03 %.)
 *
 * @throws {ValidRangeError} outside -40 to 100 °C.
 * @source ashrae-fundamentals-2017-ch1 eq. 5 and 6
 */
export function saturationVapourKPa(temperatureC: number): number {
  requireTemperature('temperatureC', temperatureC)
  const T = temperatureC + ZERO_C_K
  const c = temperatureC <= TRIPLE_POINT_C ? OVER_ICE : OVER_WATER
  return (
    Math.exp(c[0] / T + c[1] + c[2] * T + c[3] * T ** 2 + c[4] * T ** 3 + c[5] * T ** 4 + c[6] * Math.log(T)) / 1000
  )
}

/** Water carried by dry air. [kg/kg dry air]  20 °C, 50 %, 101.325 kPa: 0.00726.
 *  @throws {ValidRangeError} outside the ranges of MoistAir.  @source ashrae-fundamentals-2017-ch1 eq. 20 */
export function humidityRatio({ temperatureC, humidityFraction, pressureKPaAbs }: MoistAir): number {
  requireAir(temperatureC, humidityFraction, pressureKPaAbs)
  return ratioOf(humidityFraction * saturationVapourKPa(temperatureC), pressureKPaAbs)
}

/**
 * Relative humidity of air that carries `ratio`: what heating outdoor air makes of it. [fraction]
 *
 * Air of 10 °C and 70 % heated to 35 °C: 0.153. Above 1 the air cannot carry so much, and says so.
 *
 * @throws {ValidRangeError} outside the ranges of MoistAir, or where more water is carried than saturation allows.
 * @source ashrae-fundamentals-2017-ch1 eq. 20, solved for the vapour pressure
 */
export function humidityOfRatio(
  ratio: number,
  { temperatureC, pressureKPaAbs }: Omit<MoistAir, 'humidityFraction'>,
): number {
  const vapourKPa = (ratio * pressureKPaAbs) / (MASS_RATIO + ratio)
  const humidity = vapourKPa / saturationVapourKPa(temperatureC)
  // Saturated air comes back as 1 and not as 1 and some binary dust.
  const humidityFraction = humidity > 1 && humidity < 1 + 1e-9 ? 1 : humidity
  requireAir(temperatureC, humidityFraction, pressureKPaAbs)
  return humidityFraction
}

/** Temperature at which this air is just saturated. [°C]  20 °C, 50 %: 9.27 °C.
 *  @throws {ValidRangeError} outside the ranges of MoistAir, or below -40 °C.  @source ashrae-fundamentals-2017-ch1 eq. 5 and 6, solved */
export function dewPointC({ temperatureC, humidityFraction, pressureKPaAbs }: MoistAir): number {
  requireAir(temperatureC, humidityFraction, pressureKPaAbs)
  const wanted = humidityFraction * saturationVapourKPa(temperatureC)
  return searchC((tC) => Math.log(saturationVapourKPa(tC) / wanted), 'dewPointC', temperatureC)
}

/** Temperature a wetted thermometer comes to. [°C]  20 °C, 50 %, 101.325 kPa: 13.78 °C.
 *  @throws {ValidRangeError} outside the ranges of MoistAir.  @source ashrae-fundamentals-2017-ch1 eq. 33 and 35 */
export function wetBulbC(air: MoistAir): number {
  const W = humidityRatio(air)
  return searchC((tC) => ratioAtWetBulb(tC, air) - W, 'wetBulbC', air.temperatureC)
}

/**
 * Relative humidity from a dry and a wet bulb. [fraction]  40 °C and 20 °C at 101.325 kPa: 0.14.
 *
 * @throws {ValidRangeError} outside the ranges of MoistAir; where the wet bulb stands above the dry one.
 * @source ashrae-fundamentals-2017-ch1 eq. 33 and 35, example 1
 */
export function humidityFromWetBulb(
  wetC: number,
  { temperatureC, pressureKPaAbs }: Omit<MoistAir, 'humidityFraction'>,
): number {
  requireInRange('wetBulbC', wetC, { min: MIN_C, max: temperatureC, unit: '°C', source: SOURCE })
  const ratio = ratioAtWetBulb(wetC, { temperatureC, pressureKPaAbs })
  return humidityOfRatio(ratio, { temperatureC, pressureKPaAbs })
}

/** Heat in the air and its vapour, counted from dry air and water at 0 °C. [kJ/kg dry air]  20 °C, 50 %: 38.55.
 *  @throws {ValidRangeError} outside the ranges of MoistAir.  @source ashrae-fundamentals-2017-ch1 eq. 30 */
export function moistAirEnthalpyKJPerKg(air: MoistAir): number {
  return 1.006 * air.temperatureC + humidityRatio(air) * (2501 + 1.86 * air.temperatureC)
}

/** Room one kilogram of dry air takes with its vapour. [m3/kg dry air]  20 °C, 50 %: 0.8402.
 *  @throws {ValidRangeError} outside the ranges of MoistAir.  @source ashrae-fundamentals-2017-ch1 eq. 26 */
export function moistAirVolumeM3PerKg(air: MoistAir): number {
  return (0.287042 * (air.temperatureC + ZERO_C_K) * (1 + 1.607858 * humidityRatio(air))) / air.pressureKPaAbs
}

function ratioOf(vapourKPa: number, pressureKPaAbs: number): number {
  return (MASS_RATIO * vapourKPa) / (pressureKPaAbs - vapourKPa)
}

/** Eq. 33 above freezing, eq. 35 below. */
function ratioAtWetBulb(tw: number, { temperatureC: t, pressureKPaAbs }: Omit<MoistAir, 'humidityFraction'>): number {
  const Ws = ratioOf(saturationVapourKPa(tw), pressureKPaAbs)
  if (tw >= 0) return ((2501 - 2.326 * tw) * Ws - 1.006 * (t - tw)) / (2501 + 1.86 * t - 4.186 * tw)
  return ((2830 - 0.24 * tw) * Ws - 1.006 * (t - tw)) / (2830 + 1.86 * t - 2.1 * tw)
}

/** Where a rising `f` crosses zero at or below the dry bulb, by halving: 60 halvings narrow 140 °C to 1e-16. */
function searchC(f: (tC: number) => number, argument: string, dryBulbC: number): number {
  // Saturated air: the answer is the dry bulb itself, but for binary dust.
  if (f(dryBulbC) <= 1e-12) return dryBulbC
  if (f(MIN_C) > 0) throw new ValidRangeError(argument, MIN_C, { min: MIN_C, max: MAX_C, unit: '°C', source: SOURCE })
  let low = MIN_C
  let high = dryBulbC
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (f(middle) < 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function requireTemperature(argument: string, temperatureC: number): void {
  requireInRange(argument, temperatureC, { min: MIN_C, max: MAX_C, unit: '°C', source: SOURCE })
}

function requireAir(temperatureC: number, humidityFraction: number, pressureKPaAbs: number): void {
  requireTemperature('temperatureC', temperatureC)
  requireInRange('humidityFraction', humidityFraction, { min: 0.001, max: 1, unit: 'humidity', source: SOURCE })
  requireInRange('pressureKPaAbs', pressureKPaAbs, { min: 50, max: 110, unit: 'kPa', source: SOURCE })
}
