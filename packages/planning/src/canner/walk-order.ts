/** The order of a run's lines: by instant, and by what can only happen before what. */
import type { RunEventType, RunRecord } from './run-event.ts'
import type { Walk } from './walk.ts'

/** Steps of one heating, in the order they can only happen. */
export const STEP_RANK = {
  'canner-loaded': 1,
  'lid-seated': 2,
  'steam-steady': 3,
  'vent-closed': 4,
  'at-pressure': 5,
  'heat-off': 6,
  zero: 7,
  'weight-off': 8,
  'lid-off': 9,
  'jars-out': 10,
  'seal-seen': 11,
} as const satisfies Partial<Record<RunEventType, number>>

/** Each line once, in the order it happened: by instant, then tiebreak, then id. */
export function inOrder(records: readonly RunRecord[]): RunRecord[] {
  const sorted = [...records].sort(
    (a, b) =>
      a.happenedAtMs - b.happenedAtMs ||
      compareText(a.tiebreak ?? '', b.tiebreak ?? '') ||
      compareText(a.id, b.id) ||
      compareText(JSON.stringify(a.event), JSON.stringify(b.event)),
  )
  const seen = new Set<string>()
  return sorted.filter(({ id }) => !seen.has(id) && seen.add(id))
}

export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** A step that belongs before one already written down asks which time is right. */
export function askAboutOrder(walk: Walk, atMs: number, type: RunEventType): void {
  const rank = rankOf(type)
  if (rank === undefined) return
  const last = walk.lastStep
  const endRank = STEP_RANK['heat-off']
  const heatsAgain = last && last.rank >= endRank && rank < endRank && !walk.ran && !walk.badEnd
  const isBackwards = last !== undefined && rank < last.rank && !heatsAgain && !isRepeat(walk, type)
  if (isBackwards) walk.questions.push({ kind: 'out-of-order', atMs, laterStepAtMs: last.atMs })
  if (!last || rank > last.rank || heatsAgain) walk.lastStep = { rank, atMs }
}

/** The same step tapped again changes nothing and asks nothing. */
function isRepeat(walk: Walk, type: RunEventType): boolean {
  switch (type) {
    case 'canner-loaded':
      return walk.loadedAtMs !== undefined
    case 'lid-seated':
      return walk.lidSeatedAtMs !== undefined
    case 'steam-steady':
      return walk.steamAtMs !== undefined
    case 'vent-closed':
      return walk.ventClosedAtMs !== undefined
    case 'at-pressure':
      return true
    case 'heat-off':
      return walk.heatOffAtMs !== undefined
    case 'zero':
      return walk.zeroAtMs !== undefined
    case 'weight-off':
      return walk.weightOffAtMs !== undefined
    case 'lid-off':
      return walk.lidOffAtMs !== undefined
    default:
      return false
  }
}

function rankOf(type: RunEventType): number | undefined {
  return (STEP_RANK as Partial<Record<RunEventType, number>>)[type]
}
