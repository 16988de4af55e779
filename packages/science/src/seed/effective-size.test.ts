import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import {
  alleleMissedFraction,
  earsPresentCount,
  effectiveEarsCount,
  effectiveSizeOfEars,
  effectiveSizeOfFamilies,
  effectiveSizeOverYears,
  inbreedingFraction,
  individualsToKeepAllelesCount,
  reserveLostFraction,
  varianceOfGametes,
  yieldLostFraction,
} from './effective-size.ts'

const table = <const C extends string>(name: string, columns: readonly C[]) =>
  readReferenceTable(new URL(`./${name}`, import.meta.url), columns).rows

describe('how many parents a planting counts as', () => {
  test.each(table('effective-size.ears.csv', ['plants', 'ears', 'effective', 'step']))(
    '$plants plants and $ears ears count as $effective',
    ({ plants, ears, effective, step }) => {
      expect(Math.abs(effectiveSizeOfEars(plants, ears) - effective)).toBeLessThanOrEqual(step / 2)
    },
  )

  // Worked: 1800 kernels, sum of squares 20 x 2500 + 80 x 100 = 58 000.
  test('uneven shares of 100 ears act like 55.9', () => {
    const shares = [
      { earsCount: 20, kernelsEach: 50 },
      { earsCount: 80, kernelsEach: 10 },
    ]
    expect(effectiveEarsCount(shares)).toBeCloseTo(55.86, 2)
    expect(effectiveEarsCount([{ earsCount: 60, kernelsEach: 17 }])).toBe(60)
  })

  test('families told plant by plant agree with ears told in bulk', () => {
    const kernels = [...Array.from({ length: 50 }, () => 8), ...Array.from({ length: 150 }, () => 0)]
    const effective = effectiveSizeOfFamilies(200, varianceOfGametes(kernels))
    expect(effective).toBeCloseTo(effectiveSizeOfEars(200, 50), 9)
  })

  test('one thin year outweighs many good ones', () => {
    const { effective } = table('effective-size.years.csv', ['yearsCount', 'effective'])[0]!
    expect(Math.abs(effectiveSizeOverYears([10, 100, 50, 80, 20, 500]) - effective)).toBeLessThan(0.05)
    expect(effectiveSizeOverYears([200, 200, 200, 20])).toBeCloseTo(61.5, 1)
  })

  test('never more than the plants allow, and equal shares are best', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 2, maxLength: 80 }), (kernels) => {
        fc.pre(kernels.some((one) => one > 0))
        const uneven = effectiveSizeOfFamilies(kernels.length, varianceOfGametes(kernels))
        const even = effectiveSizeOfFamilies(kernels.length, varianceOfGametes(kernels.map(() => 1)))
        expect(uneven).toBeLessThanOrEqual(even + 1e-9)
        expect(even).toBeCloseTo((4 * kernels.length - 2) / 3, 9)
      }),
    )
  })

  test.each([-1, 0, Number.NaN, 201])('refuses %s ears of 200 plants', (ears) => {
    expect(() => effectiveSizeOfEars(200, ears)).toThrow(ValidRangeError)
  })
})

describe('what a size costs', () => {
  test.each(table('effective-size.inbreeding.csv', ['effective', 'afterTen', 'afterTwentyFive']))(
    'at $effective, F is $afterTen after ten generations',
    ({ effective, afterTen, afterTwentyFive }) => {
      const after = (generations: number) => inbreedingFraction(Array.from({ length: generations }, () => effective))
      expect(Math.abs(after(10) - afterTen)).toBeLessThan(0.000051)
      expect(Math.abs(after(25) - afterTwentyFive)).toBeLessThan(0.000051)
    },
  )

  test.each(table('effective-size.allele-missed.csv', ['alleleFraction', 'plants', 'missed', 'step']))(
    'an allele at $alleleFraction is in none of $plants plants with $missed',
    ({ alleleFraction, plants, missed, step }) => {
      expect(Math.abs(alleleMissedFraction(alleleFraction, plants) - missed)).toBeLessThanOrEqual(step / 2)
    },
  )

  test.each(table('effective-size.individuals.csv', ['allelesPerLocus', 'individuals']))(
    '$individuals individuals keep $allelesPerLocus alleles at each of ten loci',
    ({ allelesPerLocus, individuals }) => {
      const wanted = { alleleFraction: 0.05, lociCount: 10, confidenceFraction: 0.9 }
      const count = individualsToKeepAllelesCount({ ...wanted, allelesPerLocusCount: allelesPerLocus })
      expect(Math.round(count)).toBe(individuals)
    },
  )

  test('a straight line of yield, ears in a bulk, and a reserve lost', () => {
    expect(69.7 * (1 - yieldLostFraction(1))).toBeCloseTo(23.2, 1) // good-hallauer-1977: 23.2 q/ha at F = 1
    expect(earsPresentCount(100, 250)).toBeCloseTo(91.9, 1)
    expect(reserveLostFraction(0.1, 2)).toBeCloseTo(0.01, 12)
  })

  // A line of N plants in which each pair of gametes is drawn from N parents at random loses 1/(2N) a generation.
  test('simulated populations lose variation as reckoned', () => {
    const random = seeded(20261125)
    const plants = 20
    const generations = 10
    const lines = 4000
    let kept = 0
    for (let line = 0; line < lines; line++) {
      let copies = plants // of one allele at 0.5, among 2N gametes
      for (let t = 0; t < generations; t++) {
        const p = copies / (2 * plants)
        copies = 0
        for (let gamete = 0; gamete < 2 * plants; gamete++) if (random() < p) copies++
      }
      const p = copies / (2 * plants)
      kept += (2 * p * (1 - p)) / 0.5 / lines
    }
    const expected = 1 - inbreedingFraction(Array.from({ length: generations }, () => plants))
    // Four standard errors of the mean of 4000 lines, whose kept variation has a spread of about 0.29.
    expect(Math.abs(kept - expected)).toBeLessThan((4 * 0.29) / Math.sqrt(lines))
  })

  // Ears weigh in: 100 plants shed pollen at random, ten of them give all the seed in equal shares.
  test('simulated stands with few ears lose variation as their effective size says', () => {
    const random = seeded(7)
    const plants = 100
    const ears = 10
    const lines = 12_000
    let kept = 0
    for (let line = 0; line < lines; line++) {
      const genes = Array.from({ length: 2 * plants }, (_, i) => i)
      const seedOf = (child: number) => genes[2 * (child % ears) + (random() < 0.5 ? 0 : 1)]!
      const children = Array.from({ length: plants }, (_, child) => {
        const father = Math.floor(random() * plants)
        return [seedOf(child), genes[2 * father + (random() < 0.5 ? 0 : 1)]!]
      }).flat()
      // Two gametes drawn without putting back are copies of one with this chance.
      const counts = new Map<number, number>()
      for (const gene of children) counts.set(gene, (counts.get(gene) ?? 0) + 1)
      let same = 0
      for (const count of counts.values()) same += (count * (count - 1)) / (2 * plants * (2 * plants - 1))
      kept += (1 - same) / lines
    }
    const effective = effectiveSizeOfEars(plants, ears)
    // The formula counts per generation to first order; 3 % of the loss covers the second order and the sampling.
    expect(Math.abs((1 - kept) * 2 * effective - 1)).toBeLessThan(0.03)
  })
})

/** A small generator with a seed, so that a run can be repeated. */
function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}
