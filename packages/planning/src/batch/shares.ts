/** Shares of a batch told as parts, the way a cook says it: two parts to freeze, one to dry. */
import type { Ending, EndingShare } from './input.ts'

/** Parts as fractions that together make 1; endings with no part are left out. Empty where there is none. */
export function sharesOfParts(parts: Partial<Record<Ending, number>>): readonly EndingShare[] {
  const told = (Object.entries(parts) as [Ending, number][]).filter(([, count]) => count > 0)
  const all = told.reduce((sum, [, count]) => sum + count, 0)
  return told.map(([ending, count]) => ({ ending, shareFraction: count / all }))
}
