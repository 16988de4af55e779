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
  readonly runs: RunFact[]
  readonly batchIds: string[]
  readonly usedInBatchIds: string[]
  readonly madeIntoCodes: string[]
  toldElsewhereCount: number
}

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
      ...{ code, lots: [], runs: [], batchIds: [], usedInBatchIds: [], madeIntoCodes: [] },
      toldElsewhereCount: 0,
    }
    nodes.set(code, node)
    return node
  }
  const cameFrom = (node: GrowingNode, batchId: string | undefined): void => {
    if (batchId === undefined || node.batchIds.includes(batchId)) return
    node.batchIds.push(batchId)
    push(codesOfBatch, batchId, node.code)
  }

  for (const run of Object.values(runs)) {
    const node = nodeOf(run.begun.loadCode)
    node.runs.push(run)
    cameFrom(node, run.begun.batchId)
  }
  // Not Object.values: over 100,000 lots the list it makes costs more than all the rest (bench/recall.ts).
  for (const lotId in foodLots) {
    const lot = foodLots[lotId]!
    const node = nodeOf(lot.loadCode)
    node.lots.push(lot)
    cameFrom(node, lot.batchId)
    for (const { how, batchId, intoLotId } of lot.uses) {
      const into = intoLotId === undefined ? undefined : foodLots[intoLotId]?.loadCode
      if (into !== undefined && into !== lot.loadCode && !node.madeIntoCodes.includes(into)) {
        node.madeIntoCodes.push(into)
        push(madeFromCodes, into, lot.loadCode)
      }
      if (how !== 'used-in-batch' || batchId === undefined || node.usedInBatchIds.includes(batchId)) continue
      node.usedInBatchIds.push(batchId)
      push(codesIntoBatch, batchId, node.code)
    }
    // A lot may name a run whose code was typed otherwise on its label.
    if (lot.runId === undefined || node.runs[0]?.runId === lot.runId) continue
    const run = runs[lot.runId]
    if (run && run.begun.loadCode !== lot.loadCode) {
      nodeOf(run.begun.loadCode).toldElsewhereCount += lot.count
      if (!node.runs.includes(run)) node.runs.push(run)
      cameFrom(node, run.begun.batchId)
    }
  }
  const judgedIn = batchesOfJudgements(alkaliLots)
  const sourcesOfBatch = new Map(
    Object.values(batches).map((batch) => [batch.batchId, sourcesOf(batch, judgedIn.get(batch.batchId) ?? [])]),
  )
  return { nodes, codesOfBatch, sourcesOfBatch, codesIntoBatch, madeFromCodes }
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

function push<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key)
  if (list) list.push(value)
  else map.set(key, [value])
}
