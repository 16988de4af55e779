/** A sprouting test on one page: what to do, where to count, and what the count will say, read off without a device. */
import type { Reckoned } from '@crib/science'
import { formatReckoned, type Words } from '@crib/wording'
import type { PaperDocument, WriteIn } from '../model.ts'
import { blocksOf, dateText, documentOf, type PrintSetting } from './said.ts'

export interface GerminationSheetInput {
  /** Absent: a line to write on. */
  readonly lot?: string
  /** ISO 8601: the day it was laid down. */
  readonly laidOn?: string
  /** Parts the kernels are rolled in, for example four of 25. */
  readonly parts: readonly { readonly ofCount: number }[]
  /** For the whole test: so many sprouted, so the germination lies between. Each `Fraction` with its range. */
  readonly ranges: readonly { readonly sproutedCount: number; readonly germination: Reckoned }[]
}

const STEPS = [
  'seed:paper-step-draw',
  'seed:paper-step-lay',
  'seed:paper-step-roll',
  'seed:paper-step-warm',
  'seed:paper-step-first',
  'seed:paper-step-last',
] as const

export function germinationSheet(input: GerminationSheetInput, setting: PrintSetting, words: Words): PaperDocument {
  const { parts, ranges } = input
  const total = parts.reduce((sum, { ofCount }) => sum + ofCount, 0)
  const title = words.say('seed:paper-germination-sheet')
  return documentOf(setting, words, {
    title,
    typePt: 11,
    fitPages: 1,
    blocks: blocksOf(
      { kind: 'head', title, lines: [words.say('seed:paper-germination-lines', { tested: total })] },
      { kind: 'write-ins', columns: 2, lines: headLines(input, words) },
      {
        kind: 'checklist',
        careWord: words.say('paper:care'),
        items: STEPS.map((step) => ({ text: words.say(step) })),
      },
      {
        kind: 'table',
        rowMm: 9,
        columns: [
          { title: words.say('seed:paper-column-part'), share: 1 },
          { title: words.say('seed:paper-column-of'), share: 1 },
          { title: words.say('seed:paper-column-first'), share: 1.5 },
          { title: words.say('seed:paper-column-last'), share: 1.5 },
          { title: words.say('seed:paper-column-strong'), share: 1.5 },
        ],
        rows: [
          ...parts.map(({ ofCount }, i) => [String(i + 1), String(ofCount), '', '', '']),
          [words.say('seed:paper-all'), String(total), '', '', ''],
        ],
      },
      { kind: 'heading', level: 2, text: words.say('seed:paper-what-it-says') },
      {
        kind: 'table',
        columns: [
          { title: words.say('seed:paper-column-sprouted'), share: 1, strong: true },
          { title: words.say('seed:paper-column-range'), share: 3 },
        ],
        rows: ranges.map(({ sproutedCount, germination }) => [String(sproutedCount), formatReckoned(germination)]),
      },
      { kind: 'line', text: words.say('seed:sprouted-is-not-strong'), strength: 'small' },
      { kind: 'line', text: words.say('seed:tests-use-up-seed'), strength: 'small' },
    ),
  })
}

function headLines({ lot, laidOn }: GerminationSheetInput, words: Words): WriteIn[] {
  const line = (label: string, value?: string): WriteIn => (value === undefined ? { label } : { label, value })
  return [
    line(words.say('seed:paper-lot'), lot),
    line(words.say('seed:paper-laid-on'), laidOn === undefined ? undefined : dateText(laidOn)),
    line(words.say('seed:paper-where-warm')),
    line(words.say('seed:paper-counted-by')),
  ]
}
