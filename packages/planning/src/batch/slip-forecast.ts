/**
 * When a pot's hulls will have slipped: a range from the book's own pots and what this pot has shown. Never one minute, and
 * no clock that runs: the range moves only when something is written down. The rub decides.
 */
import type { Facts } from '@crib/journal'
import {
  learnSlip,
  minuteReached,
  minutesAtOne,
  type Reckoned,
  type Sentence,
  type SlipBelief,
  type SlipPot,
  type SlipScore,
  type StageScore,
  scoreSlip,
  slipPlaces,
  slippedRange,
  slipRange,
} from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { potRecordOf, slipPots } from './slip-records.ts'

/** What the corn is for; grinding forgives.  project rule */
export const WANTED_FRACTION = { whole: 0.9, ground: 0.6 } as const
/** How much of what is believed lies within the range shown. [fraction]  project rule */
export const SLIP_RANGE_FRACTION = 0.8

const SOURCE_KEYS = ['kalbfleisch-prentice-2002', 'tierney-kadane-1986'] as const

export interface SlipQuestion {
  readonly batchId: string
  readonly potLoad: number
  readonly nowMs: number
  readonly use: keyof typeof WANTED_FRACTION
}

export interface SlipForecast {
  readonly kind: 'foretold'
  /** When the wanted share will have slipped, since the boil began: low and high are the range. [Min] */
  readonly slipMin: Reckoned
  /** Share that has slipped by now. [Fraction] */
  readonly slippedNowFraction: Reckoned
  /** The range on the clock. [epoch ms] */
  readonly fromMs: number
  readonly toMs: number
  /** Where the present lies. */
  readonly now: 'before' | 'within' | 'after'
  /** Pots of the book behind it, this one not counted. */
  readonly potsCount: number
  readonly sentences: readonly Sentence[]
}

export type SlipOutcome = SlipForecast | { readonly kind: 'not-boiling'; readonly sentences: readonly Sentence[] }

/** What the book's other pots teach, and how well each of them would have been foretold from the rest. */
export interface SlipKnowledge {
  readonly belief: SlipBelief
  readonly score: SlipScore
}

/** Made once and handed to `slipForecast` as often as this pot tells more: slow with a long book, so rather in a worker. */
export function slipBelief(facts: Facts, pot: Pick<SlipQuestion, 'batchId' | 'potLoad'>): SlipKnowledge {
  return slipKnowledge(slipPots(facts, pot))
}

/** The same from the pots themselves, which are little to hand to a worker. */
export function slipKnowledge(pots: readonly SlipPot[]): SlipKnowledge {
  const belief = learnSlip(pots)
  return { belief, score: scoreSlip(belief, SLIP_RANGE_FRACTION) }
}

/** @throws {RangeError} for a batch that is not in the book. */
export function slipForecast(
  facts: Facts,
  question: SlipQuestion,
  { belief, score }: SlipKnowledge = slipBelief(facts, question),
): SlipOutcome {
  const { batchId, potLoad, nowMs, use } = question
  const batch = facts.batches[batchId]
  if (!batch) throw new RangeError(`batch ${batchId} is not in the book`)
  const record = potRecordOf(facts, batch, potLoad)
  if (!record) return { kind: 'not-boiling', sentences: [say('kettle:slip-not-boiling')] }
  const { pot, dosings, boilAtMs } = record
  const wantedFraction = WANTED_FRACTION[use]
  const places = slipPlaces(belief, pot)
  const stage = pot.rubs.length < 2 ? score.beforeRubs : score.afterRubs
  const { widening } = stage
  const range = slipRange(places, { wantedFraction, rangeFraction: SLIP_RANGE_FRACTION, widening })
  const onClock = (minutes: number) => minuteReached(dosings, minutes)
  const [low, middle, high] = [range.lowMin, range.middleMin, range.highMin].map(onClock) as [number, number, number]
  const boiledMin = Math.max(0, (nowMs - boilAtMs) / 60_000)
  const slipped = slippedRange(places, Math.max(0.5, minutesAtOne(dosings, boiledMin)), SLIP_RANGE_FRACTION)
  const { potsCount } = belief
  const shared = {
    basis: potsCount > 0 || pot.rubs.length > 0 ? ('own-record' as const) : ('project-rule' as const),
    sourceKeys: SOURCE_KEYS,
    inputs: {
      wantedFraction,
      potsCount,
      rubsCount: pot.rubs.length,
      usualMin: pot.usualMin,
      widening,
    },
  }
  const now = boiledMin < low ? 'before' : boiledMin <= high ? 'within' : 'after'
  return {
    kind: 'foretold',
    slipMin: reckon({ id: 'slipMin', value: middle, low, high, unit: 'Min', rounding: nearest(5), ...shared }),
    slippedNowFraction: reckon({
      id: 'slippedNowFraction',
      value: slipped.middle,
      low: slipped.low,
      high: slipped.high,
      unit: 'Fraction',
      rounding: nearest(0.05),
      ...shared,
    }),
    fromMs: boilAtMs + low * 60_000,
    toMs: boilAtMs + high * 60_000,
    now,
    potsCount,
    sentences: [
      say('kettle:slip-foretold', {
        share: { value: wantedFraction, unit: 'Fraction' },
        low: { value: Math.floor(low / 5) * 5, unit: 'Min' },
        high: { value: Math.ceil(high / 5) * 5, unit: 'Min' },
      }),
      ...(now === 'before' ? [] : [say(`kettle:slip-now-${now}`)]),
      potsCount === 0 ? say('kettle:slip-no-pots') : say('kettle:slip-own-pots', { count: potsCount }),
      ...scoreSentences(stage),
      ...(pot.darkenedMin === undefined ? [] : [say('kettle:slip-darkened')]),
      ...(dosings.some(({ fromMin }) => fromMin > 0) ? [say('kettle:slip-added-late')] : []),
    ],
  }
}

/** Fewer pots than these say nothing of how well they were foretold.  project rule */
const FEWEST_SCORED = 5
/** From here on the widening is told.  project rule */
const WIDENING_TOLD = 1.1

function scoreSentences({ potsCount, withinFraction, widening }: StageScore): readonly Sentence[] {
  if (potsCount < FEWEST_SCORED) return []
  return [
    say('kettle:slip-score', {
      count: potsCount,
      within: { value: Math.round(withinFraction * 100) / 100, unit: 'Fraction' },
      meant: { value: SLIP_RANGE_FRACTION, unit: 'Fraction' },
    }),
    ...(widening >= WIDENING_TOLD ? [say('kettle:slip-widened', { times: Math.round(widening * 10) / 10 })] : []),
  ]
}
