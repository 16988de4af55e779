/**
 * Yield of a standing crop by counting ears, and of a crop brought in by weighing a part of it. Moisture is on the wet
 * basis. A bushel here is the trade's 56 lb at 15.5 %. Leaves out loss at harvest.
 */
import { requireInRange } from '../errors.ts'
import { shelledPerEarCornFraction } from '../kernels/ear-corn.ts'
import { massAtMoistureKg } from '../kernels/moisture.ts'
import { convert } from '../units/unit.ts'

/** Moisture at which the trade counts a bushel. [fraction, wet basis]  wisconsin-l033-2015 */
export const MARKET_WET_FRACTION = 0.155
const ACRE_FT2 = 43_560 // exact
const BUSHEL_G = convert(56, 'Lb', 'G')

export interface EarCount {
  /** Ears in a thousandth of an acre. [count] Valid: 0 to 200. */
  readonly earsPerThousandthAcre: number
  /** Rows of kernels round an ear, mean. [count] Valid: 4 to 40. */
  readonly kernelRows: number
  /** Kernels along one row, mean, without the tip. [count] Valid: 1 to 80. */
  readonly kernelsPerRow: number
  /** D: thousand kernels in a bushel, 90 usually; from own kernel weight for flint. [thousand] Valid: 40 to 200. */
  readonly thousandKernelsPerBushel: number
}

/**
 * Yield by the yield component method. [bu/acre]
 *
 * ears x rows x kernels / D. 35 ears, 16 rows, 36 kernels, D 90: 224. Expect it to be off by 10 to 20 % or more.
 *
 * @throws {ValidRangeError} outside the ranges named at EarCount.
 * @source purdue-yield-component
 */
export function yieldByEarsBuPerAcre(count: EarCount): number {
  const { earsPerThousandthAcre, kernelRows, kernelsPerRow, thousandKernelsPerBushel } = count
  requireCount('earsPerThousandthAcre', earsPerThousandthAcre, 0, 200)
  requireCount('kernelRows', kernelRows, 4, 40)
  requireCount('kernelsPerRow', kernelsPerRow, 1, 80)
  requireCount('thousandKernelsPerBushel', thousandKernelsPerBushel, 40, 200)
  return (earsPerThousandthAcre * kernelRows * kernelsPerRow) / thousandKernelsPerBushel
}

/**
 * Thousand kernels in a bushel of 56 lb, from the weight of a thousand. [thousand]  254.0 g: 100.
 *
 * @param gPerThousand [g] Valid: 100 to 600.
 * @throws {ValidRangeError} outside that range.
 * @source wisconsin-l033-2015: 56 lb to the bushel
 */
export function thousandKernelsPerBushel(gPerThousand: number): number {
  requireInRange('gPerThousand', gPerThousand, { min: 100, max: 600, unit: 'g', source: 'project-rule' })
  return BUSHEL_G / gPerThousand
}

/**
 * Length of row that is a thousandth of an acre. [ft]  At 36 in between rows 14.52, 14 ft 6 in.
 *
 * @param rowSpacingFt [ft] Valid: 0.5 to 20.
 * @throws {ValidRangeError} outside that range.
 * @source purdue-yield-component: 43.56 over the row width
 */
export function thousandthAcreRowFt(rowSpacingFt: number): number {
  requireInRange('rowSpacingFt', rowSpacingFt, { min: 0.5, max: 20, unit: 'ft', source: 'project-rule' })
  return ACRE_FT2 / 1000 / rowSpacingFt
}

export interface WeighUp {
  /** Husked ears of the part weighed. [kg] Valid: 0 to 1e6. */
  readonly earCornKg: number
  /** Of their kernels, wet basis. [fraction] Valid: 0.10 to 0.28. */
  readonly kernelWetFraction: number
  /** Ground the part stood on. [m2] Valid: 0.1 to 1e7. */
  readonly areaM2: number
}

/**
 * Shelled corn at 15.5 % from a part harvested and weighed. [kg/m2]
 *
 * 68.40 lb of ears at 15.5 % from a thousandth of an acre are 56 lb: 1000 bu/acre, 6.277 kg/m2.
 *
 * @throws {ValidRangeError} outside the ranges named at WeighUp.
 * @source agf-502-2018 for ears to shelled
 */
export function yieldByWeightKgPerM2({ earCornKg, kernelWetFraction, areaM2 }: WeighUp): number {
  requireInRange('earCornKg', earCornKg, { min: 0, max: 1e6, unit: 'kg', source: 'project-rule' })
  requireInRange('areaM2', areaM2, { min: 0.1, max: 1e7, unit: 'm2', source: 'project-rule' })
  const shelledKg = earCornKg * shelledPerEarCornFraction(kernelWetFraction)
  return (
    massAtMoistureKg(shelledKg, { fromWetFraction: kernelWetFraction, toWetFraction: MARKET_WET_FRACTION }) / areaM2
  )
}

function requireCount(argument: string, value: number, min: number, max: number): void {
  requireInRange(argument, value, { min, max, unit: 'count', source: 'purdue-yield-component' })
}
