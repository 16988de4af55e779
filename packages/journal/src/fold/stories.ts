/** One story's lines into its facts. Leaves out what crosses stories: balances and questions (balance.ts, questions.ts). */
import type { BodyOf, Kind } from '../kinds/index.ts'
import type {
  AlkaliLotFact,
  BatchFact,
  CannerFact,
  CornLotFact,
  FoodLotFact,
  KitchenFact,
  LedgerLine,
  PhotoFact,
  RunFact,
  Told,
} from './facts.ts'

export function told<K extends Kind>(lines: readonly LedgerLine[], kind: K): Told<BodyOf<K>>[] {
  return lines.filter((line) => line.kind === kind).map(tellLine) as Told<BodyOf<K>>[]
}

function tellLine({ body, instant, zone, id, personId, deviceId, visibility }: LedgerLine): unknown {
  return { ...(body as object), at: { instant, zone, entryId: id, personId, deviceId, visibility } }
}

export function kitchenStory(lines: readonly LedgerLine[]): KitchenFact | null {
  const first = lines[0]
  if (!first) return null
  const kitchenId = (first.body as { kitchenId: string }).kitchenId
  const opened = lines.findLast(({ kind }) => kind === 'kitchen-opened')?.body as BodyOf<'kitchen-opened'> | undefined
  const noted = lines.filter(({ kind }) => kind === 'kitchen-noted').map(({ body }) => body as object)
  return { ...Object.assign({}, ...noted), kitchenId, name: opened?.name ?? '', demo: opened?.demo ?? false }
}

export function cornLotStory(lines: readonly LedgerLine[]): CornLotFact | null {
  const lot = told(lines, 'corn-lot-brought-in').at(-1)
  if (!lot) return null
  const sorts = told(lines, 'corn-sorted')
  const shellings = told(lines, 'corn-shelled')
  const uses = told(lines, 'lot-used')
  const moistureTests = byDay(told(lines, 'moisture-tested'), ({ testedOn }) => testedOn)
  const storeNotes = byDay(told(lines, 'store-condition-noted'), ({ notedOn }) => notedOn)
  return { ...lot, sorts, shellings, uses, moistureTests, storeNotes, balance: null }
}

export function foodLotStory(lines: readonly LedgerLine[]): FoodLotFact | null {
  const putUp = told(lines, 'food-put-up').at(-1)
  if (!putUp) return null
  const moved = told(lines, 'food-moved').at(-1)
  const lot = { ...putUp, ...(moved && { place: moved.place }) }
  const uses = told(lines, 'lot-used')
  const openings = told(lines, 'food-opened')
  const workings = told(lines, 'food-worked')
  const usedCount = [...uses, ...openings].reduce((sum, { count }) => sum + (count ?? 0), 0)
  const fact = { ...lot, uses, openings, workings, usedCount, remainingCount: lot.count - usedCount }
  if (lot.massKg === undefined) return fact
  // A use told in jars takes its share of the weight.
  const kgEach = lot.count > 0 ? lot.massKg / lot.count : 0
  const openedKg = openings.reduce((sum, { count }) => sum + kgEach * count, 0)
  const usedKg = uses.reduce((sum, use) => sum + (use.massKg ?? kgEach * (use.count ?? 0)), openedKg)
  return { ...fact, remainingKg: lot.massKg - usedKg }
}

/** Stable: two of one day stay in the order they were told. */
function byDay<T>(all: T[], dayOf: (one: T) => string): T[] {
  return all.sort((a, b) => (dayOf(a) < dayOf(b) ? -1 : +(dayOf(a) > dayOf(b))))
}

export function alkaliLotStory(lines: readonly LedgerLine[]): AlkaliLotFact | null {
  const lot = told(lines, 'alkali-lot-recorded').at(-1)
  if (!lot) return null
  const judgements = told(lines, 'alkali-lot-judged')
  const tests = told(lines, 'alkali-lot-tested')
  return { ...lot, judgements, tests, judged: judgements.at(-1)?.judged ?? 'unknown' }
}

export function cannerStory(lines: readonly LedgerLine[]): CannerFact | null {
  const canner = told(lines, 'canner-recorded').at(-1)
  if (!canner) return null
  const tests = told(lines, 'gauge-tested')
  // Stable: two tests of one day stay in the order they were told.
  return { ...canner, gaugeTests: tests.sort((a, b) => (a.testedOn < b.testedOn ? -1 : +(a.testedOn > b.testedOn))) }
}

export function batchStory(lines: readonly LedgerLine[]): BatchFact | null {
  const plans = told(lines, 'batch-planned')
  const plan = plans.at(-1)
  if (!plan) return null
  const stages = told(lines, 'stage-noted')
  const cook = told(lines, 'cook-noted')
  const sorts = told(lines, 'corn-sorted')
  const additions = cook.flatMap(({ potLoad, seen, at }) => {
    if (seen.type !== 'alkali-added') return []
    const { type: _, ...added } = seen
    return [{ potLoad, ...added, at }]
  })
  return {
    batchId: plan.batchId,
    plan,
    earlierPlans: plans.slice(0, -1),
    stages,
    cook,
    sorts,
    additions,
    begun: stages.length + cook.length + sorts.length > 0,
    cornUsed: [],
  }
}

export function runStory(lines: readonly LedgerLine[]): RunFact | null {
  const begun = told(lines, 'run-begun').at(-1)
  if (!begun) return null
  const events = told(lines, 'run-event').map(({ event, at }) => ({
    event,
    instant: at.instant,
    zone: at.zone,
    entryId: at.entryId,
    personId: at.personId,
    deviceId: at.deviceId,
  }))
  return { runId: begun.runId, begun, events }
}

export function photoStory(lines: readonly LedgerLine[]): PhotoFact | null {
  const taken = told(lines, 'photo-taken').at(-1)
  if (!taken) return null
  const { image: _, ...photo } = taken
  return photo
}
