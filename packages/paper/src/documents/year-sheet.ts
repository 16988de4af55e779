/** A year on paper: where the corn went, what it became, the loads, the seed, and room for what was learnt. */
import type { YearSummary } from '@crib/planning'
import { formatReckoned, formatWeight, type Words } from '@crib/wording'
import type { Block, PaperDocument, TableBlock } from '../model.ts'
import { blocksOf, brief, dateText, documentOf, type PrintSetting, upperFirst, wordAll } from './said.ts'
import { seedTitle } from './seed-envelope.ts'

export interface YearSheetInput {
  readonly summary: YearSummary
  /** The kitchen's name, where those who see the sheet may know it. */
  readonly kitchen?: string
  /** The measure that stands first. */
  readonly measureFirst?: 'us' | 'metric' | undefined
  /** For whose eyes it is made: `keeper` holds everything. */
  readonly audience: 'keeper' | 'family' | 'community' | 'open'
}

const LINES_TO_WRITE = 3

export function yearSheet(
  { summary, kitchen, measureFirst, audience }: YearSheetInput,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const { year, cornNames, notes } = summary
  const title = words.say('paper:year-sheet', { year: String(year) })
  return documentOf(setting, words, {
    title,
    typePt: 11,
    fitPages: 1,
    blocks: blocksOf(
      {
        kind: 'head',
        title,
        lines: [[kitchen, cornNames.join(', ')].filter(Boolean).join('  ·  ')].filter((line) => line !== ''),
        strongLines: [words.say(`paper:year-for-${audience}`)],
      },
      heading(words.say('paper:year-corn')),
      cornBlocks(summary, words, measureFirst),
      wordAll(notes, words).map((text) => ({ kind: 'line', text }) as const),
      heading(words.say('paper:year-became')),
      putUpBlock(summary, words),
      summary.loads.length === 0 ? undefined : [heading(words.say('paper:loads')), loadsBlock(summary, words)],
      summary.seed.length === 0 ? undefined : [heading(words.say('paper:year-seed')), seedBlock(summary, words)],
      { kind: 'together', blocks: [heading(words.say('paper:year-learnt')), linesToWrite()] },
      { kind: 'together', blocks: [heading(words.say('paper:year-next')), linesToWrite()] },
    ),
  })
}

function heading(text: string): Block {
  return { kind: 'heading', level: 2, text }
}

function linesToWrite(): Block {
  return { kind: 'write-ins', columns: 1, lines: Array.from({ length: LINES_TO_WRITE }, () => ({ label: '' })) }
}

function cornBlocks(
  { broughtInKg, strands }: YearSummary,
  words: Words,
  measureFirst: YearSheetInput['measureFirst'],
): Block[] {
  if (broughtInKg === null) return [{ kind: 'line', text: words.say('paper:year-no-corn') }]
  const name = (key: YearSummary['strands'][number]['name'], isGap: boolean) =>
    isGap ? `${words.say(key)} ${words.say('shell:strand-gap')}` : words.say(key)
  return [
    {
      kind: 'table',
      columns: [
        { title: words.say('paper:column-corn'), share: 3 },
        { title: words.say('paper:column-weight'), share: 2, align: 'right' },
      ],
      rows: [
        [words.say('shell:strand-brought-in'), formatWeight(broughtInKg, measureFirst)],
        ...strands.map(({ name: key, massKg, isGap }) => [name(key, isGap), formatWeight(massKg, measureFirst)]),
      ],
    },
  ]
}

function putUpBlock({ putUp }: YearSummary, words: Words): Block {
  if (putUp.length === 0) return { kind: 'line', text: words.say('paper:year-nothing-put-up') }
  const right = (title: string) => ({ title, share: 1, align: 'right' }) as const
  return {
    kind: 'table',
    columns: [
      { title: words.say('paper:column-form'), share: 3 },
      right(words.say('paper:column-put-up')),
      right(words.say('paper:column-gone')),
      right(words.say('paper:column-left')),
    ],
    rows: putUp.map(({ form, putUp: all, gone, left }) => [
      upperFirst(words.say(`paper:form-${form}`)),
      brief(all),
      brief(gone),
      brief(left),
    ]),
  }
}

function loadsBlock({ loads }: YearSummary, words: Words): TableBlock {
  return {
    kind: 'table',
    columns: [
      { title: words.say('paper:column-load'), share: 1.8, strong: true },
      { title: words.say('paper:column-canner'), share: 2 },
      { title: words.say('paper:column-jars'), share: 1.2, align: 'right' },
      { title: words.say('paper:column-minutes'), share: 1.2, align: 'right' },
      { title: words.say('paper:log-departures'), share: 1.8 },
    ],
    rows: loads.map(({ code, canner, jars, processMin, departed }) => [
      code,
      canner,
      brief(jars),
      brief(processMin),
      words.say(departed ? 'paper:year-departed' : 'paper:log-no-departures'),
    ]),
  }
}

function seedBlock({ seed }: YearSummary, words: Words): TableBlock {
  return {
    kind: 'table',
    columns: [
      { title: words.say('seed:paper-lot'), share: 2, strong: true },
      { title: words.say('paper:column-kernels-left'), share: 1.1, align: 'right' },
      { title: words.say('seed:paper-germination'), share: 2.2 },
      { title: words.say('seed:paper-test-again'), share: 1.3 },
    ],
    rows: seed.map(({ name, seasonYear, kernelsLeft, germination, testAgainBy }) => [
      seedTitle({ name, seasonYear }, words),
      kernelsLeft ? brief(kernelsLeft) : '',
      germination ? formatReckoned(germination) : words.say('paper:year-not-tested'),
      testAgainBy === undefined ? '' : dateText(testAgainBy),
    ]),
  }
}
