import { type Calc, convert } from '@crib/science'
import { type FieldPlanInput, fieldPlan, fieldPlanTooLarge } from './field-plan.ts'

const COUNT = { kind: 'count', limitSource: 'project-rule' } as const
const FRACTION = { kind: 'quantity', unit: 'Fraction', min: 0.01, max: 1, limitSource: 'project-rule' } as const
const SPACING = { kind: 'quantity', unit: 'M', max: 5, limitSource: 'project-rule' } as const
const YES = { kind: 'flag', optional: true } as const

/** Invented: what Kettlebrook Hollow plants from. */
export const INVENTED_FIELD = {
  foodLb: 60,
  reserveKernelsCount: 1020,
  plantsForLineCount: 240,
  gPerThousand: 258,
  kernelsPerEar: 280,
  earsPerPlant: 1.2,
  lossFraction: 0.15,
  germinationFraction: 0.92,
  survivalFraction: 0.8,
  pattern: 'rows',
  rowSpacingM: convert(36, 'In', 'M'),
  inRowSpacingM: convert(12, 'In', 'M'),
} satisfies FieldPlanInput

export const fieldPlanCalc: Calc<FieldPlanInput> = {
  id: 'field-plan',
  title: 'How much to plant',
  question:
    'For this food and this seed, how many plants, how many kernels to sow, how much ground, and in what shape?',
  inputs: {
    foodLb: {
      kind: 'quantity',
      unit: 'Lb',
      min: 0,
      max: 100_000,
      limitSource: 'project-rule',
      label: 'Clean shelled corn wanted to eat',
    },
    reserveKernelsCount: { ...COUNT, min: 1, max: 1_000_000, label: 'Kernels to keep back as seed' },
    plantsForLineCount: { ...COUNT, min: 1, max: 200_000, label: 'Least plants, for the line' },
    gPerThousand: {
      kind: 'quantity',
      unit: 'G',
      min: 100,
      max: 600,
      limitSource: 'project-rule',
      label: 'Weight of a thousand dry kernels',
    },
    kernelsPerEar: { ...COUNT, min: 20, max: 1200, label: 'Kernels on a good ear' },
    earsPerPlant: {
      kind: 'quantity',
      unit: 'Count',
      min: 0.1,
      max: 6,
      limitSource: 'project-rule',
      label: 'Good ears to a plant, mean',
    },
    lossFraction: { ...FRACTION, min: 0, max: 0.95, label: 'Share lost to birds, mould, tails and handling' },
    germinationFraction: { ...FRACTION, label: 'Share that sprouts' },
    survivalFraction: { ...FRACTION, label: 'Share of sprouts that stand to harvest' },
    pattern: { kind: 'choice', options: ['rows', 'hills'], label: 'Rows or hills' },
    rowSpacingM: { ...SPACING, min: 0.1, label: 'Between rows, or rows of hills' },
    inRowSpacingM: { ...SPACING, min: 0.02, label: 'Between plants, or hills, in a row' },
    plantsPerHillCount: { ...COUNT, min: 1, max: 12, label: 'Plants left in a hill', optional: true },
    atLeastRows: { ...COUNT, min: 1, max: 200, label: 'Least rows', optional: true },
    confidenceFraction: { ...FRACTION, min: 0.5, max: 0.9999, label: 'Confidence wanted of the stand', optional: true },
    withBeans: { ...YES, label: 'Pole beans in the hills' },
    withSquash: { ...YES, label: 'Squash round the hills' },
  },
  outputs: {
    plants: { label: 'Plants to stand', unit: 'Count' },
    plantsForFood: { label: 'Plants that food and seed ask for', unit: 'Count' },
    kernelsOnAverage: { label: 'Kernels to sow, on average', unit: 'Count' },
    kernelsToSow: { label: 'Kernels to sow, with the confidence wanted', unit: 'Count' },
    kernelsToSowOz: { label: 'Their weight', unit: 'Oz' },
    rows: { label: 'Rows', unit: 'Count' },
    plantsInRow: { label: 'Plants in a row', unit: 'Count' },
    rowLengthFt: { label: 'Length of a row', unit: 'Ft' },
    rowFeetFt: { label: 'Row in all', unit: 'Ft' },
    kernelSpacingIn: { label: 'A kernel every', unit: 'In' },
    rowsOfHills: { label: 'Rows of hills', unit: 'Count' },
    hillsInRow: { label: 'Hills in a row', unit: 'Count' },
    hills: { label: 'Hills', unit: 'Count' },
    kernelsInHill: { label: 'Kernels in a hill', unit: 'Count' },
    lengthFt: { label: 'Block, along the rows', unit: 'Ft' },
    widthFt: { label: 'Block, across the rows', unit: 'Ft' },
    areaFt2: { label: 'Ground', unit: 'Ft2' },
    areaAcre: { label: 'Ground, in acres', unit: 'Acre' },
    harvestLb: { label: 'Harvest to expect, shelled and dry', unit: 'Lb' },
    harvestBuPerAcre: { label: 'That is a yield of', unit: 'BuPerAcre' },
    beanSeeds: { label: 'Pole bean seeds', unit: 'Count' },
    squashSeeds: { label: 'Squash seeds', unit: 'Count' },
  },
  sourceKeys: ['clopper-pearson-1934', 'garden-corn-spacing', 'cornell-three-sisters', 'mtpleasant-burt-2010'],
  example: INVENTED_FIELD,
  run: (input) => {
    const tooLarge = fieldPlanTooLarge(input)
    if (tooLarge) return { ok: false, refused: 'plan-too-large', why: [tooLarge], askWhom: [] }
    const { values, reasons, warnings } = fieldPlan(input)
    return { ok: true, values, reasons, warnings }
  },
}
