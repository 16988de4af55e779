/**
 * What a door should ask before writing. The store never refuses what happened: a person who says "yes, it was so"
 * writes it anyway, and the fold keeps the question open.
 */
import { MASS_DUST_KG } from './fold/balance.ts'
import type { CornLotFact, Facts } from './fold/facts.ts'
import { entityOfLine } from './fold/ledger.ts'
import { sameName } from './fold/questions.ts'
import { type BodyOf, checkBody, KINDS, type Kind, readBody } from './kinds/index.ts'
import { kg, type Refusal, type RefusalCode } from './refusal.ts'

export type Proposal = { readonly ok: true } | { readonly ok: false; readonly refusals: readonly Refusal[] }

export interface ProposalMoment {
  /** When it is said to have happened and when it would be written, ISO instants in UTC; checked when both are given. */
  readonly happenedAt?: string
  readonly now?: string
}

/** Reasons to ask before writing `body`: limits of its kind first, then what the book already says. */
export function propose<K extends Kind>(facts: Facts, kind: K, body: BodyOf<K>, moment: ProposalMoment = {}): Proposal {
  const checked = checkBody(kind, body)
  if (!checked.ok) return checked
  const ask = ASK[kind] as (facts: Facts, body: BodyOf<K>) => readonly Refusal[]
  const refusals = [...timeRefusals(moment), ...ask(facts, checked.body)]
  return refusals.length === 0 ? { ok: true } : { ok: false, refusals }
}

type Asker = { readonly [K in Kind]: (facts: Facts, body: BodyOf<K>) => readonly Refusal[] }

const nothing = (): readonly Refusal[] => []

