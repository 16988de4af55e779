import type { Calc } from '@crib/science'
import {
  type AlleleLossInput,
  alleleLoss,
  type EffectiveSizeInput,
  effectiveSize,
  type OffTypeInput,
  offTypeTrend,
} from './line-advice.ts'
import { CONFIDENCE, countField, optional, shareField } from './seed-fields.ts'

export const effectiveSizeCalc: Calc<EffectiveSizeInput> = {
  id: 'effective-size',
  title: 'Am I losing the line?',
  question: 'How many parents does this seed really count as, what does that cost, and what would help?',
  inputs: {
    plantsCount: countField('Plants that stand and shed pollen', 1, 100_000),
    earsCount: optional(countField('Ears that give seed in equal shares', 0, 100_000)),
    shares: {
      kind: 'table',
      label: 'Unequal shares: so many ears of so many kernels',
      maxRows: 200,
      columns: { earsCount: countField('Ears', 0, 100_000), kernelsEach: countField('Kernels from each', 0, 2000) },
      optional: true,
    },
    earlier: {
      kind: 'table',
      label: 'Earlier generations, where known',
      maxRows: 100,
      columns: { effectiveCount: countField('Parents it counted as', 1, 100_000) },
      optional: true,
    },
    generationsCount: optional(countField('Generations to look ahead', 1, 100)),
    wantedEffectiveCount: optional(countField('Parents it should count as', 2, 100_000)),
    kernelsWantedCount: optional(countField('Kernels the lot should hold', 1, 1_000_000)),
  },
  outputs: {
    effectiveEarsCount: { label: 'Ears the shares amount to', unit: 'Count' },
    effectiveCount: { label: 'Parents it counts as', unit: 'Count' },
    inbreedingPerGeneration: { label: 'Inbreeding gathered in one generation', unit: 'Fraction' },
    inbreedingAhead: { label: 'Inbreeding gathered over the generations ahead', unit: 'Fraction' },
    yieldLost: { label: 'Yield that may cost, by one study of another corn', unit: 'Fraction' },
    overYearsCount: { label: 'Parents it counts as over the years told', unit: 'Count' },
    earsForWantedCount: { label: 'Ears in equal shares that would do', unit: 'Count' },
    equalShareKernels: { label: 'Kernels from each of them', unit: 'Count' },
  },
  sourceKeys: ['crow-kimura-1970', 'good-hallauer-1977', 'seed-saving-guides'],
  example: {
    plantsCount: 240,
    earsCount: 60,
    generationsCount: 10,
    wantedEffectiveCount: 200,
    kernelsWantedCount: 980,
  },
  run: effectiveSize,
}

export const alleleLossCalc: Calc<AlleleLossInput> = {
  id: 'allele-loss',
  title: 'Would a rare trait be left behind?',
  question: 'What is the chance that a trait few plants carry is in none of the parents, and how many would hold it?',
  inputs: {
    alleleFraction: shareField('Share of gametes that carry it', 0.0001, 0.5),
    plantsCount: countField('Parents, or what they count as', 1, 100_000),
    confidenceFraction: CONFIDENCE,
    lociCount: optional(countField('Loci, for the published sample size', 1, 100_000)),
    allelesPerLocusCount: optional(countField('Alleles at each locus', 2, 20)),
  },
  outputs: {
    missedFraction: { label: 'Chance that it is in none of them', unit: 'Fraction' },
    plantsToKeepCount: { label: 'Parents that hold one such trait with the confidence wanted', unit: 'Count' },
    individualsPublishedCount: { label: 'The published sample size for all loci together', unit: 'Count' },
  },
  sourceKeys: ['crossa-1989', 'crossa-1993', 'seed-saving-guides'],
  example: { alleleFraction: 0.05, plantsCount: 60 },
  run: alleleLoss,
}

export const offTypeTrendCalc: Calc<OffTypeInput> = {
  id: 'off-type-trend',
  title: 'Are off-types growing?',
  question: 'Do plants, ears or kernels that do not match grow more or fewer over the years, and how sure is that?',
  inputs: {
    counts: {
      kind: 'table',
      label: 'Counts, year by year',
      maxRows: 200,
      columns: {
        year: countField('Year', 1800, 2300),
        offTypesCount: countField('Off-types', 0, 1_000_000),
        ofCount: countField('Looked at', 0, 1_000_000),
      },
    },
  },
  outputs: {
    shareFraction: { label: 'share of off-types, with its range', unit: 'Fraction' },
    oddsRatioPerYear: { label: 'Times the odds from year to year', unit: 'Count' },
    firstYearFraction: { label: 'On the line, the first year', unit: 'Fraction' },
    lastYearFraction: { label: 'On the line, the last year', unit: 'Fraction' },
  },
  sourceKeys: ['firth-1993', 'clopper-pearson-1934'],
  example: {
    counts: [
      { year: 2022, offTypesCount: 3, ofCount: 200 },
      { year: 2023, offTypesCount: 6, ofCount: 220 },
      { year: 2024, offTypesCount: 12, ofCount: 200 },
    ],
  },
  run: offTypeTrend,
}
