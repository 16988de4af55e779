/** Where the jars of one code are, by the book: on the shelf, given, eaten, thrown out, used; and what is not told. */
import type { FoodLotFact } from '@crib/journal'
import type { CodeNode } from './recall-graph.ts'

export interface GivenAway {
  /** Null where the book does not say to whom. */
  readonly toWhom: string | null
  readonly count: number
}

export interface RecalledLot {
  readonly loadCode: string
  /** Null for jars of a load that nobody put on the shelf in this book. */
  readonly lotId: string | null
  readonly form: FoodLotFact['form']
  readonly jarSize: FoodLotFact['jarSize'] | null
  readonly household: string | null
  readonly place: string | null
  /** Jars or packs. Σ of the counts below = `putUpCount`, unless more was told as used than there was. */
  readonly putUpCount: number
  readonly onShelfCount: number
  readonly given: readonly GivenAway[]
  readonly eatenCount: number
  readonly discardedCount: number
  /** Or ground or roasted into food of another code. */
  readonly usedInBatchCount: number
  /** In the canner, and then neither on the shelf nor gone by this book. */
  readonly untoldCount: number
}

const NOTHING_GIVEN: GivenAway[] = []

/** The lots of one code; a further one, without an id, for jars of its loads that no lot tells of. */
export function recalledLots({ code, lots, runs, toldElsewhereCount }: CodeNode): readonly RecalledLot[] {
  const told = lots.map((lot) => lotTold(code, lot))
  const own = runs.filter(({ begun }) => begun.loadCode === code)
  const loadedCount = own.reduce((sum, { begun }) => sum + begun.jarCount, 0)
  const toldCount = lots.reduce((sum, { count, form }) => (form === 'jar' ? sum + count : sum), 0)
  const untoldCount = loadedCount - toldCount - toldElsewhereCount
  const run = own[0]
  if (untoldCount <= 0 || !run) return told
  const rest: RecalledLot = {
    loadCode: code,
    lotId: null,
    form: 'jar',
    jarSize: run.begun.jarSize,
    household: null,
    place: null,
    putUpCount: untoldCount,
    onShelfCount: 0,
    given: [],
    eatenCount: 0,
    discardedCount: 0,
    usedInBatchCount: 0,
    untoldCount,
  }
  return [...told, rest]
}

function lotTold(loadCode: string, lot: FoodLotFact): RecalledLot {
  // Of most lots nothing has gone yet: no list is made for them.
  const given: GivenAway[] = lot.uses.length === 0 ? NOTHING_GIVEN : []
  let eatenCount = 0
  let discardedCount = 0
  let usedInBatchCount = 0
  for (const { how, count = 0, toWhom } of lot.uses) {
    if (how === 'given') given.push({ toWhom: toWhom ?? null, count })
    else if (how === 'discarded') discardedCount += count
    else if (how === 'used-in-batch' || how === 'made-into') usedInBatchCount += count
    else eatenCount += count
  }
  for (const { found, count } of lot.openings ?? []) {
    if (found === 'good') eatenCount += count
    else discardedCount += count
  }
  return {
    loadCode,
    lotId: lot.lotId,
    form: lot.form,
    jarSize: lot.jarSize ?? null,
    household: lot.householdName ?? null,
    place: lot.place ?? null,
    putUpCount: lot.count,
    onShelfCount: lot.remainingCount,
    given,
    eatenCount,
    discardedCount,
    usedInBatchCount,
    untoldCount: 0,
  }
}
