/**
 * A seed lot of the book on a given day: its age, its germination as its own tests and its store tell it, when to test
 * again, whether to grow it anew; and whether the reserve is met, before anything is food.
 */
import type { SeedLotFact } from '@crib/journal'
import {
  beliefMeanFraction,
  beliefOfTest,
  beliefRangeFraction,
  type GerminationBelief,
  germinationAfter,
  type LotAgeing,
  probitsUntil,
  type Reckoned,
  regrowBelowFraction,
  type Sentence,
  type StoragePeriod,
} from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { ageingOf, LIFE_KEYS, RETEST_AT_MOST_DAYS } from './seed-life.ts'
import { daysForProbits, isStoreKnown, probitsInDays, type SeedStore, storeFault } from './seed-store.ts'
import { testBesideOthers } from './two-tests.ts'

const DAY_MS = 86_400_000
/** Longer than any lot is kept: the last condition known holds on. [days] */
const ONWARD_DAYS = 36_525

/** Days from one day to another, both written as 2026-11-03. [days]  Below zero when the second comes first. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS)
}

function dayAfterDays(from: string, days: number): string {
  return new Date(Date.parse(`${from}T00:00:00Z`) + Math.floor(days) * DAY_MS).toISOString().slice(0, 10)
}

/** The store of a lot as the book tells it: each word on it holds until the next, the first from the day it was put by. */
export function storeOfLot(
  lot: Pick<SeedLotFact, 'putByOn' | 'storeC' | 'kernelWetFraction' | 'storeNotes'>,
): SeedStore {
  const told = [
    { onDay: 0, temperatureC: lot.storeC, wetFraction: lot.kernelWetFraction },
    ...lot.storeNotes.map(({ notedOn, storeC, kernelWetFraction }) => ({
      onDay: Math.max(0, daysBetween(lot.putByOn, notedOn)),
      temperatureC: storeC,
      wetFraction: kernelWetFraction,
    })),
  ]
  const first = {
    temperatureC: told.find((one) => one.temperatureC !== undefined)?.temperatureC,
    wetFraction: told.find((one) => one.wetFraction !== undefined)?.wetFraction,
  }
  if (first.temperatureC === undefined || first.wetFraction === undefined) return {}
  let now = { temperatureC: first.temperatureC, wetFraction: first.wetFraction }
  const record: StoragePeriod[] = []
  for (const [i, one] of told.entries()) {
    now = { temperatureC: one.temperatureC ?? now.temperatureC, wetFraction: one.wetFraction ?? now.wetFraction }
    const until = told[i + 1]?.onDay ?? one.onDay + ONWARD_DAYS
    if (until > one.onDay) record.push({ ...now, days: until - one.onDay })
  }
  return { record }
}

/** The store of a lot from a day on: its last word holds as long as is asked. Nothing where it is not told or off the equation. */
export function storeFromDay(lot: Parameters<typeof storeOfLot>[0], isoDay: string): SeedStore {
  const store = storeOfLot(lot)
  if (!isStoreKnown(store) || storeFault(store)) return {}
  let before = Math.max(0, daysBetween(lot.putByOn, isoDay))
  const record = (store.record ?? []).flatMap((period) => {
    const gone = Math.min(before, period.days)
    before -= gone
    return period.days > gone ? [{ ...period, days: period.days - gone }] : []
  })
  return { record }
}

