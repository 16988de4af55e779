/** How wide the columns of a table are: by share, but never narrower than their longest word while there is room. */

/**
 * Widths that add up to `width`. [same unit as `width`]  A column narrower than its least width takes what it lacks
 * from the columns that have more than theirs, in proportion. Where the least widths alone are too much, words break.
 */
export function columnWidths(shares: readonly number[], leasts: readonly number[], width: number): number[] {
  const total = shares.reduce((sum, share) => sum + share, 0)
  const byShare = shares.map((share) => (width * share) / total)
  const least = (index: number) => leasts[index] ?? 0
  const lacking = byShare.reduce((sum, wide, index) => sum + Math.max(0, least(index) - wide), 0)
  const spare = byShare.reduce((sum, wide, index) => sum + Math.max(0, wide - least(index)), 0)
  if (lacking > spare) {
    const leastTotal = leasts.reduce((sum, one) => sum + one, 0)
    return shares.map((_, index) => (width * least(index)) / leastTotal)
  }
  return byShare.map((wide, index) => {
    const more = wide - least(index)
    return more <= 0 ? least(index) : least(index) + more * (1 - (spare > 0 ? lacking / spare : 0))
  })
}
