/** A recall in numbers, and the drill that times people, not the program. */
import type { Reckoned, Sentence } from '@crib/science'
import { TO_WHOLE } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { type Recall, recall } from './recall.ts'
import { graphOfBook, type RecallFacts, type RecallGraph } from './recall-graph.ts'
import type { RecalledLot } from './recalled-lots.ts'

export const countValue = (id: string, value: number): Reckoned =>
  reckon({ id, value, unit: 'Count', rounding: TO_WHOLE, basis: 'own-record' })

const sumOf = (lots: readonly RecalledLot[], countOf: (lot: RecalledLot) => number): number =>
  lots.reduce((sum, lot) => sum + countOf(lot), 0)

const givenCount = ({ given }: RecalledLot, named: boolean): number =>
  given.reduce((sum, { toWhom, count }) => ((toWhom !== null) === named ? sum + count : sum), 0)

/** Loads, jars, where the jars are, households, and the share of the jars the book can account for. */
export function recallValues({ loadCodes, lots, households }: Pick<Recall, 'loadCodes' | 'lots' | 'households'>) {
  const jars = sumOf(lots, ({ putUpCount }) => putUpCount)
  const lost = sumOf(lots, (lot) => lot.untoldCount + givenCount(lot, false))
  return [
    countValue('recallLoads', loadCodes.length),
    countValue('recallJars', jars),
    countValue(
      'recallOnShelf',
      sumOf(lots, ({ onShelfCount }) => onShelfCount),
    ),
    countValue(
      'recallGiven',
      sumOf(lots, (lot) => givenCount(lot, true) + givenCount(lot, false)),
    ),
    countValue(
      'recallEaten',
      sumOf(lots, ({ eatenCount }) => eatenCount),
    ),
    countValue('recallHouseholds', households.length),
    ...(jars > 0
      ? [
          reckon({
            id: 'recallAccountedFraction',
            value: (jars - lost) / jars,
            unit: 'Fraction',
            rounding: nearest(0.001),
            basis: 'own-record',
          }),
        ]
      : []),
  ]
}

/** One jar picked, and everything that shares its load. */
export interface RecallDrill {
  readonly loadCode: string
  readonly task: Sentence
  /** What the people should come back with. */
  readonly answer: Recall
}

/**
 * A drill over the load of one code; null in a book without food.
 *
 * @param pick which of the book's codes, handed in so that nothing here is random. [fraction] 0 to below 1.
 * @throws {RangeError} for another pick.
 */
export function recallDrill(
  facts: RecallFacts,
  pick: number,
  graph: RecallGraph = graphOfBook(facts),
): RecallDrill | null {
  if (!(pick >= 0 && pick < 1)) throw new RangeError(`pick is ${pick}; a fraction from 0 to below 1 is needed`)
  const codes = [...graph.nodes.keys()].sort()
  const loadCode = codes[Math.floor(pick * codes.length)]
  if (loadCode === undefined) return null
  return drillOf(facts, loadCode, graph)
}

/** The drill over one code, for one that goes on after a reload; null for a code the book does not know. */
export function drillOf(
  facts: RecallFacts,
  loadCode: string,
  graph: RecallGraph = graphOfBook(facts),
): RecallDrill | null {
  if (!graph.nodes.has(loadCode)) return null
  const answer = recall(facts, { by: 'load', loadCode }, graph)
  return { loadCode, task: say('pantry:recall-drill-task', { code: loadCode }), answer }
}

export interface DrillFound {
  readonly drill: RecallDrill
  /** Lots the people laid hands on or called about. */
  readonly foundLotIds: readonly string[]
  readonly beganAtMs: number
  readonly endedAtMs: number
}

export interface DrillOutcome {
  readonly values: readonly Reckoned[]
  readonly say: Sentence
}

/**
 * How long it took and what was missed.
 *
 * @throws {RangeError} when the end lies before the beginning.
 */
export function drillOutcome({ drill, foundLotIds, beganAtMs, endedAtMs }: DrillFound): DrillOutcome {
  if (!(endedAtMs >= beganAtMs)) throw new RangeError('a drill ends after it began; look at the clock')
  const asked = drill.answer.lots.filter(({ lotId }) => lotId !== null)
  const missed = asked.filter(({ lotId }) => !foundLotIds.includes(lotId!))
  const askedCount = sumOf(asked, findableCount)
  const missedCount = sumOf(missed, findableCount)
  const places = [...new Set(missed.map(({ place, household }) => place ?? household ?? '?'))].join(', ')
  return {
    values: [
      reckon({
        id: 'drillMin',
        value: (endedAtMs - beganAtMs) / 60_000,
        unit: 'Min',
        rounding: nearest(0.1),
        basis: 'own-record',
      }),
      countValue('drillFound', askedCount - missedCount),
      countValue('drillMissed', missedCount),
    ],
    say:
      missedCount === 0
        ? say('pantry:recall-drill-found-all', { count: askedCount })
        : say('pantry:recall-drill-missed', { count: missedCount, places }),
  }
}

/** Jars that may still be found: eaten and thrown out cannot. [count] */
export function findableCount(lot: RecalledLot): number {
  return lot.onShelfCount + givenCount(lot, true)
}
