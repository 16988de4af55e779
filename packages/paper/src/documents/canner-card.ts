/**
 * The canner card: one canner, one number to hold, legible across the kitchen, and the tag that is tied to its lid.
 * Every number is handed in as reckoned; nothing is worked out here.
 */
import type { Reckoned } from '@crib/science'
import { formatReckoned, type Words } from '@crib/wording'
import type { Block, PaperDocument, TagBlock } from '../model.ts'
import { blocksOf, dateText, documentOf, numberParts, type PrintSetting, type Said, wordAll, wordSaid } from './said.ts'

export interface GaugeTest {
  /** ISO 8601. */
  readonly testedOn: string
  readonly tester: string
  /** ISO 8601. */
  readonly dueOn: string
  readonly points: readonly { readonly truth: Reckoned; readonly reads: Reckoned }[]
}

export interface CannerCardInput {
  readonly canner: string
  readonly site: string
  readonly gauge: 'dial' | 'weight'
  readonly loadCodes?: readonly string[]
  /** The jar the minutes are for. */
  readonly jar?: Said
  /** The one number: a face mark on the dial (`PsiGauge`) or a stamped weight (`LbWeight`). */
  readonly hold: Reckoned
  /** Dial only: any reading below this is a dip, `PsiGauge`. */
  readonly dipBelow?: Reckoned
  /** Dial that reads off: what `hold` is in truth, `PsiGauge`. */
  readonly trueAtHold?: Reckoned
  /** The table's own value for the elevation as typed. */
  readonly tableValue: Reckoned
  /** As typed: `Ft` or `M`. */
  readonly elevation: Reckoned
  readonly why: readonly Said[]
  readonly ventMin: Reckoned
  /** From the published table; absent until its standing was read, and then no minutes are printed. */
  readonly processMin?: Reckoned
  readonly lidWaitMin: Reckoned
  /** Where the process stands: one or two lines. */
  readonly standing: readonly Said[]
  /** Where a habit and today's direction differ: one line with both and why. */
  readonly habits?: readonly Said[]
  readonly cautions?: readonly Said[]
  /** Of the dial; absent leaves lines on the tag to write on. */
  readonly gaugeTest?: GaugeTest
  readonly gaugeStanding?: Said
}

/** A card for a canner with no number to print: off the table, or a dial that may not be used. */
export interface RefusedCardInput {
  readonly canner: string
  readonly site: string
  readonly refused: Said
  readonly why: readonly Said[]
  readonly askWhom: readonly Said[]
}

/** Digits as tall as this are read from three metres with ease. [mm] */
const CARD_DIGIT_MM = 70

/**
 * One page: the number, its reason, vent, minutes, what a dip is, cooling, the lid, standing, and the tag.
 *
 * @throws {RangeError} for a dial without `dipBelow`: a card must say what a dip is.
 */
export function cannerCard(input: CannerCardInput, setting: PrintSetting, words: Words): PaperDocument {
  const { canner, hold, gauge, dipBelow } = input
  if (gauge === 'dial' && !dipBelow) throw new RangeError('dipBelow is missing; a dial card must say what a dip is')
  const { number, unit, beside } = numberParts(hold)
  const loads = input.loadCodes?.length
    ? [words.say('paper:card-for-loads', { loads: input.loadCodes.join(', ') })]
    : []
  return documentOf(setting, words, {
    title: words.say('paper:canner-card', { canner }),
    typePt: 12,
    fitPages: 1,
    blocks: blocksOf(
      { kind: 'head', title: canner, lines: [[input.site, ...loads].join('  ·  ')] },
      {
        kind: 'big-number',
        over: words.say(gauge === 'dial' ? 'paper:hold-at' : 'paper:hold-weight'),
        number,
        unit,
        ...(beside !== undefined && { beside }),
        digitMm: CARD_DIGIT_MM,
        why: wordAll(input.why, words),
        small: numberNotes(input, words),
      },
      { kind: 'rule' },
      { kind: 'facts', columns: 3, large: true, facts: timeFacts(input, words) },
      wordAll(input.habits, words).map((text) => ({ kind: 'line', text, strength: 'small' }) as const),
      { kind: 'rule' },
      {
        kind: 'columns',
        columns: [
          { share: 1, blocks: dipBlocks(input, words) },
          { share: 1, blocks: endBlocks(input, words) },
        ],
      },
      {
        kind: 'cautions',
        careWord: words.say('paper:care'),
        lines: wordAll(input.cautions, words),
      },
      { kind: 'notice', title: words.say('paper:standing-title'), lines: wordAll(input.standing, words) },
      tag(input, words),
    ),
  })
}

