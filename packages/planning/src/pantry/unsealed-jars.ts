/** Jars that did not seal and what may still be done with them, from the runs of the book. */
import { type UnsealedOutcome, unsealedChoices } from '@crib/guidance'
import type { Facts } from '@crib/journal'
import { runState } from '../canner/run.ts'
import { runRecords } from '../canner/run-event.ts'
import { publishedRunRules } from '../canner/run-rules.ts'

export interface UnsealedJars {
  readonly runId: string
  readonly loadCode: string
  readonly count: number
  readonly outcome: UnsealedOutcome
}

/** After this nothing is asked any more: what became of them is in the book or nowhere. [h]  project rule */
const ASKED_FOR_H = 48
const MS_PER_H = 3_600_000

/** Loads with unsealed jars of the last two days, the latest first. `nowMs` in epoch ms. */
export function unsealedJars({ runs }: Pick<Facts, 'runs'>, nowMs: number): readonly UnsealedJars[] {
  return Object.values(runs)
    .flatMap((run) => {
      const { gauge, requiredReadingPsi, processMin, loadCode } = run.begun
      const setup = { gauge, requiredReadingPsi, processMin, rules: publishedRunRules(), zone: run.begun.at.zone }
      const { seals, marks, outcome, departures } = runState(setup, runRecords(run), nowMs)
      const outAtMs = marks.jarsOutAtMs ?? marks.lidOffAtMs
      const count = seals?.unsealedCount ?? 0
      if (count === 0 || outAtMs === undefined) return []
      const hoursSinceOut = Math.max(0, (nowMs - outAtMs) / MS_PER_H)
      if (hoursSinceOut > ASKED_FOR_H) return []
      const methodWasRight = outcome === 'time-ran' && departures.length === 0
      return [{ runId: run.runId, loadCode, count, outAtMs, outcome: unsealedChoices(hoursSinceOut, methodWasRight) }]
    })
    .sort((a, b) => b.outAtMs - a.outAtMs)
    .map(({ outAtMs: _, ...jars }) => jars)
}
