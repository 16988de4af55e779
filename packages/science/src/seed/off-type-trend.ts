/**
 * Whether off-types grow more or fewer over the years: a straight line through the log odds, each count by its size.
 * Firth's penalty keeps the line finite where some years saw none. Leaves out: why they are there.
 */
import { requireInRange, ValidRangeError } from '../errors.ts'
import { requireWhole } from '../statistics/binomial.ts'
import { normalQuantile } from '../statistics/normal.ts'

export interface OffTypeCount {
  /** [year CE] */
  readonly year: number
  /** [count] Valid: whole, 0 to `ofCount`. */
  readonly offTypesCount: number
  /** Plants, ears or kernels looked at. [count] Valid: whole, 1 to 1 000 000. */
  readonly ofCount: number
}

export interface OffTypeTrend {
  /** Factor on the odds from one year to the next; above 1 they grow. */
  readonly oddsRatioPerYear: number
  readonly low: number
  readonly high: number
  /** Share on the fitted line in the first and last year counted. [fraction] */
  readonly firstYearFraction: number
  readonly lastYearFraction: number
}

/**
 * Trend of off-types over years, with its range. [ratio of odds a year]
 *
 * @param counts Valid: at least two different years, 2 to 200 rows.
 * @param confidenceFraction of the range (Wald). [fraction] Valid: 0.5 to 0.9999.
 * @throws {ValidRangeError} outside those ranges; {RangeError} when the line does not settle.
 * @source firth-1993
 */
export function offTypeTrend(counts: readonly OffTypeCount[], confidenceFraction = 0.95): OffTypeTrend {
  requireInRange('rowsCount', counts.length, { min: 2, max: 200, unit: 'counts', source: 'project-rule' })
  requireInRange('confidenceFraction', confidenceFraction, {
    min: 0.5,
    max: 0.9999,
    unit: 'fraction',
    source: 'firth-1993',
  })
  for (const { year, offTypesCount, ofCount } of counts) {
    requireWhole('year', year, 1800, 2300)
    requireWhole('ofCount', ofCount, 1, 1_000_000)
    requireWhole('offTypesCount', offTypesCount, 0, ofCount)
  }
  const years = counts.map(({ year }) => year)
  const first = Math.min(...years)
  const last = Math.max(...years)
  if (first === last) {
    throw new ValidRangeError('yearsCount', 1, { min: 2, max: 200, unit: 'different years', source: 'project-rule' })
  }
  const middle = (first + last) / 2
  const { slope, slopeSe, intercept } = firthLine(counts.map((one) => ({ ...one, x: one.year - middle })))
  const half = normalQuantile(1 - (1 - confidenceFraction) / 2) * slopeSe
  const share = (year: number) => 1 / (1 + Math.exp(-(intercept + slope * (year - middle))))
  return {
    oddsRatioPerYear: Math.exp(slope),
    low: Math.exp(slope - half),
    high: Math.exp(slope + half),
    firstYearFraction: share(first),
    lastYearFraction: share(last),
  }
}

/** Newton steps on the penalised score, halved while they would lose likelihood. */
function firthLine(rows: readonly (OffTypeCount & { readonly x: number })[]) {
  const informationAt = (intercept: number, slope: number) => {
    let i00 = 0
    let i01 = 0
    let i11 = 0
    const fitted = rows.map(({ x, ofCount, offTypesCount }) => {
      const p = 1 / (1 + Math.exp(-(intercept + slope * x)))
      const weight = ofCount * p * (1 - p)
      i00 += weight
      i01 += weight * x
      i11 += weight * x * x
      return { x, p, weight, ofCount, offTypesCount }
    })
    return { fitted, i00, i01, i11, determinant: i00 * i11 - i01 * i01 }
  }
  const likelihood = (intercept: number, slope: number): number => {
    const { fitted, determinant } = informationAt(intercept, slope)
    return fitted.reduce(
      (sum, { p, ofCount, offTypesCount }) =>
        sum + offTypesCount * Math.log(p) + (ofCount - offTypesCount) * Math.log1p(-p),
      0.5 * Math.log(determinant),
    )
  }
  let intercept = startOdds(rows)
  let slope = 0
  for (let step = 0; step < 200; step++) {
    const { fitted, i00, i01, i11, determinant } = informationAt(intercept, slope)
    let u0 = 0
    let u1 = 0
    for (const { x, p, weight, ofCount, offTypesCount } of fitted) {
      const leverage = (weight * (i11 - 2 * i01 * x + i00 * x * x)) / determinant
      const score = offTypesCount - ofCount * p + leverage * (0.5 - p)
      u0 += score
      u1 += score * x
    }
    let d0 = (i11 * u0 - i01 * u1) / determinant
    let d1 = (i00 * u1 - i01 * u0) / determinant
    const before = likelihood(intercept, slope)
    for (let halved = 0; halved < 40 && !(likelihood(intercept + d0, slope + d1) >= before); halved++) {
      d0 /= 2
      d1 /= 2
    }
    intercept += d0
    slope += d1
    if (Math.abs(d0) + Math.abs(d1) < 1e-12) return { intercept, slope, slopeSe: Math.sqrt(i00 / determinant) }
  }
  throw new RangeError('the line through the off-types did not settle in 200 steps')
}

function startOdds(rows: readonly OffTypeCount[]): number {
  const off = rows.reduce((sum, { offTypesCount }) => sum + offTypesCount, 0.5)
  const all = rows.reduce((sum, { ofCount }) => sum + ofCount, 1)
  return Math.log(off / (all - off))
}
