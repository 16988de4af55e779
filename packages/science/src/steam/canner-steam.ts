/**
 * Temperature of the steam in a canner and of water boiling in an open pot, in the standard atmosphere.
 * Pure physics: it explains why pressures rise with elevation and never sets or changes a published process.
 */
import { steamPartialPressureKPaAbs } from '../air/trapped-air.ts'
import { standardPressureKPaAbs } from '../atmosphere/standard-atmosphere.ts'
import { saturationPressureKPaAbs, saturationTemperatureC } from './saturation.ts'

export interface CannerSteam {
  /** True gauge pressure. [kPa gauge] */
  readonly pressureKPaGauge: number
  /** [m] Valid: -5000 to 11 000. */
  readonly elevationM: number
  /** Share of air among the molecules of gas in the canner, 0 (well vented) to below 1. [fraction] */
  readonly airMoleFraction?: number
}

/**
 * Temperature of the steam in a canner. [°C]
 *
 * 11 psi (75.84 kPa) at sea level, all air driven out: 116.42 °C (241.56 °F). Five percent air: 114.84 °C.
 *
 * @throws {ValidRangeError} when elevation, air or the resulting steam pressure is out of range.
 * @source iapws-r7-97 eq. 31, with us-standard-atmosphere-1976 and the law of partial pressures
 */
export function steamTemperatureC({ pressureKPaGauge, elevationM, airMoleFraction = 0 }: CannerSteam): number {
  const totalKPaAbs = pressureKPaGauge + standardPressureKPaAbs(elevationM)
  return saturationTemperatureC(steamPartialPressureKPaAbs(totalKPaAbs, airMoleFraction))
}

/**
 * Temperature at which water boils in an open pot. [°C]
 *
 * 5000 ft (1524 m): 94.90 °C (202.8 °F).
 *
 * @param elevationM [m] Valid: -5000 to 11 000.
 * @throws {ValidRangeError} outside that range.
 * @source iapws-r7-97 eq. 31, with us-standard-atmosphere-1976 eq. 33a
 */
export function boilingTemperatureC(elevationM: number): number {
  return saturationTemperatureC(standardPressureKPaAbs(elevationM))
}

/**
 * True gauge pressure at which airless steam has a temperature. [kPa gauge]
 *
 * 240 °F at sea level takes 70.94 kPa (10.289 psi). Not a pressure to can at: published bands rule.
 *
 * @param temperatureC [°C] Valid: 0 to 373.946.
 * @param elevationM [m] Valid: -5000 to 11 000.
 * @throws {ValidRangeError} outside those ranges.
 * @source iapws-r7-97 eq. 30, with us-standard-atmosphere-1976 eq. 33a
 */
export function steamPressureKPaGauge(temperatureC: number, elevationM: number): number {
  return saturationPressureKPaAbs(temperatureC) - standardPressureKPaAbs(elevationM)
}
