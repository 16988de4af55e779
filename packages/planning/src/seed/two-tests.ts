/** Whether two sprouting tests of one lot agree, and whether a small test asks for another. Leaves out: years between tests. */
import {
  type CalcResult,
  differenceNewcombe1998,
  type Reckoned,
  RULE_TEST_COUNT,
  type Sentence,
  sequentialStep,
  twoTestsGap,
} from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { refusedFor, type SproutCount, testFault } from './germination.ts'

export interface TwoTestsInput {
  readonly firstSproutedCount: number
  readonly firstTestedCount: number
  readonly secondSproutedCount: number
  readonly secondTestedCount: number
}

interface Compared {
  readonly agree: boolean
  readonly sentence: Sentence
}

function differenceOf(first: SproutCount, second: SproutCount) {
  const countOf = ({ sproutedCount, testedCount }: SproutCount) => ({
    foundCount: sproutedCount,
    ofCount: testedCount,
  })
  return differenceNewcombe1998(countOf(first), countOf(second))
}

/** The rules' own limit where both tests are of 400 and the table has the row, else null. */
function byTheRules(first: SproutCount, second: SproutCount) {
  if (first.testedCount !== RULE_TEST_COUNT || second.testedCount !== RULE_TEST_COUNT) return null
  const { limitPercent, ...gap } = twoTestsGap([first.sproutedCount, second.sproutedCount])
  return limitPercent === null ? null : { ...gap, limitPercent }
}

function compared(first: SproutCount, second: SproutCount): Compared {
  const rule = byTheRules(first, second)
  if (rule) {
    const params = { gap: rule.gapPercent, limit: rule.limitPercent, mean: rule.meanPercent }
    const agree = rule.gapPercent <= rule.limitPercent
    return { agree, sentence: agree ? say('seed:two-agree-by-rule', params) : say('seed:two-differ-by-rule', params) }
  }
  const { value, low, high } = differenceOf(first, second)
  const agree = low <= 0 && high >= 0
  const gap = Math.round(Math.abs(value) * 100)
  return { agree, sentence: agree ? say('seed:two-agree', { gap }) : say('seed:two-differ', { gap }) }
}

/**
 * Whether two tests agree: by the seed-testing rules where both are of 400, else by the range of their difference. [fraction]
 *
 * 46 of 50 and 40 of 50: 0.12 apart, -0.02 to 0.26: chance alone may do it.
 *
 * @source la-admin-7-xiii-139, newcombe-1998-difference
 */
export function twoTests(input: TwoTestsInput): CalcResult {
  const first = { sproutedCount: input.firstSproutedCount, testedCount: input.firstTestedCount }
  const second = { sproutedCount: input.secondSproutedCount, testedCount: input.secondTestedCount }
  const fault = testFault(first) ?? testFault(second)
  if (fault) return refusedFor(fault)
  const inputs = { ...input } as Reckoned['inputs']
  const rule = byTheRules(first, second)
  const { agree, sentence } = compared(first, second)
  const limit = rule && {
    ...({ id: 'allowedPer100', value: rule.limitPercent, unit: 'Count', rounding: nearest(1), inputs } as const),
    ...({ basis: 'published', sourceKeys: ['la-admin-7-xiii-139'] } as const),
  }
  return {
    ok: true,
    values: [
      reckon({
        id: 'differenceFraction',
        ...differenceOf(first, second),
        unit: 'Fraction',
        rounding: nearest(0.01),
        basis: 'computed',
        sourceKeys: ['newcombe-1998-difference', 'wilson-1927'],
        inputs,
      }),
      ...(limit ? [reckon(limit)] : []),
    ],
    reasons: agree ? [sentence] : [],
    warnings: [...(agree ? [] : [sentence]), ...(rule ? [] : [say('seed:two-no-printed-limit')])],
  }
}

/**
 * What genebanks do after a first group of 40, or after two: grow anew, test more, or keep. [kernels]
 *
 * 31 of 40: 40 more.
 *
 * @source rao-2006
 */
export function sequentialTest(count: SproutCount): CalcResult {
  const fault = testFault(count)
  if (fault) return refusedFor(fault)
  const said = sequentialSentence(count)
  if (!said) {
    const why = say('seed:groups-of-forty', { tested: count.testedCount })
    return { ok: false, refused: 'groups-of-forty', why: [why], askWhom: [say('seed:ask-a-genebank')] }
  }
  const { step, growOutUpToCount, keepFromCount } = sequentialStep(count.sproutedCount, count.testedCount)
  const common = {
    unit: 'Count',
    rounding: nearest(1),
    basis: 'published',
    sourceKeys: ['rao-2006'],
    inputs: { ...count } as Reckoned['inputs'],
  } as const
  return {
    ok: true,
    values: [
      reckon({ id: 'growOutUpToCount', value: growOutUpToCount, ...common }),
      ...(keepFromCount === null ? [] : [reckon({ id: 'keepFromCount', value: keepFromCount, ...common })]),
    ],
    reasons: step === 'grow-out' ? [] : [said],
    warnings: step === 'grow-out' ? [said] : [],
  }
}

/** What the flowchart says of a test, or null where it has no row for so many kernels. */
function sequentialSentence({ sproutedCount, testedCount }: SproutCount): Sentence | null {
  if (testedCount !== 40 && testedCount !== 80) return null
  const params = { sprouted: sproutedCount, tested: testedCount }
  switch (sequentialStep(sproutedCount, testedCount).step) {
    case 'grow-out':
      return say('seed:sequence-grow-out', params)
    case 'test-more':
      return say('seed:sequence-test-more', params)
    case 'keep':
      return say('seed:sequence-keep', params)
  }
}

export interface DatedTest extends SproutCount {
  /** ISO 8601: 2027-04-02. */
  readonly testedOn: string
}

/** Longest time between two tests that are still tests of the same seed. Project rule. [days] */
const SAME_SEED_DAYS = 60
const DAY_MS = 86_400_000

/** Whether a test agrees with the lot's newest other one, where both are of about the same time; and what groups of 40 ask. */
export function testBesideOthers(
  test: DatedTest,
  others: readonly DatedTest[],
): { readonly agree: boolean; readonly sentences: readonly Sentence[] } {
  if (testFault(test)) return { agree: true, sentences: [] }
  const isNear = ({ testedOn }: DatedTest) =>
    Math.abs(Date.parse(test.testedOn) - Date.parse(testedOn)) <= SAME_SEED_DAYS * DAY_MS
  const other = others.filter(isNear).at(-1)
  const both = other && compared(other, test)
  const together =
    other?.testedCount === 40 && test.testedCount === 40
      ? { sproutedCount: other.sproutedCount + test.sproutedCount, testedCount: 80 }
      : test
  const step = both?.agree === false ? null : sequentialSentence(together)
  return { agree: both?.agree ?? true, sentences: [...(both ? [both.sentence] : []), ...(step ? [step] : [])] }
}