export interface SeedLotView {
  readonly seedLotId: string
  readonly storedDays: number
  readonly store: SeedStore
  /** Null where the store is not known, or outside the equation: then only the newest test speaks. */
  readonly ageing: LotAgeing | null
  /** Germination today; null with neither a test nor a store. */
  readonly germination: GerminationBelief | null
  /** `nowFraction`, `kernelsLeft`, as far as they are known. */
  readonly values: readonly Reckoned[]
  /** ISO 8601. */
  readonly testAgainBy: string
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/** A lot on a day, from its facts alone.  @param today ISO 8601: 2027-04-02 */
export function seedLotView(lot: SeedLotFact, today: string): SeedLotView {
  const storedDays = Math.max(0, daysBetween(lot.putByOn, today))
  const store = storeOfLot(lot)
  const fault = storeFault(store)
  const isKnown = isStoreKnown(store) && fault === null
  const inOrder = lot.tests.filter(({ testedOn }) => testedOn >= lot.putByOn && testedOn <= today)
  const tests = inOrder.map(({ testedOn, sproutedCount, ofCount }) => ({
    afterDays: daysBetween(lot.putByOn, testedOn),
    sproutedCount,
    testedCount: ofCount,
  }))
  const last = tests.at(-1)
  const dated = inOrder.map(({ testedOn, sproutedCount, ofCount }) => ({
    testedOn,
    sproutedCount,
    testedCount: ofCount,
  }))
  const newest = dated.pop()
  const beside = newest && testBesideOthers(newest, dated)
  const ageing = isKnown ? ageingOf({ ...store, tests }) : null
  const germination = ageing
    ? germinationAfter(ageing, probitsInDays(store, storedDays))
    : last
      ? beliefOfTest(last)
      : null
  const first = tests[0]
  const regrowBelow =
    first && first.sproutedCount / first.testedCount >= 0.5
      ? regrowBelowFraction(first.sproutedCount / first.testedCount)
      : null
  const now = germination && beliefMeanFraction(germination)
  return {
    seedLotId: lot.seedLotId,
    storedDays,
    store,
    ageing,
    germination,
    values: [
      ...(germination && now !== null ? [nowValue(germination, now, ageing !== null)] : []),
      ...(lot.kernels ? [leftValue(lot.kernels.leftCount)] : []),
    ],
    testAgainBy: testAgainBy(lot, { ageing, store, storedDays, today, lastAfterDays: last?.afterDays ?? null }),
    reasons: [
      ...(lot.parentEarsCount === undefined ? [] : [say('seed:lot-parents', { ears: lot.parentEarsCount })]),
      ...(ageing ? [] : [say(last ? 'seed:lot-newest-test-only' : 'seed:lot-nothing-known')]),
    ],
    warnings: [
      ...(fault ? [fault.why] : []),
      ...(lot.tests.some(({ testedOn }) => testedOn < lot.putByOn)
        ? [say('seed:test-before-put-by', { putBy: lot.putByOn })]
        : []),
      ...(beside?.agree === false ? beside.sentences : []),
      ...(now !== null && regrowBelow !== null && now < regrowBelow
        ? [
            say('seed:grow-out', {
              now: { value: Number(now.toFixed(2)), unit: 'Fraction' },
              below: { value: regrowBelow, unit: 'Fraction' },
            }),
          ]
        : []),
      ...(lot.kernels && lot.kernels.leftCount < 0
        ? [say('seed:kernels-below-none', { short: -lot.kernels.leftCount })]
        : []),
    ],
  }
}

function nowValue(germination: GerminationBelief, value: number, isAged: boolean): Reckoned {
  const { low, high } = beliefRangeFraction(germination, 0.9)
  return reckon({
    id: 'nowFraction',
    value,
    low,
    high,
    unit: 'Fraction',
    rounding: nearest(0.01),
    basis: 'computed',
    sourceKeys: isAged ? LIFE_KEYS : ['jeffreys-1946'],
  })
}

function leftValue(left: number): Reckoned {
  return reckon({ id: 'kernelsLeft', value: left, unit: 'Count', rounding: nearest(1), basis: 'own-record' })
}

/** A third of the time until the low end has lost a seventh of its life, at the latest a year after the newest test. */
function testAgainBy(
  lot: Pick<SeedLotFact, 'putByOn'>,
  {
    ageing,
    store,
    storedDays,
    today,
    lastAfterDays,
  }: { ageing: LotAgeing | null; store: SeedStore; storedDays: number; today: string; lastAfterDays: number | null },
): string {
  if (lastAfterDays === null) return today
  const latest = lastAfterDays + RETEST_AT_MOST_DAYS
  if (!ageing) return dayAfterDays(lot.putByOn, latest)
  const atTest = beliefMeanFraction(germinationAfter(ageing, probitsInDays(store, lastAfterDays)))
  const end = Math.min(0.999, Math.max(0.01, 0.85 * atTest))
  const early = daysForProbits(
    store,
    Math.max(probitsUntil(ageing, end, [0.05])[0]!, probitsInDays(store, lastAfterDays)),
  )
  const due = Math.min(latest, lastAfterDays + (early - lastAfterDays) / 3)
  return dayAfterDays(lot.putByOn, Math.max(due, Math.min(storedDays, lastAfterDays)))
}

export interface ReserveStanding {
  readonly heldKernels: number
  readonly neededKernels: number
  /** Nothing is food until it is met. */
  readonly isMet: boolean
  readonly places: readonly string[]
  readonly sentences: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/** Whether lots hold the reserve, and in how many containers and places. Lots never counted hold nothing by this book. */
export function reserveStanding(lots: readonly SeedLotFact[], neededKernels: number): ReserveStanding {
  const heldKernels = lots.reduce((sum, { kernels }) => sum + Math.max(0, kernels?.leftCount ?? 0), 0)
  const uncounted = lots.filter(({ kernels }) => kernels === null)
  const containers = lots.flatMap((lot) => lot.containers)
  const places = [...new Set(containers.map(({ place }) => place))]
  const isMet = heldKernels >= neededKernels
  return {
    heldKernels,
    neededKernels,
    isMet,
    places,
    sentences: [
      say('seed:first'),
      isMet
        ? say('seed:reserve-met', { held: heldKernels, needed: neededKernels })
        : say('seed:reserve-short', { held: heldKernels, needed: neededKernels, short: neededKernels - heldKernels }),
    ],
    warnings: [
      ...(containers.length < 2 || places.length < 2 ? [say('seed:two-places')] : []),
      ...uncounted.map(({ name }) => say('seed:lot-not-counted', { name })),
    ],
  }
}
