/** A log written by hand and typed in afterwards: one line for each thing seen, `clock,event,value`. */
import type { RunEvent } from '@crib/journal'
import { dayAfter, readInstant, type WallClock } from './clock-times.ts'
import { readEvent } from './event-typed.ts'
import { BadInput, badInput } from './exit-codes.ts'

export interface TypedLine {
  readonly atMs: number
  readonly event: RunEvent
}

export interface TypedDay extends WallClock {
  /** YYYY-MM-DD of the first line. */
  readonly day: string
}

const DAY = /^\d{4}-\d\d-\d\d$/
const DAY_MS = 86_400_000

/**
 * The lines of a typed log, in the order of the sheet. A clock time is on the log's day; one that would go back more than
 * half a day is past midnight. A first line without a clock time names the columns and is left out, as is one with `#`.
 *
 * @throws {BadInput} naming the line.
 */
export function readTypedLog(text: string, { day, now, zone }: TypedDay, runId: string): TypedLine[] {
  if (!DAY.test(day)) throw badInput('terminal:not-a-date', { given: day })
  const lines: TypedLine[] = []
  let onDay = day
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === '' || line.startsWith('#')) continue
    const [clock = '', word = '', value] = line.split(',').map((cell) => cell.trim())
    if (lines.length === 0 && !/\d/.test(clock)) continue
    try {
      const at = (on: string) => readInstant(/^\d{4}-/.test(clock) ? clock : `${on} ${clock}`, { now, zone })
      let atMs = at(onDay)
      const last = lines.at(-1)
      if (last && last.atMs - atMs > DAY_MS / 2) {
        onDay = dayAfter(onDay)
        atMs = at(onDay)
      }
      lines.push({ atMs, event: readEvent(word, value, runId) })
    } catch (error) {
      if (!(error instanceof BadInput)) throw error
      throw new BadInput({ key: 'terminal:typed-line', params: { number: index + 1, line } }, ...error.sentences)
    }
  }
  return lines
}
