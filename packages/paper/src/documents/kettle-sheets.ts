/**
 * Three sheets to hang by the fire: handling alkali, a titration, a rub log. Values and cautions are handed in; nothing
 * is worked out here. Paper is enough when everything else is off.
 */
import type { Words } from '@crib/wording'
import type { Block, PaperDocument, WriteIn } from '../model.ts'
import { blocksOf, documentOf, factOf, type LabelledValue, type PrintSetting, type Said, wordAll } from './said.ts'

export interface LyeSheetInput {
  /** Absent: a line to write on. */
  readonly lot?: string
  /** True for sodium or potassium hydroxide, which are dissolved in cold water first. */
  readonly isDissolved: boolean
  /** Grams first; capacity and intensity apart. */
  readonly dose: readonly LabelledValue[]
  /** What is said of the dose and of its strength. */
  readonly notes: readonly Said[]
  readonly cautions: readonly Said[]
}

/** Before, while and after alkali goes in, with room for the numbers one calls. */
export function lyeSheet(input: LyeSheetInput, setting: PrintSetting, words: Words): PaperDocument {
  const title = words.say('kettle:sheet-lye')
  const steps = [
    'kettle:sheet-lye-things',
    'kettle:sheet-lye-people',
    'kettle:sheet-lye-weigh',
    ...(input.isDissolved ? (['kettle:sheet-lye-dissolve'] as const) : []),
    'kettle:sheet-lye-pot',
    'kettle:sheet-lye-after',
  ] as const
  return documentOf(setting, words, {
    title,
    typePt: 12,
    fitPages: 1,
    blocks: blocksOf(
      { kind: 'head', title, lines: [], strongLines: [words.say('kettle:sheet-lye-first')] },
      {
        kind: 'write-ins',
        columns: 2,
        lines: [line(words, 'kettle:sheet-lot', input.lot), line(words, 'kettle:sheet-day')],
      },
      facts(input.dose, words),
      wordAll(input.notes, words).map((text) => ({ kind: 'line', text, strength: 'small' }) as const),
      { kind: 'checklist', careWord: words.say('paper:care'), items: steps.map((step) => ({ text: words.say(step) })) },
      { kind: 'cautions', careWord: words.say('paper:care'), lines: wordAll(input.cautions, words) },
      {
        kind: 'notice',
        title: words.say('kettle:sheet-aid'),
        lines: [words.say('kettle:sheet-aid-skin'), words.say('kettle:sheet-aid-eye')],
      },
      {
        kind: 'write-ins',
        columns: 1,
        lines: [
          line(words, 'kettle:sheet-poison-centre'),
          line(words, 'kettle:sheet-emergency'),
          line(words, 'kettle:sheet-water-nearest'),
        ],
      },
    ),
  })
}

export interface TitrationSheetInput {
  readonly lot?: string
  /** Of an earlier titration, printed to compare with. */
  readonly before: readonly LabelledValue[]
  readonly cautions: readonly Said[]
}

const TITRATION_STEPS = [
  { text: 'kettle:sheet-titration-steep', writeIns: ['kettle:sheet-ash-g', 'kettle:sheet-water-l'] },
  { text: 'kettle:sheet-titration-settle', writeIns: [] },
  { text: 'kettle:sheet-titration-sample', writeIns: ['kettle:sheet-sample-ml'] },
  { text: 'kettle:sheet-titration-cold', writeIns: ['kettle:sheet-p-ml'] },
  { text: 'kettle:sheet-titration-boil', writeIns: ['kettle:sheet-t-ml'] },
] as const

