/**
 * What a made-up run does to the food at the slowest place of a made-up jar: thiamine left, and how long a boil it is worth.
 * Food nearer the glass of a solid pack gets more. For study alone, as jar-study.ts.
 */
import { type Band, bandsOf, type Spreads, type Swing, swingsOf, type Values } from './band.ts'
import { createJarHeating, type JarInput, jarSpreads, type MadeUpRun, STEP_S } from './jar-study.ts'
import { curveLethalityMin, keptFraction, THIAMINE } from './kill-and-cook.ts'
import { COOK_VALUE, COOKED_Z_DELTA_C, THIAMINE_Z_DELTA_C } from './softening.ts'

export type QualityInput = Exclude<JarInput, 'zDeltaC'> | 'thiamineZDeltaC' | 'cookedZDeltaC'

export interface JarQuality {
  /** Carrot puree, the middle, lies at the edge of what is published; the band is widened to hold it. [fraction] */
  readonly thiamineKeptFraction: Band
  /** At 100 °C. [min] */
  readonly cookedMin: Band
  /** Of the boil it is worth. */
  readonly swings: readonly Swing<QualityInput>[]
}

/**
 * Thiamine left and the cook value of a made-up jar, through heating and cooling, with the middle nine tenths of each.
 *
 * @param samplesCount Valid: 64 to 1 000 000.
 * @throws {ValidRangeError} for a run or a count out of range.
 * @source crc-kinetics-table-10-10 for thiamine, lee-2017-texture for softening; the curve as in studyJar
 */
export function studyQuality(run: MadeUpRun, samplesCount: number): JarQuality {
  const { zDeltaC, ...jar } = jarSpreads(run)
  const spreads: Spreads<QualityInput> = {
    ...jar,
    thiamineZDeltaC: THIAMINE_Z_DELTA_C,
    cookedZDeltaC: COOKED_Z_DELTA_C,
  }
  const heat = createJarHeating(run)
  const curveOf = (values: Values<QualityInput>) => ({
    temperaturesC: heat({ ...values, zDeltaC: zDeltaC.mid }).temperaturesC,
    stepS: STEP_S,
  })
  type Curve = ReturnType<typeof curveOf>
  const keptOf = (curve: Curve, thiamineZDeltaC: number) =>
    keptFraction(curve, { ...THIAMINE, zDeltaC: thiamineZDeltaC })
  const cookedOf = (curve: Curve, cookedZDeltaC: number) =>
    curveLethalityMin(curve, { ...COOK_VALUE, zDeltaC: cookedZDeltaC })
  const [thiamineKeptFraction, cookedMin] = bandsOf(
    spreads,
    (values) => {
      const curve = curveOf(values)
      return [keptOf(curve, values.thiamineZDeltaC), cookedOf(curve, values.cookedZDeltaC)]
    },
    samplesCount,
  )
  return {
    thiamineKeptFraction: withMiddle(thiamineKeptFraction!),
    cookedMin: cookedMin!,
    swings: swingsOf(spreads, (values) => cookedOf(curveOf(values), values.cookedZDeltaC)),
  }
}

function withMiddle(band: Band): Band {
  return { ...band, low: Math.min(band.low, band.mid), high: Math.max(band.high, band.mid) }
}
