/** The process log of one canner load: blank, to be written at the stove, or filled from what the book holds. */
import type { Reckoned } from '@crib/science'
import { formatReckoned, type Words } from '@crib/wording'
import type { Block, PaperDocument, WriteIn } from '../model.ts'
import { blocksOf, dateText, documentOf, type PrintSetting, type Said, upperFirst, wordAll, wordSaid } from './said.ts'

/** What is known before the fire is lit; whatever is absent is a line to write on. */
export interface ProcessLogHead {
  readonly loadCode?: string
  /** ISO 8601. */
  readonly date?: string
  readonly canner?: string
  readonly gauge?: Said
  readonly food?: Said
  readonly pack?: Said
  readonly jars?: Said
  readonly elevation?: Reckoned
  readonly hold?: Reckoned
  readonly processMin?: Reckoned
  readonly writtenBy?: string
}

export interface RunLine {
  /** `ClockMin`. */
  readonly clock: Reckoned
  readonly what: Said
  readonly reading?: Reckoned
}

export interface ProcessLogInput {
  readonly head: ProcessLogHead
  /** Where the process stands: one or two lines. */
  readonly standing: readonly Said[]
  /** Absent: a blank log. */
  readonly run?: {
    readonly lines: readonly RunLine[]
    /** Plain lines of what was done: `vented 10 min, held 12 psi for 60 min`. */
    readonly done: readonly Said[]
    /** Everything else the book tells of the run. */
    readonly told?: readonly Said[]
    readonly departures: readonly Said[]
    readonly lowestReading?: Reckoned
    readonly sealedCount?: Reckoned
    readonly notSealed?: Said
  }
}

const STEPS = [
  'paper:step-loaded',
  'paper:step-lid',
  'paper:step-steam',
  'paper:step-vent-closed',
  'paper:step-at-pressure',
  'paper:step-due',
  'paper:step-dip',
  'paper:step-regained',
  'paper:step-heat-off',
  'paper:step-zero',
  'paper:step-lid-off',
  'paper:step-jars-out',
] as const

const BLANK_READING_ROWS = 6

/** One page blank; filled, as long as the run was eventful. */
export function processLog(input: ProcessLogInput, setting: PrintSetting, words: Words): PaperDocument {
  const { head, run } = input
  const title =
    head.loadCode === undefined
      ? words.say('paper:process-log-blank')
      : words.say('paper:process-log', { load: head.loadCode })
  return documentOf(setting, words, {
    title,
    typePt: 11,
    ...(run ? {} : { fitPages: 1 }),
    blocks: blocksOf(
      { kind: 'head', title, lines: [] },
      { kind: 'write-ins', columns: 2, lines: headLines(head, run?.lowestReading, words) },
      wordAll(input.standing, words).map((text) => ({ kind: 'line', text, strength: 'small' }) as const),
      run ? filledBlocks(run, words) : blankBlocks(words),
      { kind: 'together', blocks: sealBlocks(run, words) },
    ),
  })
}

function headLines(head: ProcessLogHead, lowest: Reckoned | undefined, words: Words): WriteIn[] {
  const line = (label: string, value: string | undefined): WriteIn =>
    value === undefined ? { label } : { label, value }
  const said = (one: Said | undefined) => (one === undefined ? undefined : wordSaid(one, words))
  const number = (one: Reckoned | undefined) => (one === undefined ? undefined : formatReckoned(one))
  return [
    line(words.say('paper:log-load'), head.loadCode),
    line(words.say('paper:log-date'), head.date === undefined ? undefined : dateText(head.date)),
    line(words.say('paper:log-canner'), head.canner),
    line(words.say('paper:log-gauge'), said(head.gauge)),
    line(words.say('paper:log-food'), said(head.food)),
    line(words.say('paper:log-pack'), said(head.pack)),
    line(upperFirst(words.say('paper:log-jars')), said(head.jars)),
    line(words.say('paper:log-elevation'), number(head.elevation)),
    line(words.say('paper:log-hold'), number(head.hold)),
    line(words.say('paper:log-minutes'), number(head.processMin)),
    line(words.say('paper:log-lowest'), number(lowest)),
    line(words.say('paper:log-initials'), head.writtenBy),
  ]
}

function blankBlocks(words: Words): Block[] {
  return [
    { kind: 'heading', level: 2, text: words.say('paper:log-by-clock') },
    {
      kind: 'checklist',
      careWord: words.say('paper:care'),
      columns: 2,
      items: STEPS.map((step) => ({
        text: upperFirst(words.say(step)),
        writeIns: [words.say('paper:write-clock')],
      })),
    },
    { kind: 'heading', level: 2, text: words.say('paper:log-pressure') },
    {
      kind: 'table',
      rowMm: 8,
      columns: ['paper:column-clock', 'paper:column-reading', 'paper:column-done'].map((key, index) => ({
        title: words.say(key as 'paper:column-clock'),
        share: [1, 1, 4][index] ?? 1,
      })),
      rows: Array.from({ length: BLANK_READING_ROWS }, () => ['', '', '']),
    },
    { kind: 'heading', level: 2, text: words.say('paper:log-departures') },
    { kind: 'line', text: words.say('paper:log-departures-blank'), strength: 'small' },
    { kind: 'write-ins', columns: 1, lines: [{ label: '' }, { label: '' }] },
  ]
}

function filledBlocks(run: NonNullable<ProcessLogInput['run']>, words: Words): Block[] {
  const departures = wordAll(run.departures, words)
  return blocksOf(
    { kind: 'heading', level: 2, text: words.say('paper:log-what-was-done') },
    wordAll(run.done, words).map((text) => ({ kind: 'line', text, strength: 'strong' }) as const),
    wordAll(run.told, words).map((text) => ({ kind: 'line', text }) as const),
    { kind: 'heading', level: 2, text: words.say('paper:log-departures') },
    departures.length > 0
      ? departures.map((text) => ({ kind: 'line', text, strength: 'strong' }) as const)
      : [{ kind: 'line', text: words.say('paper:log-no-departures') }],
    run.lines.length > 0 ? clockTable(run.lines, words) : undefined,
  )
}

function clockTable(lines: readonly RunLine[], words: Words): Block[] {
  return [
    { kind: 'heading', level: 2, text: words.say('paper:log-by-clock') },
    {
      kind: 'table',
      columns: [
        { title: words.say('paper:column-clock'), share: 1.2, strong: true },
        { title: words.say('paper:column-what'), share: 5 },
        { title: words.say('paper:column-reading'), share: 1.4, align: 'right' },
      ],
      rows: lines.map(({ clock, what, reading }) => [
        formatReckoned(clock),
        wordSaid(what, words),
        reading ? formatReckoned(reading, 'alone') : '',
      ]),
    },
  ]
}

function sealBlocks(run: ProcessLogInput['run'], words: Words): Block[] {
  const sealed: WriteIn = { label: words.say('paper:log-seals-held') }
  const failed: WriteIn = { label: words.say('paper:log-seals-failed') }
  return [
    { kind: 'heading', level: 2, text: words.say('paper:log-seals') },
    {
      kind: 'write-ins',
      columns: 2,
      lines: [
        run?.sealedCount ? { ...sealed, value: formatReckoned(run.sealedCount) } : sealed,
        run?.notSealed === undefined ? failed : { ...failed, value: wordSaid(run.notSealed, words) },
      ],
    },
  ]
}
