/** Cellar, cupboard or freezer, and how dry: how long each would keep this seed above a germination, side by side. */
import { type CalcResult, type LotAgeing, probitsUntil, type Reckoned } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { refusedFor, testFault } from './germination.ts'
import { ageingOf, KEEP_ABOVE_FRACTION, LIFE_KEYS, storeWarnings } from './seed-life.ts'
import { daysForProbits, storeFault } from './seed-store.ts'

export interface StoreWay {
  /** In the keeper's words: cellar, freezer. */
  readonly name: string
  readonly wetFraction: number
  readonly temperatureC: number
}

export interface SeedWhatIfInput {
  /** A test of the lot as it is now; none: sound fresh seed is taken. */
  readonly sproutedCount?: number
  readonly testedCount?: number
  /** Default 0.85. */
  readonly keepAboveFraction?: number
  readonly ways: readonly StoreWay[]
}

/** The ends of the band and its middle. [share] */
const ENDS = [0.05, 0.5, 0.95] as const

/** Probits this seed may still lose: early, middle, late. The same for every way, so that a slider need not ask again. */
export function probitsLeft(ageing: LotAgeing, keepAboveFraction: number): readonly [number, number, number] {
  return probitsUntil(ageing, keepAboveFraction, ENDS) as [number, number, number]
}

/**
 * Years each way keeps this seed above a germination, with the band of nine lots in ten. [years]
 *
 * @source ellis-roberts-1980
 */
export function seedWhatIf(input: SeedWhatIfInput): CalcResult {
  const { sproutedCount, testedCount, keepAboveFraction = KEEP_ABOVE_FRACTION, ways } = input
  const isTested = sproutedCount !== undefined && testedCount !== undefined
  const fault = isTested ? testFault({ sproutedCount, testedCount }) : null
  if (fault) return refusedFor(fault)
  if (ways.length === 0) return refusedFor({ code: 'no-ways', why: say('seed:no-ways') })
  for (const way of ways) {
    const wrong = storeFault(way)
    if (wrong) return refusedFor(wrong)
  }
  const ageing = ageingOf({ tests: isTested ? [{ afterDays: 0, sproutedCount, testedCount }] : [] })
  const probits = probitsLeft(ageing, keepAboveFraction)
  const inputs = { ...input } as unknown as Reckoned['inputs']
  return {
    ok: true,
    values: ways.map((way, i) => {
      const [low, value, high] = probits.map((one) => (one === 0 ? 0 : daysForProbits(way, one) / 365.25)) as [
        number,
        number,
        number,
      ]
      return reckon({
        id: `yearsAbove:${wayName(ways, i)}`,
        value,
        low,
        high,
        unit: 'Years',
        rounding: nearest(0.1),
        basis: 'computed',
        sourceKeys: LIFE_KEYS,
        inputs,
      })
    }),
    reasons: [
      isTested ? say('seed:life-one-test') : say('seed:life-from-equation'),
      say('seed:drier-and-colder'),
      say('seed:life-is-a-band'),
    ],
    warnings: [
      ...(probits[1] === 0
        ? [say('seed:below-already', { keep: { value: keepAboveFraction, unit: 'Fraction' } })]
        : []),
      ...storeWarnings({
        record: ways.map(({ wetFraction, temperatureC }) => ({ days: 1, wetFraction, temperatureC })),
      }),
    ],
  }
}

/** Two ways of one name are told apart by their place. */
function wayName(ways: readonly StoreWay[], index: number): string {
  const name = ways[index]!.name.replaceAll(':', ' ')
  return ways.findIndex((way) => way.name.replaceAll(':', ' ') === name) === index ? name : `${name} ${index + 1}`
}
