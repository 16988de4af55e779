import type { Calc } from '@crib/science'
import { say } from '../shared/say.ts'
import { type CountedPlace, estimateByEars, estimateByWeight } from './yield-estimate.ts'

interface YieldFields {
  readonly how: 'ears-counted' | 'part-weighed'
  readonly places?: readonly CountedPlace[]
  readonly rowSpacingFt?: number
  readonly gPerThousand?: number
  readonly earCornKg?: number
  readonly kernelWetFraction?: number
  readonly areaOfPartM2?: number
  readonly areaM2?: number
}

const RULE = { limitSource: 'project-rule' } as const
const AREA = { kind: 'quantity', unit: 'M2', min: 0.1, max: 1e7, optional: true, ...RULE } as const

export const yieldEstimateCalc: Calc<YieldFields> = {
  id: 'yield-estimate',
  title: 'What the field may bring',
  question: 'From ears counted at a few places, or from a part weighed, what does the field yield, shelled at 15.5 %?',
  inputs: {
    how: { kind: 'choice', options: ['ears-counted', 'part-weighed'], label: 'Ears counted, or a part weighed' },
    places: {
      kind: 'table',
      label: 'Places counted',
      maxRows: 60,
      optional: true,
      columns: {
        earsCount: { kind: 'count', min: 0, max: 10_000, label: 'Ears on that length of row', ...RULE },
        rowFt: { kind: 'quantity', unit: 'Ft', min: 1, max: 10_000, label: 'Length of row looked at', ...RULE },
        kernelRows: {
          kind: 'quantity',
          unit: 'Count',
          min: 4,
          max: 40,
          label: 'Rows of kernels round an ear, mean',
          ...RULE,
        },
        kernelsPerRow: {
          kind: 'quantity',
          unit: 'Count',
          min: 1,
          max: 80,
          label: 'Kernels along a row, mean',
          ...RULE,
        },
      },
    },
    rowSpacingFt: { kind: 'quantity', unit: 'Ft', min: 0.5, max: 20, label: 'Between rows', optional: true, ...RULE },
    gPerThousand: {
      kind: 'quantity',
      unit: 'G',
      min: 100,
      max: 600,
      label: 'Weight of a thousand dry kernels',
      optional: true,
      ...RULE,
    },
    earCornKg: {
      kind: 'quantity',
      unit: 'Kg',
      min: 0,
      max: 1e6,
      label: 'Husked ears of the part',
      optional: true,
      ...RULE,
    },
    kernelWetFraction: {
      kind: 'quantity',
      unit: 'Fraction',
      min: 0.1,
      max: 0.28,
      label: 'Moisture of their kernels, wet basis, 0.10 to 0.28',
      optional: true,
      limitSource: 'agf-502-2018',
    },
    areaOfPartM2: { ...AREA, label: 'Ground the part stood on' },
    areaM2: { ...AREA, label: 'Ground of the whole field' },
  },
  outputs: {
    yieldBuPerAcre: { label: 'Shelled at 15.5 %', unit: 'BuPerAcre' },
    yieldKgPerHa: { label: 'Shelled at 15.5 %, metric', unit: 'KgPerHa' },
    harvestLb: { label: 'From the whole field', unit: 'Lb' },
  },
  sourceKeys: ['purdue-yield-component', 'agf-502-2018', 'wisconsin-l033-2015'],
  example: {
    how: 'ears-counted',
    places: [
      { earsCount: 21, rowFt: 14.52, kernelRows: 8, kernelsPerRow: 36 },
      { earsCount: 18, rowFt: 14.52, kernelRows: 8, kernelsPerRow: 34 },
      { earsCount: 23, rowFt: 14.52, kernelRows: 8, kernelsPerRow: 37 },
    ],
    rowSpacingFt: 3,
    gPerThousand: 300,
    areaM2: 180,
  },
  run: ({ how, places = [], rowSpacingFt, gPerThousand, earCornKg, kernelWetFraction, areaOfPartM2, areaM2 }) => {
    if (how === 'ears-counted') {
      if (places.length === 0 || rowSpacingFt === undefined || gPerThousand === undefined) {
        return { ok: false, refused: 'count-incomplete', why: [say('field:count-incomplete')], askWhom: [] }
      }
      return { ok: true, ...estimateByEars({ places, rowSpacingFt, gPerThousand, areaM2 }) }
    }
    if (earCornKg === undefined || kernelWetFraction === undefined || areaOfPartM2 === undefined) {
      return { ok: false, refused: 'weigh-incomplete', why: [say('field:weigh-incomplete')], askWhom: [] }
    }
    return { ok: true, ...estimateByWeight({ earCornKg, kernelWetFraction, areaOfPartM2, areaM2 }) }
  },
}
