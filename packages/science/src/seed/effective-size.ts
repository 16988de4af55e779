/**
 * Whether a line stays broad: how many parents a planting really counts as, what that costs in variation, and what taking
 * seed unevenly does. Corn sheds and receives on one plant, so a sex ratio is not asked for. Leaves out: selection.
 */
import { requireInRange } from '../errors.ts'
import { requireWhole } from '../statistics/binomial.ts'

const SOURCE = 'crow-kimura-1970'
const requirePlants = (argument: string, value: number) =>
  requireInRange(argument, value, { min: 1, max: 1_000_000, unit: 'plants', source: SOURCE })

/**
 * Effective number of plants when families differ in size. [plants]  Ne = (4N - 2) / (V + 2).
 *
 * All alike from 200 plants, V of 1 on the pollen side only: 266.
 *
 * @param plantsCount N. [plants] Valid: 1 to 1 000 000.
 * @param varianceOfGametes V, of the gametes each plant passes on; their mean is 2. [gametes²] Valid: 0 to 1 000 000.
 * @throws {ValidRangeError} outside those ranges.
 * @source crow-kimura-1970
 */
export function effectiveSizeOfFamilies(plantsCount: number, varianceOfGametes: number): number {
  requirePlants('plantsCount', plantsCount)
  requireInRange('varianceOfGametes', varianceOfGametes, { min: 0, max: 1e6, unit: 'gametes squared', source: SOURCE })
  return (4 * plantsCount - 2) / (varianceOfGametes + 2)
}

/**
 * Variance of gametes passed on, from what each plant gave: kernels, or seedlings raised. [gametes²]
 *
 * The counts are scaled to the mean of one seed gamete a plant; pollen adds its own variance of about 1.
 *
 * @param kernelsPerPlant one count a plant, 0 for one that gave none. Valid: 2 to 20 000 plants, any above 0.
 * @throws {ValidRangeError} outside those ranges.
 * @source crow-kimura-1970; that pollen is shed at random is an assumption
 */
export function varianceOfGametes(kernelsPerPlant: readonly number[]): number {
  requireInRange('plantsCount', kernelsPerPlant.length, { min: 2, max: 20_000, unit: 'plants', source: 'project-rule' })
  const mean = kernelsPerPlant.reduce((sum, kernels) => sum + kernels, 0) / kernelsPerPlant.length
  requireInRange('meanKernels', mean, { min: 1e-9, max: 1e9, unit: 'kernels a plant', source: 'project-rule' })
  const seedVariance =
    kernelsPerPlant.reduce((sum, kernels) => sum + (kernels / mean - 1) ** 2, 0) / kernelsPerPlant.length
  return seedVariance + 1
}

/**
 * Effective number of plants when so many stood and shed pollen, and equal kernels came from so many ears. [plants]
 *
 * Ne = (4N - 2) / (N/Nf + 2). 200 plants, 50 ears: 133.
 *
 * @param plantsCount N. [plants] Valid: 1 to 1 000 000.
 * @param earsCount Nf, ears or effective ears. [ears] Valid: 1 to N.
 * @throws {ValidRangeError} outside those ranges.
 * @source crow-kimura-1970 with V = N/Nf: pollen at random (1), seed from Nf of N plants (N/Nf - 1)
 */
export function effectiveSizeOfEars(plantsCount: number, earsCount: number): number {
  requirePlants('plantsCount', plantsCount)
  requireInRange('earsCount', earsCount, {
    min: 1,
    max: plantsCount,
    unit: 'ears, one a plant',
    source: 'project-rule',
  })
  return effectiveSizeOfFamilies(plantsCount, plantsCount / earsCount)
}

/**
 * Ears that unequal shares amount to. [ears]  (Σc)²/Σc². 20 ears of 50 kernels and 80 of 10: 55.9.
 *
 * @param shares kernels of each ear, or ears by their count. Valid: at least one above 0, none below.
 * @throws {ValidRangeError} on a share below 0, or when all are 0.
 * @source crow-kimura-1970
 */
export function effectiveEarsCount(
  shares: readonly { readonly earsCount: number; readonly kernelsEach: number }[],
): number {
  let sum = 0
  let squares = 0
  for (const { earsCount, kernelsEach } of shares) {
    requireWhole('earsCount', earsCount, 0, 1_000_000)
    requireInRange('kernelsEach', kernelsEach, { min: 0, max: 1e6, unit: 'kernels', source: 'project-rule' })
    sum += earsCount * kernelsEach
    squares += earsCount * kernelsEach ** 2
  }
  requireInRange('kernelsCount', sum, { min: 1e-9, max: 1e12, unit: 'kernels', source: 'project-rule' })
  return sum ** 2 / squares
}

/**
 * One size that stands for sizes that changed over the years: their harmonic mean. [plants]
 *
 * 10, 100, 50, 80, 20, 500: 30.8. One thin year outweighs many good ones.
 *
 * @param sizes [plants] Valid: at least one, each 1 to 1 000 000.
 * @throws {ValidRangeError} outside those ranges.
 * @source crow-kimura-1970; worked example of mun-effective-size
 */
export function effectiveSizeOverYears(sizes: readonly number[]): number {
  requireInRange('yearsCount', sizes.length, { min: 1, max: 1000, unit: 'years', source: 'project-rule' })
  for (const size of sizes) requirePlants('effectiveSize', size)
  return sizes.length / sizes.reduce((sum, size) => sum + 1 / size, 0)
}

