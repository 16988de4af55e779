/**
 * Flour, masa and tortillas by weight: what the water does is exact, what the mill and the pan lose is told as a range.
 * Leaves out: how fine it must be ground, which the hand decides.
 */
import { type Reckoned, requireInRange, type Sentence } from '@crib/science'
import { down, nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface FlourInput {
  /** Hominy, drained. [kg] */
  readonly hominyKg: number
  readonly hominyWetFraction: number
  /** Of the dried hominy and its flour. [fraction]  Printed for bought masa flour: 0.0979. */
  readonly flourWetFraction?: number
  /** Left in the mill, in the sieve and on the floor. [fraction of weight] */
  readonly millLossFraction?: number
}

export interface MillAnswer {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/** @source usda-sr masa flour */
const FLOUR_WET_FRACTION = 0.0979
/** Own record should replace it. [fraction]  common practice, no source */
const MILL_LOSS_FRACTION = 0.03

/**
 * Flour from drained hominy: the dry matter is kept, less what the mill keeps. [kg]
 *
 * m2 = m1 (1 - M1)/(1 - M2) (1 - L). 1 kg at 75 %, to 9.79 %, nothing lost: 0.277 kg.
 *
 * @throws {ValidRangeError} outside hominy 0.3 to 0.9, flour 0.02 to 0.2, loss 0 to 0.5.
 * @source hicks-cloud-nch-61; usda-sr for the flour's own water
 */
export function flourFromHominy(input: FlourInput): MillAnswer {
  const {
    hominyKg,
    hominyWetFraction,
    flourWetFraction = FLOUR_WET_FRACTION,
    millLossFraction = MILL_LOSS_FRACTION,
  } = input
  const source = 'project-rule'
  requireInRange('hominyKg', hominyKg, { min: 0, max: 5000, unit: 'kg', source })
  requireInRange('hominyWetFraction', hominyWetFraction, { min: 0.3, max: 0.9, unit: 'of total weight', source })
  requireInRange('flourWetFraction', flourWetFraction, { min: 0.02, max: 0.2, unit: 'of total weight', source })
  requireInRange('millLossFraction', millLossFraction, { min: 0, max: 0.5, unit: 'of weight', source })
  const driedKg = (hominyKg * (1 - hominyWetFraction)) / (1 - flourWetFraction)
  const kg = (id: string, value: number): Reckoned =>
    reckon({
      id,
      value,
      unit: 'Kg',
      rounding: down(0.01),
      basis: 'computed',
      sourceKeys: ['hicks-cloud-nch-61', 'usda-sr'],
      inputs: { ...input },
    })
  return {
    values: [kg('driedKg', driedKg), kg('flourKg', driedKg * (1 - millLossFraction))],
    reasons: [say('keeping:mill-crack-first')],
    warnings: [say('keeping:mill-dry-only')],
  }
}

export interface MasaInput {
  readonly flourKg: number
  readonly flourWetFraction?: number
  /** Of the dough. [fraction]  Plants print 0.45 to 0.56, home recipes come to about 0.60 to 0.65. */
  readonly masaWetFraction: number
  /** Dough for one tortilla. [g] */
  readonly ballG: number
  /** Of the tortilla off the griddle. [fraction]  0.459 in the public table. */
  readonly tortillaWetFraction?: number
}

/** @source usda-sr corn tortilla */
const TORTILLA_WET_FRACTION = 0.4589

/**
 * Water for a dough, its weight, and tortillas from it. [kg, count]
 *
 * Water for each kg of flour: (1 - Mf)/(1 - w) - 1. Flour at 9.79 % to a dough of 55 %: 1.005 L.
 *
 * @throws {ValidRangeError} outside flour 0.02 to 0.2, dough 0.4 to 0.7, ball 5 to 500 g, tortilla drier than its dough.
 * @source usda-sr for the flour's and the tortilla's own water; conservation of dry matter
 */
export function masaFromFlour(input: MasaInput): MillAnswer {
  const {
    flourKg,
    flourWetFraction = FLOUR_WET_FRACTION,
    masaWetFraction,
    ballG,
    tortillaWetFraction = TORTILLA_WET_FRACTION,
  } = input
  const source = 'project-rule'
  requireInRange('flourKg', flourKg, { min: 0, max: 5000, unit: 'kg', source })
  requireInRange('flourWetFraction', flourWetFraction, { min: 0.02, max: 0.2, unit: 'of total weight', source })
  requireInRange('masaWetFraction', masaWetFraction, { min: 0.4, max: 0.7, unit: 'of total weight', source })
  requireInRange('ballG', ballG, { min: 5, max: 500, unit: 'g', source })
  requireInRange('tortillaWetFraction', tortillaWetFraction, {
    min: 0.2,
    max: masaWetFraction,
    unit: 'of total weight',
    source,
  })
  const masaKg = (flourKg * (1 - flourWetFraction)) / (1 - masaWetFraction)
  const tortillaG = (ballG * (1 - masaWetFraction)) / (1 - tortillaWetFraction)
  const common = { basis: 'computed', sourceKeys: ['usda-sr'], inputs: { ...input } } as const
  return {
    values: [
      reckon({ id: 'waterKg', value: masaKg - flourKg, unit: 'Kg', rounding: nearest(0.01), ...common }),
      reckon({ id: 'masaKg', value: masaKg, unit: 'Kg', rounding: nearest(0.01), ...common }),
      reckon({ id: 'tortillas', value: (masaKg * 1000) / ballG, unit: 'Count', rounding: down(1), ...common }),
      reckon({ id: 'tortillaG', value: tortillaG, unit: 'G', rounding: nearest(0.1), ...common }),
    ],
    reasons: [say('keeping:masa-hold-back')],
    warnings: [],
  }
}

export interface RoastInput {
  /** Hominy or soaked kernels, surface dry. [kg] */
  readonly kernelsKg: number
  readonly kernelWetFraction: number
  /** When done. [fraction]  About 0.02 to 0.04, by judgement. */
  readonly roastedWetFraction: number
}

/** Latent heat of water near 100 °C. [MJ/kg]  from memory, not re-read */
const LATENT_MJ_PER_KG = 2.26

/**
 * What is left after roasting, the water driven off, and the least heat that takes. [kg]
 *
 * @throws {ValidRangeError} outside kernels 0.1 to 0.85, roasted 0.01 to 0.1.
 * @source hicks-cloud-nch-61
 */
export function roastedYield(input: RoastInput): MillAnswer {
  const { kernelsKg, kernelWetFraction, roastedWetFraction } = input
  const source = 'project-rule'
  requireInRange('kernelsKg', kernelsKg, { min: 0, max: 5000, unit: 'kg', source })
  requireInRange('kernelWetFraction', kernelWetFraction, { min: 0.1, max: 0.85, unit: 'of total weight', source })
  requireInRange('roastedWetFraction', roastedWetFraction, { min: 0.01, max: 0.1, unit: 'of total weight', source })
  const roastedKg = (kernelsKg * (1 - kernelWetFraction)) / (1 - roastedWetFraction)
  const waterKg = kernelsKg - roastedKg
  const common = { basis: 'computed', sourceKeys: ['hicks-cloud-nch-61'], inputs: { ...input } } as const
  return {
    values: [
      reckon({ id: 'roastedKg', value: roastedKg, unit: 'Kg', rounding: down(0.01), ...common }),
      reckon({ id: 'waterGoneKg', value: waterKg, unit: 'Kg', rounding: up(0.01), ...common }),
    ],
    reasons: [say('keeping:roast-heat', { heat: Math.round(waterKg * LATENT_MJ_PER_KG * 10) / 10 })],
    warnings: [say('keeping:roast-oil'), say('keeping:roast-teeth')],
  }
}
