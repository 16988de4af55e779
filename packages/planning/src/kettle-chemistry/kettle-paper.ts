/** What the papers by the fire say of a lot or a batch: which cautions, and what was last found. Leaves out every layout. */
import { cautionsFor } from '@crib/guidance'
import type { AlkaliLotFact, BatchFact, Facts } from '@crib/journal'
import type { Reckoned, Sentence } from '@crib/science'
import { potWalk } from '../batch/kettle-walk.ts'
import { planOfBatch } from '../batch/planned-batch.ts'
import { say } from '../shared/say.ts'
import { lotOverTime } from './lot-tests.ts'

/** Rows of a rub log: a long cook, every quarter of an hour. */
const RUB_ROWS = 12

export interface LyePaper {
  readonly lot: string
  /** Sodium or potassium hydroxide, which are dissolved in cold water first. */
  readonly isDissolved: boolean
  readonly cautions: readonly Sentence[]
}

export function lyePaper({ name, alkali }: Pick<AlkaliLotFact, 'name' | 'alkali'>): LyePaper {
  const isDissolved = alkali === 'sodium-hydroxide' || alkali === 'potassium-hydroxide'
  return {
    lot: name,
    isDissolved,
    cautions: [
      ...(alkali === 'ash' ? cautionsFor('ash') : []),
      ...cautionsFor('alkali'),
      ...(isDissolved ? cautionsFor('sodium-hydroxide') : []),
      ...cautionsFor('foam'),
    ],
  }
}

export interface TitrationPaper {
  readonly lot: string
  /** As last titrated. [eq/kg] */
  readonly lastFound?: Reckoned
  readonly cautions: readonly Sentence[]
}

export function titrationPaper(lot: AlkaliLotFact): TitrationPaper {
  const last = lotOverTime(lot).findLast(({ alkali }) => alkali !== undefined)?.alkali
  return {
    lot: lot.name,
    ...(last && { lastFound: last }),
    cautions: [...cautionsFor('alkali'), ...cautionsFor('first-rub').slice(-1)],
  }
}

export interface RubPaper {
  readonly batch: string
  readonly lot?: string
  readonly rowsCount: number
  readonly notes: readonly Sentence[]
  readonly cautions: readonly Sentence[]
}

export function rubPaper(facts: Facts, batch: BatchFact, potLoad: number): RubPaper {
  const outcome = planOfBatch(batch)
  const plan = outcome?.kind === 'planned' ? outcome : null
  const lotId = potWalk(batch, plan, potLoad).seen.alkaliLotId
  const lot = lotId === undefined ? plan?.input.alkaliLot?.name : facts.alkaliLots[lotId]?.name
  return {
    batch: batch.plan.title,
    ...(lot !== undefined && { lot }),
    rowsCount: RUB_ROWS,
    notes: [say('kettle:look-alkali-boil'), say('kettle:chem-in-steps')],
    cautions: [...cautionsFor('first-rub'), ...cautionsFor('foam')],
  }
}

/** What stands on the batch sheet at the sort after the cook: causes to write beside, the keeper's own line, mould. */
export function sortPaper({ kitchen }: Pick<Facts, 'kitchen'>): readonly Sentence[] {
  const line = kitchen?.rejectLine
  return [
    say('kettle:sheet-tails-by-cause'),
    ...(line
      ? [say(`kettle:sheet-own-line-${line.above}`, { line: { value: line.shareFraction, unit: 'Fraction' } })]
      : []),
    say('kettle:sheet-mould'),
  ]
}
