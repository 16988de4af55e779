/**
 * How long does it take to recall one canner's jars from a book of 100,000 jars: told by the household, as a kitchen does
 * that cans for many, and at worst each with a line of its own?
 */
import { type Facts, NO_FACTS } from '@crib/journal'
import { recall, recallGraph } from '@crib/planning'
import { type BenchQuestion, type Measured, medianCallMs } from './question.ts'

const LIMIT_MS = 100
const JARS = 100_000
const JARS_A_LOAD = 9
const CANNERS = 3

/** Invented: nine jars to a load, three canners, ten loads to a batch, another household for each lot of so many jars. */
function bookOfJars(jarsALot: number): Facts {
  const loads = Math.ceil(JARS / JARS_A_LOAD)
  const at = { instant: '2026-10-03T12:00:00Z', zone: 'UTC', entryId: 'e', personId: 'p', deviceId: 'd' }
  const batches = Object.fromEntries(
    Array.from({ length: Math.ceil(loads / 10) }, (_, index) => {
      const batchId = `batch-${index}`
      const cornUsed = [{ lotId: `corn-${index % 40}`, massKg: 5 }]
      return [batchId, { batchId, plan: { inputs: {} }, additions: [{ alkaliLotId: `ash-${index % 9}` }], cornUsed }]
    }),
  )
  const runs = Object.fromEntries(
    Array.from({ length: loads }, (_, index) => {
      const begun = {
        runId: `run-${index}`,
        batchId: `batch-${Math.floor(index / 10)}`,
        cannerId: `canner-${index % CANNERS}`,
        loadCode: `MILL-${index}`,
        gauge: 'dial',
        jarCount: JARS_A_LOAD,
        at,
      }
      return [begun.runId, { runId: begun.runId, begun, events: [] }]
    }),
  )
  const foodLots = Object.fromEntries(
    Array.from({ length: Math.floor((loads * JARS_A_LOAD) / jarsALot) }, (_, index) => {
      const load = Math.floor((index * jarsALot) / JARS_A_LOAD)
      const lotId = `lot-${index}`
      const householdName = `house ${index}`
      const batchId = `batch-${Math.floor(load / 10)}`
      const counts = { count: jarsALot, uses: [], usedCount: 0, remainingCount: jarsALot }
      const common = { form: 'jar', ...counts, householdName, at }
      return [lotId, { lotId, runId: `run-${load}`, batchId, loadCode: `MILL-${load}`, ...common }]
    }),
  )
  return { ...NO_FACTS, batches, runs, foodLots } as unknown as Facts
}

function answerFor(jarsALot: number, told: string): Measured[] {
  const facts = bookOfJars(jarsALot)
  const found = recall(facts, { by: 'canner', cannerId: 'canner-1' })
  const jars = found.lots.reduce((sum, { putUpCount }) => sum + putUpCount, 0)
  if (Math.abs(jars - JARS / CANNERS) > JARS_A_LOAD) throw new Error(`recalled ${jars} jars, wanted a third`)
  const few = { warmUpCount: 5, samplesCount: 21 }
  const reference = {
    what: 'grouping the same lots by their code',
    value: medianCallMs(() => Map.groupBy(Object.values(facts.foodLots), ({ loadCode }) => loadCode), few),
  }
  // A screen reads the book when it first asks; as long as nothing is written meanwhile, it need not read it again.
  const first = medianCallMs(() => recall(facts, { by: 'canner', cannerId: 'canner-1' }, recallGraph(facts)), few)
  const next = medianCallMs(() => recall(facts, { by: 'canner', cannerId: 'canner-2' }), few)
  const common = { unit: 'ms', limit: LIMIT_MS, reference } as const
  return [
    { what: `one canner recalled from 100,000 jars, ${told}, the book read for it, median`, value: first, ...common },
    { what: `the next canner recalled from the same book, ${told}, median`, value: next, ...common },
  ]
}

export const recallOfJars: BenchQuestion = {
  asks: 'How long does a recall take over 100,000 jars?',
  answer: () => Promise.resolve([...answerFor(3, 'three to a lot'), ...answerFor(1, 'each its own lot')]),
}
