/**
 * How much longer a cook at the boil takes where water boils cooler. A range: no figure for whole corn is known.
 * For cooking in an open pot only; never for a canning process.
 */

import { requireInRange } from '../errors.ts'
import { boilingTemperatureC } from '../steam/canner-steam.ts'

/** Temperature rise that cuts a cook tenfold. [°C]  Beans 16 to 19 (quast-silva-1977); 25 a hedge for corn, no source. */
export const SOFTENING_Z_C = { beans: 19, corn: 25 } as const

/**
 * Minutes at that elevation for one minute at sea level. [1]
 *
 * 5,000 ft: 1.59 with z 25, 1.85 with z 19.
 *
 * @param elevationM [m] Valid: -100 to 3100.
 * @param zC [°C] Valid: 10 to 40.
 * @throws {ValidRangeError} outside those ranges.
 * @source quast-silva-1977; boiling by iapws-r7-97
 */
export function cookTimeFactor(elevationM: number, zC: number): number {
  requireInRange('elevationM', elevationM, { min: -100, max: 3100, unit: 'm', source: 'project-rule' })
  requireInRange('zC', zC, { min: 10, max: 40, unit: '°C', source: 'quast-silva-1977' })
  return 10 ** ((boilingTemperatureC(0) - boilingTemperatureC(elevationM)) / zC)
}
