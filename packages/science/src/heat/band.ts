/**
 * How uncertain a figure is when its inputs are: a band from evenly spread samples, and what each input does by itself.
 * Inputs are independent triangles from low over mid to high; ties between them are not known here.
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { createSobol } from '../numeric/sobol.ts'
import type { LowMidHigh } from './jar-materials.ts'

export type Spreads<Name extends string> = { readonly [name in Name]: LowMidHigh }
export type Values<Name extends string> = { [name in Name]: number }

export interface Band {
  /** At the middle of every input. */
  readonly mid: number
  /** A twentieth of the samples lie below `low` and a twentieth above `high`. */
  readonly low: number
  readonly high: number
  readonly samplesCount: number
}

export interface Swing<Name extends string> {
  readonly input: Name
  /** With this input at its low or high end and all others in the middle. */
  readonly atLow: number
  readonly atHigh: number
}

const SAMPLES: ValidRange = { min: 64, max: 1_000_000, unit: 'samples', source: 'project-rule' }

/**
 * The middle nine tenths of some figures whose inputs spread, by Sobol's points. Same units as the figures.
 *
 * @param spreads one to ten inputs, low <= mid <= high.
 * @param figures as many each time.
 * @throws {ValidRangeError} for spreads out of order, more than ten of them, or fewer than 64 samples.
 * @source joe-kuo-2008
 */
export function bandsOf<Name extends string>(
  spreads: Spreads<Name>,
  figures: (values: Values<Name>) => readonly number[],
  samplesCount: number,
): readonly Band[] {
  requireInRange('samplesCount', samplesCount, SAMPLES)
  const names = namesOf(spreads)
  const next = createSobol(names.length)
  next() // the origin: every input at its low end
  const values = middleOf(spreads)
  const mids = figures(values)
  const sampled = mids.map(() => new Float64Array(samplesCount))
  for (let k = 0; k < samplesCount; k += 1) {
    const point = next()
    for (let d = 0; d < names.length; d += 1) values[names[d]!] = triangularQuantile(spreads[names[d]!], point[d]!)
    const found = figures(values)
    for (let f = 0; f < sampled.length; f += 1) sampled[f]![k] = found[f]!
  }
  return sampled.map((figure, f) => {
    figure.sort()
    const at = (share: number) => figure[Math.round(share * (samplesCount - 1))]!
    return { mid: mids[f]!, low: at(0.05), high: at(0.95), samplesCount }
  })
}

/**
 * The same for one figure.
 *
 * @throws {ValidRangeError} as bandsOf.
 * @source joe-kuo-2008
 */
export function bandOf<Name extends string>(
  spreads: Spreads<Name>,
  figure: (values: Values<Name>) => number,
  samplesCount: number,
): Band {
  return bandsOf(spreads, (values) => [figure(values)], samplesCount)[0]!
}

/**
 * What each input does by itself, widest first. Same unit as the figure.
 *
 * @throws {ValidRangeError} for spreads out of order.
 * @source none: one input at a time, all others in the middle
 */
export function swingsOf<Name extends string>(
  spreads: Spreads<Name>,
  figure: (values: Values<Name>) => number,
): readonly Swing<Name>[] {
  const swings = namesOf(spreads).map((input) => ({
    input,
    atLow: figure({ ...middleOf(spreads), [input]: spreads[input].low }),
    atHigh: figure({ ...middleOf(spreads), [input]: spreads[input].high }),
  }))
  const width = ({ atLow, atHigh }: Swing<Name>) => Math.abs(atHigh - atLow)
  return swings.toSorted((one, other) => width(other) - width(one))
}

/**
 * Quantile of the triangle from low over mid to high. Same unit as the spread.
 *
 * @param share Valid: 0 to 1.
 * @source none: the closed form of a triangle's distribution
 */
export function triangularQuantile({ low, mid, high }: LowMidHigh, share: number): number {
  if (high === low) return mid
  const atMid = (mid - low) / (high - low)
  return share < atMid
    ? low + Math.sqrt(share * (high - low) * (mid - low))
    : high - Math.sqrt((1 - share) * (high - low) * (high - mid))
}

function namesOf<Name extends string>(spreads: Spreads<Name>): readonly Name[] {
  const names = Object.keys(spreads) as Name[]
  for (const name of names) {
    const { low, mid, high } = spreads[name]
    const source = 'project-rule'
    requireInRange(`${name}.mid`, mid, { min: low, max: high, unit: '', source })
  }
  return names
}

/** The middle of every input. */
export function middleOf<Name extends string>(spreads: Spreads<Name>): Values<Name> {
  return Object.fromEntries(Object.entries<LowMidHigh>(spreads).map(([name, { mid }]) => [name, mid])) as Values<Name>
}
