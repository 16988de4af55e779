/** A planned run's log onto paper, filled. */
import type { ProcessLog } from '@crib/planning'
import type { Words } from '@crib/wording'
import { type ProcessLogHead, processLog, type RunLine } from '../documents/process-log.ts'
import type { PrintSetting, Said } from '../documents/said.ts'
import type { PaperDocument } from '../model.ts'

export interface LogBeside {
  readonly head: ProcessLogHead
  readonly standing: readonly Said[]
  /** What happened by the clock, where a door words its events. */
  readonly lines?: readonly RunLine[]
}

/** What was done first, then departures, then the rest; questions still open stand last. */
export function processLogOfPlan(
  log: ProcessLog,
  { head, standing, lines = [] }: LogBeside,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const { summary, lines: told, departures, questions } = log
  const run = { lines, done: [summary], told: [...told, ...questions], departures }
  return processLog({ head, standing, run }, setting, words)
}
