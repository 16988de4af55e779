/** Root of a function known to change sign once in an interval: secant steps inside a bracket that only shrinks. */

export interface RootQuestion {
  readonly low: number
  readonly high: number
  /** Width of the bracket, relative to its ends, at which it is narrow enough. */
  readonly relativeWidth: number
}

/**
 * x where `f` is zero, or null when `f` has one sign at both ends or is no number. Same unit as low and high.
 *
 * The Illinois form of regula falsi, with a halving each third step: never outside the bracket, at most 200 evaluations.
 *
 * @source dowell-jarratt-1971
 */
export function bracketedRoot(f: (x: number) => number, { low, high, relativeWidth }: RootQuestion): number | null {
  let a = low
  let b = high
  let fa = f(a)
  let fb = f(b)
  if (fa === 0) return a
  if (fb === 0) return b
  if (!(fa * fb < 0)) return null
  let side = 0
  for (let step = 0; step < 200; step++) {
    if (Math.abs(b - a) <= relativeWidth * Math.max(Math.abs(a), Math.abs(b))) return (a + b) / 2
    const falsi = (a * fb - b * fa) / (fb - fa)
    const x = step % 3 === 2 || !(falsi > Math.min(a, b) && falsi < Math.max(a, b)) ? (a + b) / 2 : falsi
    const fx = f(x)
    if (Number.isNaN(fx)) return null
    if (fx === 0) return x
    if (fx * fb < 0) {
      a = b
      fa = fb
      side = 0
    } else if (side === 1) fa /= 2
    else side = 1
    b = x
    fb = fx
  }
  return null
}
