import {
  type Calc,
  convert,
  dryToWetFraction,
  massAtMoistureKg,
  moistureShrinkFraction,
  shelledFromEarCornKg,
} from '@crib/science'
import { LB_PER_LIQUID_QT } from '../shared/corn-measure.ts'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

interface HarvestWeightFields {
  readonly earCornKg: number
  readonly kernelMoistureFraction: number
  readonly basis?: 'wet' | 'dry'
  readonly driedToWetFraction: number
}

/** Ears wetter than the table of ears to shelled reaches.  agf-502-2018 [fraction, wet basis] */
const TABLE = { min: 0.1, max: 0.28 } as const

export const harvestWeightCalc: Calc<HarvestWeightFields> = {
  id: 'harvest-weight',
  title: 'Ears brought in, as dry shelled corn',
  question: 'What will these husked ears weigh shelled, now and when dry, and how much of the weight is cob and water?',
  inputs: {
    earCornKg: { kind: 'quantity', unit: 'Kg', min: 0, max: 1e6, limitSource: 'project-rule', label: 'Husked ears' },
    kernelMoistureFraction: {
      kind: 'quantity',
      unit: 'Fraction',
      min: 0,
      max: 0.9,
      limitSource: 'project-rule',
      label: 'Moisture of the kernels now, as a share: 0.20 for 20 %',
    },
    basis: {
      kind: 'choice',
      options: ['wet', 'dry'],
      optional: true,
      label: 'That moisture is on the wet basis (trade, most meters) or the dry basis (laboratory)',
    },
    driedToWetFraction: {
      kind: 'quantity',
      unit: 'Fraction',
      min: 0.05,
      max: 0.28,
      limitSource: 'project-rule',
      label: 'Dried to, wet basis',
    },
  },
  outputs: {
    shelledNowLb: { label: 'Shelled now', unit: 'Lb' },
    cobsLb: { label: 'Cobs', unit: 'Lb' },
    waterOffLb: { label: 'Water that still goes', unit: 'Lb' },
    shrinkFraction: { label: 'Shrink by moisture', unit: 'Fraction' },
    shelledDryLb: { label: 'Shelled when dry', unit: 'Lb' },
    shelledDryLiquidQt: { label: 'Shelled when dry, by measure', unit: 'LiquidQt' },
  },
  sourceKeys: ['agf-502-2018', 'wisconsin-l033-2015', 'hicks-cloud-nch-61', 'rankin-wisconsin-bushels'],
  example: {
    earCornKg: 31.75,
    kernelMoistureFraction: 0.2,
    basis: 'wet',
    driedToWetFraction: 0.13,
  },
  run: ({ earCornKg, kernelMoistureFraction, basis, driedToWetFraction }) => {
    if (basis === undefined) {
      return { ok: false, refused: 'moisture-basis-missing', why: [say('field:moisture-basis-missing')], askWhom: [] }
    }
    const wet = basis === 'wet' ? kernelMoistureFraction : dryToWetFraction(kernelMoistureFraction)
    if (!(wet >= TABLE.min && wet <= TABLE.max)) {
      const moisture = { value: Number(wet.toFixed(3)), unit: 'Fraction' } as const
      const why = [say('field:ears-off-the-table', { moisture })]
      return { ok: false, refused: 'ears-off-the-table', why, askWhom: [say('field:ears-off-the-table-do')] }
    }
    const change = { fromWetFraction: wet, toWetFraction: driedToWetFraction }
    const shelledKg = shelledFromEarCornKg(earCornKg, wet)
    const dryKg = massAtMoistureKg(shelledKg, change)
    const dryLb = convert(dryKg, 'Kg', 'Lb')
    const lb = (id: string, kg: number) =>
      reckon({
        id,
        value: convert(kg, 'Kg', 'Lb'),
        unit: 'Lb',
        rounding: nearest(0.1),
        basis: 'published',
        sourceKeys: ['agf-502-2018', 'hicks-cloud-nch-61'],
      })
    return {
      ok: true,
      values: [
        lb('shelledNowLb', shelledKg),
        lb('cobsLb', earCornKg - shelledKg),
        lb('waterOffLb', shelledKg - dryKg),
        reckon({
          id: 'shrinkFraction',
          value: moistureShrinkFraction(change),
          unit: 'Fraction',
          rounding: nearest(0.0001),
          basis: 'computed',
          sourceKeys: ['hicks-cloud-nch-61'],
        }),
        lb('shelledDryLb', dryKg),
        reckon({
          id: 'shelledDryLiquidQt',
          value: dryLb / LB_PER_LIQUID_QT,
          unit: 'LiquidQt',
          rounding: nearest(0.1),
          basis: 'project-rule',
          sourceKeys: ['rankin-wisconsin-bushels'],
        }),
      ],
      reasons: [say('field:shrink-is-water')],
      warnings: driedToWetFraction > wet ? [say('field:drier-already')] : [],
    }
  },
}
