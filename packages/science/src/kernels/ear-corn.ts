/** Shelled corn in a weight of ear corn, by the moisture of the kernels. Leaves out husks, tips and shelling loss. */
import { interpolateLine, type LineNames } from '../numeric/interpolate.ts'
import { requireAmount } from './bulk.ts'

/** Pounds that hold one bushel of No. 2 shelled corn, 47.32 lb of dry matter, by kernel moisture (agf-502-2018). */
const EAR_CORN_TABLE = [
  { kernelWetPercent: 10, earLb: 63.49 },
  { kernelWetPercent: 12, earLb: 65.06 },
  { kernelWetPercent: 13, earLb: 65.95 },
  { kernelWetPercent: 14, earLb: 66.89 },
  { kernelWetPercent: 14.5, earLb: 67.39 },
  { kernelWetPercent: 15, earLb: 67.89 },
  { kernelWetPercent: 15.5, earLb: 68.4 },
  { kernelWetPercent: 16.5, earLb: 69.51 },
  { kernelWetPercent: 23.5, earLb: 79.01 },
  { kernelWetPercent: 25, earLb: 81.25 },
  { kernelWetPercent: 26, earLb: 82.82 },
  { kernelWetPercent: 28, earLb: 85.62 },
] as const

const BUSHEL_DRY_MATTER_LB = 47.32 // 56 lb at 15.5 % moisture
const LINE: LineNames = { argument: 'kernelWetFraction', unit: 'of kernel weight', source: 'agf-502-2018' }
const POINTS = EAR_CORN_TABLE.map(({ kernelWetPercent, earLb }) => ({ x: kernelWetPercent / 100, y: earLb }))

/** 56 lb of shelled corn from 70 lb of ears: the trade's round figure. [fraction]  Common practice, no source. */
export const SHELLED_PER_EAR_CORN_TRADE_FRACTION = 56 / 70

/**
 * Share of a weight of ear corn that is kernels. [fraction]
 *
 * At 15.5 % kernel moisture 56.00 lb from 68.40 lb of ears: 0.8187. Drawn straight between rows, never past them.
 *
 * @param kernelWetFraction moisture of the kernels, wet basis. [fraction] Valid: 0.10 to 0.28.
 * @throws {ValidRangeError} outside that range.
 * @source agf-502-2018
 */
export function shelledPerEarCornFraction(kernelWetFraction: number): number {
  const earLb = interpolateLine(POINTS, kernelWetFraction, LINE)
  return bushelOfDryMatterLb(kernelWetFraction) / earLb
}

/**
 * Weight of shelled corn in a weight of ears, both at the moisture they have. [kg]
 *
 * @param earCornKg husked ears. [kg] Valid: 0 to 1e6.
 * @param kernelWetFraction moisture of the kernels, wet basis. [fraction] Valid: 0.10 to 0.28.
 * @throws {ValidRangeError} outside those ranges.
 * @source agf-502-2018
 */
export function shelledFromEarCornKg(earCornKg: number, kernelWetFraction: number): number {
  requireAmount('earCornKg', earCornKg, 'kg')
  return earCornKg * shelledPerEarCornFraction(kernelWetFraction)
}

/**
 * Weight of shelled corn that carries the dry matter of one standard bushel. [lb]
 *
 * @param kernelWetFraction moisture, wet basis. [fraction] Valid: 0 to below 1.
 * @source wisconsin-l033-2015: 56 lb at 15.5 % is 47.32 lb of dry matter
 */
export function bushelOfDryMatterLb(kernelWetFraction: number): number {
  return BUSHEL_DRY_MATTER_LB / (1 - kernelWetFraction)
}
