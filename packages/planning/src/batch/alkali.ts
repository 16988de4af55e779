/**
 * How much alkali goes in: from the keeper's own lot record, or what is printed where there is none.
 * Leaves out: strength of the liquor, pH, and any promise of minutes.
 */
import { printedAshPartsPer10Corn } from '@crib/guidance'
import { convert, type Reckoned, type Sentence } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import type { AlkaliLot, BatchPlanInput } from './input.ts'
import { alkaliBoilRangeMin } from './stages.ts'

const PRINTED_ASH = printedAshPartsPer10Corn()
/** Ash over the sources seen, parts per 10 parts dry corn by volume: 1 to 20.  @source as guidance lists them */
export const ASH_PARTS_PER_10_CORN = {
  low: PRINTED_ASH.low ?? PRINTED_ASH.value,
  high: PRINTED_ASH.high ?? PRINTED_ASH.value,
}
/** Two cups of sifted hardwood ash to one or two liquid quarts. [cups per liquid qt]  common practice, no source */
export const ASH_CUPS_PER_LIQUID_QT = { low: 1, high: 2 } as const
/** Calcium hydroxide by weight of dry corn.  @source naggayi-2020 (1 %); range of commercial masa 0.5 to 1.5 % */
export const LIME_FRACTION = { low: 0.005, middle: 0.01, high: 0.015 } as const
/** Sodium hydroxide, printed with the old directions: 2 oz to 2 liquid qt. [oz per liquid qt]  @source so-easy-to-preserve-1999 */
export const LYE_OZ_PER_LIQUID_QT = 1
/** Baking soda, printed: 2 Tbsp to 1 liquid qt.  @source nchfp-hominy-without-lye */
export const SODA_TBSP_PER_LIQUID_QT = 2

const CUPS_PER_LIQUID_QT = 4

