/** A canner load of the book as planning's clock takes it. Leaves out: what follows from it (package planning). */
import type { RunFact } from '@crib/journal'
import { type RunRecord, type RunSetup, type RunState, runRecords, runSetupOf, runState } from '@crib/planning'
import type { OpenBook } from './book.ts'
import { badInput } from './exit-codes.ts'

export interface RunOfBook {
  readonly run: RunFact
  readonly setup: RunSetup
  readonly records: readonly RunRecord[]
  readonly state: RunState
}

/** Where a load stands at an instant. [ms since 1970, UTC] */
export function runOfBook(run: RunFact, now: number): RunOfBook {
  const setup = runSetupOf(run)
  const records = runRecords(run)
  return { run, setup, records, state: runState(setup, records, now) }
}

/**
 * The load meant: the one named by its code, else the only one that is not finished.
 *
 * @throws {BadInput} when none or several could be meant.
 */
export function chosenRun({ facts }: Pick<OpenBook, 'facts'>, code: string | undefined, now: number): RunOfBook {
  const runs = Object.values(facts.runs).map((run) => runOfBook(run, now))
  if (code !== undefined) {
    const named = runs.findLast(({ run }) => run.begun.loadCode.toLowerCase() === code.toLowerCase())
    if (!named) throw badInput('terminal:no-such-run', { given: code, codes: codesOf(runs) })
    return named
  }
  const open = runs.filter(({ state }) => state.phase !== 'seals-seen')
  if (open.length === 0) throw badInput('terminal:no-open-run')
  if (open.length > 1) throw badInput('terminal:which-run', { codes: codesOf(open) })
  return open[0]!
}

function codesOf(runs: readonly RunOfBook[]): string {
  return runs.map(({ run }) => run.begun.loadCode).join(', ') || '-'
}
