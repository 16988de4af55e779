/**
 * Pressure of the standard atmosphere by elevation, and back. Troposphere only.
 * Leaves out weather, which moves the local pressure by about 2 % (0.3 psi) either way.
 */
import { requireInRange, type ValidRange } from '../errors.ts'

const P0_PA = 101_325 // sea level, exact
const T0_K = 288.15 // sea level, exact
const L_K_PER_M = 0.0065 // lapse rate to 11 km, exact
const G0_M_PER_S2 = 9.80665 // exact
const M_KG_PER_MOL = 0.0289644 // mean molar mass of dry air, table value
const R_J_PER_MOL_K = 8.31432 // the 1976 value; later constants differ in the fifth digit

/** g0 M / (R* L) = 5.25588 */
const EXPONENT = (G0_M_PER_S2 * M_KG_PER_MOL) / (R_J_PER_MOL_K * L_K_PER_M)

const SOURCE = 'us-standard-atmosphere-1976'
export const STANDARD_ATMOSPHERE_ELEVATION_M: ValidRange = { min: -5000, max: 11_000, unit: 'm', source: SOURCE }

const pressureKPaAbs = (H: number) => (P0_PA / 1000) * (1 - (L_K_PER_M * H) / T0_K) ** EXPONENT // eq. 33a

/**
 * Atmospheric pressure at an elevation in the standard atmosphere. [kPa absolute]
 *
 * 1000 m gives 89.8746 kPa. The elevation is taken as geopotential height H; below 3 km taking a surveyed (geometric)
 * height for it changes the pressure by less than 20 Pa.
 *
 * @param elevationM H, above mean sea level. [m] Valid: -5000 to 11 000.
 * @throws {ValidRangeError} outside that range.
 * @source us-standard-atmosphere-1976 eq. 33a
 */
export function standardPressureKPaAbs(elevationM: number): number {
  requireInRange('elevationM', elevationM, STANDARD_ATMOSPHERE_ELEVATION_M)
  return pressureKPaAbs(elevationM)
}

/**
 * Elevation at which the standard atmosphere has a pressure. [m, geopotential]
 *
 * @param atmosphereKPaAbs p. [kPa] Valid: the pressures of 11 000 m down to -5000 m, 22.632 to 177.69 kPa.
 * @throws {ValidRangeError} outside that range.
 * @source us-standard-atmosphere-1976 eq. 33a, solved for H
 */
export function standardElevationM(atmosphereKPaAbs: number): number {
  const { min, max } = STANDARD_ATMOSPHERE_ELEVATION_M
  requireInRange('atmosphereKPaAbs', atmosphereKPaAbs, {
    min: pressureKPaAbs(max),
    max: pressureKPaAbs(min),
    unit: 'kPa',
    source: SOURCE,
  })
  return (T0_K / L_K_PER_M) * (1 - (atmosphereKPaAbs / (P0_PA / 1000)) ** (1 / EXPONENT))
}