/**
 * Inbreeding gathered over generations of these effective sizes. [fraction]  1 - Π(1 - 1/(2Ne)). Ten at 50: 0.0956.
 *
 * @param sizes one for each generation. [plants] Valid: each 1 to 1 000 000; none is 0.
 * @throws {ValidRangeError} outside that range.
 * @source crow-kimura-1970; mun-effective-size
 */
export function inbreedingFraction(sizes: readonly number[]): number {
  return (
    1 -
    sizes.reduce((kept, size) => {
      requirePlants('effectiveSize', size)
      return kept * (1 - 1 / (2 * size))
    }, 1)
  )
}

/**
 * Chance that an allele carried by so large a share of gametes is in none of the parents. [fraction]  (1 - p)^(2N).
 *
 * At 0.05 in 30 plants: 0.0461.
 *
 * @param alleleFraction p. [fraction] Valid: 0.0001 to 0.5.
 * @param plantsCount N, or the effective number. [plants] Valid: 1 to 1 000 000.
 * @throws {ValidRangeError} outside those ranges.
 * @source crossa-1989 in its diploid form: two copies in every plant
 */
export function alleleMissedFraction(alleleFraction: number, plantsCount: number): number {
  requireAllele(alleleFraction)
  requirePlants('plantsCount', plantsCount)
  return (1 - alleleFraction) ** (2 * plantsCount)
}

function requireAllele(alleleFraction: number): void {
  requireInRange('alleleFraction', alleleFraction, { min: 1e-4, max: 0.5, unit: 'of gametes', source: 'crossa-1989' })
}

export interface AllelesWanted {
  /** Share of gametes that carry each rare allele. [fraction] Valid: 0.0001 to 0.5. */
  readonly alleleFraction: number
  /** [count] Valid: 1 to 100 000. */
  readonly lociCount: number
  /** Alleles at each locus, one of them common. [count] Valid: 2 to 20. */
  readonly allelesPerLocusCount: number
  /** [fraction] Valid: 0.5 to 0.9999. */
  readonly confidenceFraction: number
}

/**
 * Individuals that keep every rare allele at all loci, as the published sample sizes count them. [individuals]
 *
 * ln[(1 - P^(1/L)) / (k - 1)] / ln(1 - p), each individual counted once. p 0.05, 10 loci, P 0.90: 89 with 2 alleles, 110
 * with 4. The diploid count (two copies a plant) is half as many plants.
 *
 * @throws {ValidRangeError} outside the ranges of AllelesWanted.
 * @source crossa-1993
 */
export function individualsToKeepAllelesCount(wanted: AllelesWanted): number {
  const { alleleFraction, lociCount, allelesPerLocusCount, confidenceFraction } = wanted
  requireAllele(alleleFraction)
  requireWhole('lociCount', lociCount, 1, 100_000)
  requireWhole('allelesPerLocusCount', allelesPerLocusCount, 2, 20)
  requireInRange('confidenceFraction', confidenceFraction, { min: 0.5, max: 0.9999, unit: 'fraction', source: SOURCE })
  const missedEach = (1 - confidenceFraction ** (1 / lociCount)) / (allelesPerLocusCount - 1)
  return Math.log(missedEach) / Math.log(1 - alleleFraction)
}

/**
 * Different ears that are present when so many kernels are drawn from a well-mixed bulk of equal ears. [ears]
 *
 * 250 kernels of 100 ears: 91.9.
 *
 * @throws {ValidRangeError} unless both are whole and above 0.
 * @source none: chance that an ear is missed by every draw, N (1 - (1 - 1/N)^n)
 */
export function earsPresentCount(earsCount: number, kernelsDrawnCount: number): number {
  requireWhole('earsCount', earsCount, 1, 1_000_000)
  requireWhole('kernelsDrawnCount', kernelsDrawnCount, 1, 10_000_000)
  return earsCount * (1 - (1 - 1 / earsCount) ** kernelsDrawnCount)
}

/**
 * Share of yield that inbreeding costs, on a straight line: 0.67 % for every 1 % of F. [fraction]
 *
 * @param inbreeding F. [fraction] Valid: 0 to 1.
 * @throws {ValidRangeError} outside that range.
 * @source good-hallauer-1977: 69.7 q/ha at F = 0, less 46.53 q/ha at F = 1, one synthetic of another kind of corn
 */
export function yieldLostFraction(inbreeding: number): number {
  requireInRange('inbreeding', inbreeding, { min: 0, max: 1, unit: 'fraction', source: 'good-hallauer-1977' })
  return (46.53 / 69.7) * inbreeding
}

/**
 * Chance that a reserve of so many plantings is lost: every one of them fails. [fraction]  0.1 a year, two plantings: 0.01.
 *
 * @param failureFraction chance that one planting fails outright. [fraction] Valid: 0 to 1.
 * @param plantingsCount [count] Valid: whole, 0 to 20.
 * @throws {ValidRangeError} outside those ranges.
 * @source none: failures taken as independent, which two places and two years make truer
 */
export function reserveLostFraction(failureFraction: number, plantingsCount: number): number {
  requireInRange('failureFraction', failureFraction, { min: 0, max: 1, unit: 'fraction', source: 'project-rule' })
  requireWhole('plantingsCount', plantingsCount, 0, 20)
  return failureFraction ** plantingsCount
}
