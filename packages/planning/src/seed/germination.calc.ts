import type { Calc } from '@crib/science'
import {
  type GerminationInput,
  germinationInterval,
  germinationSampleSize,
  type ReplicatesInput,
  replicateTolerance,
  type SampleSizeInput,
} from './germination.ts'
import { CONFIDENCE, countField, optional, SPROUTED, shareField, TESTED } from './seed-fields.ts'

export const germinationIntervalCalc: Calc<GerminationInput> = {
  id: 'germination-interval',
  title: 'What a sprouting test says',
  question: 'So many sprouted of so many: what may the true germination be, and what is to be sown?',
  inputs: {
    sproutedCount: SPROUTED,
    testedCount: TESTED,
    confidenceFraction: CONFIDENCE,
    plantsAimCount: optional(countField('Grown plants wanted', 1, 20_000)),
    maturityFraction: optional(shareField('Share of sprouts that reach maturity, own record')),
  },
  outputs: {
    germinationFraction: { label: 'Germination, with its exact range', unit: 'Fraction' },
    wilsonFraction: { label: 'The same with Wilson’s range, a little narrower', unit: 'Fraction' },
    sowOnAverageKernels: { label: 'Kernels to sow, on average', unit: 'Count' },
    sowKernels: { label: 'Kernels to sow, with the confidence wanted', unit: 'Count' },
  },
  sourceKeys: ['clopper-pearson-1934', 'wilson-1927', 'jeffreys-1946'],
  example: { sproutedCount: 46, testedCount: 50, plantsAimCount: 240, maturityFraction: 0.8 },
  run: germinationInterval,
}

export const germinationSampleSizeCalc: Calc<SampleSizeInput> = {
  id: 'germination-sample-size',
  title: 'How many kernels to test',
  question: 'How many kernels must sprout-test for a range no wider than this?',
  inputs: {
    likelyFraction: shareField('Germination thought likely', 0, 1),
    widthFraction: shareField('Width of the range wanted, high less low', 0.01, 0.9),
    confidenceFraction: CONFIDENCE,
  },
  outputs: {
    testedCount: { label: 'Kernels to test', unit: 'Count' },
    rangeIfSo: { label: 'The range, if it comes out so', unit: 'Fraction' },
  },
  sourceKeys: ['clopper-pearson-1934'],
  example: { likelyFraction: 0.9, widthFraction: 0.2 },
  run: germinationSampleSize,
}

export const replicateToleranceCalc: Calc<ReplicatesInput> = {
  id: 'replicate-tolerance',
  title: 'Do the parts of a test agree?',
  question: 'Do two or four parts of 100 kernels lie near enough to each other to be one test?',
  inputs: {
    replicates: {
      kind: 'table',
      label: 'Parts of 100 kernels, two or four',
      maxRows: 8,
      columns: { sproutedCount: countField('Sprouted of 100', 0, 100) },
    },
  },
  outputs: {
    meanPer100: { label: 'Mean of the parts, of 100', unit: 'Count' },
    rangePer100: { label: 'Largest part less the smallest', unit: 'Count' },
    allowedPer100: { label: 'Most the rules allow', unit: 'Count' },
  },
  sourceKeys: ['us-7-cfr-201-55'],
  example: { replicates: [{ sproutedCount: 94 }, { sproutedCount: 90 }, { sproutedCount: 88 }, { sproutedCount: 96 }] },
  run: replicateTolerance,
}
