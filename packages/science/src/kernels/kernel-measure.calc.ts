import type { Calc } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { ValidRangeError } from '../errors.ts'
import { convert } from '../units/unit.ts'
import { bulkDensityKgPerL, SHELLED_CORN_KG_PER_L, shelledCornKg, shelledCornL } from './bulk.ts'
import { hominyVolumeRangeL } from './swelling.ts'

interface KernelMeasureInput {
  readonly massKg?: number
  readonly volumeL?: number
  readonly testWeightLb?: number
}

const sourceKeys = ['rankin-wisconsin-bushels', 'nist-handbook-44-appendix-c'] as const
const SWELLING_KEYS = ['hominy-yield-statements', 'so-easy-to-preserve-1999'] as const
const outputs = {
  massLb: { label: 'Weight', unit: 'Lb' },
  massKg: { label: 'Weight in kilograms', unit: 'Kg' },
  dryLiquidQt: { label: 'Dry kernels, liquid measure (a jar, a jug)', unit: 'LiquidQt' },
  dryDryQt: { label: 'Dry kernels, dry measure', unit: 'DryQt' },
  dryCup: { label: 'Dry kernels in cups', unit: 'Cup' },
  dryBu: { label: 'Dry kernels in bushel measures', unit: 'Bu' },
  dryL: { label: 'Dry kernels in litres', unit: 'L' },
  hominyLiquidQt: { label: 'Hominy to expect of it', unit: 'LiquidQt' },
} as const

export const kernelMeasureCalc: Calc<KernelMeasureInput> = {
  id: 'kernel-measure',
  title: 'Shelled corn by weight and by measure',
  question: 'How much is this corn by weight, by liquid and dry measure, and how much hominy may come of it?',
  inputs: {
    massKg: {
      kind: 'quantity',
      label: 'Weight of shelled corn (give weight or volume)',
      unit: 'Kg',
      min: 0,
      max: 100_000,
      limitSource: 'project-rule',
      optional: true,
    },
    volumeL: {
      kind: 'quantity',
      label: 'Volume of shelled corn (give weight or volume)',
      unit: 'L',
      min: 0,
      max: 100_000,
      limitSource: 'project-rule',
      optional: true,
    },
    testWeightLb: {
      kind: 'quantity',
      label: 'Weight of one bushel measure of it, if known',
      unit: 'Lb',
      min: 35,
      max: 80,
      limitSource: 'project-rule',
      optional: true,
    },
  },
  outputs,
  sourceKeys: [...sourceKeys, ...SWELLING_KEYS],
  example: { massKg: { value: 9, unit: 'Lb' } },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const { massKg, volumeL } = onlyOne(input)
    const density = input.testWeightLb === undefined ? SHELLED_CORN_KG_PER_L : bulkDensityKgPerL(input.testWeightLb)
    const kg = massKg ?? shelledCornKg(volumeL, density)
    const litres = massKg === undefined ? volumeL : shelledCornL(massKg, density)
    const basis = input.testWeightLb === undefined ? 'project-rule' : 'computed'
    const { lowL, middleL, highL } = hominyVolumeRangeL(litres)
    const toQt = (volume: number) => convert(volume, 'L', 'LiquidQt')
    return done([
      value('massLb', convert(kg, 'Kg', 'Lb'), nearest(0.01), { basis }),
      value('massKg', kg, nearest(0.001), { basis }),
      value('dryLiquidQt', toQt(litres), nearest(0.01), { basis }),
      value('dryDryQt', convert(litres, 'L', 'DryQt'), nearest(0.01), { basis }),
      value('dryCup', convert(litres, 'L', 'Cup'), nearest(0.1), { basis }),
      value('dryBu', convert(litres, 'L', 'Bu'), nearest(0.001), { basis }),
      value('dryL', litres, nearest(0.01), { basis }),
      value('hominyLiquidQt', toQt(middleL), nearest(0.1), {
        low: toQt(lowL),
        high: toQt(highL),
        basis: 'common-practice', // the high end has no source, so the range has none
        sourceKeys: SWELLING_KEYS,
      }),
    ])
  },
}

/** @throws {ValidRangeError} unless just one of weight and volume is given. */
function onlyOne({ massKg, volumeL }: KernelMeasureInput) {
  if (massKg !== undefined && volumeL === undefined) return { massKg, volumeL: Number.NaN }
  if (massKg === undefined && volumeL !== undefined) return { massKg, volumeL }
  const range = { min: 1, max: 1, unit: 'of massKg and volumeL', source: 'project-rule' }
  throw new ValidRangeError('number of amounts', massKg === undefined ? 0 : 2, range)
}
