/** Labels for jars and bags: load code, date, contents, whose it is, how to use it, and a code back to the record. */
import type { Reckoned } from '@crib/science'
import { formatReckoned, type Words } from '@crib/wording'
import type { Label, LabelLine, LabelSheet, PaperDocument, QrCode } from '../model.ts'
import { LABEL_SHEETS, type LabelSheetId } from '../sheets.ts'
import { dateText, documentOf, type PrintSetting, type Said, wordAll } from './said.ts'

export interface JarLabelInput {
  readonly loadCode: string
  /** ISO 8601: the day it was filled. */
  readonly date: string
  readonly contents: string
  /** Only on the jar that goes home with them. */
  readonly household?: string
  /** Boil this long before tasting, `Min`, by the elevation where it is eaten. */
  readonly boilMin: Reckoned
  /** True when the load's log tells of a departure from the direction: the label then points to it. */
  readonly departed?: boolean
  /** Short address of the record: `crib:load/B-2`. */
  readonly record?: string
}

export interface BagLabelInput {
  readonly lotCode: string
  /** ISO 8601: the day it was packed. */
  readonly date: string
  readonly contents: string
  readonly household?: string
  /** How to keep it, how to use it: short lines. */
  readonly lines: readonly Said[]
  readonly record?: string
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
  return sheetOf(
    labels.map((label) => jarLabel(label, setting.invented, words)),
    choice,
    setting,
    words,
  )
}

/** A sheet of labels for freezer bags, dry bags and tins. */
export function bagLabels(
  labels: readonly BagLabelInput[],
  choice: LabelSheetChoice,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  return sheetOf(
    labels.map((label) => bagLabel(label, setting.invented, words)),
    choice,
    setting,
    words,
  )
}

function sheetOf(
  labels: readonly Label[],
  { sheet: id, skipCount = 0 }: LabelSheetChoice,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const sheet: LabelSheet = LABEL_SHEETS[id]
  const perSheet = sheet.columnCount * sheet.rowCount
  if (!Number.isInteger(skipCount) || skipCount < 0 || skipCount >= perSheet) {
    throw new RangeError(`skipCount is ${skipCount}; a sheet of ${id} has places 0 to ${perSheet - 1}`)
  }
  return documentOf({ ...setting, paper: sheet.paper }, words, {
    title: words.say('paper:jar-labels'),
    blocks: [{ kind: 'labels', sheet, skipCount, labels }],
  })
}

function jarLabel(input: JarLabelInput, invented: boolean, words: Words): Label {
  const { loadCode: code, contents, household } = input
  const date = dateText(input.date)
  const boil = formatReckoned(input.boilMin)
  const shortDate = invented ? words.say('paper:label-date-invented', { date }) : date
  const boilShort = words.say('paper:label-boil-short', { boil })
  const spoiledShort = words.say('paper:label-spoiled-short')
  const departures = input.departed ? [plain(words.say('paper:label-departures'))] : []
  const shortHead = words.say(invented ? 'paper:label-code-date-invented' : 'paper:label-code-date', { code, date })
  const shortContents =
    household === undefined ? contents : words.say('paper:label-contents-household', { contents, household })
  return {
    ...codeOf(input.record),
    wordings: [
      [
        ...fullHead(code, date, contents, household, invented, words),
        plain(words.say('paper:label-boil', { boil })),
        plain(words.say('paper:label-spoiled')),
        ...departures,
      ],
      [strong(shortHead), plain(shortContents), plain(boilShort), plain(spoiledShort), ...departures],
      [
        strong(code),
        plain(running([shortDate, shortContents, boilShort, spoiledShort, ...departures.map(({ text }) => text)])),
      ],
    ],
  }
}

function bagLabel(input: BagLabelInput, invented: boolean, words: Words): Label {
  const { lotCode: code, contents, household } = input
  const date = dateText(input.date)
  const lines = wordAll(input.lines, words).map(plain)
  const shortDate = invented ? words.say('paper:label-date-invented', { date }) : date
  const shortHead = words.say(invented ? 'paper:label-code-date-invented' : 'paper:label-code-date', { code, date })
  const shortContents =
    household === undefined ? contents : words.say('paper:label-contents-household', { contents, household })
  return {
    ...codeOf(input.record),
    wordings: [
      [...fullHead(code, date, contents, household, invented, words), ...lines],
      [strong(shortHead), plain(shortContents), ...lines],
      [strong(code), plain(running([shortDate, shortContents, ...lines.map(({ text }) => text)]))],
    ],
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
