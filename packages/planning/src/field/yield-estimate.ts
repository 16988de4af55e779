/** What a standing crop may bring, by ears counted at several places, or a crop brought in by weighing a part. */
import {
  convert,
  MARKET_WET_FRACTION,
  type Reckoned,
  type Sentence,
  thousandKernelsPerBushel,
  thousandthAcreRowFt,
  yieldByEarsBuPerAcre,
  yieldByWeightKgPerM2,
} from '@crib/science'
import { down, nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface CountedPlace {
  /** Ears on the length of row looked at. */
  readonly earsCount: number
  readonly rowFt: number
  /** Means over about every fifth ear. */
  readonly kernelRows: number
  readonly kernelsPerRow: number
}

export interface Estimate {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/** "10 to 20 % or more": a single figure would say too much.  purdue-yield-component; the width is from memory. [fraction] */
const OFF_BY = 0.2

export function estimateByEars({
  places,
  rowSpacingFt,
  gPerThousand,
  areaM2,
}: {
  readonly places: readonly CountedPlace[]
  readonly rowSpacingFt: number
  readonly gPerThousand: number
  readonly areaM2?: number | undefined
}): Estimate {
  const thousandthFt = thousandthAcreRowFt(rowSpacingFt)
  const each = places.map(({ earsCount, rowFt, kernelRows, kernelsPerRow }) =>
    yieldByEarsBuPerAcre({
      earsPerThousandthAcre: (earsCount * thousandthFt) / rowFt,
      kernelRows,
      kernelsPerRow,
      thousandKernelsPerBushel: thousandKernelsPerBushel(gPerThousand),
    }),
  )
  const mean = each.reduce((sum, one) => sum + one, 0) / each.length
  const low = Math.min(...each, mean * (1 - OFF_BY))
  const high = Math.max(...each, mean * (1 + OFF_BY))
  return {
    values: yields({ mean, low, high, areaM2, sourceKeys: ['purdue-yield-component', 'wisconsin-l033-2015'] }),
    reasons: [say('field:yield-from-milk-stage'), say('field:yield-places', { count: places.length })],
    warnings: places.length < 3 ? [say('field:yield-more-places')] : [],
  }
}

export function estimateByWeight(part: {
  readonly earCornKg: number
  readonly kernelWetFraction: number
  readonly areaOfPartM2: number
  readonly areaM2?: number | undefined
}): Estimate {
  const kgPerM2 = yieldByWeightKgPerM2({ ...part, areaM2: part.areaOfPartM2 })
  const mean = convert(kgPerM2 * 10_000, 'KgPerHa', 'BuPerAcre')
  return {
    values: yields({ mean, areaM2: part.areaM2, sourceKeys: ['agf-502-2018', 'wisconsin-l033-2015'] }),
    reasons: [say('field:yield-weighed', { moisture: { value: MARKET_WET_FRACTION, unit: 'Fraction' } })],
    warnings: [],
  }
}

interface YieldSpread {
  readonly mean: number
  readonly low?: number
  readonly high?: number
  readonly areaM2: number | undefined
  readonly sourceKeys: readonly string[]
}

function yields({ mean, low, high, areaM2, sourceKeys }: YieldSpread): Reckoned[] {
  const at = (per: number) => ({ value: mean * per, low: low && low * per, high: high && high * per })
  const kgPerHa = convert(1, 'BuPerAcre', 'KgPerHa')
  const shared = { basis: 'computed', sourceKeys } as const
  const lbPerBu = areaM2 === undefined ? undefined : convert((kgPerHa * areaM2) / 10_000, 'Kg', 'Lb')
  return [
    reckon({ id: 'yieldBuPerAcre', unit: 'BuPerAcre', rounding: nearest(1), ...at(1), ...shared }),
    reckon({ id: 'yieldKgPerHa', unit: 'KgPerHa', rounding: nearest(10), ...at(kgPerHa), ...shared }),
    ...(lbPerBu === undefined
      ? []
      : [reckon({ id: 'harvestLb', unit: 'Lb', rounding: down(1), ...at(lbPerBu), ...shared })]),
  ]
}

export type PartOutcome =
  | { readonly kind: 'told'; readonly estimate: Estimate }
  | { readonly kind: 'refused'; readonly why: readonly Sentence[]; readonly askWhom: readonly Sentence[] }

/** Kernels the table of ears to shelled corn reaches.  agf-502-2018 [fraction, wet basis] */
const TABLE_WET = { min: 0.1, max: 0.28 } as const

/** A part of so many metres by so many, husked and weighed; refused off the table of ears to shelled corn. */
export function estimateByPart({
  lengthM,
  widthM,
  ...part
}: Omit<Parameters<typeof estimateByWeight>[0], 'areaOfPartM2'> & {
  readonly lengthM: number
  readonly widthM: number
}): PartOutcome {
  const { kernelWetFraction } = part
  if (!(kernelWetFraction >= TABLE_WET.min && kernelWetFraction <= TABLE_WET.max)) {
    const moisture = { value: Number(kernelWetFraction.toFixed(3)), unit: 'Fraction' } as const
    const why = [say('field:ears-off-the-table', { moisture })]
    return { kind: 'refused', why, askWhom: [say('field:ears-off-the-table-do')] }
  }
  return { kind: 'told', estimate: estimateByWeight({ ...part, areaOfPartM2: lengthM * widthM }) }
}
