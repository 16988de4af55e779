/** Helpers shared by the builders: wording what is handed in, and the parts every sheet has. */
import type { Sentence } from '@crib/science'
import { type Reckoned, shownValue } from '@crib/science/values'
import { formatNumber, formatQuantity, formatReckoned, type Words } from '@crib/wording'
import type { Block, Fact, Footer, PaperDocument, PaperSize } from '../model.ts'

/** A sentence still to be worded, or the keeper's own words as they are. */
export type Said = Sentence | string

/** What every builder is told beside its own facts. */
export interface PrintSetting {
  readonly paper: PaperSize
  /** True for demo data: it is then marked on every page and every label. */
  readonly invented: boolean
  /** Edition of the guidance in force. */
  readonly edition: string
  /** UTC instant, ISO 8601, of the making of the sheet. */
  readonly madeAt: string
  readonly marginMm?: number
  readonly largePrint?: boolean
}

export interface LabelledValue {
  readonly label: Said
  readonly value: Reckoned
  readonly note?: Said
}

/** Within what a household printer can reach, and room for the nail hole. [mm] */
const MARGIN_MM = 11

export function wordSaid(said: Said, words: Words): string {
  return typeof said === 'string' ? said : words.sentence(said)
}

export function wordAll(said: readonly Said[] | undefined, words: Words): string[] {
  return (said ?? []).map((one) => wordSaid(one, words))
}

/** A value without its companion unit, for a table cell. */
export function brief(reckoned: Reckoned): string {
  return formatReckoned(reckoned, 'alone')
}

export function factOf({ label, value, note }: LabelledValue, words: Words): Fact {
  return {
    label: upperFirst(wordSaid(label, words)),
    value: formatReckoned(value),
    ...(note !== undefined && { note: wordSaid(note, words) }),
  }
}

/** The digits of a value, the unit after them, and the companion in brackets, each alone. */
export function numberParts(reckoned: Reckoned): { number: string; unit: string; beside?: string } {
  const value = shownValue(reckoned)
  const number = formatNumber(value)
  const rest = formatQuantity({ value, unit: reckoned.unit }, 'alone').slice(number.length).trim()
  const full = formatQuantity({ value, unit: reckoned.unit })
  const bracket = full.indexOf(' (')
  return { number, unit: rest, ...(bracket >= 0 && { beside: full.slice(bracket + 2, -1) }) }
}

const DAY_TEXT = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' })

/** `3 Nov 2026`: read alike on both sides of an ocean. */
export function dateText(isoDate: string): string {
  const date = new Date(`${isoDate}T00:00:00Z`)
  if (Number.isNaN(date.getTime())) throw new RangeError(`"${isoDate}" is not a date; write it as 2026-11-03`)
  return DAY_TEXT.format(date)
}

/** Blocks, without those left out. */
export function blocksOf(...blocks: readonly (Block | readonly Block[] | undefined)[]): Block[] {
  return blocks.flat().filter((block): block is Block => block !== undefined)
}

export function documentOf(
  setting: PrintSetting,
  words: Words,
  parts: Pick<PaperDocument, 'title' | 'blocks'> & Partial<Pick<PaperDocument, 'typePt' | 'fitPages'>>,
): PaperDocument {
  const footer: Footer = {
    pageOf: words.say('paper:page-of', { page: '{page}', pages: '{pages}' }),
    edition: words.say('paper:edition', { edition: setting.edition }),
    inventedLine: words.say('common:invented'),
    missingLetters: words.say('paper:missing-letters', { scripts: '{scripts}' }),
  }
  const { paper, invented, madeAt, marginMm = MARGIN_MM, largePrint } = setting
  return { paper, invented, madeAt, marginMm, footer, ...(largePrint && { largePrint }), ...parts }
}

/** A keeper's own noun may open the line. */
export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
