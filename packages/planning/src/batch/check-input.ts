/** What stops a plan before any arithmetic: a clear word naming value, limit, unit and source. */
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import type { BatchPlanInput } from './input.ts'

/** Nobody's kitchen batch is larger. [lb]  project rule */
export const LARGEST_BATCH_LB = 2000

export interface InputFaultFound {
  readonly refused: string
  readonly why: readonly Sentence[]
}

/** The first thing that stops this plan, or null. */
export function stoppedBy(input: BatchPlanInput): InputFaultFound | null {
  if (input.isTreatedSeed) return { refused: 'treated-seed', why: [say('kettle:treated-seed')] }
  const aluminium = input.pots.find((pot) => pot.material === 'aluminium')
  if (aluminium) return { refused: 'aluminium-pot', why: [say('kettle:aluminium-pot', { pot: aluminium.name })] }
  for (const [name, value, min, max] of numbersOf(input)) {
    if (!(value >= min && value <= max)) {
      return {
        refused: 'out-of-range',
        why: [say('kettle:number-out-of-range', { name, given: String(value), min, max })],
      }
    }
  }
  const shares = input.endings.reduce((sum, { shareFraction }) => sum + shareFraction, 0)
  if (Math.abs(shares - 1) > 1e-6) {
    return {
      refused: 'shares-not-whole',
      why: [say('kettle:shares-not-whole', { shares: { value: shares, unit: 'Fraction' } })],
    }
  }
  const names = [...input.canners.map(({ name }) => name)]
  const twice = names.find((name, index) => names.indexOf(name) < index)
  if (twice !== undefined)
    return { refused: 'two-canners-one-name', why: [say('kettle:two-canners-one-name', { name: twice })] }
  const jars = input.endings.find(({ ending }) => ending === 'jars')?.shareFraction ?? 0
  if (input.from.kind === 'jars' && jars === 0)
    return { refused: 'no-jars-wanted', why: [say('kettle:no-jars-wanted')] }
  return null
}

function numbersOf(input: BatchPlanInput): [name: string, value: number, min: number, max: number][] {
  const optional = (name: string, value: number | undefined, min: number, max: number) =>
    value === undefined ? [] : [[name, value, min, max] as [string, number, number, number]]
  const spread = input.hominyPerDryVolume
  return [
    ...(input.from.kind === 'corn'
      ? optional('corn', input.from.amount.value, Number.MIN_VALUE, LARGEST_BATCH_LB * 453.59237)
      : optional('jars', input.from.jarCount, 1, 2000)),
    ...optional('weight of a liquid qt, lb', input.lbPerLiquidQt, 1, 2),
    ...optional('sorted out dry', input.sortedOutDryFraction, 0, 0.9),
    ...optional('sorted out wet', input.sortedOutWetFraction, 0, 0.9),
    ...optional('helpers', input.shellersCount, 1, 500),
    ...optional('shelling, lb an hour', input.shellingLbPerH, 0.1, 1000),
    ...optional('pot fill limit', input.potFillLimitFraction, 0.1, 2 / 3 + 1e-9),
    ...optional('water to corn by volume', input.waterToCornRatio, 1, 20),
    ...optional('ash, cups a liquid qt', input.alkaliLot?.cupsPerLiquidQt, 0.01, 24),
    ...optional('minutes to slip', input.alkaliLot?.slipMin, 1, 1440),
    ...optional('spare lids', input.spareLidFraction, 0, 1),
    ...(spread
      ? [
          ...optional('hominy per dry volume, low', spread.low, 1, 6),
          ...optional('hominy per dry volume', spread.middle, spread.low, 6),
          ...optional('hominy per dry volume, high', spread.high, spread.middle, 6),
        ]
      : []),
    ...input.pots.flatMap((pot) => optional(`volume of ${pot.name}, liquid qt`, pot.volumeLiquidQt, 0.5, 500)),
    ...input.endings.flatMap(({ ending, shareFraction }) => optional(`share to ${ending}`, shareFraction, 0, 1)),
    ...input.canners.flatMap((canner) => [
      ...optional(`pints in ${canner.name}`, canner.capacityPints, 0, 200),
      ...optional(`quart jars in ${canner.name}`, canner.capacityQuarts, 0, 200),
    ]),
    ...(input.waterRecord
      ? [
          ...optional('corn of the water record, liquid qt', input.waterRecord.cornLiquidQt, 0.1, 500),
          ...input.waterRecord.rows.flatMap((row) => [
            ...optional(`water of ${row.stageKind}, US gal`, row.waterLiquidGal, 0, 500),
            ...optional(`times of ${row.stageKind}`, row.timesCount, 0, 50),
          ]),
        ]
      : []),
  ]
}
