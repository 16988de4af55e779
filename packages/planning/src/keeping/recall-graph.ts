/**
 * Which jar came from what, read once from the book: a node for each code a label carries, with its runs, batches and
 * lots. A code and not a lot is the node, because a code is all that a jar in the hand can say.
 * Leaves out: the questions asked of it (recall.ts).
 */
import type { BatchFact, Facts, FoodLotFact, RunFact } from '@crib/journal'
import { plannedInputs } from '../batch/planned-batch.ts'

export interface CodeNode {
  readonly code: string
  readonly lots: readonly FoodLotFact[]
  readonly runs: readonly RunFact[]
  /** Batches the food came from. */
  readonly batchIds: readonly string[]
  /** Batches that took food of this code: dried hominy milled later, a bag of the freezer put into jars. */
  readonly usedInBatchIds: readonly string[]
  /** Codes of food that was ground or roasted from food of this code. */
  readonly madeIntoCodes: readonly string[]
  /** Jars of this code's loads that a label of another code tells of. [count] */
  readonly toldElsewhereCount: number
}

export interface BatchSources {
  readonly cornLotIds: readonly string[]
  readonly alkaliLotIds: readonly string[]
}

export interface RecallGraph {
  readonly nodes: ReadonlyMap<string, CodeNode>
  readonly codesOfBatch: ReadonlyMap<string, readonly string[]>
  readonly sourcesOfBatch: ReadonlyMap<string, BatchSources>
  readonly codesIntoBatch: ReadonlyMap<string, readonly string[]>
  /** From a code to those it was ground or roasted from. */
  readonly madeFromCodes: ReadonlyMap<string, readonly string[]>
}

export type RecallFacts = Pick<Facts, 'runs' | 'batches' | 'foodLots' | 'cornLots' | 'alkaliLots' | 'canners'>

interface GrowingNode {
  readonly code: string
  readonly lots: FoodLotFact[]
  /** One run, one batch and nothing made of it is what most codes have: no room is kept in these lists for more. */
  runs: readonly RunFact[]
  batchIds: readonly string[]
  usedInBatchIds: readonly string[]
  madeIntoCodes: readonly string[]
  toldElsewhereCount: number
}

const NONE: readonly never[] = []

/** Every code of the book with what stands behind it and what was made from it. */
export function recallGraph({ runs, batches, foodLots, alkaliLots }: RecallFacts): RecallGraph {
  const nodes = new Map<string, GrowingNode>()
  const codesOfBatch = new Map<string, string[]>()
  const codesIntoBatch = new Map<string, string[]>()
  const madeFromCodes = new Map<string, string[]>()
  const nodeOf = (code: string): GrowingNode => {
    const known = nodes.get(code)
    if (known) return known
    const node: GrowingNode = {
      code,
      lots: [],
      runs: NONE,
      batchIds: NONE,
      usedInBatchIds: NONE,
      madeIntoCodes: NONE,
      toldElsewhereCount: 0,
    }
    nodes.set(code, node)
    return node
  }
  const cameFrom = (node: GrowingNode, batchId: string | undefined): void => {
    if (batchId === undefined || node.batchIds[0] === batchId || node.batchIds.includes(batchId)) return
    node.batchIds = withOneMore(node.batchIds, batchId)
    push(codesOfBatch, batchId, node.code)
  }
  const usedFor = (node: GrowingNode, { loadCode, uses }: FoodLotFact): void => {
    for (const { how, batchId, intoLotId } of uses) {
      const into = intoLotId === undefined ? undefined : foodLots[intoLotId]?.loadCode
      if (into !== undefined && into !== loadCode && !node.madeIntoCodes.includes(into)) {
        node.madeIntoCodes = withOneMore(node.madeIntoCodes, into)
        push(madeFromCodes, into, loadCode)
      }
      if (how !== 'used-in-batch' || batchId === undefined || node.usedInBatchIds.includes(batchId)) continue
      node.usedInBatchIds = withOneMore(node.usedInBatchIds, batchId)
      push(codesIntoBatch, batchId, node.code)
    }
  }

  for (const runId in runs) {
    const run = runs[runId]!
    const node = nodeOf(run.begun.loadCode)
    node.runs = withOneMore(node.runs, run)
    cameFrom(node, run.begun.batchId)
  }
  let node: GrowingNode | undefined
  // Not Object.values: over 100,000 lots the list it makes costs more than all the rest (bench/recall.ts).
  for (const lotId in foodLots) {
    const lot = foodLots[lotId]!
    // Jars of a load mostly stand one behind the other in the book.
    if (node?.code !== lot.loadCode) node = nodeOf(lot.loadCode)
    node.lots.push(lot)
    cameFrom(node, lot.batchId)
    if (lot.uses.length > 0) usedFor(node, lot)
    // A lot may name a run whose code was typed otherwise on its label.
    if (lot.runId === undefined || node.runs[0]?.runId === lot.runId) continue
    const run = runs[lot.runId]
    if (run && run.begun.loadCode !== lot.loadCode) {
      nodeOf(run.begun.loadCode).toldElsewhereCount += lot.count
      if (!node.runs.includes(run)) node.runs = withOneMore(node.runs, run)
      cameFrom(node, run.begun.batchId)
    }
  }
  const judgedIn = batchesOfJudgements(alkaliLots)
  const sourcesOfBatch = new Map(
    Object.values(batches).map((batch) => [batch.batchId, sourcesOf(batch, judgedIn.get(batch.batchId) ?? [])]),
  )
  return { nodes, codesOfBatch, sourcesOfBatch, codesIntoBatch, madeFromCodes }
}

type ReadBook = Pick<RecallFacts, 'runs' | 'batches' | 'alkaliLots'> & { readonly graph: RecallGraph }

const readBooks = new WeakMap<RecallFacts['foodLots'], ReadBook>()

/** The same, read once for as long as these facts stand: whoever asks after one canner asks after the next as well. */
export function graphOfBook(facts: RecallFacts): RecallGraph {
  const read = readBooks.get(facts.foodLots)
  const isSame = read?.runs === facts.runs && read.batches === facts.batches && read.alkaliLots === facts.alkaliLots
  if (read && isSame) return read.graph
  const { runs, batches, alkaliLots } = facts
  const graph = recallGraph(facts)
  readBooks.set(facts.foodLots, { runs, batches, alkaliLots, graph })
  return graph
}

/** Corn and alkali of one batch; where no alkali was noted at the pot, the one it was planned with. */
function sourcesOf(batch: BatchFact, judgedLotIds: readonly string[]): BatchSources {
  const added = batch.additions.map(({ alkaliLotId }) => alkaliLotId)
  const planned = plannedInputs(batch)
  const alkali = [...added, ...judgedLotIds]
  if (alkali.length === 0 && planned?.alkaliLotId !== undefined) alkali.push(planned.alkaliLotId)
  return {
    cornLotIds: [...new Set(batch.cornUsed.map(({ lotId }) => lotId))],
    alkaliLotIds: [...new Set(alkali)],
  }
}

function batchesOfJudgements(alkaliLots: RecallFacts['alkaliLots']): Map<string, string[]> {
  const lotsByBatch = new Map<string, string[]>()
  for (const { alkaliLotId, judgements } of Object.values(alkaliLots))
    for (const { batchId } of judgements) if (batchId !== undefined) push(lotsByBatch, batchId, alkaliLotId)
  return lotsByBatch
}

function withOneMore<T>(list: readonly T[], value: T): readonly T[] {
  return list.length === 0 ? [value] : [...list, value]
}

function push<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key)
  if (list) list.push(value)
  else map.set(key, [value])
}
