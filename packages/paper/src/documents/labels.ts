/** Labels for jars and packs: code, date, contents, whose it is, how to use it, on what conditions, and a code back to the record. */
import type { Reckoned } from '@crib/science'
import { formatReckoned, type Words } from '@crib/wording'
import type { Label, LabelLine, LabelSheet, PaperDocument, QrCode } from '../model.ts'
import { LABEL_SHEETS, type LabelSheetId } from '../sheets.ts'
import { dateText, documentOf, type PrintSetting, type Said, wordAll } from './said.ts'

interface LabelInput {
  /** ISO 8601: the day it was filled or packed. */
  readonly date: string
  readonly contents: string
  /** Only on what goes home with them. */
  readonly household?: string
  /** True when the log tells of a departure from the direction: the label then points to it. */
  readonly departed?: boolean
  /** What was asked when the lot was shared: it goes where the lot goes. */
  readonly conditions?: readonly string[]
  /** Short address of the record: `crib:lot/4c1d9e0a7b22`. */
  readonly record?: string
}

export interface JarLabelInput extends LabelInput {
  readonly loadCode: string
  /** Boil this long before tasting, `Min`, by the elevation where it is eaten. */
  readonly boilMin: Reckoned
}

export interface BagLabelInput extends LabelInput {
  readonly lotCode: string
  /** In one pack. */
  readonly each?: Reckoned
  /** How to keep it, how to use it: short lines. */
  readonly lines: readonly Said[]
  /** ISO 8601: by printed advice, eat it from this day on, before others. */
  readonly useFirstBy?: string
  /** ISO 8601: the latest day the advice names. */
  readonly bestUntil?: string
}

export interface LabelSheetChoice {
  readonly sheet: LabelSheetId
  /** Labels already used up on the first sheet. [count] */
  readonly skipCount?: number
}

/** Edge of the code on a label: the least an old phone reads with ease. [mm] */
const LABEL_QR_MM = 20

/**
 * A sheet of jar labels. The label sheet's own paper size overrules the setting's. Every wording holds code, date,
 * contents, the boil-before-tasting line and the signs of spoilage; rendering refuses a label that cannot hold them.
 */
export function jarLabels(
  labels: readonly JarLabelInput[],
  choice: LabelSheetChoice,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  return foodLabels(labels, choice, setting, words)
}

/** A sheet of labels for freezer bags, dry bags and tins. */
export function bagLabels(
  labels: readonly BagLabelInput[],
  choice: LabelSheetChoice,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  return foodLabels(labels, choice, setting, words)
}

/** Jars and packs on one sheet, in the order given. */
export function foodLabels(
  labels: readonly (JarLabelInput | BagLabelInput)[],
  { sheet: id, skipCount = 0 }: LabelSheetChoice,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const sheet: LabelSheet = LABEL_SHEETS[id]
  const perSheet = sheet.columnCount * sheet.rowCount
  if (!Number.isInteger(skipCount) || skipCount < 0 || skipCount >= perSheet) {
    throw new RangeError(`skipCount is ${skipCount}; a sheet of ${id} has places 0 to ${perSheet - 1}`)
  }
  // Labels of one load are alike: each is worded once.
  const worded = new Map<JarLabelInput | BagLabelInput, Label>()
  const labelOf = (input: JarLabelInput | BagLabelInput): Label => {
    const known = worded.get(input) ?? labelFor(input, setting.invented, words)
    worded.set(input, known)
    return known
  }
  return documentOf({ ...setting, paper: sheet.paper }, words, {
    title: words.say('paper:jar-labels'),
    blocks: [{ kind: 'labels', sheet, skipCount, labels: labels.map(labelOf) }],
  })
}

/** The same said at length, briefly, and in one run: what is left out of none. */
function labelFor(input: JarLabelInput | BagLabelInput, invented: boolean, words: Words): Label {
  const isJar = 'loadCode' in input
  const code = isJar ? input.loadCode : input.lotCode
  const { contents, household } = input
  const date = dateText(input.date)
  const { long, short } = isJar ? jarLines(input, words) : bagLines(input, words)
  const after = [
    ...(input.departed ? [words.say('paper:label-departures')] : []),
    ...(input.conditions ?? []).map((condition) => words.say('paper:label-condition', { condition })),
  ]
  const shortDate = invented ? words.say('paper:label-date-invented', { date }) : date
  const shortHead = words.say(invented ? 'paper:label-code-date-invented' : 'paper:label-code-date', { code, date })
  const shortContents =
    household === undefined ? contents : words.say('paper:label-contents-household', { contents, household })
  return {
    ...codeOf(input.record),
    wordings: [
      [...fullHead(code, date, contents, household, invented, words), ...[...long, ...after].map(plain)],
      [strong(shortHead), ...[shortContents, ...short, ...after].map(plain)],
      [strong(code), plain(running([shortDate, shortContents, ...short, ...after]))],
    ],
  }
}

interface Lines {
  readonly long: readonly string[]
  readonly short: readonly string[]
}

function jarLines({ boilMin }: JarLabelInput, words: Words): Lines {
  const boil = formatReckoned(boilMin)
  return {
    long: [words.say('paper:label-boil', { boil }), words.say('paper:label-spoiled')],
    short: [words.say('paper:label-boil-short', { boil }), words.say('paper:label-spoiled-short')],
  }
}

function bagLines({ each, lines, useFirstBy, bestUntil }: BagLabelInput, words: Words): Lines {
  const weight = each ? [words.say('paper:label-each', { weight: formatReckoned(each) })] : []
  const own = wordAll(lines, words)
  if (useFirstBy === undefined || bestUntil === undefined)
    return { long: [...weight, ...own], short: [...weight, ...own] }
  const first = dateText(useFirstBy)
  const last = dateText(bestUntil)
  const isOneDay = first === last
  return {
    long: [
      ...weight,
      isOneDay ? words.say('paper:label-best-by', { last }) : words.say('paper:label-use-first', { first, last }),
      ...own,
    ],
    short: [...weight, words.say('paper:label-best-by', { last }), ...own],
  }
}

function fullHead(
  code: string,
  date: string,
  contents: string,
  household: string | undefined,
  invented: boolean,
  words: Words,
): LabelLine[] {
  return [
    { text: words.say('paper:label-code-date', { code, date }), strength: 'code' },
    strong(contents),
    ...(household === undefined ? [] : [strong(words.say('paper:label-household', { household }))]),
    ...(invented ? [plain(words.say('paper:label-invented'))] : []),
  ]
}

/** Sentences one behind the other, each with its full stop. */
function running(sentences: readonly string[]): string {
  return sentences.map((sentence) => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`)).join(' ')
}

function codeOf(record: string | undefined): { qr?: QrCode } {
  return record === undefined ? {} : { qr: { content: record, sizeMm: LABEL_QR_MM } }
}

function strong(text: string): LabelLine {
  return { text, strength: 'strong' }
}

function plain(text: string): LabelLine {
  return { text, strength: 'plain' }
}
