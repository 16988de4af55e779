/**
 * From a canner, a gauge, a load, a batch, an alkali lot or a corn lot to every jar and household; and back from a jar.
 * It says where the jars are by the book. Leaves out: whether the food in them is good, which nobody can reckon.
 */
import type { RunFact } from '@crib/journal'
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { type CodeNode, graphOfBook, type RecallFacts, type RecallGraph } from './recall-graph.ts'
import { type RecalledLot, recalledLots } from './recalled-lots.ts'

/** Where the doubt begins. */
export type RecallOrigin =
  | { readonly by: 'load'; readonly loadCode: string }
  | { readonly by: 'canner'; readonly cannerId: string }
  | {
      readonly by: 'gauge'
      readonly cannerId: string
      readonly gauge: 'dial' | 'weight'
      /** From this instant on, ISO 8601: the last test that found the gauge true. Left out, from the beginning. */
      readonly sinceInstant?: string
    }
  | { readonly by: 'batch'; readonly batchId: string }
  | { readonly by: 'alkali-lot'; readonly alkaliLotId: string }
  | { readonly by: 'corn-lot'; readonly lotId: string }

export interface Recall {
  readonly origin: RecallOrigin
  /** In order of the alphabet. */
  readonly loadCodes: readonly string[]
  readonly lots: readonly RecalledLot[]
  /** Whoever has or had some, by the book; in order of the alphabet. */
  readonly households: readonly string[]
  readonly notes: readonly Sentence[]
}

/** Everything that a doubt about `origin` reaches, through every batch that used some of it. */
export function recall(facts: RecallFacts, origin: RecallOrigin, graph: RecallGraph = graphOfBook(facts)): Recall {
  const codes = reachedCodes(graph, origin)
  const nodes = [...codes].sort().flatMap((code) => graph.nodes.get(code) ?? [])
  const lots = nodes.flatMap(recalledLots)
  const households = new Set<string>()
  for (const node of nodes)
    for (const { begun } of node.runs) for (const household of begun.households ?? []) households.add(household)
  for (const { household, given } of lots) {
    if (household !== null) households.add(household)
    for (const { toWhom } of given) if (toWhom !== null) households.add(toWhom)
  }
  return {
    origin,
    loadCodes: nodes.map(({ code }) => code),
    lots,
    households: [...households].sort(),
    notes: notesOf(nodes, lots),
  }
}

/** What stands behind one jar: every origin from which a recall would reach it. */
export interface TraceBack {
  readonly loadCode: string
  readonly runs: readonly RunFact[]
  readonly batchIds: readonly string[]
  readonly cornLotIds: readonly string[]
  readonly alkaliLotIds: readonly string[]
  /** Codes whose food went into it. */
  readonly madeFromCodes: readonly string[]
  readonly origins: readonly RecallOrigin[]
}

/** Back from the code on a label. Null for a code this book does not know. */
export function traceBack(
  facts: RecallFacts,
  loadCode: string,
  graph: RecallGraph = graphOfBook(facts),
): TraceBack | null {
  if (!graph.nodes.has(loadCode)) return null
  const codes = new Set([loadCode])
  const batchIds = new Set<string>()
  for (const code of codes) {
    for (const from of graph.madeFromCodes.get(code) ?? []) codes.add(from)
    for (const batchId of graph.nodes.get(code)?.batchIds ?? []) {
      batchIds.add(batchId)
      for (const from of graph.codesIntoBatch.get(batchId) ?? []) codes.add(from)
    }
  }
  const runs = [...codes].flatMap((code) => graph.nodes.get(code)?.runs ?? [])
  const sources = [...batchIds].flatMap((id) => graph.sourcesOfBatch.get(id) ?? [])
  const cornLotIds = [...new Set(sources.flatMap((each) => each.cornLotIds))]
  const alkaliLotIds = [...new Set(sources.flatMap((each) => each.alkaliLotIds))]
  const gauges = new Map(runs.map(({ begun }) => [`${begun.cannerId} ${begun.gauge}`, begun]))
  const origins: RecallOrigin[] = [
    ...[...codes].map((code) => ({ by: 'load', loadCode: code }) as const),
    ...[...new Set(runs.map(({ begun }) => begun.cannerId))].map((cannerId) => ({ by: 'canner', cannerId }) as const),
    ...[...gauges.values()].map(({ cannerId, gauge }) => ({ by: 'gauge', cannerId, gauge }) as const),
    ...[...batchIds].map((batchId) => ({ by: 'batch', batchId }) as const),
    ...alkaliLotIds.map((alkaliLotId) => ({ by: 'alkali-lot', alkaliLotId }) as const),
    ...cornLotIds.map((lotId) => ({ by: 'corn-lot', lotId }) as const),
  ]
  return {
    loadCode,
    runs,
    batchIds: [...batchIds],
    cornLotIds,
    alkaliLotIds,
    madeFromCodes: [...codes].filter((code) => code !== loadCode),
    origins,
  }
}

function reachedCodes(graph: RecallGraph, origin: RecallOrigin): Set<string> {
  const codes = new Set<string>()
  const addBatch = (batchId: string): void => {
    for (const code of graph.codesOfBatch.get(batchId) ?? []) codes.add(code)
  }
  switch (origin.by) {
    case 'load':
      if (graph.nodes.has(origin.loadCode)) codes.add(origin.loadCode)
      break
    case 'canner':
    case 'gauge':
      for (const { code, runs } of graph.nodes.values())
        if (runs.some((run) => wentThrough(run, origin))) codes.add(code)
      break
    case 'batch':
      addBatch(origin.batchId)
      break
    case 'alkali-lot':
      for (const [batchId, { alkaliLotIds }] of graph.sourcesOfBatch)
        if (alkaliLotIds.includes(origin.alkaliLotId)) addBatch(batchId)
      break
    case 'corn-lot':
      for (const [batchId, { cornLotIds }] of graph.sourcesOfBatch)
        if (cornLotIds.includes(origin.lotId)) addBatch(batchId)
      break
  }
  // A set grows while it is walked, so food made from recalled food is reached as well.
  for (const code of codes) {
    const node = graph.nodes.get(code)
    for (const batchId of node?.usedInBatchIds ?? []) addBatch(batchId)
    for (const into of node?.madeIntoCodes ?? []) codes.add(into)
  }
  return codes
}

function wentThrough({ begun }: RunFact, origin: RecallOrigin & { by: 'canner' | 'gauge' }): boolean {
  if (begun.cannerId !== origin.cannerId) return false
  if (origin.by === 'canner') return true
  if (begun.gauge !== origin.gauge) return false
  return origin.sinceInstant === undefined || Date.parse(begun.at.instant) >= Date.parse(origin.sinceInstant)
}

function notesOf(nodes: readonly CodeNode[], lots: readonly RecalledLot[]): Sentence[] {
  const shared = nodes.filter(({ runs }) => runs.length > 1).map(({ code }) => code)
  let strangers = 0
  let untold = 0
  for (const { given, untoldCount } of lots) {
    untold += untoldCount
    for (const { toWhom, count } of given) if (toWhom === null) strangers += count
  }
  return [
    ...(nodes.length === 0 ? [say('pantry:recall-nothing')] : []),
    ...(shared.length > 0 ? [say('pantry:recall-code-shared', { codes: shared.join(', ') })] : []),
    ...(strangers > 0 ? [say('pantry:recall-given-to-nobody-named', { count: strangers })] : []),
    ...(untold > 0 ? [say('pantry:recall-untold', { count: untold })] : []),
  ]
}
