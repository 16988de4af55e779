/**
 * The saturation line of water: temperature and pressure of steam standing over boiling water.
 * `saturation...` is IF97 region 4 and is what the project uses; rivals carry author and year in their names.
 */
import { requireInRange, type ValidRange } from '../errors.ts'

const KELVIN_OFFSET = 273.15 // exact

/** Table 34 of the release; n[0] is unused, so that indices match. */
const n = [
  0, 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const

export const SATURATION_PRESSURE_KPA_ABS: ValidRange = {
  min: 0.611213,
  max: 22_064,
  unit: 'kPa absolute',
  source: 'iapws-r7-97',
}
export const SATURATION_TEMPERATURE_C: ValidRange = { min: 0, max: 373.946, unit: '°C', source: 'iapws-r7-97' }

/**
 * Temperature of saturated steam at an absolute pressure. [°C]
 *
 * IF97 region 4 backward equation T_s(p). 101.325 kPa gives 99.974 °C on the present temperature scale, not 100.
 *
 * @param pressureKPaAbs p, absolute pressure: gauge reading plus local atmosphere. [kPa]
 *   Valid: 0.611213 to 22 064 kPa, 0 °C to the critical point.
 * @throws {ValidRangeError} outside that range. We do not extrapolate and do not clamp.
 * @source iapws-r7-97 eq. 31; check values in table 36.
 */
export function saturationTemperatureC(pressureKPaAbs: number): number {
  requireInRange('pressureKPaAbs', pressureKPaAbs, SATURATION_PRESSURE_KPA_ABS)

  const beta = (pressureKPaAbs / 1000) ** 0.25 // eq. 29a, p* = 1 MPa
  const E = beta ** 2 + n[3] * beta + n[6]
  const F = n[1] * beta ** 2 + n[4] * beta + n[7]
  const G = n[2] * beta ** 2 + n[5] * beta + n[8]
  const D = (2 * G) / (-F - Math.sqrt(F ** 2 - 4 * E * G))
  const T = (n[10] + D - Math.sqrt((n[10] + D) ** 2 - 4 * (n[9] + n[10] * D))) / 2 // [K]
  return T - KELVIN_OFFSET
}

/**
 * Absolute pressure of saturated steam at a temperature. [kPa absolute]
 *
 * IF97 region 4 basic equation p_s(T). 100 °C gives 101.418 kPa.
 *
 * @param temperatureC [°C] Valid: 0 to 373.946, the critical point.
 * @throws {ValidRangeError} outside that range.
 * @source iapws-r7-97 eq. 30; check values in table 35.
 */
export function saturationPressureKPaAbs(temperatureC: number): number {
  requireInRange('temperatureC', temperatureC, SATURATION_TEMPERATURE_C)

  const T = temperatureC + KELVIN_OFFSET
  const theta = T + n[9] / (T - n[10]) // eq. 29b, T* = 1 K
  const A = theta ** 2 + n[1] * theta + n[2]
  const B = n[3] * theta ** 2 + n[4] * theta + n[5]
  const C = n[6] * theta ** 2 + n[7] * theta + n[8]
  const pMPa = ((2 * C) / (-B + Math.sqrt(B ** 2 - 4 * A * C))) ** 4
  return pMPa * 1000
}

const T_CRITICAL_K = 647.096
const P_CRITICAL_KPA = 22_064
const a = [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502] as const

/**
 * Absolute pressure of saturated steam by the Wagner and Pruss equation, a rival to `saturationPressureKPaAbs`. [kPa absolute]
 *
 * Agrees with IF97 within 4e-5 (relative) from 74 to 121 °C and 1e-4 from 0 °C; kept to show that two independent fits agree.
 *
 * @param temperatureC [°C] Valid: 0 to 373.946.
 * @throws {ValidRangeError} outside that range.
 * @source iapws-sr1-86 eq. 1
 */
export function saturationPressureWagnerPruss1992KPaAbs(temperatureC: number): number {
  requireInRange('temperatureC', temperatureC, { ...SATURATION_TEMPERATURE_C, source: 'iapws-sr1-86' })

  const T = temperatureC + KELVIN_OFFSET
  const v = 1 - T / T_CRITICAL_K
  const series = a[0] * v + a[1] * v ** 1.5 + a[2] * v ** 3 + a[3] * v ** 3.5 + a[4] * v ** 4 + a[5] * v ** 7.5
  return P_CRITICAL_KPA * Math.exp((T_CRITICAL_K / T) * series)
}
