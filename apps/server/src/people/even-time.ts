/**
 * Answers to whoever may not read a kitchen whole go out on the stroke: at a whole number of 5 ms after they were asked
 * for. How long the book took depends on how much is in it, hidden lines too; the stroke does not.
 */
import { setImmediate, setTimeout } from 'node:timers/promises'

export const STROKE_MS = 5

export async function nextStroke(askedAtMs: number, now: () => number = () => performance.now()): Promise<void> {
  const strokes = Math.ceil((now() - askedAtMs) / STROKE_MS)
  const dueMs = askedAtMs + strokes * STROKE_MS
  // Timers are good to a millisecond; the rest is waited turn by turn.
  const longMs = Math.floor(dueMs - now()) - 1
  if (longMs > 0) await setTimeout(longMs)
  while (now() < dueMs) await setImmediate()
}
