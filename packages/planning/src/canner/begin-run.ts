/** The entry that begins a run, and the run's setup read back from it. Leaves out: asking the keeper anything. */
import { GUIDANCE_EDITION } from '@crib/guidance'
import type { BodyOf, CannerFact, Facts, RunFact } from '@crib/journal'
import { type Json, shownValue } from '@crib/science'
import type { JarSize } from '../batch/input.ts'
import type { CannerCard } from './card.ts'
import { dayOfInstant } from './clock-instants.ts'
import type { GaugeCard } from './gauge-card.ts'
import { cannerLetter, loadCode } from './load-code.ts'
import { publishedRunRules } from './run-rules.ts'
import type { RunSetup } from './run-setup.ts'

type UsedCodes = Pick<Facts, 'runs' | 'foodLots' | 'kitchen'>

/** A code no other load of the book has: the first free round of this letter and day. */
function freeCode({ runs, foodLots, kitchen }: UsedCodes, day: string, letter: string): string {
  const taken = new Set([
    ...Object.values(runs).map(({ begun }) => begun.loadCode),
    ...Object.values(foodLots).map((lot) => lot.loadCode),
  ])
  for (let round = 1; ; round++) {
    const code = loadCode({ kitchenName: kitchen?.name ?? '', day, letter, round })
    if (!taken.has(code)) return code
  }
}

/**
 * The code of a canner's next load: its letter is its place among the book's canners, its round the first that is free.
 *
 * @param day YYYY-MM-DD
 */
export function nextLoadCode(facts: UsedCodes & Pick<Facts, 'canners'>, cannerId: string, day: string): string {
  return freeCode(facts, day, cannerLetter(Math.max(0, Object.keys(facts.canners).indexOf(cannerId))))
}

/** The code of food put up without a canner: bags, trays, tins. `K` as of the kettle. */
export function nextKettleCode(facts: UsedCodes, day: string): string {
  return freeCode(facts, day, 'K')
}

export interface RunToBegin {
  readonly runId: string
  readonly batchId?: string
  readonly canner: Pick<CannerFact, 'cannerId' | 'name'>
  readonly jarSize: JarSize
  readonly jarCount: number
  readonly card: CannerCard
  readonly route: GaugeCard
  /** As confirmHold gave it. [psi or lb] */
  readonly requiredReadingPsi: number
  readonly atMs: number
  readonly zone: string
  readonly households?: readonly string[]
}

/**
 * The body of a `run-begun` entry: the number confirmed, the published minutes, and what the card showed.
 *
 * @throws {RangeError} when the card has no minutes: a run is not begun without published ones.
 */
export function runBegunBody(
  facts: UsedCodes & Pick<Facts, 'canners'>,
  { runId, batchId, canner, jarSize, jarCount, card, route, requiredReadingPsi, atMs, zone, households }: RunToBegin,
): BodyOf<'run-begun'> {
  if (!card.minutes) throw new RangeError('the card shows no published minutes, so no run is begun from it')
  return {
    runId,
    ...(batchId !== undefined && { batchId }),
    cannerId: canner.cannerId,
    cannerName: canner.name,
    loadCode: nextLoadCode(facts, canner.cannerId, dayOfInstant(atMs, zone)),
    jarSize,
    jarCount,
    gauge: route.gauge,
    requiredReadingPsi,
    ventMin: card.vent.value,
    processMin: card.minutes.value,
    edition: GUIDANCE_EDITION,
    cardShown: cardShown(card, route),
    ...(households && households.length > 0 && { households: [...households] }),
  }
}

/** What the card showed, kept with the load, so that its number can be asked about years later. */
function cardShown(card: CannerCard, route: GaugeCard): Json {
  return {
    elevationFt: card.elevation.value,
    elevationKnownBy: card.elevationKnownBy,
    gauge: route.gauge,
    tablePsi: shownValue(route.table),
    holdAtPsi: route.holdAt ? shownValue(route.holdAt) : null,
    standing: card.standing.map(({ key }) => key),
  }
}

/** What a run of the book is measured against; words its clock in the zone it was begun in. */
export function runSetupOf({ begun }: Pick<RunFact, 'begun'>): RunSetup {
  const { gauge, requiredReadingPsi, processMin, ventMin, at } = begun
  return { gauge, requiredReadingPsi, processMin, rules: { ...publishedRunRules(), ventMin }, zone: at.zone }
}
