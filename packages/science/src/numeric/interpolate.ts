/** Straight lines between tabulated points; never past the first or the last. */
import { requireInRange, ValidRangeError } from '../errors.ts'

export interface Point {
  readonly x: number
  readonly y: number
}

export interface LineNames {
  /** Name, unit and source of x, for the message when x lies off the points. */
  readonly argument: string
  readonly unit: string
  readonly source: string
}

/**
 * y on the straight line between the two points beside x; a point's own y at that point. Same unit as the points' y.
 *
 * @param points one or more, x rising.
 * @throws {ValidRangeError} when x lies off the points, or x does not rise from point to point.
 */
export function interpolateLine(points: readonly Point[], x: number, { argument, unit, source }: LineNames): number {
  points.forEach((point, index) => {
    const before = points[index - 1]
    if (!Number.isFinite(point.y) || (before && !(point.x > before.x))) {
      throw new ValidRangeError(`point ${index + 1}`, point.x, {
        min: before?.x ?? point.x,
        max: point.x,
        unit,
        source,
      })
    }
  })
  const min = points[0]?.x ?? Number.NaN
  const max = points.at(-1)?.x ?? Number.NaN
  requireInRange(argument, x, { min, max, unit, source })

  const next = points.findIndex((point) => point.x >= x)
  const after = points[next]!
  if (after.x === x) return after.y
  const before = points[next - 1]!
  return before.y + ((after.y - before.y) * (x - before.x)) / (after.x - before.x)
}
