/**
 * What was sorted out of one pot after the cook: by cause, its share of the pot, beside the keeper's own line. Weighed tails
 * stand against the hominy weighed, both drained and as wet as each other; a handful is counted, with what chance leaves open.
 * Mould is no matter of share: it stops. Leaves out: the sort before the pot (sort-tails.ts).
 */
import { askWhom } from '@crib/guidance'
import type { BatchFact, Facts, SORT_CAUSES, TAILS_GO } from '@crib/journal'
import { clopperPearson1934, type Reckoned, type Sentence, type Spread } from '@crib/science'
import { say } from '../shared/say.ts'
import { valuesOf } from './fields.ts'

export type SortCause = (typeof SORT_CAUSES)[number]
export type TailsGo = (typeof TAILS_GO)[number]

export interface CauseOfTails {
  readonly cause: SortCause
  /** Weighed, drained. [kg] */
  readonly massKg?: Reckoned
  /** Of the pot. [Fraction] */
  readonly shareFraction?: Reckoned
}

export interface PotTails {
  /** Mould first, then the largest. */
  readonly causes: readonly CauseOfTails[]
  /** Of the pot: by weight where the hominy was weighed, else of the last handful. [Fraction] */
  readonly shareFraction?: Reckoned
  readonly hasMould: boolean
  readonly line: 'none' | 'not-known' | 'below' | 'above'
  /** What may become of them, the keeper's own word first. With mould they are thrown out. */
  readonly offered: readonly TailsGo[]
  readonly sentences: readonly Sentence[]
  /** Set with mould. */
  readonly askWhom: readonly Sentence[]
}

const ALL: readonly TailsGo[] = ['sort-again', 'cook-tails-again', 'grind', 'feed', 'discard']

/** Null before anything was sorted out of this pot after the cook. */
export function potTails({ kitchen }: Pick<Facts, 'kitchen'>, batch: BatchFact, potLoad: number): PotTails | null {
  const weighed = tailsWeighed(batch, potLoad)
  const handful = batch.cook.findLast(({ seen, potLoad: pot }) => pot === potLoad && seen.type === 'handful-sorted')
  if (weighed.sorts.length === 0 && !handful) return null
  const hominyKg = hominyWeighed(batch, potLoad)?.massKg
  const counted = handful?.seen.type === 'handful-sorted' ? handful.seen : null
  const byWeight = hominyKg !== undefined && weighed.sorts.length > 0
  const value = valuesOf(
    { batchId: batch.batchId, potLoad, removedKg: weighed.removedKg, hominyKg: hominyKg ?? null },
    ['clopper-pearson-1934'],
  )
  const own = { basis: 'own-record', sourceKeys: [] } as const
  const byHand = (id: string, count: number): Reckoned | undefined =>
    counted ? value(id, ofHandful(count, counted.ofCount), 'Fraction', 0.01, { basis: 'own-record' }) : undefined
  const share = (id: string, kg: number, count: number): Reckoned | undefined =>
    // What only the handful showed has no weight to tell a share by.
    byWeight && (kg > 0 || count === 0)
      ? value(id, kg / (weighed.removedKg + hominyKg), 'Fraction', 0.01, own)
      : byHand(id, count)
  const countOf = (cause: SortCause) => sum(counted?.tails ?? [], (tail) => (tail.cause === cause ? tail.count : 0))
  const causes = [...new Set([...weighed.byCause.keys(), ...(counted?.tails ?? []).map(({ cause }) => cause)])]
    .map((cause) => ({ cause, kg: weighed.byCause.get(cause) ?? 0, count: countOf(cause) }))
    .filter(({ kg, count }) => kg > 0 || count > 0)
    .sort((a, b) => Number(b.cause === 'mould') - Number(a.cause === 'mould') || b.kg - a.kg || b.count - a.count)
  const whole = share(
    'tailsFraction',
    weighed.removedKg,
    sum(counted?.tails ?? [], ({ count }) => count),
  )
  const hasMould = causes.some(({ cause }) => cause === 'mould')
  const rejectLine = kitchen?.rejectLine
  const line = !rejectLine ? 'none' : !whole ? 'not-known' : whole.value > rejectLine.shareFraction ? 'above' : 'below'
  return {
    causes: causes.map(({ cause, kg, count }) => {
      const shareFraction = share(`tails:${cause}`, kg, count)
      return {
        cause,
        ...(kg > 0 && { massKg: value(`tailsKg:${cause}`, kg, 'Kg', 0.005, own) }),
        ...(shareFraction && { shareFraction }),
      }
    }),
    ...(whole && { shareFraction: whole }),
    hasMould,
    line,
    offered: hasMould ? ['discard'] : ownFirst(rejectLine?.above),
    sentences: [
      ...(whole ? [] : [say('kettle:tails-weigh-or-count')]),
      ...(whole && !byWeight && counted ? [say('kettle:tails-of-handful', { count: counted.ofCount })] : []),
      ...(rejectLine && (line === 'above' || line === 'below')
        ? [
            say(`kettle:tails-line-${line}`, { line: { value: rejectLine.shareFraction, unit: 'Fraction' } }),
            ...(line === 'above' && !hasMould ? [say(`kettle:tails-go-${rejectLine.above}`)] : []),
            ...(isClose(whole, rejectLine.shareFraction) ? [say('kettle:tails-line-close')] : []),
          ]
        : []),
    ],
    askWhom: hasMould ? [say('kettle:mould-ask'), ...askWhom().slice(0, 1)] : [],
  }
}

/** What is said of mould, wherever it is found: it stops. */
export function mouldFound(when: 'dry' | 'wet'): readonly Sentence[] {
  return [
    say('kettle:mould-neither'),
    say('cautions:sort-alkali-no-remedy'),
    say(when === 'wet' ? 'kettle:mould-in-the-pot' : 'kettle:mould-before-the-pot'),
  ]
}

/** Sorted out of a pot after the cook, drained. A sort that names no pot is of the only one. */
export function tailsWeighed(batch: BatchFact, potLoad: number) {
  const sorts = batch.sorts.filter(({ when, potLoad: pot = 1 }) => when === 'wet' && pot === potLoad)
  const byCause = new Map<SortCause, number>()
  for (const { cause, massKg } of sorts.flatMap(({ tails = [] }) => tails)) {
    byCause.set(cause, (byCause.get(cause) ?? 0) + massKg)
  }
  return { sorts, byCause, removedKg: sum(sorts, ({ removedKg }) => removedKg) }
}

/** Hominy of a pot as last weighed. */
export function hominyWeighed(batch: BatchFact, potLoad: number) {
  const found = batch.cook.findLast(({ seen, potLoad: pot }) => pot === potLoad && seen.type === 'hominy-weighed')
  return found?.seen.type === 'hominy-weighed' ? found.seen : null
}

function ofHandful(foundCount: number, ofCount: number): Spread {
  return { value: foundCount / ofCount, ...clopperPearson1934({ foundCount, ofCount }) }
}

function isClose(share: Reckoned | undefined, line: number): boolean {
  return share?.low !== undefined && share.high !== undefined && share.low <= line && line <= share.high
}

function ownFirst(own: TailsGo | undefined): readonly TailsGo[] {
  return own ? [own, ...ALL.filter((each) => each !== own)] : ALL
}

function sum<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((total, item) => total + of(item), 0)
}
