/**
 * A class sheet: the walk from kernel to hominy for people who do it for the first time, with what to look for and what
 * can hurt. It is handed out, so it names no household and no lot; a corn only where the lot is opened to the community.
 */
import type { Words } from '@crib/wording'
import type { PaperDocument } from '../model.ts'
import {
  blocksOf,
  dateText,
  documentOf,
  factOf,
  type LabelledValue,
  type PrintSetting,
  type Said,
  upperFirst,
  wordAll,
  wordSaid,
} from './said.ts'

export interface ClassStage {
  readonly what: Said
  /** How long, how much water. */
  readonly details: readonly Said[]
  readonly lookFor: Said
  readonly cautions: readonly Said[]
}

export interface ClassSheetInput {
  /** What is made; names a corn only where its lot is opened to the community. */
  readonly contents: Said
  /** ISO 8601. */
  readonly date?: string
  /** The published cautions of the whole day, gravest first. */
  readonly before: readonly Said[]
  readonly amounts: readonly LabelledValue[]
  readonly stages: readonly ClassStage[]
  /** What was asked when the named corn was shared. */
  readonly conditions: readonly string[]
}

/** Lines left to write what was seen. */
const LINES_TO_WRITE = 4

export function classSheet(input: ClassSheetInput, setting: PrintSetting, words: Words): PaperDocument {
  const contents = wordSaid(input.contents, words)
  return documentOf(setting, words, {
    title: words.say('paper:class-sheet'),
    typePt: 12,
    fitPages: 2,
    blocks: blocksOf(
      {
        kind: 'head',
        title: words.say('paper:class-sheet'),
        lines: [[contents, ...(input.date === undefined ? [] : [dateText(input.date)])].join('  ·  ')],
        strongLines: [words.say('paper:class-seed-first')],
      },
      { kind: 'heading', level: 2, text: words.say('paper:class-before') },
      { kind: 'cautions', careWord: words.say('paper:care'), lines: wordAll(input.before, words) },
      wordAll(input.conditions, words).map(
        (condition) => ({ kind: 'line', text: words.say('paper:label-condition', { condition }) }) as const,
      ),
      { kind: 'heading', level: 2, text: words.say('paper:amounts') },
      { kind: 'facts', columns: 4, facts: input.amounts.map((amount) => factOf(amount, words)) },
      { kind: 'heading', level: 2, text: words.say('paper:class-walk') },
      {
        kind: 'checklist',
        careWord: words.say('paper:care'),
        items: input.stages.map(({ what, details, lookFor, cautions }) => ({
          text: wordSaid(what, words),
          details: [[...wordAll(details, words), upperFirst(wordSaid(lookFor, words))].filter(Boolean).join(' ')],
          cautions: wordAll(cautions, words),
        })),
      },
      {
        kind: 'together',
        blocks: [
          { kind: 'heading', level: 2, text: words.say('paper:class-seen') },
          {
            kind: 'write-ins',
            columns: 1,
            lines: Array.from({ length: LINES_TO_WRITE }, () => ({ label: '' })),
          },
        ],
      },
      { kind: 'line', text: words.say('paper:class-jars') },
    ),
  })
}
