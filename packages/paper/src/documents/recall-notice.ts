/**
 * A recall on paper: a notice by load codes that may hang anywhere, and the keeper's own list of whom to call. The notice
 * cannot show a name, for it is never told one.
 */
import type { Reckoned } from '@crib/science'
import type { Words } from '@crib/wording'
import type { PaperDocument } from '../model.ts'
import { blocksOf, brief, dateText, documentOf, type PrintSetting, type Said, wordAll, wordSaid } from './said.ts'

export interface RecalledCode {
  readonly code: string
  /** ISO 8601: the day the jars were filled; left out where the book does not say. */
  readonly filledOn?: string
  /** `Count`. */
  readonly jars: Reckoned
}

export interface RecallNoticeInput {
  /** ISO 8601. */
  readonly date: string
  /** What is in doubt, by its own name and no person's: `the dial of canner B`. */
  readonly about: Said
  readonly why?: Said
  readonly codes: readonly RecalledCode[]
  /** In order: what to do with a jar that is still sealed. */
  readonly doSealed: readonly Said[]
  /** In order: what to do with one that is open, unsealed or leaking. */
  readonly doOpen: readonly Said[]
  /** Whom to bring them to or call: a place or a telephone, as the keeper writes it. */
  readonly contact: string
}

/** One page by load codes, with what to do and what never to do. */
export function recallNotice(input: RecallNoticeInput, setting: PrintSetting, words: Words): PaperDocument {
  const { date, about, why, codes, doSealed, doOpen, contact } = input
  const title = words.say('paper:recall-notice')
  return documentOf(setting, words, {
    title,
    typePt: 13,
    fitPages: 1,
    blocks: blocksOf(
      {
        kind: 'head',
        title,
        lines: [words.say('paper:recall-about', { date: dateText(date), about: wordSaid(about, words) })],
        strongLines: [words.say('paper:recall-never-taste')],
      },
      why === undefined ? undefined : { kind: 'line', text: wordSaid(why, words) },
      {
        kind: 'table',
        rowMm: 8,
        columns: [
          { title: words.say('paper:column-load'), share: 2, strong: true },
          { title: words.say('paper:column-filled'), share: 1.5 },
          { title: words.say('paper:column-jars'), share: 1.2, align: 'right' },
          { title: words.say('paper:column-found'), share: 1.5 },
        ],
        rows: codes.map(({ code, filledOn, jars }) => [
          code,
          filledOn === undefined ? '' : dateText(filledOn),
          brief(jars),
          '',
        ]),
      },
      steps('paper:recall-sealed', doSealed, words),
      steps('paper:recall-open', doOpen, words),
      { kind: 'line', strength: 'strong', text: words.say('paper:recall-contact', { contact }) },
    ),
  })
}

function steps(title: 'paper:recall-sealed' | 'paper:recall-open', lines: readonly Said[], words: Words) {
  return { kind: 'notice', title: words.say(title), lines: wordAll(lines, words) } as const
}

export interface CalledHousehold {
  readonly household: string
  /** Codes of what they have or had. */
  readonly codes: readonly string[]
  /** `Count`: by the book, theirs or given to them. */
  readonly jars: Reckoned
}

export interface CallListInput {
  /** ISO 8601. */
  readonly date: string
  readonly about: Said
  readonly households: readonly CalledHousehold[]
  /** What the book cannot say: given without a name, told of nowhere. */
  readonly notes?: readonly Said[]
}

/** The keeper's own list: names, codes, and room to write who was told and what came back. Never hung up. */
export function callList(input: CallListInput, setting: PrintSetting, words: Words): PaperDocument {
  const { date, about, households, notes } = input
  const title = words.say('paper:call-list')
  return documentOf(setting, words, {
    title,
    blocks: blocksOf(
      {
        kind: 'head',
        title,
        lines: [words.say('paper:recall-about', { date: dateText(date), about: wordSaid(about, words) })],
        strongLines: [words.say('paper:call-list-private')],
      },
      {
        kind: 'table',
        rowMm: 10,
        columns: [
          { title: words.say('paper:column-household'), share: 1.6, strong: true },
          { title: words.say('paper:column-load'), share: 2.2 },
          { title: words.say('paper:column-jars'), share: 1, align: 'right' },
          { title: words.say('paper:column-told'), share: 1.2 },
          { title: words.say('paper:column-back'), share: 1 },
        ],
        rows: households.map(({ household, codes, jars }) => [household, codes.join(', '), brief(jars), '', '']),
      },
      wordAll(notes, words).map((text) => ({ kind: 'line', text }) as const),
    ),
  })
}
