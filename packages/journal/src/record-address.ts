/**
 * Short addresses of records, as printed in a code on paper: `crib:lot/4c1d9e0a7b22`. They hold no name and lead to no
 * network: the book on the device that reads one finds the record by itself. Leaves out: how a code is drawn or seen.
 */
import type { Facts } from './fold/facts.ts'

export const RECORD_KINDS = ['lot', 'seed-lot', 'batch', 'run', 'load', 'plot', 'planting'] as const
export type RecordKind = (typeof RECORD_KINDS)[number]

/** Letters of an id that go into a code: its random end, so that the squares stay large. 48 bits. [letters] */
const TAIL_LETTERS = 12

/** The address of a record. @param id of the record; for a `load` its code. */
export function recordAddress(kind: RecordKind, id: string): string {
  return `crib:${kind}/${kind === 'load' ? encodeURIComponent(id) : id.slice(-TAIL_LETTERS)}`
}

export type FoundRecord =
  | {
      readonly kind: 'found'
      readonly record: 'corn-lot' | 'food-lot' | 'seed-lot' | 'batch' | 'run' | 'plot' | 'planting'
      readonly id: string
    }
  /** Several packs carry one load code: all of them, and the run where there is one. */
  | {
      readonly kind: 'load'
      readonly loadCode: string
      readonly lotIds: readonly string[]
      readonly runIds: readonly string[]
    }
  /** No address of any book: another maker's code, or a damaged one. */
  | { readonly kind: 'foreign' }
  /** An address this book does not know: of another kitchen, or of a line not shared with this device. */
  | { readonly kind: 'unknown' }

/** What a code read from paper leads to in this book. Nothing is guessed: an end that fits two records is unknown. */
export function findRecord(facts: Facts, text: string): FoundRecord {
  const [, kind, end] = /^crib:([a-z-]+)\/(\S+)$/.exec(text.trim()) ?? []
  if (!isRecordKind(kind) || end === undefined) return { kind: 'foreign' }
  if (kind === 'load') return findLoad(facts, end)
  if (!/^[0-9a-f-]{12,36}$/.test(end)) return { kind: 'foreign' }
  const among = {
    lot: [
      ['corn-lot', facts.cornLots],
      ['food-lot', facts.foodLots],
    ],
    'seed-lot': [['seed-lot', facts.seedLots]],
    batch: [['batch', facts.batches]],
    run: [['run', facts.runs]],
    plot: [['plot', facts.plots]],
    planting: [['planting', facts.plantings]],
  } as const
  const [found, ...others] = among[kind].flatMap(([record, byId]) =>
    Object.keys(byId).flatMap((id) => (id.endsWith(end) ? [{ kind: 'found' as const, record, id }] : [])),
  )
  return found && others.length === 0 ? found : { kind: 'unknown' }
}

function findLoad({ foodLots, runs }: Facts, end: string): FoundRecord {
  const loadCode = decoded(end)
  const lotIds = Object.values(foodLots).flatMap((lot) => (lot.loadCode === loadCode ? [lot.lotId] : []))
  const runIds = Object.values(runs).flatMap(({ runId, begun }) => (begun.loadCode === loadCode ? [runId] : []))
  return lotIds.length + runIds.length === 0 ? { kind: 'unknown' } : { kind: 'load', loadCode, lotIds, runIds }
}

function decoded(end: string): string {
  try {
    return decodeURIComponent(end)
  } catch {
    return end
  }
}

function isRecordKind(kind: string | undefined): kind is RecordKind {
  return (RECORD_KINDS as readonly (string | undefined)[]).includes(kind)
}