export interface AlkaliPlan {
  readonly values: readonly Reckoned[]
  /** Minutes in alkali: the own slip record first, with the whole range beside it. A time to look in, never a promise. */
  readonly alkaliBoilMin: Reckoned
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

export function alkaliPlan(input: BatchPlanInput, dryCornLiquidQt: number, cleanCornLb: number): AlkaliPlan {
  const { alkali, alkaliLot: lot } = input
  const range = alkaliBoilRangeMin(input.cornType, input.hull, alkali)
  const own = lot?.slipMin
  const isPrinted = alkali === 'sodium-hydroxide' || alkali === 'baking-soda'
  const alkaliBoilMin = reckon({
    id: 'alkaliBoilMin',
    value: own ?? (range.low + range.high) / 2,
    unit: 'Min',
    rounding: nearest(1),
    low: Math.min(range.low, own ?? range.low),
    high: Math.max(range.high, own ?? range.high),
    basis: own !== undefined ? 'own-record' : isPrinted ? 'published' : 'common-practice',
    sourceKeys: isPrinted ? [alkali === 'baking-soda' ? 'nchfp-hominy-without-lye' : 'so-easy-to-preserve-1999'] : [],
    inputs: { cornType: input.cornType, hull: input.hull ?? 'unknown', ownSlipMin: own ?? null },
  })
  const slip =
    own !== undefined
      ? [say('kettle:slip-own', { lot: lot!.name, own: { value: own, unit: 'Min' }, ...minutes(range) })]
      : [say('kettle:slip-range', minutes(range))]
  const dose = doseOf(input, dryCornLiquidQt, cleanCornLb)
  return { ...dose, alkaliBoilMin, reasons: [...dose.reasons, ...slip, say('kettle:rub-not-clock')] }
}

function minutes({ low, high }: { low: number; high: number }) {
  return { low: { value: low, unit: 'Min' }, high: { value: high, unit: 'Min' } } as const
}

function doseOf(input: BatchPlanInput, cornQt: number, cornLb: number): Omit<AlkaliPlan, 'alkaliBoilMin'> {
  switch (input.alkali) {
    case 'ash':
      return ashDose(input.alkaliLot, cornQt)
    case 'calcium-hydroxide': {
      const cornG = convert(cornLb, 'Lb', 'G')
      const lime = reckon({
        id: 'calciumHydroxideG',
        value: LIME_FRACTION.middle * cornG,
        unit: 'G',
        rounding: nearest(0.1),
        low: LIME_FRACTION.low * cornG,
        high: LIME_FRACTION.high * cornG,
        basis: 'published',
        sourceKeys: ['naggayi-2020'],
        inputs: { cleanCornLb: cornLb, fractionOfCorn: LIME_FRACTION.middle },
      })
      return { values: [lime], reasons: [say('kettle:lime-dose')], warnings: [] }
    }
    case 'sodium-hydroxide': {
      const oz = LYE_OZ_PER_LIQUID_QT * cornQt
      const sourceKeys = ['so-easy-to-preserve-1999']
      const inputs = { dryCornLiquidQt: cornQt, ozPerLiquidQt: LYE_OZ_PER_LIQUID_QT }
      return {
        values: [
          reckon({
            id: 'sodiumHydroxideOz',
            value: oz,
            unit: 'Oz',
            rounding: nearest(0.1),
            basis: 'published',
            sourceKeys,
            inputs,
          }),
          reckon({
            id: 'sodiumHydroxideG',
            value: convert(oz, 'Oz', 'G'),
            unit: 'G',
            rounding: nearest(1),
            basis: 'published',
            sourceKeys,
            inputs,
          }),
        ],
        reasons: [say('kettle:lye-printed-only')],
        warnings: [say('kettle:lye-into-cold-water')],
      }
    }
    case 'baking-soda':
      return {
        values: [
          reckon({
            id: 'bakingSodaTbsp',
            value: SODA_TBSP_PER_LIQUID_QT * cornQt,
            unit: 'Tbsp',
            rounding: nearest(0.5),
            basis: 'published',
            sourceKeys: ['nchfp-hominy-without-lye'],
            inputs: { dryCornLiquidQt: cornQt, tbspPerLiquidQt: SODA_TBSP_PER_LIQUID_QT },
          }),
        ],
        reasons: [say('kettle:soda-untested-quality')],
        warnings: [],
      }
  }
}

function ashDose(lot: AlkaliLot | undefined, cornQt: number): Omit<AlkaliPlan, 'alkaliBoilMin'> {
  const own = lot?.cupsPerLiquidQt
  const partsToCups = (parts: number) => (parts / 10) * CUPS_PER_LIQUID_QT * cornQt
  const cups = (own ?? ASH_CUPS_PER_LIQUID_QT.low) * cornQt
  const shared = {
    basis: own === undefined ? ('common-practice' as const) : ('own-record' as const),
    sourceKeys: own === undefined ? PRINTED_ASH.sourceKeys : [],
    inputs: { dryCornLiquidQt: cornQt, cupsPerLiquidQt: own ?? ASH_CUPS_PER_LIQUID_QT.low, ashLot: lot?.name ?? null },
  }
  const low = own === undefined ? partsToCups(ASH_PARTS_PER_10_CORN.low) : undefined
  const high = own === undefined ? partsToCups(ASH_PARTS_PER_10_CORN.high) : undefined
  const asQt = (value: number | undefined) => (value === undefined ? undefined : value / CUPS_PER_LIQUID_QT)
  return {
    values: [
      reckon({ id: 'ashCups', value: cups, unit: 'Cup', rounding: nearest(0.25), low, high, ...shared }),
      reckon({
        id: 'ashLiquidQt',
        value: cups / CUPS_PER_LIQUID_QT,
        unit: 'LiquidQt',
        rounding: nearest(0.01),
        low: asQt(low),
        high: asQt(high),
        ...shared,
      }),
    ],
    reasons: [
      say('kettle:ash-days-before'),
      own === undefined
        ? say('kettle:ash-no-record', ASH_PARTS_PER_10_CORN)
        : say('kettle:ash-own-record', { lot: lot!.name, dose: { value: own, unit: 'Cup' } }),
    ],
    warnings: ashLotWarnings(lot),
  }
}

/** What the ash record does not yet say, and what must never have burnt. */
function ashLotWarnings(lot: AlkaliLot | undefined): readonly Sentence[] {
  const unread = ['burntClean', 'cold', 'sifted', 'lidded'] as const
  const words = { burntClean: 'burnt clean', cold: 'cold', sifted: 'sifted', lidded: 'lidded' }
  const missing = lot ? unread.filter((flag) => lot[flag] === false).map((flag) => words[flag]) : []
  return [
    ...(lot?.judged === 'weak' ? [say('kettle:ash-judged-weak', { lot: lot.name })] : []),
    ...(missing.length > 0 ? [say('kettle:ash-not-ready', { lot: lot!.name, missing: missing.join(', ') })] : []),
    ...(lot?.onlyCleanWood === false ? [say('kettle:ash-unclean-wood', { lot: lot.name })] : []),
  ]
}
