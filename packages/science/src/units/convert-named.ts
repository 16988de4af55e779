/**
 * Conversions by name, where a formula reads better with them than with `convert`.
 * Gauge and absolute pressure meet only here, with the local atmosphere stated.
 */
import { convert } from './unit.ts'

/** Temperature. [°C]  250 °F is 121.111 °C. */
export function fToC(temperatureF: number): number {
  return (temperatureF - 32) / 1.8
}

/** Temperature. [°F]  100 °C is 212 °F. */
export function cToF(temperatureC: number): number {
  return temperatureC * 1.8 + 32
}

/** Length. [m]  1 ft is 0.3048 m exactly. */
export function ftToM(lengthFt: number): number {
  return convert(lengthFt, 'Ft', 'M')
}

/** Length. [ft] */
export function mToFt(lengthM: number): number {
  return convert(lengthM, 'M', 'Ft')
}

/** Absolute pressure behind a gauge reading, at the local atmosphere. [kPa absolute]  11 psi at sea level is 177.17 kPa. */
export function psiGaugeToKPaAbs(pressurePsiGauge: number, atmosphereKPaAbs: number): number {
  return convert(pressurePsiGauge, 'PsiGauge', 'KPaGauge') + atmosphereKPaAbs
}

/** Gauge reading that an absolute pressure gives, at the local atmosphere. [psi gauge] */
export function kPaAbsToPsiGauge(pressureKPaAbs: number, atmosphereKPaAbs: number): number {
  return convert(pressureKPaAbs - atmosphereKPaAbs, 'KPaGauge', 'PsiGauge')
}
