/**
 * A small list scheduler: work on pots and canners, with as many hands as there are people. Deterministic; the earliest
 * work goes first, ties to the order given. Leaves out: what the work is and what the clock says (timeline.ts).
 */

export interface Segment {
  readonly id: string
  readonly minutes: number
  /** Takes one person's hands for its whole length; else someone only looks in. */
  readonly needsHands: boolean
}

/** Segments that follow each other without a gap. */
export interface Block {
  readonly id: string
  readonly segments: readonly Segment[]
  /** Blocks that must be over before this one begins. */
  readonly after: readonly string[]
}

export interface Placed {
  readonly blockId: string
  readonly segmentId: string
  /** From the beginning of the work. [min] */
  readonly startMin: number
  readonly endMin: number
  readonly needsHands: boolean
}

interface Interval {
  readonly startMin: number
  readonly endMin: number
}

/**
 * Places every block as early as its predecessors and free hands allow. [min from the beginning]
 *
 * @param handsCount people; infinite when hands are never short.
 * @throws {RangeError} when blocks wait for each other in a circle or for one that does not exist.
 */
export function schedule(blocks: readonly Block[], handsCount: number): readonly Placed[] {
  const overAt = new Map<string, number>()
  const busy: Interval[] = []
  const placed: Placed[] = []
  let open = [...blocks]
  while (open.length > 0) {
    let best: { readonly block: Block; readonly startMin: number } | null = null
    for (const block of open) {
      if (!block.after.every((id) => overAt.has(id))) continue
      const ready = block.after.reduce((latest, id) => Math.max(latest, overAt.get(id)!), 0)
      const startMin = earliestWithHands(block, ready, busy, handsCount)
      if (!best || startMin < best.startMin) best = { block, startMin }
    }
    if (!best) throw new RangeError(`work waits for itself: ${open.map(({ id }) => id).join(', ')}`)
    let at = best.startMin
    for (const { id, minutes, needsHands } of best.block.segments) {
      const interval = { startMin: at, endMin: at + minutes }
      placed.push({ blockId: best.block.id, segmentId: id, ...interval, needsHands })
      if (needsHands && minutes > 0) busy.push(interval)
      at += minutes
    }
    overAt.set(best.block.id, at)
    open = open.filter((block) => block !== best.block)
  }
  return placed.sort((a, b) => a.startMin - b.startMin || a.endMin - b.endMin)
}

/** Pushes the block later until none of its hands-on segments asks for more hands than there are. */
function earliestWithHands(block: Block, readyMin: number, busy: readonly Interval[], handsCount: number): number {
  if (handsCount === Number.POSITIVE_INFINITY) return readyMin
  let startMin = readyMin
  for (;;) {
    const push = pushNeeded(block, startMin, busy, handsCount)
    if (push <= 0) return startMin
    startMin += push
  }
}

/** How much later the block must begin for its first crowded segment to find hands; 0 when none is crowded. */
function pushNeeded(block: Block, startMin: number, busy: readonly Interval[], handsCount: number): number {
  let at = startMin
  for (const { minutes, needsHands } of block.segments) {
    const segment = { startMin: at, endMin: at + minutes }
    at += minutes
    if (!needsHands || minutes === 0) continue
    const overlapping = busy.filter((other) => other.startMin < segment.endMin && other.endMin > segment.startMin)
    // The crowd inside the segment is greatest where some interval begins.
    const moments = [segment.startMin, ...overlapping.map((other) => Math.max(other.startMin, segment.startMin))]
    for (const moment of moments) {
      const there = overlapping.filter((other) => other.startMin <= moment && other.endMin > moment)
      if (there.length >= handsCount) return Math.min(...there.map((other) => other.endMin)) - segment.startMin
    }
  }
  return 0
}
