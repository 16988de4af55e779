/**
 * A pot whose ash has gone flat, once that ash was titrated: the same three rescues in the same order as without a
 * number (batch/ash-advice.ts), now with what each brings. No minute and no pH is told.
 */
import { alkaliEq, convert, liquorIntensity, type Reckoned, type Sentence, type Spread } from '@crib/science'
import { LIME_FRACTION } from '../batch/alkali.ts'
import { ASH_STEP_CUPS, RUB_AGAIN_MIN, type WeakAshInput, weakAshAdvice } from '../batch/ash-advice.ts'
import { LB_PER_LIQUID_QT } from '../shared/corn-measure.ts'
import { nearest, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { ashLiquor } from './alkali-dose.ts'
import { valuesOf, wider } from './fields.ts'

export interface WeakLotInput extends WeakAshInput {
  /** The titrated strength of the lot in the pot. [eq/kg] */
  readonly lotEqPerKg: Spread
  /** Of its alkali, as hydroxide. [fraction] */
  readonly hydroxideFraction: number
  /** A level cup of it. [g] */
  readonly gPerCup: number
  /** Water in the pot. [L] */
  readonly waterL: number
  /** The lot that worked: its strength, its cup, and how much of it to one liquid qt of dry corn. */
  readonly record?: { readonly eqPerKg: number; readonly gPerCup: number; readonly cupsPerLiquidQt: number }
}

export interface WeakLotAdvice {
  readonly values: readonly Reckoned[]
  /** What was found, then the three rescues in order. */
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
  readonly judged: 'weak' | 'unknown'
}

const SOURCES = ['vinegar-titration-worked', 'iupac-weights-2021'] as const
/** Below it the alkali is mostly carbonate. [fraction]  project rule */
const MOSTLY_CARBONATE_FRACTION = 0.3
/** Cups of ash to one liquid qt of corn beyond which there is more ash than kernels. */
const CUPS_LIMIT_PER_LIQUID_QT = 4
/** Just under the boil: the warmest at which calcium carbonate was measured, which falls out and frees hydroxide. [°C] */
const NEAR_BOIL_C = 90

export function weakLotAdvice(input: WeakLotInput): WeakLotAdvice {
  const { lotName, dryCornLiquidQt, ashSoFarCups, lotEqPerKg, hydroxideFraction, gPerCup, waterL, record } = input
  const plain = weakAshAdvice(input)
  const cornKg = convert(dryCornLiquidQt * (input.lbPerLiquidQt ?? LB_PER_LIQUID_QT), 'Lb', 'Kg')
  const value = valuesOf({ ...input, lotEqPerKg: lotEqPerKg.value }, SOURCES)
  const eqPerCup = wider(lotEqPerKg, gPerCup / 1000)
  const inPot = wider(eqPerCup, ashSoFarCups / cornKg)
  const step = wider(eqPerCup, ASH_STEP_CUPS / cornKg)
  const limeG = LIME_FRACTION.middle * cornKg * 1000
  const limeEqPerKg = alkaliEq('calcium-hydroxide', limeG) / cornKg
  const wantedEqPerKg = record
    ? (record.cupsPerLiquidQt * dryCornLiquidQt * (record.gPerCup / 1000) * record.eqPerKg) / cornKg
    : null
  const totalCups = wantedEqPerKg === null ? null : (wantedEqPerKg * cornKg) / Math.max(eqPerCup.value, 1e-6)
  const moreCups = totalCups === null ? null : Math.max(0, totalCups - ashSoFarCups)
  const before = liquorIntensity(ashLiquor((inPot.value * cornKg) / waterL, hydroxideFraction), NEAR_BOIL_C)
  const withLime = liquorIntensity(
    {
      ...ashLiquor((inPot.value * cornKg) / waterL, hydroxideFraction),
      calcium: (limeEqPerKg * cornKg) / 2 / waterL,
    },
    NEAR_BOIL_C,
  )
  const judged = record && lotEqPerKg.high < record.eqPerKg ? 'weak' : plain.judged
  const amountOf = (eqPerKg: number) => ({ value: Number(eqPerKg.toFixed(3)), unit: 'EqPerKg' }) as const
  const cups = (count: number) => ({ value: up4(count), unit: 'Cup' }) as const

  const ashSentences: readonly Sentence[] =
    moreCups === null || totalCups === null
      ? [
          say('kettle:chem-rescue-ash-step', {
            lot: lotName,
            step: { value: ASH_STEP_CUPS, unit: 'Cup' },
            brings: amountOf(step.value),
            again: { value: RUB_AGAIN_MIN, unit: 'Min' },
          }),
        ]
      : [
          say('kettle:chem-rescue-ash-to-record', {
            lot: lotName,
            record: input.recordLotName ?? '',
            step: { value: ASH_STEP_CUPS, unit: 'Cup' },
            brings: amountOf(step.value),
            more: cups(moreCups),
            total: cups(totalCups),
            again: { value: RUB_AGAIN_MIN, unit: 'Min' },
          }),
          ...(totalCups > CUPS_LIMIT_PER_LIQUID_QT * dryCornLiquidQt
            ? [say('kettle:chem-rescue-ash-too-much', { lot: lotName })]
            : []),
        ]
  return {
    judged,
    values: [
      value('lotEqPerKg', lotEqPerKg, 'EqPerKg', 0.01),
      value('inPotEqPerKg', inPot, 'EqPerKg', 0.001),
      ...(wantedEqPerKg === null
        ? []
        : [value('wantedEqPerKg', wantedEqPerKg, 'EqPerKg', 0.001, { basis: 'own-record' })]),
      value('stepEqPerKg', step, 'EqPerKg', 0.001),
      ...(moreCups === null || totalCups === null
        ? []
        : [
            value('moreAshCups', moreCups, 'Cup', 0.25, { rounding: up(0.25) }),
            value('ashInAllCups', totalCups, 'Cup', 0.25, { rounding: up(0.25) }),
            value('moreAshG', moreCups * gPerCup, 'G', 1, { rounding: up(1) }),
          ]),
      value('calciumHydroxideG', limeG, 'G', 0.1, {
        basis: 'published',
        sourceKeys: ['naggayi-2020'],
        rounding: nearest(0.1),
      }),
      value('calciumHydroxideEqPerKg', limeEqPerKg, 'EqPerKg', 0.001),
      ...(before && withLime
        ? [
            value('hydroxideNowMolPerL', before.hydroxideMolPerL, 'MolPerL', 0.0001),
            value('hydroxideWithLimeMolPerL', withLime.hydroxideMolPerL, 'MolPerL', 0.0001),
          ]
        : []),
    ],
    reasons: [
      say('kettle:rub-seen', { slipped: input.slippedCount, rubbed: input.rubbedCount }),
      say('kettle:chem-lot-found', {
        lot: lotName,
        strength: { value: Number(lotEqPerKg.value.toFixed(2)), unit: 'EqPerKg' },
        hydroxide: { value: Number(hydroxideFraction.toFixed(2)), unit: 'Fraction' },
      }),
      ...(record
        ? [
            say('kettle:chem-lot-against', {
              lot: lotName,
              record: input.recordLotName ?? '',
              share: { value: Number((lotEqPerKg.value / record.eqPerKg).toFixed(2)), unit: 'Fraction' },
            }),
          ]
        : []),
      ...(hydroxideFraction < MOSTLY_CARBONATE_FRACTION ? [say('kettle:chem-mostly-carbonate')] : []),
      ...ashSentences,
      say('kettle:rescue-lime', { grams: { value: Number(limeG.toFixed(1)), unit: 'G' } }),
      say('kettle:chem-rescue-lime-numbers', { brings: amountOf(limeEqPerKg) }),
      ...(hydroxideFraction < MOSTLY_CARBONATE_FRACTION ? [say('kettle:chem-rescue-lime-frees')] : []),
      say('kettle:rescue-grind'),
      ...plain.reasons.filter(({ key }) => key === 'kettle:no-single-ratio'),
      ...(judged === 'weak' ? [say('kettle:mark-weak', { lot: lotName })] : []),
    ],
    warnings: plain.warnings,
  }
}

const up4 = (cups: number): number => Math.ceil(cups * 4 - 1e-9) / 4
