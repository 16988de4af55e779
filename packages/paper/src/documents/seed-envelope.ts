/** The envelope seed is kept or given in: one sheet, folded in three. Everything a stranger needs to grow it stands on it. */
import type { Reckoned } from '@crib/science'
import { formatReckoned, type Words } from '@crib/wording'
import type { Fact, PaperDocument } from '../model.ts'
import { blocksOf, dateText, documentOf, type PrintSetting, type Said, wordAll } from './said.ts'

export interface SeedEnvelopeInput {
  /** The corn's own name; absent where those who see the envelope may not know it. */
  readonly name?: string
  readonly seasonYear: number
  /** ISO 8601: the day it was put by. */
  readonly putByOn: string
  /** From whom, or from which field, in the keeper's words. */
  readonly source?: Said
  /** `Count`: parents stand apart from kernels. */
  readonly parentEars?: Reckoned
  /** `Count`. */
  readonly kernels?: Reckoned
  /** `Fraction`, with its range. */
  readonly germination?: Reckoned
  /** ISO 8601. */
  readonly testAgainBy?: string
  readonly container?: string
  readonly place?: string
  /** Short lines: how to sow, how to keep. */
  readonly lines?: readonly Said[]
  /** What was asked when the lot was shared: it goes where the seed goes. */
  readonly conditions?: readonly string[]
  /** Short address of the record: `crib:seed-lot/4c1d9e0a7b22`. */
  readonly record?: string
}

/** Rows left to write later tests, gifts and sowings on. */
const ROWS_TO_WRITE = 5

export function seedEnvelope(input: SeedEnvelopeInput, setting: PrintSetting, words: Words): PaperDocument {
  const { record } = input
  const title = seedTitle(input, words)
  return documentOf(setting, words, {
    title,
    typePt: 12,
    fitPages: 1,
    blocks: blocksOf(
      {
        kind: 'head',
        title,
        lines: [words.say('seed:paper-envelope-fold')],
        strongLines: [words.say('seed:paper-not-food')],
        ...(record !== undefined && { qr: { content: record, sizeMm: 24 } }),
      },
      { kind: 'facts', columns: 2, large: true, facts: factsOf(input, words) },
      { kind: 'rule' },
      (input.conditions ?? []).map(
        (condition) =>
          ({ kind: 'line', strength: 'strong', text: words.say('paper:label-condition', { condition }) }) as const,
      ),
      wordAll(input.lines, words).map((text) => ({ kind: 'line', text }) as const),
      { kind: 'line', text: words.say('seed:paper-keep-dry') },
      { kind: 'rule' },
      { kind: 'heading', level: 2, text: words.say('seed:paper-written-since') },
      {
        kind: 'table',
        rowMm: 9,
        columns: [
          { title: words.say('seed:paper-column-date'), share: 1.2 },
          { title: words.say('seed:paper-column-sprouted'), share: 1 },
          { title: words.say('seed:paper-column-of'), share: 1 },
          { title: words.say('seed:paper-column-taken'), share: 1.2 },
          { title: words.say('seed:paper-column-why'), share: 2.4 },
        ],
        rows: Array.from({ length: ROWS_TO_WRITE }, () => ['', '', '', '', '']),
      },
    ),
  })
}

/** What a paper of seed is called: by the corn's name with its year, once, or by the year alone. */
export function seedTitle(
  { name, seasonYear }: { readonly name?: string; readonly seasonYear: number },
  words: Words,
): string {
  const year = String(seasonYear)
  if (name === undefined) return words.say('paper:seed-unnamed', { year })
  return name.includes(year) ? name : words.say('seed:paper-envelope', { name, year })
}

function factsOf(input: SeedEnvelopeInput, words: Words): Fact[] {
  const fact = (label: string, value: string | undefined): Fact[] => (value === undefined ? [] : [{ label, value }])
  const number = (value: Reckoned | undefined) => (value === undefined ? undefined : formatReckoned(value))
  const [source] = wordAll(input.source === undefined ? [] : [input.source], words)
  return [
    ...fact(words.say('seed:paper-put-by'), dateText(input.putByOn)),
    ...fact(words.say('seed:paper-source'), source),
    ...fact(words.say('seed:paper-parents'), number(input.parentEars)),
    ...fact(words.say('seed:paper-kernels'), number(input.kernels)),
    ...fact(words.say('seed:paper-germination'), number(input.germination)),
    ...fact(
      words.say('seed:paper-test-again'),
      input.testAgainBy === undefined ? undefined : dateText(input.testAgainBy),
    ),
    ...fact(words.say('seed:paper-container'), input.container),
    ...fact(words.say('seed:paper-place'), input.place),
  ]
}