/** The two end points step by step, room for three runs, and the sum for a pencil. */
export function titrationSheet(input: TitrationSheetInput, setting: PrintSetting, words: Words): PaperDocument {
  const title = words.say('kettle:sheet-titration')
  const column = (key: Parameters<Words['say']>[0]) => ({ title: words.say(key), share: 1 })
  return documentOf(setting, words, {
    title,
    typePt: 11,
    fitPages: 1,
    blocks: blocksOf(
      { kind: 'head', title, lines: [words.say('kettle:sheet-titration-lines')] },
      {
        kind: 'write-ins',
        columns: 3,
        lines: [
          line(words, 'kettle:sheet-lot', input.lot),
          line(words, 'kettle:sheet-day'),
          line(words, 'kettle:sheet-vinegar-label'),
        ],
      },
      {
        kind: 'checklist',
        careWord: words.say('paper:care'),
        items: TITRATION_STEPS.map(({ text, writeIns }) => ({
          text: words.say(text),
          writeIns: writeIns.map((label) => words.say(label)),
        })),
      },
      {
        kind: 'table',
        rowMm: 9,
        columns: [
          column('kettle:sheet-run'),
          column('kettle:sheet-sample-ml'),
          column('kettle:sheet-p-ml'),
          column('kettle:sheet-t-ml'),
          column('kettle:sheet-hydroxide'),
          column('kettle:sheet-carbonate'),
        ],
        rows: ['1', '2', '3'].map((run) => [run, '', '', '', '', '']),
      },
      {
        kind: 'notice',
        title: words.say('kettle:sheet-sum'),
        lines: [
          words.say('kettle:sheet-sum-hydroxide'),
          words.say('kettle:sheet-sum-carbonate'),
          words.say('kettle:sheet-sum-lot'),
          words.say('kettle:sheet-sum-bicarbonate'),
        ],
      },
      facts(input.before, words),
      { kind: 'line', text: words.say('kettle:chem-as-hydroxide-carbonate'), strength: 'small' },
      { kind: 'cautions', careWord: words.say('paper:care'), lines: wordAll(input.cautions, words) },
    ),
  })
}

export interface RubLogInput {
  readonly batch?: string
  readonly lot?: string
  /** Rub tests to leave room for. [count] Valid: 1 to 30. */
  readonly rowsCount: number
  readonly notes: readonly Said[]
  readonly cautions: readonly Said[]
}

/** @throws {RangeError} unless rowsCount is 1 to 30. */
export function rubLog(input: RubLogInput, setting: PrintSetting, words: Words): PaperDocument {
  const { rowsCount } = input
  if (!(Number.isInteger(rowsCount) && rowsCount >= 1 && rowsCount <= 30)) {
    throw new RangeError(`rowsCount is ${rowsCount}; a sheet holds 1 to 30 (project rule)`)
  }
  const title = words.say('kettle:sheet-rub')
  return documentOf(setting, words, {
    title,
    typePt: 11,
    fitPages: 1,
    blocks: blocksOf(
      { kind: 'head', title, lines: [words.say('kettle:sheet-rub-lines')] },
      {
        kind: 'write-ins',
        columns: 3,
        lines: [
          line(words, 'kettle:sheet-batch', input.batch),
          line(words, 'kettle:sheet-lot', input.lot),
          line(words, 'kettle:sheet-boil-at'),
        ],
      },
      {
        kind: 'table',
        rowMm: 9,
        columns: [
          { title: words.say('kettle:sheet-clock'), share: 1 },
          { title: words.say('kettle:sheet-slipped'), share: 1.4 },
          { title: words.say('kettle:sheet-colour'), share: 2 },
          { title: words.say('kettle:sheet-added'), share: 2 },
          { title: words.say('kettle:sheet-who'), share: 1 },
        ],
        rows: Array.from({ length: rowsCount }, () => ['', '', '', '', '']),
      },
      wordAll(input.notes, words).map((text) => ({ kind: 'line', text }) as const),
      { kind: 'cautions', careWord: words.say('paper:care'), lines: wordAll(input.cautions, words) },
    ),
  })
}

function facts(values: readonly LabelledValue[], words: Words): Block | undefined {
  return values.length === 0
    ? undefined
    : { kind: 'facts', columns: 2, large: true, facts: values.map((value) => factOf(value, words)) }
}

function line(words: Words, key: Parameters<Words['say']>[0], value?: string): WriteIn {
  const label = words.say(key)
  return value === undefined ? { label } : { label, value }
}
