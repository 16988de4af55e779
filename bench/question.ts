/** What one bench file answers, and the small arithmetic they share. */

export interface Measured {
  readonly what: string
  readonly value: number
  readonly unit: 'ms' | 'kB'
  /** The figure it may not pass, where one was set. */
  readonly limit?: number
  /** Something simple measured in the same run, so that figures from two machines can be compared by their ratio. */
  readonly reference: { readonly what: string; readonly value: number }
}

export type Answered = readonly Measured[] | { readonly notRun: string }

export interface BenchQuestion {
  readonly asks: string
  answer(): Promise<Answered>
}

/** The middle one of `samples`; the mean of the two middle ones of an even number. */
export function median(samples: readonly number[]): number {
  const sorted = samples.toSorted((a, b) => a - b)
  const middle = Math.floor(sorted.length / 2)
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}

/** Median time of one call, after some that do not count. [ms] */
export function medianCallMs(call: () => unknown, { warmUpCount = 30, samplesCount = 200 } = {}): number {
  for (let index = 0; index < warmUpCount; index += 1) call()
  const samples = Array.from({ length: samplesCount }, () => {
    const from = performance.now()
    call()
    return performance.now() - from
  })
  return median(samples)
}
