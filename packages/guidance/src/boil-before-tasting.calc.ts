import type { Calc } from '@crib/science'
import { boilBeforeTastingMin } from './boil.ts'
import { ELEVATION_FIELD } from './fields.ts'
import { sentence } from './sentence.ts'

export const boilBeforeTastingCalc: Calc<{ readonly elevationFt: number }> = {
  id: 'boil-before-tasting',
  title: 'Boiling canned hominy before tasting',
  question: 'How many minutes is canned hominy boiled at this elevation before anybody tastes it?',
  inputs: { elevationFt: ELEVATION_FIELD },
  outputs: { boilBeforeTastingMin: { label: 'Boil before tasting', unit: 'Min' } },
  sourceKeys: ['usda-aib-539-1994'],
  example: { elevationFt: 820 },
  run: ({ elevationFt }) => ({
    ok: true,
    values: [boilBeforeTastingMin(elevationFt)],
    reasons: [sentence('guidance:boil-why')],
    warnings: [sentence('cautions:tasting-never-suspect')],
  }),
}
