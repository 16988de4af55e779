import { type Calc, type CookBalance, cookBalance, type Spread, wetFractionOfSample } from '@crib/science'
import { say } from '../shared/say.ts'
import { amount, type ValueMaker, valuesOf } from './fields.ts'

interface CookBalanceForm {
  readonly cornKg: number
  readonly cornWetFraction?: number
  readonly hominyKg: number
  readonly hominyWetFraction?: number
  readonly sampleWetG?: number
  readonly sampleDryG?: number
  readonly tailsKg?: number
}

const sourceKeys = ['fao-maize-1992', 'rankin-wisconsin-bushels', 'usda-sr'] as const

/** Nobody measured it: between USDA's dry grain and the bushel's legal 15.5 %.  @source usda-sr; rankin-wisconsin-bushels */
const STORED_CORN_WET: Spread = { value: 0.13, low: 0.1, high: 0.155 }
/** Nobody measured it: firm to full, whole and drained.  project rule; canned hominy holds 82.5 % (usda-sr) */
const DRAINED_HOMINY_WET: Spread = { value: 0.72, low: 0.65, high: 0.78 }
/** How far a kitchen's own measurement may be off, either way. [fraction of total weight]  project rule */
const CORN_OFF = 0.01
const HOMINY_OFF = 0.02
/** Dry matter lost in alkali cooking, in print: steam, 5.7 %, to rural, 17.1 %.  @source fao-maize-1992 chapter 5 */
const PRINTED_LOSS = { low: 0.057, high: 0.171 } as const

const about = (value: number, off: number): Spread => ({
  value,
  low: Math.max(0, value - off),
  high: Math.min(0.95, value + off),
})

export const cookBalanceCalc: Calc<CookBalanceForm> = {
  id: 'cook-balance',
  title: 'Where the dry matter went',
  question:
    'Of the dry matter of a pot of corn, how much is in the hominy, how much was sorted out, how much was lost?',
  inputs: {
    cornKg: amount('Dry corn that went into the pot', 'Kg', 0.01, 5000),
    cornWetFraction: amount('Its moisture, wet basis, where measured', 'Fraction', 0.01, 0.5, { optional: true }),
    hominyKg: amount('Hominy kept, drained', 'Kg', 0.001, 5000),
    hominyWetFraction: amount('Its moisture, wet basis, where known', 'Fraction', 0.05, 0.95, { optional: true }),
    sampleWetG: amount('Or a sample of it, drained', 'G', 1, 10_000, { optional: true }),
    sampleDryG: amount('the same sample, dried', 'G', 0.1, 10_000, { optional: true }),
    tailsKg: amount('Sorted out after the cook, drained', 'Kg', 0, 5000, { optional: true }),
  },
  outputs: {
    hominyPerCorn: { label: 'Hominy for each weight of dry corn', unit: 'Count' },
    inKg: { label: 'Dry matter in', unit: 'Kg' },
    hominyDryKg: { label: 'of it in the hominy', unit: 'Kg' },
    tailsDryKg: { label: 'of it sorted out', unit: 'Kg' },
    lossKg: { label: 'Hulls, tips and liquor, by difference', unit: 'Kg' },
    lossFraction: { label: 'Share of the dry matter lost', unit: 'Fraction' },
  },
  sourceKeys,
  example: { cornKg: 1, cornWetFraction: 0.104, hominyKg: 2.69, hominyWetFraction: 0.7, tailsKg: 0 },
  run: (input) => {
    const { cornKg, cornWetFraction, hominyKg, sampleWetG, sampleDryG, tailsKg = 0 } = input
    if (sampleWetG !== undefined && sampleDryG !== undefined && sampleDryG > sampleWetG) {
      const gaps = { wet: { value: sampleWetG, unit: 'G' }, dry: { value: sampleDryG, unit: 'G' } } as const
      return { ok: false, refused: 'sample-gained', why: [say('kettle:balance-sample-gained', gaps)], askWhom: [] }
    }
    const isSampled = sampleWetG !== undefined && sampleDryG !== undefined
    const hominyWet = input.hominyWetFraction ?? (isSampled ? wetFractionOfSample(sampleWetG, sampleDryG) : undefined)
    const balance = cookBalance({
      cornKg,
      cornWetFraction: cornWetFraction === undefined ? STORED_CORN_WET : about(cornWetFraction, CORN_OFF),
      hominyKg,
      hominyWetFraction: hominyWet === undefined ? DRAINED_HOMINY_WET : about(hominyWet, HOMINY_OFF),
      tailsKg,
    })
    if (balance.lossKg.value < 0) return moreOutThanIn(balance)
    const isMeasured = hominyWet !== undefined && cornWetFraction !== undefined
    return {
      ok: true,
      values: valuesOfBalance(balance, valuesOf(input, sourceKeys)),
      reasons: [
        say('kettle:balance-by-difference'),
        say('kettle:balance-printed', {
          low: { value: PRINTED_LOSS.low, unit: 'Fraction' },
          high: { value: PRINTED_LOSS.high, unit: 'Fraction' },
        }),
        ...(cornWetFraction === undefined ? [say('kettle:balance-corn-not-measured', spread(STORED_CORN_WET))] : []),
        ...(hominyWet === undefined ? [say('kettle:balance-hominy-not-measured', spread(DRAINED_HOMINY_WET))] : []),
        ...(isMeasured ? [] : [say('kettle:balance-how-to-measure')]),
        ...(balance.lossKg.low < 0 ? [say('kettle:balance-may-be-none')] : []),
      ],
      warnings: [],
    }
  },
}

function moreOutThanIn({ inKg, hominyDryKg, tailsDryKg, leastWetFraction }: CookBalance) {
  const kg = (value: number) => ({ value: Number(value.toFixed(3)), unit: 'Kg' as const })
  const why = [
    say('kettle:balance-more-out', { out: kg(hominyDryKg.value + tailsDryKg.value), in: kg(inKg.value) }),
    say('kettle:balance-least-water', {
      least: { value: Math.ceil(leastWetFraction * 100) / 100, unit: 'Fraction' },
    }),
    say('kettle:balance-how-to-measure'),
  ]
  return { ok: false, refused: 'more-out-than-in', why, askWhom: [] } as const
}

function valuesOfBalance(balance: CookBalance, value: ValueMaker) {
  const { hominyPerCorn, inKg, hominyDryKg, tailsDryKg, lossKg, lossFraction } = balance
  // More dry matter than went in cannot come out: there the range ends.
  const cut = ({ value: middle, low, high }: Spread): Spread => ({ value: middle, low: Math.max(0, low), high })
  return [
    value('hominyPerCorn', hominyPerCorn, 'Count', 0.01),
    value('inKg', inKg, 'Kg', 0.01),
    value('hominyDryKg', hominyDryKg, 'Kg', 0.01),
    ...(tailsDryKg.value > 0 ? [value('tailsDryKg', tailsDryKg, 'Kg', 0.001)] : []),
    value('lossKg', cut(lossKg), 'Kg', 0.01),
    value('lossFraction', cut(lossFraction), 'Fraction', 0.01),
  ]
}

function spread({ low, high }: Spread) {
  return { low: { value: low, unit: 'Fraction' }, high: { value: high, unit: 'Fraction' } } as const
}
