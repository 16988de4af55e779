/** The batch sheet: the whole walk from sack to shelf on one sheet, headed by the seed line. */
import type { Reckoned } from '@crib/science'
import { formatReckoned, type Words } from '@crib/wording'
import type { Block, ChecklistItem, PaperDocument } from '../model.ts'
import {
  blocksOf,
  brief,
  dateText,
  documentOf,
  factOf,
  type LabelledValue,
  type PrintSetting,
  type Said,
  wordAll,
  wordSaid,
} from './said.ts'

/** What a hand writes beside a stage. */
export type StageWriteIn = 'start' | 'end' | 'clock' | 'amount' | 'count' | 'reading'

export interface BatchStage {
  /** Planned clock, unit `ClockMin`. */
  readonly clock?: Reckoned
  readonly what: Said
  /** Boxes to tick, one for each time it is done. [count] */
  readonly timesCount?: number
  readonly details?: readonly Said[]
  /** Printed here and nowhere else: at the moment the hand is about to act. */
  readonly cautions?: readonly Said[]
  readonly writeIns?: readonly StageWriteIn[]
}

export interface BatchLoad {
  readonly code: string
  readonly canner: string
  /** Unit `Count`. */
  readonly jars: Reckoned
  /** The number confirmed on the canner's card; absent while it is not. */
  readonly hold?: Reckoned
  /** From the published table, unit `Min`; absent until the standing was read. */
  readonly processMin?: Reckoned
  /** Unit `ClockMin`. */
  readonly startsAt?: Reckoned
  /** Unit `ClockMin`. */
  readonly endsAt?: Reckoned
}

export interface BatchSheetInput {
  /** What the keeper calls it: `Lantern flint, 9 lb`. */
  readonly batch: string
  /** ISO 8601, `2026-11-03`. */
  readonly date: string
  readonly place?: string
  /** Heads the sheet: seed is put by before anything is food. */
  readonly seedLines: readonly Said[]
  readonly amounts: readonly LabelledValue[]
  readonly stages: readonly BatchStage[]
  readonly loads: readonly BatchLoad[]
  /** Where the process stands, in a line or two; only when jars are planned. */
  readonly standing?: readonly Said[]
  readonly notes?: readonly Said[]
  /** Short address of the batch's record, printed as a code to scan. */
  readonly record?: string
}

const WRITE_WORDS = {
  start: 'paper:write-start',
  end: 'paper:write-end',
  clock: 'paper:write-clock',
  amount: 'paper:write-amount',
  count: 'paper:write-count',
  reading: 'paper:write-reading',
} as const satisfies Record<StageWriteIn, string>

/**
 * One sheet, type shrinking from 11 to at smallest 9 pt; a walk of more than about thirty stages goes on overleaf.
 *
 * @throws {RangeError} when `date` is no date.
 */
export function batchSheet(input: BatchSheetInput, setting: PrintSetting, words: Words): PaperDocument {
  const title = words.say('paper:batch-sheet', { batch: input.batch })
  const headLine = [dateText(input.date), ...(input.place === undefined ? [] : [input.place])].join('  ·  ')
  return documentOf(setting, words, {
    title,
    typePt: 11,
    fitPages: 1,
    blocks: blocksOf(
      {
        kind: 'head',
        title: input.batch,
        lines: [headLine],
        strongLines: [wordAll(input.seedLines, words).join(' ')],
        ...(input.record !== undefined && { qr: { content: input.record, sizeMm: 20 } }),
      },
      { kind: 'heading', level: 2, text: words.say('paper:amounts') },
      { kind: 'facts', columns: 4, facts: input.amounts.map((amount) => factOf(amount, words)) },
      { kind: 'heading', level: 2, text: words.say('paper:walk') },
      {
        kind: 'checklist',
        careWord: words.say('paper:care'),
        items: input.stages.map((stage) => stageItem(stage, words)),
      },
      input.loads.length > 0 ? loadBlocks(input.loads, words) : undefined,
      input.standing?.length
        ? { kind: 'line', text: wordAll(input.standing, words).join(' '), strength: 'small' }
        : undefined,
      wordAll(input.notes, words).map((text) => ({ kind: 'line', text }) as const),
    ),
  })
}

function stageItem({ clock, what, timesCount, details, cautions, writeIns }: BatchStage, words: Words): ChecklistItem {
  return {
    ...(clock && { margin: formatReckoned(clock) }),
    text: wordSaid(what, words),
    ...(timesCount !== undefined && { tallyCount: timesCount }),
    details: wordAll(details, words),
    cautions: wordAll(cautions, words),
    writeIns: (writeIns ?? []).map((writeIn) => words.say(WRITE_WORDS[writeIn])),
  }
}

function loadBlocks(loads: readonly BatchLoad[], words: Words): Block[] {
  const row = ({ code, canner, jars, hold, processMin, startsAt, endsAt }: BatchLoad) => [
    code,
    canner,
    brief(jars),
    ...[hold, processMin, startsAt, endsAt].map((value) => (value ? brief(value) : '')),
  ]
  return [
    { kind: 'heading', level: 2, text: words.say('paper:loads') },
    {
      kind: 'table',
      columns: [
        { title: words.say('paper:column-load'), share: 1.1, strong: true },
        { title: words.say('paper:column-canner'), share: 2 },
        { title: words.say('paper:column-jars'), share: 1.4, align: 'right' },
        { title: words.say('paper:column-hold'), share: 1.5, align: 'right' },
        { title: words.say('paper:column-minutes'), share: 1.2, align: 'right' },
        { title: words.say('paper:column-starts'), share: 1.5, align: 'right' },
        { title: words.say('paper:column-ends'), share: 1.7, align: 'right' },
      ],
      rows: loads.map(row),
    },
  ]
}
