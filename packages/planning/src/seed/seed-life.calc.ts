import type { Calc } from '@crib/science'
import { countField, MOISTURE, optional, SPROUTED, STORE_C, STORE_RECORD, shareField, TESTED } from './seed-fields.ts'
import { LIFE_KEYS, type SeedLifeInput, seedLife } from './seed-life.ts'
import { type SeedWhatIfInput, seedWhatIf } from './seed-what-if.ts'

const KEEP_ABOVE = optional(shareField('Germination to stay above', 0.01, 0.999))

export const seedLifeCalc: Calc<SeedLifeInput> = {
  id: 'seed-life',
  title: 'Is it alive, and for how long?',
  question: 'What germination will this lot have in the years to come, by its store and by its own tests?',
  inputs: {
    wetFraction: optional(MOISTURE),
    temperatureC: optional(STORE_C),
    record: STORE_RECORD,
    storedDays: countField('Days in store up to today', 0, 36_525),
    startFraction: optional(shareField('Germination when put by, if it was never tested', 0.5, 0.999)),
    tests: {
      kind: 'table',
      label: 'Sprouting tests of this lot',
      maxRows: 40,
      columns: {
        afterDays: countField('Days in store before the test', 0, 36_525),
        sproutedCount: SPROUTED,
        testedCount: TESTED,
      },
      optional: true,
    },
    yearsAheadCount: countField('Years to look ahead', 1, 20),
    keepAboveFraction: KEEP_ABOVE,
  },
  outputs: {
    nowFraction: { label: 'Germination today', unit: 'Fraction' },
    yearFraction: { label: 'years from today', unit: 'Fraction' },
    equationFraction: { label: 'years from today, by the equation alone', unit: 'Fraction' },
    yearsAbove: { label: 'Years it stays above that germination', unit: 'Years' },
    retestDays: { label: 'Test again within', unit: 'Days' },
  },
  sourceKeys: [...LIFE_KEYS, 'ellis-hong-2007', 'fao-genebank-2014', 'ehuf-473'],
  example: {
    wetFraction: 0.11,
    temperatureC: 10,
    storedDays: 365,
    tests: [
      { afterDays: 0, sproutedCount: 49, testedCount: 50 },
      { afterDays: 365, sproutedCount: 46, testedCount: 50 },
    ],
    yearsAheadCount: 3,
  },
  run: seedLife,
}

export const seedWhatIfCalc: Calc<SeedWhatIfInput> = {
  id: 'seed-what-if',
  title: 'Cellar, cupboard or freezer?',
  question: 'How long would each place, and each dryness, keep this seed above a germination?',
  inputs: {
    sproutedCount: optional(SPROUTED),
    testedCount: optional(TESTED),
    keepAboveFraction: KEEP_ABOVE,
    ways: {
      kind: 'table',
      label: 'Ways to keep it',
      maxRows: 24,
      columns: {
        name: { kind: 'text', label: 'Place', maxLength: 60 },
        wetFraction: MOISTURE,
        temperatureC: STORE_C,
      },
    },
  },
  outputs: { yearsAbove: { label: 'years above that germination', unit: 'Years' } },
  sourceKeys: [...LIFE_KEYS, 'ehuf-473'],
  example: {
    sproutedCount: 46,
    testedCount: 50,
    ways: [
      { name: 'cupboard', wetFraction: 0.12, temperatureC: 20 },
      { name: 'cellar', wetFraction: 0.12, temperatureC: 10 },
      { name: 'cellar, drier', wetFraction: 0.09, temperatureC: 10 },
      { name: 'freezer, drier', wetFraction: 0.09, temperatureC: -18 },
    ],
  },
  run: seedWhatIf,
}
