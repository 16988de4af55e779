/** Tags for the tins of the reserve, one for each container, tied on. What says first that this is seed. */
import type { Reckoned } from '@crib/science'
import { formatReckoned, type Words } from '@crib/wording'
import type { PaperDocument } from '../model.ts'
import { blocksOf, dateText, documentOf, type PrintSetting, type Said, wordAll } from './said.ts'
import { seedTitle } from './seed-envelope.ts'

export interface ReserveTin {
  /** In the keeper's words: tin 1, glass jar by the door. */
  readonly container: string
  readonly place: string
  /** Year it is to be sown. */
  readonly sowYear?: number
  /** `Count`. */
  readonly kernels?: Reckoned
}

export interface ReserveTagInput {
  /** Absent where those who see the tags may not know it. */
  readonly name?: string
  readonly seasonYear: number
  /** `Count`. */
  readonly parentEars?: Reckoned
  /** `Fraction`, with its range. */
  readonly germination?: Reckoned
  /** ISO 8601. */
  readonly testAgainBy?: string
  readonly tins: readonly ReserveTin[]
  /** What was asked when the lot was shared. */
  readonly conditions?: readonly string[]
  /** Short lines for the head of the sheet: seed first, two places. */
  readonly lines?: readonly Said[]
}

export function reserveTags(input: ReserveTagInput, setting: PrintSetting, words: Words): PaperDocument {
  const { name, seasonYear, tins } = input
  if (tins.length === 0) throw new RangeError('tins is empty; a tag is made for each container of the reserve')
  const title =
    name === undefined ? words.say('paper:reserve-tags-unnamed') : words.say('seed:paper-reserve-tags', { name })
  return documentOf(setting, words, {
    title,
    typePt: 12,
    blocks: blocksOf(
      { kind: 'head', title, lines: wordAll(input.lines, words) },
      tins.map((tin) => ({ kind: 'together', blocks: [tagOf(tin, input, words)] }) as const),
      ...(new Set(tins.map(({ place }) => place)).size < 2
        ? [{ kind: 'line', text: words.say('seed:two-places'), strength: 'strong' } as const]
        : []),
      { kind: 'line', text: words.say('seed:paper-harvest-of', { year: String(seasonYear) }), strength: 'small' },
    ),
  })
}

function tagOf(tin: ReserveTin, input: ReserveTagInput, words: Words) {
  const { parentEars, germination, testAgainBy, conditions = [] } = input
  const lines = [
    words.say('seed:paper-not-food'),
    words.say('seed:paper-tag-where', { container: tin.container, place: tin.place }),
    ...(tin.kernels ? [words.say('seed:paper-tag-kernels', { kernels: formatReckoned(tin.kernels) })] : []),
    ...(parentEars ? [words.say('seed:paper-tag-parents', { ears: formatReckoned(parentEars) })] : []),
    ...(germination ? [words.say('seed:paper-tag-germination', { germination: formatReckoned(germination) })] : []),
    testAgainBy === undefined
      ? words.say('seed:paper-tag-test-blank')
      : words.say('seed:paper-tag-test', { date: dateText(testAgainBy) }),
    ...conditions.map((condition) => words.say('paper:label-condition', { condition })),
  ]
  return {
    kind: 'tag',
    cutLine: words.say('seed:paper-tag-cut'),
    title: seedTitle(input, words),
    big:
      tin.sowYear === undefined
        ? words.say('seed:paper-tag-seed')
        : words.say('seed:paper-tag-sow', { year: String(tin.sowYear) }),
    lines,
  } as const
}
