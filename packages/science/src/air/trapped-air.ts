/**
 * Air left in a canner: it shares the pressure with the steam, so the needle stands right and the heat does not (Dalton).
 * Leaves out air trapped inside the food, and steam and air that lie in layers.
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { saturationTemperatureC } from '../steam/saturation.ts'

const AIR_MOLE_FRACTION: ValidRange = { min: 0, max: 0.999, unit: 'of all gas', source: 'project-rule' }
const AIR_LEFT_FRACTION: ValidRange = {
  min: 0,
  max: 1,
  unit: 'of the first air',
  source: 'autoclave-handbook-air-table',
}

/**
 * Pressure of the steam alone in a mixture of steam and air. [kPa absolute]
 *
 * Law of partial pressures: p_steam = (1 - y) p.
 *
 * @param totalKPaAbs p, gauge reading plus local atmosphere. [kPa absolute] Above 0.
 * @param airMoleFraction y, share of air among all gas molecules. [fraction] Valid: 0 to 0.999.
 * @throws {ValidRangeError} outside those ranges.
 * @source dalton-1802
 */
export function steamPartialPressureKPaAbs(totalKPaAbs: number, airMoleFraction: number): number {
  requireInRange('totalKPaAbs', totalKPaAbs, { min: 0, max: 22_064, unit: 'kPa absolute', source: 'iapws-r7-97' })
  requireInRange('airMoleFraction', airMoleFraction, AIR_MOLE_FRACTION)
  return totalKPaAbs * (1 - airMoleFraction)
}

export interface AirLeft {
  /** [kPa gauge] */
  readonly pressureKPaGauge: number
  /** [kPa absolute] */
  readonly atmosphereKPaAbs: number
  /** Share of the air that stood in the closed canner when cold and is still in it, 0 to 1. [fraction] */
  readonly airLeftFraction: number
}

/**
 * Temperature of steam that shares a closed vessel with part of its first air. [°C]
 *
 * The steriliser rule: the air left keeps the pressure it had, p_steam = p_gauge + p_atm - f p_atm. 15 psi with all its
 * air is no hotter than an open pot. The rule ignores that the air itself warms, which makes matters a little worse.
 *
 * @throws {ValidRangeError} when the share is not 0 to 1, or the steam left is off the saturation line.
 * @source autoclave-handbook-air-table
 */
export function airLeftTemperatureC({ pressureKPaGauge, atmosphereKPaAbs, airLeftFraction }: AirLeft): number {
  requireInRange('airLeftFraction', airLeftFraction, AIR_LEFT_FRACTION)
  return saturationTemperatureC(pressureKPaGauge + atmosphereKPaAbs * (1 - airLeftFraction))
}
