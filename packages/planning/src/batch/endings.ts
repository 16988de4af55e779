/** The other ends of a batch: freezer, trays, flour, roast, tonight's pot. Amounts with their ranges; fresh, frozen and dried first. */
import { ceilCount, type Reckoned, type Sentence } from '@crib/science'
import { nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { HOMINY_LB_PER_LIQUID_QT } from './corn.ts'
import type { Ending, Spread } from './input.ts'

/** A freezer bag.  common practice, no source */
export const BAG_LIQUID_QT = 0.5
/** One tray of hominy in a single layer. [liquid qt]  common practice, no source */
export const TRAY_LIQUID_QT = 1
/** Weight left when hominy dries from 75 % water (82.5 % at the low end) to 10 %.  computed; end point @source usda-sr */
export const DRIED_FRACTION = { low: 0.175 / 0.9, middle: 0.25 / 0.9, high: 0.3 / 0.9 } as const
/** Flour per weight of dry corn at 13 % water, 10 % of solids lost (5 to 17 %), flour at 10 % water. @source fao-maize-1992 */
export const FLOUR_FRACTION = {
  low: (0.87 * 0.83) / 0.9,
  middle: (0.87 * 0.9) / 0.9,
  high: (0.87 * 0.95) / 0.9,
} as const
/** Parched down to 2 to 4 % water from the same solids.  judgement, common practice, no source */
const ROASTED_PER_DRIED = 0.9 / 0.97

export interface EndingPlan {
  readonly ending: Ending
  readonly shareFraction: number
  readonly values: readonly Reckoned[]
  readonly sentences: readonly Sentence[]
}

export interface EndingCorn {
  /** This ending's share. [liquid qt] */
  readonly hominyQt: Spread
  /** This ending's share. [lb] */
  readonly dryCornLb: number
  /** Whether the hominy volume stands on the keeper's own records. */
  readonly isOwnRecord: boolean
}

/** One ending's amounts. */
export function endingPlan(
  ending: Exclude<Ending, 'jars'>,
  shareFraction: number,
  { hominyQt, dryCornLb, isOwnRecord }: EndingCorn,
): EndingPlan {
  const inputs = { shareFraction, hominyLiquidQt: hominyQt.middle, dryCornLb }
  const volume = reckon({
    id: `${ending}HominyLiquidQt`,
    value: hominyQt.middle,
    unit: 'LiquidQt',
    rounding: nearest(0.1),
    low: hominyQt.low,
    high: hominyQt.high,
    basis: isOwnRecord ? 'own-record' : 'published',
    sourceKeys: isOwnRecord ? [] : ['so-easy-to-preserve-1999', 'hominy-yield-statements'],
    inputs,
  })
  const hominyLb = (qt: number) => qt * HOMINY_LB_PER_LIQUID_QT
  const weight = (id: string, of: Spread, sourceKeys: readonly string[]) =>
    reckon({
      id,
      value: of.middle,
      unit: 'Lb',
      rounding: nearest(0.1),
      low: of.low,
      high: of.high,
      basis: 'computed',
      sourceKeys,
      inputs,
    })
  const pieces = (id: string, each: number) =>
    reckon({
      id,
      value: ceilCount(hominyQt.middle / each),
      unit: 'Count',
      rounding: up(1),
      low: hominyQt.low / each,
      high: hominyQt.high / each,
      basis: 'common-practice',
      inputs: { ...inputs, eachLiquidQt: each },
    })
  // Solids are what is conserved: the dried weight follows the corn, not how far the kernels swelled.
  const driedLb = {
    low: hominyLb(hominyQt.middle) * DRIED_FRACTION.low,
    middle: hominyLb(hominyQt.middle) * DRIED_FRACTION.middle,
    high: hominyLb(hominyQt.middle) * DRIED_FRACTION.high,
  }
  switch (ending) {
    case 'freezer':
      return {
        ending,
        shareFraction,
        values: [
          volume,
          pieces('freezerBags', BAG_LIQUID_QT),
          weight(
            'freezerLb',
            { low: hominyLb(hominyQt.low), middle: hominyLb(hominyQt.middle), high: hominyLb(hominyQt.high) },
            ['usda-sr'],
          ),
        ],
        sentences: [say('keeping:freezer')],
      }
    case 'dried':
      return {
        ending,
        shareFraction,
        values: [volume, pieces('trays', TRAY_LIQUID_QT), weight('driedLb', driedLb, ['usda-sr'])],
        sentences: [say('keeping:dried')],
      }
    case 'flour':
      return {
        ending,
        shareFraction,
        values: [
          volume,
          weight(
            'flourLb',
            {
              low: dryCornLb * FLOUR_FRACTION.low,
              middle: dryCornLb * FLOUR_FRACTION.middle,
              high: dryCornLb * FLOUR_FRACTION.high,
            },
            ['fao-maize-1992', 'usda-sr'],
          ),
        ],
        sentences: [say('keeping:flour')],
      }
    case 'roasted':
      return {
        ending,
        shareFraction,
        values: [
          volume,
          weight(
            'roastedLb',
            {
              low: driedLb.low * ROASTED_PER_DRIED,
              middle: driedLb.middle * ROASTED_PER_DRIED,
              high: driedLb.high * ROASTED_PER_DRIED,
            },
            ['usda-sr'],
          ),
        ],
        sentences: [say('keeping:roasted')],
      }
    case 'tonight':
      return { ending, shareFraction, values: [volume], sentences: [say('keeping:tonight')] }
  }
}
