import type { Calc } from '@crib/science'
import { say } from '../shared/say.ts'
import { type SeedReserveInput, seedReserve } from './seed-reserve.ts'

const COUNT = { kind: 'count', limitSource: 'project-rule' } as const
const FRACTION = { kind: 'quantity', unit: 'Fraction', min: 0.01, max: 1, limitSource: 'project-rule' } as const

export const seedLineCalc: Calc<SeedReserveInput> = {
  id: 'seed-line',
  title: 'Seed before supper',
  question: 'How many kernels stay back for the next two plantings, what do they weigh, and what may be eaten?',
  inputs: {
    shelledLb: {
      kind: 'quantity',
      unit: 'Lb',
      min: 0.01,
      max: 100_000,
      limitSource: 'project-rule',
      label: 'Clean shelled weight of everything',
    },
    plantsAimCount: { ...COUNT, min: 1, max: 20_000, label: 'Grown plants wanted each year' },
    sproutedCount: { ...COUNT, min: 1, max: 10_000, label: 'Kernels that sprouted in the test' },
    testedCount: { ...COUNT, min: 1, max: 10_000, label: 'Kernels in the test' },
    maturityFraction: { ...FRACTION, label: 'Share of sprouts that reach maturity, own record' },
    secondYearGerminationFraction: { ...FRACTION, label: 'Germination to assume for the second year' },
    testKernelsCount: { ...COUNT, min: 0, max: 10_000, label: 'Kernels used in a test each spring' },
    giftKernelsCount: { ...COUNT, min: 0, max: 100_000, label: 'Kernels promised to others' },
    kernelsPerOz: { ...COUNT, min: 20, max: 500, label: 'Kernels counted in one ounce' },
    parentEarsCount: { ...COUNT, min: 1, max: 20_000, label: 'Seed ears chosen, one per plant' },
    confidenceFraction: {
      kind: 'quantity',
      unit: 'Fraction',
      min: 0.5,
      max: 0.9999,
      limitSource: 'project-rule',
      label: 'Confidence wanted',
      optional: true,
    },
    line: { kind: 'choice', options: ['chosen-confidence', 'on-average'], label: 'Which line the reserve stands on' },
  },
  outputs: {
    germinationFraction: { label: 'Germination in the test, with its range', unit: 'Fraction' },
    yearOneKernels: { label: 'Next year, on average', unit: 'Count' },
    yearTwoKernels: { label: 'The year after, on average', unit: 'Count' },
    yearOneKernelsAtConfidence: { label: 'Next year, with the confidence wanted', unit: 'Count' },
    yearTwoKernelsAtConfidence: { label: 'The year after, with the confidence wanted', unit: 'Count' },
    testKernels: { label: 'Kernels for tests', unit: 'Count' },
    giftKernels: { label: 'Kernels promised', unit: 'Count' },
    onAverageKernels: { label: 'All together, on average', unit: 'Count' },
    atConfidenceKernels: { label: 'All together, with the confidence wanted', unit: 'Count' },
    reserveKernels: { label: 'Kernels to keep back', unit: 'Count' },
    reserveOz: { label: 'Their weight', unit: 'Oz' },
    reserveG: { label: 'Their weight', unit: 'G' },
    kernelsPerEar: { label: 'From each ear', unit: 'Count' },
    equalShareKernels: { label: 'Kept in equal shares', unit: 'Count' },
    equalShareOz: { label: 'Weight of the equal shares', unit: 'Oz' },
    equalShareLb: { label: 'Weight of the equal shares', unit: 'Lb' },
    foodLb: { label: 'May be eaten', unit: 'Lb' },
    foodIfExactlyReserveLb: { label: 'May be eaten, if exactly the reserve is kept', unit: 'Lb' },
  },
  sourceKeys: ['clopper-pearson-1934', 'seed-saving-guides'],
  example: {
    shelledLb: 31.5,
    plantsAimCount: 240,
    sproutedCount: 46,
    testedCount: 50,
    maturityFraction: 0.8,
    secondYearGerminationFraction: 0.85,
    testKernelsCount: 50,
    giftKernelsCount: 200,
    kernelsPerOz: 110,
    parentEarsCount: 60,
    line: 'chosen-confidence',
  },
  run: (input) =>
    input.sproutedCount > input.testedCount
      ? {
          ok: false,
          refused: 'more-sprouted-than-tested',
          why: [say('seed:more-sprouted', { sprouted: input.sproutedCount, tested: input.testedCount })],
          askWhom: [],
        }
      : { ok: true, ...seedReserve(input) },
}
