import type { Calc } from '@crib/science'
import { type CannerRow, plannedCanner } from '../batch/batch-plan.calc.ts'
import { CANNER_FIELDS } from '../batch/batch-plan.fields.ts'
import { type VillageInput, villageDay } from './village.ts'

const RULE = { limitSource: 'project-rule' } as const
const FRACTION = { kind: 'quantity', unit: 'Fraction', min: 0, max: 0.9, ...RULE } as const

export interface VillageForm extends Omit<VillageInput, 'canners' | 'isSeedPutByAtHome' | 'isStandingRead'> {
  readonly canners: readonly CannerRow[]
  readonly seedPutByAtHome: boolean
  readonly standingRead: boolean
}

export const villageDayCalc: Calc<VillageForm> = {
  id: 'village-day',
  title: 'Many households, one kitchen',
  question: 'How much corn to shell, how many loads, what number for each canner, and when is everyone done?',
  inputs: {
    householdsCount: { kind: 'count', min: 1, max: 500, ...RULE, label: 'Households' },
    jarsPerHouseholdCount: { kind: 'count', min: 1, max: 100, ...RULE, label: 'Jars for each' },
    jarSize: { kind: 'choice', options: ['half-pint', 'pint', 'quart'], label: 'Jar' },
    cornType: { kind: 'choice', options: ['flint', 'flour', 'dent', 'popcorn', 'unknown'], label: 'Kind of corn' },
    alkali: {
      kind: 'choice',
      options: ['ash', 'calcium-hydroxide', 'sodium-hydroxide', 'baking-soda'],
      label: 'Alkali',
    },
    seedPutByAtHome: { kind: 'flag', label: 'Each household has put by its own seed' },
    standingRead: { kind: 'flag', label: 'Each household has read the standing of a jar plan' },
    sortedOutDryFraction: { ...FRACTION, label: 'Sorted out before the pot, by weight' },
    spareLidFraction: { ...FRACTION, label: 'Spare lids' },
    elevationFt: { kind: 'quantity', unit: 'Ft', min: -1500, max: 20_000, ...RULE, label: 'Elevation' },
    elevationKnownBy: { kind: 'choice', options: ['map', 'phone', 'survey'], label: 'How it is known' },
    canners: { kind: 'table', columns: CANNER_FIELDS, maxRows: 20, label: 'Canners' },
    startClockMin: { kind: 'clock', label: 'Heat goes on' },
    peopleCount: { kind: 'count', min: 1, max: 500, ...RULE, label: 'People at the canners', optional: true },
  },
  /** Values of one canner end in its name: `pressure:A`, `load:A.1`. */
  outputs: {
    dryCornLiquidQt: { label: 'Dry corn', unit: 'LiquidQt' },
    cleanCornLb: { label: 'Clean corn', unit: 'Lb' },
    cornToShellLb: { label: 'Corn to shell', unit: 'Lb' },
    jars: { label: 'Jars', unit: 'Count' },
    rounds: { label: 'Rounds', unit: 'Count' },
    roundJars: { label: 'Jars in the first round', unit: 'Count' },
    loads: { label: 'Canner loads', unit: 'Count' },
    load: { label: 'Jars in this load', unit: 'Count' },
    jarsThrough: { label: 'Jars through this canner', unit: 'Count' },
    pressure: { label: 'By the table', unit: 'PsiGauge' },
    cards: { label: 'Canner cards', unit: 'Count' },
    loadRecords: { label: 'Load records', unit: 'Count' },
    lids: { label: 'Lids', unit: 'Count' },
    saltTsp: { label: 'Salt, if wanted', unit: 'Tsp' },
    saltTbsp: { label: 'Salt, if wanted', unit: 'Tbsp' },
    saltCups: { label: 'Salt, if wanted', unit: 'Cup' },
    processMin: { label: 'At pressure', unit: 'Min' },
    roundMin: { label: 'One round', unit: 'Min' },
    doorToDoorMin: { label: 'Door to door', unit: 'Min' },
    finishClockMin: { label: 'Done', unit: 'ClockMin' },
  },
  sourceKeys: [
    'so-easy-to-preserve-1999',
    'nchfp-hominy-without-lye',
    'usda-aib-539-1994',
    'pnw-421',
    'canner-booklet-load',
  ],
  example: {
    householdsCount: 24,
    jarsPerHouseholdCount: 4,
    jarSize: 'pint',
    cornType: 'flint',
    alkali: 'ash',
    seedPutByAtHome: true,
    standingRead: true,
    sortedOutDryFraction: 0.1,
    spareLidFraction: 0.05,
    elevationFt: 1180,
    elevationKnownBy: 'map',
    startClockMin: 510,
    canners: [
      {
        name: 'A',
        gauge: 'weight',
        capacityPints: 16,
        capacityQuarts: 7,
        heatMin: 20,
        comeUpMin: 8,
        coolToZeroMin: 40,
        unloadMin: 5,
        reloadMin: 10,
      },
      { name: 'B', gauge: 'dial', capacityPints: 9, capacityQuarts: 7 },
    ],
  },
  run: ({ canners, seedPutByAtHome, standingRead, ...rest }) => {
    const outcome = villageDay({
      ...rest,
      isSeedPutByAtHome: seedPutByAtHome,
      isStandingRead: standingRead,
      canners: canners.map(plannedCanner),
    })
    if (outcome.kind === 'refused') {
      return { ok: false, refused: outcome.refused, why: outcome.why, askWhom: outcome.askWhom }
    }
    const { values, reasons, warnings } = outcome
    return { ok: true, values, reasons, warnings }
  },
}
