/** Where each lot's corn went, across seed, crib and kettle: every gram named. */
import type { BatchFact, ById, CornBalance, CornLotFact, SeedFact } from './facts.ts'

/** Half a gram: below what any kitchen scale shows, above what adding up binary fractions leaves behind. */
export const MASS_DUST_KG = 0.0005

/** What bears on one lot; more than that may be handed in and changes nothing. */
interface Across {
  readonly seed: ById<SeedFact>
  readonly batches: ById<BatchFact>
}

/** Corn a batch has used: what lot-used entries tell, else, once it has begun, what its plan takes. [kg] */
export function withCornUsed(batch: BatchFact, cornLots: ById<CornLotFact>): BatchFact {
  const toldKg = new Map<string, number>()
  for (const lot of Object.values(cornLots)) {
    for (const use of lot.uses) {
      if (use.how !== 'used-in-batch' || use.batchId !== batch.batchId) continue
      toldKg.set(lot.lotId, (toldKg.get(lot.lotId) ?? 0) + (use.massKg ?? 0))
    }
  }
  const planned = batch.begun ? (batch.plan.corn ?? []).filter(({ lotId }) => !toldKg.has(lotId)) : []
  const cornUsed = [...toldKg].map(([lotId, massKg]) => ({ lotId, massKg })).concat(planned)
  return { ...batch, cornUsed: cornUsed.sort((a, b) => (a.lotId < b.lotId ? -1 : +(a.lotId > b.lotId))) }
}

/** Null for a lot told by volume only. */
export function cornBalance(lot: CornLotFact, { seed, batches }: Across): CornBalance | null {
  if (lot.massKg === undefined) return null
  const { cobsKg, leftAs } = shelled(lot)
  const sortedOutKg = sum(lot.sorts, ({ removedKg }) => removedKg)
  const seedKg = sum(Object.values(seed), (put) => (put.lotId === lot.lotId ? (put.massKg ?? 0) : 0))
  const usedKg = (...hows: readonly string[]): number =>
    sum(lot.uses, ({ how, massKg }) => (hows.includes(how) ? (massKg ?? 0) : 0))
  const planned = Object.values(batches).filter(({ batchId }) => !toldInBatch(lot, batchId))
  const plannedKg = (begun: boolean): number =>
    sum(planned, (batch) =>
      batch.begun === begun ? sum(batch.plan.corn ?? [], ({ lotId, massKg }) => (lotId === lot.lotId ? massKg : 0)) : 0,
    )
  const parts = {
    cobsKg,
    sortedOutKg,
    seedKg,
    usedInBatchesKg: usedKg('used-in-batch', 'made-into') + plannedKg(true),
    eatenKg: usedKg('eaten', 'opened'),
    givenKg: usedKg('given'),
    discardedKg: usedKg('discarded'),
  }
  const leftKg = lot.massKg - sum(Object.values(parts), (kg) => kg)
  return { broughtInKg: lot.massKg, ...parts, leftKg, leftAs, setAsideKg: plannedKg(false) }
}

function toldInBatch(lot: CornLotFact, batchId: string): boolean {
  return lot.uses.some((use) => use.how === 'used-in-batch' && use.batchId === batchId)
}

/** Cobs and dust of the ears shelled so far. A lot brought in shelled has none. [kg] */
function shelled(lot: CornLotFact): { cobsKg: number; leftAs: CornBalance['leftAs'] } {
  if (lot.form === 'shelled') return { cobsKg: 0, leftAs: 'shelled' }
  let earsLeftKg = lot.massKg ?? 0
  let cobsKg = 0
  for (const { earsKg = Math.max(earsLeftKg, 0), shelledKg } of lot.shellings) {
    cobsKg += earsKg - shelledKg
    earsLeftKg -= earsKg
  }
  if (lot.shellings.length === 0) return { cobsKg: 0, leftAs: 'ears' }
  return { cobsKg, leftAs: earsLeftKg > MASS_DUST_KG ? 'both' : 'shelled' }
}

/** More ears told as shelled than were brought in, or more kernels than ears. */
export function shelledBeyond(lot: CornLotFact): boolean {
  if (lot.form === 'shelled' || lot.massKg === undefined) return false
  const earsKg = sum(lot.shellings, (shelling) => shelling.earsKg ?? 0)
  return earsKg > lot.massKg + MASS_DUST_KG || shelled(lot).cobsKg < -MASS_DUST_KG
}

function sum<T>(items: readonly T[], kgOf: (item: T) => number): number {
  return items.reduce((total, item) => total + kgOf(item), 0)
}