/** A card that prints no number at all: why, and whom to ask. */
export function refusedCard(input: RefusedCardInput, setting: PrintSetting, words: Words): PaperDocument {
  return documentOf(setting, words, {
    title: words.say('paper:canner-card', { canner: input.canner }),
    typePt: 18,
    fitPages: 1,
    blocks: blocksOf(
      { kind: 'head', title: input.canner, lines: [input.site] },
      { kind: 'notice', title: words.say('paper:no-number'), lines: [wordSaid(input.refused, words)] },
      wordAll(input.why, words).map((text) => ({ kind: 'line', text }) as const),
      { kind: 'heading', level: 2, text: words.say('paper:ask-whom') },
      wordAll(input.askWhom, words).map((text) => ({ kind: 'line', text, strength: 'strong' }) as const),
    ),
  })
}

function numberNotes({ hold, tableValue, elevation, trueAtHold }: CannerCardInput, words: Words): string[] {
  return [
    words.say('paper:table-says', { elevation: formatReckoned(elevation), value: formatReckoned(tableValue) }),
    ...(trueAtHold
      ? [
          words.say('paper:reads-true', {
            hold: formatReckoned(hold, 'alone'),
            truth: formatReckoned(trueAtHold, 'alone'),
          }),
        ]
      : []),
  ]
}

function timeFacts({ ventMin, processMin, lidWaitMin, jar }: CannerCardInput, words: Words) {
  const forJar =
    jar === undefined || !processMin ? {} : { note: words.say('paper:card-jar', { jar: wordSaid(jar, words) }) }
  return [
    { label: words.say('paper:vent'), value: formatReckoned(ventMin) },
    {
      label: words.say('paper:hold-for'),
      value: processMin ? formatReckoned(processMin) : words.say('paper:minutes-withheld'),
      ...forJar,
    },
    { label: words.say('paper:lid-wait'), value: formatReckoned(lidWaitMin) },
  ]
}

function dipBlocks({ gauge, hold, dipBelow }: CannerCardInput, words: Words): Block[] {
  const dial = gauge === 'dial' && dipBelow
  return [
    { kind: 'heading', level: 3, text: words.say('paper:dip-title') },
    {
      kind: 'line',
      strength: 'strong',
      text: dial
        ? words.say('paper:dip-dial', { dip: formatReckoned(dipBelow, 'alone') })
        : words.say('paper:dip-weight'),
    },
    { kind: 'line', text: words.say('paper:dip-then') },
    { kind: 'line', text: words.say('paper:high-then') },
    {
      kind: 'line',
      text: dial
        ? words.say('paper:start-dial', { hold: formatReckoned(hold, 'alone') })
        : words.say('paper:start-weight'),
    },
  ]
}

function endBlocks({ lidWaitMin }: CannerCardInput, words: Words): Block[] {
  return [
    { kind: 'heading', level: 3, text: words.say('paper:finish-title') },
    { kind: 'line', text: words.say('paper:finish-heat'), strength: 'strong' },
    { kind: 'line', text: words.say('paper:finish-zero', { wait: formatReckoned(lidWaitMin) }) },
  ]
}

function tag({ canner, gauge, hold, dipBelow, gaugeTest, gaugeStanding }: CannerCardInput, words: Words): TagBlock {
  const holdText = formatReckoned(hold, 'alone')
  const aim =
    gauge === 'dial' && dipBelow
      ? words.say('paper:tag-gauge-dial', { hold: holdText, dip: formatReckoned(dipBelow, 'alone') })
      : words.say('paper:tag-gauge-weight', { hold: holdText })
  return {
    kind: 'tag',
    cutLine: words.say('paper:cut-here'),
    title: canner,
    big: holdText,
    lines: [
      aim,
      ...(gauge === 'dial' ? testLines(gaugeTest, words) : []),
      ...(gaugeStanding === undefined ? [] : [wordSaid(gaugeStanding, words)]),
    ],
  }
}

function testLines(test: GaugeTest | undefined, words: Words): string[] {
  if (!test) return [words.say('paper:tag-untested')]
  const points = test.points.map(({ truth, reads }) =>
    words.say('paper:tag-reads', { truth: formatReckoned(truth, 'alone'), reads: formatReckoned(reads, 'alone') }),
  )
  const { tester } = test
  const dates = { date: dateText(test.testedOn), due: dateText(test.dueOn) }
  return [...(points.length > 0 ? [points.join(' ')] : []), words.say('paper:tag-tested', { tester, ...dates })]
}