const ASK: Asker = {
  'kitchen-opened': nothing,
  'kitchen-noted': nothing,
  'corn-lot-brought-in': nothing,
  'corn-sorted': ({ cornLots, batches }, { entity, entityId, removedKg, tails = [], wentTo = 'discard' }) => [
    ...(entity === 'batch' ? known(batches, entityId, 'no-such-batch') : fromCornLot(cornLots, entityId, removedKg)),
    ...(wentTo !== 'discard' && tails.some(({ cause, massKg }) => cause === 'mould' && massKg > 0)
      ? [refusal('mould-only-discarded', { field: 'wentTo' })]
      : []),
  ],
  'corn-shelled': ({ cornLots }, { lotId, earsKg, shelledKg }) => fromCornLot(cornLots, lotId, earsKg ?? shelledKg),
  'seed-put-by': ({ cornLots }, { lotId, massKg = 0 }) => {
    if (lotId === undefined) return []
    const broughtInKg = own(cornLots, lotId)?.balance?.broughtInKg
    if (broughtInKg !== undefined && massKg > broughtInKg + MASS_DUST_KG) {
      return [refusal('seed-over-lot', { value: kg(massKg), max: kg(broughtInKg) })]
    }
    return fromCornLot(cornLots, lotId, massKg)
  },
  'alkali-lot-recorded': nothing,
  'alkali-lot-judged': ({ alkaliLots }, { alkaliLotId }) => known(alkaliLots, alkaliLotId, 'no-such-alkali-lot'),
  'alkali-lot-tested': ({ alkaliLots }, { alkaliLotId, found }) => [
    ...known(alkaliLots, alkaliLotId, 'no-such-alkali-lot'),
    // Both are told from the first drop, so the second can only be as large or larger.
    ...(found.way === 'vinegar' && found.boiledMl < found.coldMl
      ? [
          refusal('boiled-below-cold', {
            field: 'found.boiledMl',
            value: found.boiledMl,
            min: found.coldMl,
            unit: 'mL',
          }),
        ]
      : []),
  ],
  'pot-recorded': nothing,
  'canner-recorded': ({ canners }, { cannerId, name }) =>
    Object.values(canners).some((other) => other.cannerId !== cannerId && sameName(other.name, name))
      ? [refusal('two-canners-one-name', { name })]
      : [],
  'gauge-tested': ({ canners }, { cannerId }) => known(canners, cannerId, 'no-such-canner'),
  'standing-read': nothing,
  'batch-planned': ({ cornLots }, { corn = [] }) =>
    corn.flatMap(({ lotId, massKg }) => [...neverFood(cornLots, lotId), ...fromCornLot(cornLots, lotId, massKg)]),
  'stage-noted': ({ batches }, { batchId }) => known(batches, batchId, 'no-such-batch'),
  'cook-noted': ({ batches, alkaliLots }, { batchId, seen }) => [
    ...known(batches, batchId, 'no-such-batch'),
    ...(seen.type === 'alkali-added' ? fitAlkali(alkaliLots, seen.alkaliLotId) : []),
  ],
  'run-begun': ({ canners }, { cannerId, cannerName, gauge }) => {
    const canner = own(canners, cannerId)
    if (!canner) return [refusal('no-such-canner', { id: cannerId })]
    return canner.gauges.includes(gauge) ? [] : [refusal('gauge-not-on-canner', { name: cannerName, value: gauge })]
  },
  'run-event': ({ runs }, { runId, event }) => {
    const run = own(runs, runId)
    if (!run) return [refusal('no-such-run', { id: runId })]
    const told = event.type === 'heat-off' && run.events.find((earlier) => earlier.event.type === 'heat-off')
    return told ? [refusal('heat-off-already-told', { value: told.instant })] : []
  },
  'food-put-up': ({ cornLots, batches, runs }, { batchId, runId }) => {
    const batch = batchId === undefined ? undefined : own(batches, batchId)
    const lots = [...(batch?.cornUsed ?? []), ...(batch?.plan.corn ?? [])].map(({ lotId }) => lotId)
    return [
      ...(batchId === undefined ? [] : known(batches, batchId, 'no-such-batch')),
      ...(runId === undefined ? [] : known(runs, runId, 'no-such-run')),
      ...[...new Set(lots)].flatMap((lotId) => neverFood(cornLots, lotId)),
    ]
  },
  'lot-used': ({ cornLots, foodLots }, { lotId, count = 0, massKg, how, intoLotId }) => {
    if (intoLotId === lotId) return [refusal('made-into-itself', { id: lotId })]
    const food = own(foodLots, lotId)
    if (!food) {
      const asFood = how === 'eaten' || how === 'used-in-batch'
      const weight = massKg === undefined ? [refusal('amount-needed', { field: 'massKg' })] : []
      if (!own(cornLots, lotId)) return [refusal('no-such-lot', { id: lotId })]
      return [...weight, ...(asFood ? neverFood(cornLots, lotId) : []), ...fromCornLot(cornLots, lotId, massKg ?? 0)]
    }
    if (count > food.remainingCount) {
      return [refusal('used-more-than-remaining', { name: food.loadCode, value: count, max: food.remainingCount })]
    }
    if (food.remainingKg !== undefined && (massKg ?? 0) > food.remainingKg + MASS_DUST_KG) {
      const { loadCode, remainingKg } = food
      return [refusal('used-more-than-held', { name: loadCode, value: kg(massKg ?? 0), max: kg(remainingKg) })]
    }
    return []
  },
  'entry-corrected': (facts, { correctsId, body }) => {
    const line = lineOf(facts, correctsId)
    if (!line) return [refusal('no-such-entry', { id: correctsId })]
    const kind = line.kind as Kind
    const checked = checkBody(kind, body)
    if (!checked.ok) return checked.refusals
    const read = readBody(kind, KINDS[kind].version, body)
    return read.ok && read.entity === entityOfLine(line) ? [] : [refusal('correction-moves-entry', { kind })]
  },
  'entry-withdrawn': (facts, { withdrawsId }) =>
    lineOf(facts, withdrawsId) ? [] : [refusal('no-such-entry', { id: withdrawsId })],
  'person-invited': nothing,
  'person-joined': nothing,
  'role-changed': nothing,
  'person-left': nothing,
  'visibility-set': nothing,
  'plot-recorded': nothing,
  'field-planned': ({ plots }, { plotId }) => known(plots, plotId, 'no-such-plot'),
  'neighbour-corn-recorded': ({ plots }, { plotId }) => known(plots, plotId, 'no-such-plot'),
  'planting-recorded': ({ plots }, { plotId }) => known(plots, plotId, 'no-such-plot'),
  'stand-counted': ({ plantings }, { plantingId, countedOn }) => afterSowing(plantings, plantingId, countedOn),
  'tassel-seen': ({ plantings }, { plantingId, seenOn }) => afterSowing(plantings, plantingId, seenOn),
  'silk-seen': ({ plantings }, { plantingId, seenOn }) => afterSowing(plantings, plantingId, seenOn),
  'harvest-brought-in': ({ plantings }, { plantingId, harvestedOn }) => afterSowing(plantings, plantingId, harvestedOn),
  'seed-lot-recorded': nothing,
  'germination-tested': ({ seedLots }, { seedLotId, testedOn, ofCount }) =>
    ofSeedLot(seedLots, seedLotId, testedOn, ofCount),
  'seed-store-noted': ({ seedLots }, { seedLotId, notedOn }) => ofSeedLot(seedLots, seedLotId, notedOn, 0),
  'seed-given': ({ seedLots }, { seedLotId, givenOn, kernelsCount }) =>
    ofSeedLot(seedLots, seedLotId, givenOn, kernelsCount),
  'seed-sown': ({ seedLots }, { seedLotId, sownOn, kernelsCount }) =>
    ofSeedLot(seedLots, seedLotId, sownOn, kernelsCount),
  'off-types-counted': ({ seedLots }, { seedLotId, countedOn }) => ofSeedLot(seedLots, seedLotId, countedOn, 0),
  'moisture-tested': ({ cornLots }, { lotId }) => known(cornLots, lotId, 'no-such-lot'),
  'store-condition-noted': ({ cornLots }, { lotId }) => known(cornLots, lotId, 'no-such-lot'),
  'food-opened': ({ foodLots }, { lotId, count }) => {
    const food = own(foodLots, lotId)
    if (!food) return [refusal('no-such-lot', { id: lotId })]
    if (count <= food.remainingCount) return []
    return [refusal('used-more-than-remaining', { name: food.loadCode, value: count, max: food.remainingCount })]
  },
  'recall-noted': nothing,
  'cooling-noted': nothing,
  'drying-noted': ({ dryings }, { dryingId, seen }) => {
    if (seen.type !== 'weighed') return []
    const drying = own(dryings, dryingId)
    const lastKg = drying?.weights.at(-1)?.massKg ?? drying?.massKg
    return lastKg !== undefined && seen.massKg > lastKg + MASS_DUST_KG
      ? [refusal('heavier-while-drying', { value: kg(seen.massKg), max: kg(lastKg) })]
      : []
  },
  'photo-taken': nothing,
  'food-moved': ({ foodLots }, { lotId }) => known(foodLots, lotId, 'no-such-lot'),
  'food-worked': ({ foodLots }, { fromLotId, inKg, outKg }) => [
    ...(fromLotId === undefined ? [] : known(foodLots, fromLotId, 'no-such-lot')),
    ...(outKg > inKg + MASS_DUST_KG ? [refusal('heavier-than-before', { value: kg(outKg), max: kg(inKg) })] : []),
  ],
}

function refusal(code: RefusalCode, params: Refusal['params']): Refusal {
  return { code, params }
}

function own<T>(record: { readonly [id: string]: T }, id: string): T | undefined {
  return Object.hasOwn(record, id) ? record[id] : undefined
}

function known(record: { readonly [id: string]: unknown }, id: string, code: RefusalCode): readonly Refusal[] {
  return own(record, id) === undefined ? [refusal(code, { id })] : []
}

/** Nothing is seen of a planting before it was sown. Days are written so that text order is time order. */
function afterSowing(plantings: Facts['plantings'], plantingId: string, onDay: string): readonly Refusal[] {
  const planting = own(plantings, plantingId)
  if (!planting) return [refusal('no-such-planting', { id: plantingId })]
  if (onDay >= planting.plantedOn) return []
  return [refusal('before-sowing', { value: onDay, min: planting.plantedOn })]
}

/** Nothing is done with seed before it was put by, and no more is taken than is left. */
function ofSeedLot(
  seedLots: Facts['seedLots'],
  seedLotId: string,
  onDay: string,
  kernelsCount: number,
): readonly Refusal[] {
  const lot = own(seedLots, seedLotId)
  if (!lot) return [refusal('no-such-seed-lot', { id: seedLotId })]
  const early = onDay < lot.putByOn ? [refusal('before-seed-put-by', { value: onDay, min: lot.putByOn })] : []
  const left = lot.kernels?.leftCount
  if (left === undefined || kernelsCount <= left) return early
  return [...early, refusal('seed-used-beyond', { value: kernelsCount, max: left, name: lot.name })]
}

function neverFood(cornLots: Facts['cornLots'], lotId: string): readonly Refusal[] {
  const lot = own(cornLots, lotId)
  return lot?.treatedSeed ? [refusal('treated-seed-never-food', { name: lot.name })] : []
}

function fromCornLot(cornLots: Facts['cornLots'], lotId: string, massKg: number): readonly Refusal[] {
  const lot: CornLotFact | undefined = own(cornLots, lotId)
  if (!lot) return [refusal('no-such-lot', { id: lotId })]
  const max = lot.balance?.leftKg
  if (max === undefined || massKg <= max + MASS_DUST_KG) return []
  return [refusal('used-more-than-held', { name: lot.name, value: kg(massKg), max: kg(max) })]
}

/** An entry that was read; nothing can be said about one that was not. */
function lineOf({ ledger }: Facts, entryId: string) {
  const entity = own(ledger.entityOf, entryId)
  return entity === undefined
    ? undefined
    : ledger.byEntity[entity]?.find(({ id, why }) => id === entryId && why === undefined)
}

const AHEAD_TOLERANCE_MS = 60_000

function timeRefusals({ happenedAt, now }: ProposalMoment): readonly Refusal[] {
  if (happenedAt === undefined || now === undefined) return []
  if (Date.parse(happenedAt) <= Date.parse(now) + AHEAD_TOLERANCE_MS) return []
  return [refusal('happened-after-written', { value: happenedAt, max: now })]
}

/** Ash that did not come from clean wood alone is kept in the book and never put into a pot. */
function fitAlkali(alkaliLots: Facts['alkaliLots'], id: string): readonly Refusal[] {
  const lot = own(alkaliLots, id)
  if (!lot) return [refusal('no-such-alkali-lot', { id })]
  return lot.onlyCleanWood === false ? [refusal('alkali-never-into-food', { name: lot.name })] : []
}
